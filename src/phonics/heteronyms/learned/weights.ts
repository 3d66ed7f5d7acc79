// The model's weights: a sorted list of hashed signs, each with a weight of one signed byte.

import { hashText } from '../../../hash.ts'
import type { Place } from '../place.ts'
import type { Heteronym, HeteronymForm, Weigh } from '../types.ts'
import { toSigns } from './signs.ts'

/** A weight of 1 in the file. */
export const UNIT = 24

const toClassKey = ({ classes }: HeteronymForm): string => `|${classes.join()}`
const toOwnKey = ({ word }: Heteronym, form: string): string => `|${word}:${form}`

/**
 * The hashes of the signs of each form: what stands there, with the class of the form or with the form itself.
 * @param isMade without the sign that every place has, which would say how usual a form is
 */
export function toHashes(row: Heteronym, place: Place, isMade = false): readonly (readonly number[])[] {
  const { shared, own: all } = toSigns(place)
  const own = isWeighed(row) ? all.slice(isMade ? 1 : 0) : []
  const sharedHashes = shared.map((sign) => hashText(sign))
  const ownHashes = own.map((sign) => hashText(sign))
  return row.forms.map((form) => {
    const [classKey, ownKey] = [toClassKey(form), toOwnKey(row, form.form)]
    return [...sharedHashes.map((hash) => hashText(classKey, hash)), ...ownHashes.map((hash) => hashText(ownKey, hash))]
  })
}

/** Shares of the forms, which add up to 1. */
export function toShares(sums: readonly number[]): readonly number[] {
  const most = Math.max(...sums)
  const raised = sums.map((sum) => Math.exp(sum - most))
  const all = raised.reduce((sum, one) => sum + one, 0)
  return raised.map((one) => one / all)
}

/**
 * Whether the forms of a word are of different parts of speech, which is what the model is good at. Two things in one place it does not
 * tell apart, nor the tenses of `read`, which stories show and sentences do not.
 */
export function isWeighed(row: Heteronym): boolean {
  let is = weighed.get(row)
  if (is === undefined) weighed.set(row, (is = isOfApartForms(row)))
  return is
}

const weighed = new WeakMap<Heteronym, boolean>()

function isOfApartForms({ word, forms }: Heteronym): boolean {
  const isApart = ({ classes }: HeteronymForm, at: number): boolean =>
    classes.length > 0 && !forms.some((other, k) => k !== at && other.classes.some((item) => classes.includes(item)))
  return word !== 'read' && forms.every(isApart)
}

/**
 * Read in place: few sentences ask.
 * @param bytes the number of weights (four bytes, little end first), their hashes in order (four bytes each), their weights (one each)
 */
export function openWeights(bytes: Uint8Array): Weigh {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const count = view.getUint32(0, true)
  const hashAt = (at: number): number => view.getUint32(4 + at * 4, true)
  // Hashes are spread evenly, so that where one stands can be guessed: four looks, where halving takes fifteen.
  const weightOf = (hash: number): number => {
    let [low, high] = [0, count - 1]
    while (low <= high) {
      const [least, most] = [hashAt(low), hashAt(high)]
      if (hash < least || hash > most) return 0
      const at = low + Math.floor(((hash - least) / (most - least || 1)) * (high - low))
      const found = hashAt(at)
      if (found === hash) return view.getInt8(4 + count * 4 + at) / UNIT
      if (found < hash) low = at + 1
      else high = at - 1
    }
    return 0
  }
  return (row, place) => {
    if (!isWeighed(row)) return undefined
    const shares = toShares(toHashes(row, place).map((all) => all.reduce((sum, hash) => sum + weightOf(hash), 0)))
    const share = Math.max(...shares)
    return { form: row.forms[shares.indexOf(share)]?.form ?? '', share }
  }
}
