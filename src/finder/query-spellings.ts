// Spellings that are asked for: each must be one that a word has, and a vowel one that is taught.

import { findFirstStep } from '../verdict/index.ts'
import type { Pool } from './pool.ts'
import type { QueryTools, WrittenQuery } from './query-tools.ts'
import { fail, splitList, toHint } from './query-values.ts'
import { type FoundSpelling, findSpelling, type Spelling, toSpellingTest } from './spelling.ts'
import type { ListUnit } from './table.ts'

/** A spelling that no word has is a slip of the keys: an empty list would not tell. */
export function toSpelling(text: string, tools: QueryTools): Spelling {
  const spelling = toAnySpelling(text, tools)
  const { sounds } = tools.pool
  const isIn = toSpellingTest(spelling, 'any', sounds)
  for (let row = 0; row < sounds.starts.length; row++) if (isIn(row)) return spelling
  return fail(`No word holds \`${text}\` as a spelling.${toHint(text, listTaught(tools))}`)
}

export function toVowel(text: string, tools: QueryTools): Spelling {
  const found = findVowel(text, tools)
  const spelling = 'problem' in found ? fail(found.problem) : found.spelling
  const vowelUnits = tools.pool.sounds.units.filter(({ vowel }) => vowel)
  const known: ReadonlySet<string> = tools.pool.knowledge.correspondences
  // Letters that no step teaches together may still be known to this reader.
  const isVowel =
    'letters' in spelling
      ? vowelUnits.some(({ letters, key }) => letters === spelling.letters && known.has(key))
      : spelling.some((test) => vowelUnits.some(test))
  if (isVowel) return spelling
  const vowels = listTaught(tools, ({ vowel }) => vowel)
  const such = vowels.slice(0, 5).join(', ')
  return fail(`--vowel is a vowel that is taught, such as ${such}; this is \`${text}\`.${toHint(text, vowels)}`)
}

/** Of letters that are taught as a consonant too, such as `y`, the vowel. */
function findVowel(text: string, { sequence, phonics, pool }: QueryTools): FoundSpelling {
  const keys = new Set<string>(pool.sounds.units.filter(({ vowel }) => vowel).map(({ key }) => key))
  const letters = text.toLowerCase().replace('-', '_')
  const taught = sequence.steps
    .flatMap(({ adds }) => adds.correspondences)
    .find((one) => one.letters === letters && keys.has(one.key))
  return taught ? { spelling: [({ key }) => key === taught.key] } : findSpelling(text, sequence, phonics)
}

function toAnySpelling(text: string, { sequence, phonics }: QueryTools): Spelling {
  const found = findSpelling(text, sequence, phonics)
  return 'problem' in found ? fail(found.problem) : found.spelling
}

/** The spellings that the sequence teaches, in its order, as they are asked for. */
function listTaught({ sequence, pool }: QueryTools, isMeant: (unit: ListUnit) => boolean = () => true): string[] {
  const meant = new Set<string>(pool.sounds.units.filter(isMeant).map(({ key }) => key))
  const taught = sequence.steps.flatMap(({ adds }) => adds.correspondences).filter(({ key }) => meant.has(key))
  return [...new Set(taught.map(({ letters }) => letters.replace('_', '-')))]
}

export interface Untaught {
  /** As written. */
  readonly spelling: string
  /** The id of the step that teaches it; undefined where none does. */
  readonly step: string | undefined
}

/**
 * Of the spellings that are asked for, those that the reader has not been taught: why a list may be empty. Clusters such
 * as `st` and endings are passed over.
 */
export function findUntaught(
  written: Pick<WrittenQuery, 'vowel' | 'first' | 'last' | 'with'> & { readonly sounds?: string },
  tools: QueryTools,
): readonly Untaught[] {
  const { vowel = '', first = '', last = '', with: held = '', sounds = '' } = written
  const others = [first, last, held, sounds].flatMap(splitList)
  return [
    ...splitList(vowel).map((text) => ({ text, found: findVowel(text, tools) })),
    ...others.map((text) => ({ text, found: findSpelling(text, tools.sequence, tools.phonics) })),
  ].flatMap(({ text, found }): Untaught[] => {
    if ('problem' in found || 'letters' in found.spelling) return []
    const parts = found.spelling.map((test) => findKeys(test, tools.pool))
    const areIn = (known: ReadonlySet<string>): boolean => parts.every((keys) => keys.some((key) => known.has(key)))
    if (parts.some((keys) => keys.length === 0) || areIn(tools.pool.knowledge.correspondences)) return []
    const step = findFirstStep(tools.sequence, 0, {}, ({ correspondences }) => areIn(correspondences))
    return [{ spelling: text, step }]
  })
}

const findKeys = (test: (unit: ListUnit) => boolean, { sounds: { units } }: Pool): string[] =>
  units.flatMap((unit) => (unit.kind === 'correspondence' && test(unit) ? [unit.key] : []))
