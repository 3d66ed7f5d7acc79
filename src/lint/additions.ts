// What a teacher can add to a sequence so that a word can be read which no step makes readable: the very lines.

import { toStraight } from '../apostrophe.ts'
import type { Unit } from '../phonics/types.ts'
import { isContraction } from '../verdict/index.ts'
import type { Reason } from '../verdict/types.ts'
import { findChange, findEnding } from '../verdict/unit.ts'
import { toQuoted } from './quoted.ts'

/** ``add `gg as in egg` to a step``; undefined where the word is an exception, or nothing that can be added is missing. */
export function toAddition(word: string, reasons: readonly Reason[]): string | undefined {
  const missing = reasons.filter(({ taughtAt, code }) => taughtAt === undefined && code !== 'unknown-word')
  const lines = missing.map((reason) => toAdditionLine(word, reason))
  if (lines.length === 0 || lines.some((line) => line === undefined)) return undefined
  return `add ${toList([...new Set(lines as string[])])} to a step`
}

/** The line by which a step would teach it, in quote marks. */
export function toAdditionLine(word: string, reason: Reason): string | undefined {
  const { code, unit, found } = reason
  if (code === 'correspondence-untaught') return toCorrespondenceLine(reason)
  if (code === 'shape') return toQuoted(`shapes: [${found}]`)
  if (code === 'contraction') return isContraction(word) ? toQuoted(`contractions: ["${toListed(word)}"]`) : undefined
  if (code === 'too-many-letters' || code === 'too-many-syllables') {
    return toQuoted(`${code === 'too-many-letters' ? 'letters' : 'syllables'}: ${found}`)
  }
  if (code !== 'ending') return undefined
  if (unit === undefined) return toQuoted(`endings: ["'s"]`)
  const ending = findEnding(unit)
  if (ending !== undefined) return toQuoted(ending.startsWith("'") ? `endings: ["${ending}"]` : `endings: [${ending}]`)
  const change = unit.base === undefined ? undefined : findChange(unit.letters, unit.base, undefined)
  return change === undefined ? undefined : toQuoted(`ending changes: [${change.replaceAll('-', ' ')}]`)
}

/** `isn't` for the `Isn't` that opens a sentence, with a straight apostrophe, but `I'm`. */
const toListed = (word: string): string => toStraight(/^I['’]/.test(word) ? word : word.toLowerCase())

/** `gg as in egg`. */
export function toCorrespondenceLine({ unit }: Pick<Reason, 'unit'>): string | undefined {
  return unit?.shown === undefined ? undefined : toQuoted(`${toGrapheme(unit)} as in ${unit.shown}`)
}

const toList = (lines: readonly string[]): string =>
  lines.length < 2 ? lines.join('') : `${lines.slice(0, -1).join(', ')} and ${lines.at(-1)}`

/** The letters that are taught: `ur` for the `urr` of `hurry`. */
const toGrapheme = ({ key }: Unit): string => key.slice(0, key.indexOf('='))
