// The pronunciations of a word as its sentence takes it.

import type { Pronunciation, WordPronunciations } from '../phonics/types.ts'
import type { JudgedWord } from '../verdict/types.ts'

/** The form that the sentence asks for stands before the others. */
export function toTakenFirst({ pronunciations, form }: JudgedWord): WordPronunciations {
  if (form === undefined || !pronunciations.heteronym) return pronunciations
  const isTaken = (one: Pronunciation): boolean => one.form === form
  const all = pronunciations.pronunciations
  return { ...pronunciations, pronunciations: [...all.filter(isTaken), ...all.filter((one) => !isTaken(one))] }
}
