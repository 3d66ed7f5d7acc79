// How many running words of a book use one thing that was taught.

import type { Phonics } from '../../phonics/types.ts'
import type { TaughtItem } from '../../sequence/item.ts'
import { toSightKey } from '../../sequence/knowledge.ts'
import type { StoryCount } from '../../usage/count.ts'

export function countUses({ uses }: StoryCount, item: TaughtItem, phonics: Phonics): number {
  return uses.reduce((sum, { text, times }) => sum + (isUse(text, item, phonics) ? times : 0), 0)
}

/** Whether a word is read with the item: it is the word itself, or holds the letters with that sound. */
export function isUse(text: string, item: TaughtItem, phonics: Phonics): boolean {
  if (item.kind === 'word') return toSightKey(text) === toSightKey(item.written)
  const units = phonics.read(text).pronunciations[0]?.units ?? []
  if (item.kind === 'correspondence') return units.some(({ key }) => item.keys.includes(key))
  return units.some(({ kind, letters }) => kind === 'inflection' && `-${letters}` === item.ending)
}
