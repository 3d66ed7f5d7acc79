// The model's weights: a sorted list of hashed signs, each with a weight of one signed byte.

import { findIndexOf } from '../../../sorted.ts'
import type { Place } from '../place.ts'
import type { Heteronym } from '../types.ts'
import { toSigns } from './signs.ts'

/** The likeliest form by what stands round the word, and how likely it is: over 0.5, at most 1. */
export interface Likely {
  readonly form: string
  readonly share: number
}

export type Weigh = (row: Heteronym, place: Place) => Likely

/** A weight of 1 in the file. */
export const UNIT = 24

/** FNV-1a of 32 bits, carried on from `hash`. */
export function hashOn(text: string, hash = 0x811c9dc5): number {
  let value = hash
  for (let at = 0; at < text.length; at++) value = Math.imul(value ^ text.charCodeAt(at), 0x01000193)
  return value >>> 0
}

/** What a form's class is called in signs. */
export const toClassKey = ({ classes }: Pick<Heteronym['forms'][number], 'classes'>): string => `|${classes.join()}`
export const toOwnKey = ({ word }: Heteronym, form: string): string => `|${word}:${form}`

/** The hashes of the signs that speak for one form. */
export function toHashes(row: Heteronym, place: Place, isMade = false): readonly (readonly number[])[] {
  const { shared, own: all } = toSigns(place)
  const own = isMade ? all.slice(1) : all
  const sharedHashes = shared.map((sign) => hashOn(sign))
  const ownHashes = own.map((sign) => hashOn(sign))
  return row.forms.map((form) => {
    const [classKey, ownKey] = [toClassKey(form), toOwnKey(row, form.form)]
    return [...sharedHashes.map((hash) => hashOn(classKey, hash)), ...ownHashes.map((hash) => hashOn(ownKey, hash))]
  })
}

/** Shares of the forms, which add up to 1. */
export function toShares(sums: readonly number[]): readonly number[] {
  const most = Math.max(...sums)
  const raised = sums.map((sum) => Math.exp(sum - most))
  const all = raised.reduce((sum, one) => sum + one, 0)
  return raised.map((one) => one / all)
}

/** @param bytes the number of weights (four bytes, little end first), their hashes in order (four bytes each), their weights (one each) */
export function openWeights(bytes: Uint8Array): Weigh {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const count = view.getUint32(0, true)
  let hashes: Uint32Array | undefined
  const open = (): Uint32Array => {
    const opened = new Uint32Array(count)
    for (let at = 0; at < count; at++) opened[at] = view.getUint32(4 + at * 4, true)
    return opened
  }
  const weightOf = (hash: number): number => {
    const at = findIndexOf((hashes ??= open()), hash)
    return at < 0 ? 0 : view.getInt8(4 + count * 4 + at) / UNIT
  }
  return (row, place) => {
    const sums = toHashes(row, place).map((all) => all.reduce((sum, hash) => sum + weightOf(hash), 0))
    const shares = toShares(sums)
    const best = shares.indexOf(Math.max(...shares))
    return { form: row.forms[best]?.form ?? '', share: shares[best] ?? 0 }
  }
}
