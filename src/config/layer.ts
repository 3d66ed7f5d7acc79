// Reads the values of our keys, each checked by the schema, into a layer. One bad value does not spoil the rest.

import * as v from 'valibot'
import type { ReadContext } from './context.ts'
import { report, toRaw, toSourced } from './context.ts'
import { isPathLike, joinPath, toFolder } from './paths.ts'
import { readRules } from './rules.ts'
import { settingEntries } from './schema.ts'
import type { Entry, Tree } from './tree.ts'
import { findNearestNode, toPlain } from './tree.ts'
import type { Layer, Sourced } from './types.ts'

type Entries = ReadonlyMap<string, Entry>
type Schema = v.GenericSchema<unknown, unknown>

// Keys whose text must stay as written: `step: 1.10` is no number, `title: 1984` is no year.
const TEXTS = new Set(['sequence', 'step', 'title'])
const LISTS = new Set(['names', 'sight words', 'unfit words', 'fit words'])

/** The checked value of one key, or undefined where it is missing or wrong (and reported). */
export function readValue<S extends Schema>(
  entries: Entries,
  key: string,
  schema: S,
  context: ReadContext,
): Sourced<v.InferOutput<S>> | undefined {
  const entry = entries.get(key)
  if (!entry) return undefined
  const isText = TEXTS.has(key) && entry.value.kind === 'scalar' && typeof entry.value.value === 'number'
  const result = v.safeParse(schema, isText ? toRaw(entry.value, context) : toPlain(entry.value))
  if (result.success) return toSourced(result.output, entry.value, context)
  const issue = toInnermost(result.issues[0])
  const node = findNearestNode(entry.value, issue.path?.map((item) => item.key) ?? [])
  reportValue(key, issue.message, node, context)
  return undefined
}

/** In a list of texts, the item that is none, rather than the whole list. */
function toInnermost(issue: v.BaseIssue<unknown>): v.BaseIssue<unknown> {
  const inner = issue.issues?.find((one) => one.path !== undefined)
  return inner ? toInnermost(inner) : issue
}

function reportValue(key: string, message: string, node: Tree, context: ReadContext): void {
  const nearest = /Did you mean `(.+)`\?$/.exec(message)?.[1]
  const given = toRaw(node, context).split('\n')[0] ?? ''
  const shown = given.length > 40 ? `${given.slice(0, 40)}…` : given
  const [rule, ...hint] = message.split('. ')
  const whole = [`\`${key}\` ${rule}, not \`${shown}\``, ...hint].join('. ')
  report(context, node, whole, { expected: nearest ? [nearest] : [] })
}

/** A list with the place of each item. */
export function readList(
  entries: Entries,
  key: string,
  schema: v.GenericSchema<unknown, string[]>,
  context: ReadContext,
): readonly Sourced<string>[] {
  const whole = readValue(entries, key, schema, context)
  const node = entries.get(key)?.value
  if (!whole || !node) return []
  const items = node.kind === 'list' ? node.items : []
  // Items can be dropped when empty, so each is looked up by its text.
  const findItem = (value: string) =>
    items.find((item) => item.kind === 'scalar' && typeof item.value === 'string' && item.value.trim() === value)
  return whole.value.map((value) => toSourced(value, findItem(value) ?? node, context))
}

export function readLayer(entries: Entries, context: ReadContext): Layer {
  const layer: Record<string, unknown> = {}
  for (const [key, schema] of Object.entries(settingEntries)) {
    const entry = entries.get(key)
    if (!entry) continue
    if (key === 'rules') layer.rules = readRules(entry.value, context)
    else if (LISTS.has(key)) layer[toProperty(key)] = readList(entries, key, settingEntries.names, context)
    else {
      const value = readValue(entries, key, schema, context)
      if (value) layer[toProperty(key)] = key === 'sequence' ? withPath(value as Sourced<string>, context) : value
    }
  }
  // Each value has passed the schema of its key, and `Layer` names the outputs of those schemas.
  return layer as Layer
}

/** `sight words` → `sightWords` */
export function toProperty(key: string): string {
  return key.replace(/ (.)/g, (_, letter: string) => letter.toUpperCase())
}

/** A sequence file is meant from the folder of the file that names it. */
function withPath(name: Sourced<string>, { source, path }: ReadContext): Sourced<string> {
  const folder = toFolder(path ?? source.path)
  return isPathLike(name.value) ? { ...name, value: joinPath(folder, name.value) } : name
}
