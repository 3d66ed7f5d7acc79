// Groups of the word wall: by first letter, or by the ending that the words share.

import { findRime, toListPronunciation } from '../finder/index.ts'
import type { WallGroup, WordPiece } from '../print/index.ts'
import type { SheetReader } from './types.ts'

export type GroupWish = 'letter' | 'ending'

/** Groups in order of their heads; words in order of the alphabet. */
export function toGroups(
  pieces: readonly WordPiece[],
  wish: GroupWish,
  { phonics }: Pick<SheetReader, 'phonics'>,
): readonly WallGroup[] {
  const groups = new Map<string, WordPiece[]>()
  const toWord = ({ text }: WordPiece): string => text.text.toLowerCase()
  for (const piece of [...pieces].sort((one, other) => (toWord(one) < toWord(other) ? -1 : 1))) {
    const word = toWord(piece)
    const said = wish === 'ending' ? phonics.read(word).pronunciations[0] : undefined
    const rime = said && findRime(word, toListPronunciation(said))
    const head = rime === undefined ? (/\p{L}/u.exec(word)?.[0] ?? word.slice(0, 1)) : `-${rime.letters}`
    groups.set(head, [...(groups.get(head) ?? []), piece])
  }
  return [...groups].sort(([one], [other]) => (one < other ? -1 : 1)).map(([head, words]) => ({ head, words }))
}
