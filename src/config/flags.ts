// Settings from the command line, checked by the same schema as those of files.

import * as v from 'valibot'
import { toProperty } from './layer.ts'
import { isPathLike, joinPath } from './paths.ts'
import { settingEntries } from './schema.ts'
import type { Layer, Sourced } from './types.ts'

export type FlagKey = Exclude<keyof typeof settingEntries, 'rules'>

/** `--step must be …, not …` */
export interface FlagProblem {
  readonly flag: string
  readonly message: string
}

/** Values by key, as typed. Paths count from `folder`. */
export function readFlags(
  given: Readonly<Partial<Record<FlagKey, unknown>>>,
  folder: string,
): { readonly layer: Layer; readonly problems: readonly FlagProblem[] } {
  const layer: Record<string, Sourced<unknown> | readonly Sourced<string>[]> = {}
  const problems: FlagProblem[] = []
  for (const key of Object.keys(settingEntries) as (keyof typeof settingEntries)[]) {
    if (key === 'rules' || given[key] === undefined) continue
    const flag = `--${key.replaceAll(' ', '-')}`
    const result = v.safeParse(settingEntries[key], toTyped(key, given[key]))
    if (!result.success) {
      problems.push({ flag, message: toMessage(flag, result.issues[0].message, given[key]) })
    } else {
      const value = result.output
      if (Array.isArray(value)) layer[toProperty(key)] = value.map((item) => ({ value: item, origin: flag }))
      else layer[toProperty(key)] = { value: toPath(key, value, folder), origin: flag }
    }
  }
  // Each value has passed the schema of its key, and `Layer` names the outputs of those schemas.
  return { layer: layer as Layer, problems }
}

/** A flag's value is text: `--pages 2` means the number. */
function toTyped(key: FlagKey, value: unknown): unknown {
  const isNumber = typeof value === 'string' && (key === 'pages' || key === 'readable share') && /^[\d.]+$/.test(value)
  return isNumber ? Number(value) : value
}

function toPath(key: FlagKey, value: unknown, folder: string): unknown {
  return key === 'sequence' && typeof value === 'string' && isPathLike(value) ? joinPath(folder, value) : value
}

function toMessage(flag: string, message: string, value: unknown): string {
  const [rule, ...hint] = message.split('. ')
  return [`${flag} ${rule}, not \`${String(value)}\``, ...hint].join('. ')
}
