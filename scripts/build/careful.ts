// Which of a word's transcriptions a careful reader says: fast speech and slips make no word decodable.

import type { Transcription } from '../../src/phonics/arpabet.ts'
import type { DictionaryWord } from './pronunciations.ts'

/** Vowels that careful speakers differ in without saying another word. */
const NEAR: ReadonlySet<string> = new Set([
  'AA AO',
  'AO AA',
  'AH IH',
  'IH AH',
  'IH IY',
  'IY IH',
  'AH EH',
  'AH OW',
  'AH AE',
  'AH AA',
  'AH IY',
  'AH UH',
  'AH AO',
  'AH EY',
  'AH UW',
  'AH ER',
  'EH AE',
  'AE EH',
  'UH AO',
  'AO UH',
  'UW UH',
  'UH UW',
  'IH EH',
  'ER AO',
  'ER AH',
  'ER UH',
])

/**
 * The careful pronunciations of a word, best first.
 * @param toCost cost of a transcription's best alignment, in nats; Infinity where the table cannot say it.
 */
export function findCareful(
  word: DictionaryWord,
  toCost: (transcription: Transcription) => number,
  keepAll: boolean,
): Transcription[] {
  const costs = new Map(word.transcriptions.map((one) => [one, toCost(one)]))
  const able = word.transcriptions.filter((one) => Number.isFinite(costs.get(one) ?? Infinity))
  if (keepAll) return able
  const strong = able.filter((one) => one.stress.some((mark) => mark > 0))
  const pool = strong.length > 0 ? strong : able
  const first = pool[0]
  if (!first) return []
  const kept = [first]
  for (const one of pool.slice(1)) {
    if (isCareful(first, one, costs.get(first) ?? 0, costs.get(one) ?? 0)) kept.push(one)
  }
  return kept.slice(0, 3)
}

// A later variant counts where it is as long and no worse spelt; one with sounds left out is fast speech, one that
// only weakens a vowel adds nothing.
function isCareful(first: Transcription, one: Transcription, firstCost: number, cost: number): boolean {
  if (one.phones.length < first.phones.length) return false
  if (one.phones.length > first.phones.length) return cost <= firstCost + 1
  const differ = one.phones.flatMap((phone, at) => (phone === first.phones[at] ? [] : [`${first.phones[at]} ${phone}`]))
  if (differ.length === 0) return false
  if (cost > firstCost + 2.5) return false
  return differ.length === 1 ? NEAR.has(differ[0] ?? '') || cost <= firstCost : cost <= firstCost
}
