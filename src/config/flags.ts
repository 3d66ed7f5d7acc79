// Settings from the command line, checked by the same schema as those of files.

import * as v from 'valibot'
import { isSequencePath, joinPath } from '../files/index.ts'
import { type Problem, type Sourced, toProblem } from '../problem/index.ts'
import { toProperty, toValueProblem } from './layer.ts'
import { settingEntries } from './schema.ts'
import type { Layer } from './types.ts'

export type FlagKey = Exclude<keyof typeof settingEntries, 'rules'>

/**
 * Values by key, as typed. Paths count from `folder`.
 * @param toOrigin how a key is written where it was set; `--sight-words` on the command line
 */
export function readFlags(
  given: Readonly<Partial<Record<FlagKey, unknown>>>,
  folder: string,
  toOrigin: (key: FlagKey) => string = toFlag,
): { readonly layer: Layer; readonly problems: readonly Problem[] } {
  const layer: Record<string, Sourced<unknown> | readonly Sourced<string>[]> = {}
  const problems: Problem[] = []
  for (const key of Object.keys(settingEntries) as (keyof typeof settingEntries)[]) {
    if (key === 'rules' || given[key] === undefined) continue
    const origin = toOrigin(key)
    const result = v.safeParse(settingEntries[key], toTyped(key, given[key]))
    if (!result.success) {
      const found = toValueProblem(`${origin} ${result.issues[0].message}`, settingEntries[key], String(given[key]))
      problems.push(toProblem({ ...found, setBy: { origin } }))
    } else {
      const value = result.output
      if (Array.isArray(value)) layer[toProperty(key)] = value.map((item) => ({ value: item, origin }))
      else layer[toProperty(key)] = { value: toPath(key, value, folder), origin }
    }
  }
  // Each value has passed the schema of its key, and `Layer` names the outputs of those schemas.
  return { layer: layer as Layer, problems }
}

/** `sight words` → `--sight-words` */
const toFlag = (key: FlagKey): string => `--${key.replaceAll(' ', '-')}`

/** A flag's value is text: `--pages 2` means the number. */
function toTyped(key: FlagKey, value: unknown): unknown {
  const isNumber = typeof value === 'string' && (key === 'pages' || key === 'readable share') && /^[\d.]+$/.test(value)
  return isNumber ? Number(value) : value
}

function toPath(key: FlagKey, value: unknown, folder: string): unknown {
  return key === 'sequence' && typeof value === 'string' && isSequencePath(value) ? joinPath(folder, value) : value
}
