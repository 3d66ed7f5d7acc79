// Sorts the keys of a map into ours, misspelt ones and those of other tools.

import { findNearest } from '../nearest.ts'
import { toExpected } from '../problem/index.ts'
import type { ReadContext } from './context.ts'
import { isEmpty, report } from './context.ts'
import type { Entry, Tree } from './tree.ts'

// Keys of site generators and other tools that come near to ours in spelling and are meant as they stand.
const FOREIGN = new Set(['author', 'border', 'page', 'rule', 'subtitle', 'tile', 'titles', 'type', 'types'])

/** `sight-words`, `sight_words` and `sightWords` are `sight words`. */
export function toSettingKey(written: string): string {
  return written
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/[-_]/g, ' ')
    .toLowerCase()
}

/** Our keys with their entries; empty values are left out. Reports unknown and repeated keys. */
export function readKeys(tree: Tree, known: readonly string[], context: ReadContext): ReadonlyMap<string, Entry> {
  const found = new Map<string, Entry>()
  if (tree.kind !== 'map') {
    const message = `this must be a list of keys with values, such as \`${known[0]}: …\``
    report(context, tree, { code: 'bad-value', message })
    return found
  }
  for (const entry of tree.entries) {
    const key = toSettingKey(entry.key)
    if (!known.includes(key)) reportUnknownKey(entry, key, known, context)
    else if (found.has(key)) reportTwin(entry, found.get(key)?.key, context)
    else if (!isEmpty(entry)) found.set(key, entry)
  }
  return found
}

/** The parser has told of the same key twice, but not of two spellings of it. */
function reportTwin(entry: Entry, first: string | undefined, context: ReadContext): void {
  const message = `\`${entry.key}\` is the same setting as \`${first}\`, which counts`
  if (entry.key !== first) report(context, entry.keyAt, { code: 'repeated', message })
}

function reportUnknownKey(entry: Entry, key: string, known: readonly string[], context: ReadContext): void {
  const isShared = context.place === 'front matter'
  const nearest = isShared && FOREIGN.has(key) ? undefined : findNearest(key, known)
  if (isShared && nearest === undefined) return
  report(context, entry.keyAt, {
    code: 'unknown-key',
    severity: isShared ? 'warning' : 'error',
    message: `\`${entry.key}\` is not a setting`,
    expected: toExpected(nearest),
    ...(nearest === undefined && { note: `The keys are: ${known.join(', ')}.` }),
  })
}
