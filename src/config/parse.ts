// YAML text in, a tree with places out: by the plain reader where it can, else by the full parser.

import type { Problem } from '../problem/index.ts'
import { type ToProblemAt, withoutPlace } from '../yaml/yaml-problems.ts'
import { parseSimpleYaml } from './simple-yaml.ts'
import type { ParsedYaml } from './tree.ts'

/** Never throws. JSON is YAML too. */
export async function parseYaml(text: string, toProblemAt: ToProblemAt = withoutPlace): Promise<ParsedYaml> {
  const simple = parseSimpleYaml(text)
  if (simple) return { tree: simple, problems: [] }
  if (text.trim() === '') return { tree: undefined, problems: [] }
  const { parseFullYaml } = await import('./full-yaml.ts')
  return parseFullYaml(text, toProblemAt)
}

/** What is wrong with a text of which nothing can be read. */
export const toWhole = (problems: readonly Problem[], what: string): Problem[] =>
  problems.map((problem) => ({ ...problem, message: `${what}: ${problem.message}` }))
