// Reads one config file: its settings, its overrides by pattern, what it leaves out and what it builds on.

import { joinPath, toFolder } from '../files/index.ts'
import type { Rule } from '../lint/types.ts'
import type { Sourced } from '../problem/index.ts'
import { createLines } from '../story/lines.ts'
import type { ReadContext } from './context.ts'
import { createToProblemAt, report, toRaw } from './context.ts'
import { readKeys } from './keys.ts'
import { readLayer, readList, readValue } from './layer.ts'
import { parseYaml, toWhole } from './parse.ts'
import { toMatcher } from './patterns.ts'
import { configEntries, overrideEntries } from './schema.ts'
import type { Entry, Tree } from './tree.ts'
import type { ConfigFile, Override, Source } from './types.ts'

/** `source.path` is shown in origins and problems; `path` is the one to read by. Never throws. */
export async function readConfigFile(
  source: Source,
  rules: readonly Rule[],
  path: string = source.path,
): Promise<ConfigFile> {
  // A byte order mark is no part of the YAML.
  const offset = source.text.startsWith('\uFEFF') ? 1 : 0
  const lines = createLines(source.text)
  const { tree, problems } = await parseYaml(source.text.slice(offset), createToProblemAt({ source, lines, offset }))
  const context: ReadContext = {
    ...{ source, lines, path, offset, rules, place: 'config' },
    problems: tree ? [...problems] : toWhole(problems, 'This file cannot be read'),
  }
  const entries = tree ? readKeys(tree, Object.keys(configEntries), context) : new Map<string, Entry>()
  const ignore = readPatterns(entries, 'ignore', context)
  const build = readList(entries, 'extends', configEntries.extends, context)
  return {
    path,
    source,
    isRoot: readValue(entries, 'root', configEntries.root, context)?.value ?? false,
    extends: build.map((file) => ({ ...file, value: joinPath(toFolder(path), file.value) })),
    layer: readLayer(entries, context),
    overrides: await readOverrides(entries.get('overrides')?.value, context),
    ignore,
    findIgnoring: await toIgnoring(ignore),
    problems: context.problems,
  }
}

function readPatterns(entries: ReadonlyMap<string, Entry>, key: 'ignore' | 'files', context: ReadContext) {
  return readList(entries, key, overrideEntries.files, context)
}

async function toIgnoring(patterns: readonly Sourced<string>[]): Promise<ConfigFile['findIgnoring']> {
  const isIgnored = await toMatcher(patterns.map(({ value }) => value))
  if (patterns.length < 2) return (path) => (isIgnored(path) ? patterns[0] : undefined)
  const single = await Promise.all(patterns.map(({ value }) => toMatcher([value])))
  return (path) => (isIgnored(path) ? patterns.findLast((_, index) => single[index]?.(path)) : undefined)
}

async function readOverrides(tree: Tree | undefined, context: ReadContext): Promise<readonly Override[]> {
  if (!tree) return []
  if (tree.kind !== 'list') {
    const message = `\`overrides\` must be a list, each item with \`files\`, not \`${toRaw(tree, context)}\``
    report(context, tree, { code: 'bad-value', message })
    return []
  }
  const overrides: Override[] = []
  for (const item of tree.items) {
    const entries = readKeys(item, Object.keys(overrideEntries), context)
    const files = readPatterns(entries, 'files', context).map(({ value }) => value)
    if (item.kind === 'map' && !entries.has('files')) {
      const message = 'this override needs `files`: the patterns of the stories it is for'
      report(context, item, { code: 'missing-key', message })
    }
    overrides.push({ files, matches: await toMatcher(files), layer: readLayer(entries, context) })
  }
  return overrides
}
