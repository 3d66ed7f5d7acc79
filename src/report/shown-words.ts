// What a person must know of words that are to be shown as things or pictures.

import type { FoundWord, ShowAs } from '../finder/index.ts'

/** What a person must know of words that a child may not say at first sight, by class. */
const SHOWN: Readonly<Record<'hint' | 'likelier' | 'guess', string>> = {
  hint: 'Needs a word from you:',
  likelier: 'A child may say another word first:',
  guess: 'Not looked at by us, so think twice:',
}

/** `cub (bear), cod (fish)`, one line a class; nothing for words that a child says at first sight. */
export function toShownLines({ words, showAs }: ShownList): string[] {
  if (showAs === null) return []
  const toClass = ({ shown }: FoundWord): string => shown?.[showAs] ?? 'guess'
  return (['hint', 'likelier', 'guess'] as const).flatMap((name) => {
    const own = words.filter((found) => toClass(found) === name)
    const texts = own.map(({ word, shown }) => (shown?.note ? `${word} (${shown.note})` : word))
    return own.length === 0 ? [] : [`${SHOWN[name]} ${texts.join(', ')}.`]
  })
}

interface ShownList {
  readonly words: readonly FoundWord[]
  readonly showAs: ShowAs | null
}
