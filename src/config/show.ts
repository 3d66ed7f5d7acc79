// All settings of one story as rows with their origin, for `--print-config`.

import type { Settings } from './types.ts'

export interface SettingRow {
  /** As in a config file: `sight words`, `rules › no-numeral`, `rules › max-words › max`. */
  readonly key: string
  readonly value: unknown
  readonly origin: string
}

/** Every value has a row; each name and sight word has its own. Rules in alphabetical order. */
export function toSettingRows(settings: Settings): readonly SettingRow[] {
  const { names, sightWords, unfitWords, fitWords, rules, ...single } = settings
  const rows: SettingRow[] = Object.entries(single).map(([property, sourced]) => toRow(toKeyName(property), sourced))
  for (const name of names) rows.push(toRow('names', name))
  for (const word of sightWords) rows.push(toRow('sight words', word))
  for (const word of unfitWords) rows.push(toRow('unfit words', word))
  for (const word of fitWords) rows.push(toRow('fit words', word))
  for (const id of Object.keys(rules).toSorted()) {
    const rule = rules[id]
    if (!rule) continue
    rows.push(toRow(`rules › ${id}`, rule.severity))
    for (const [name, option] of Object.entries(rule.options)) rows.push(toRow(`rules › ${id} › ${name}`, option))
  }
  return rows
}

function toRow(key: string, { value, origin }: { readonly value: unknown; readonly origin: string }): SettingRow {
  return { key, value: value ?? null, origin }
}

/** `countTitle` → `count title` */
function toKeyName(property: string): string {
  return property.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
}
