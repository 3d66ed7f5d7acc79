// YAML text in, a tree with places out: by the plain reader where it can, else by the full parser.

import { parseSimpleYaml } from './simple-yaml.ts'
import type { ParsedYaml } from './tree.ts'

/** Never throws. JSON is YAML too. */
export async function parseYaml(text: string): Promise<ParsedYaml> {
  const simple = parseSimpleYaml(text)
  if (simple) return { tree: simple, problems: [] }
  if (text.trim() === '') return { tree: undefined, problems: [] }
  const { parseFullYaml } = await import('./full-yaml.ts')
  return parseFullYaml(text)
}
