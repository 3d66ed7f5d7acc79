// Which words of a story look like names, by the capital that they keep in mid-sentence.

import { toLetters } from '../apostrophe.ts'
import type { Block, Sentence, Story, Word } from '../story/types.ts'
import { findOwner } from '../verdict/index.ts'

/** `Meg's` → `Meg`: a name stays a name when something is its own. */
export function toBareName(text: string): string {
  return findOwner(text) ?? text
}

/** `STOP` and `A.M.`, but not `A` or `I`, whose one letter can open a sentence. */
export function isAllCapitals(text: string): boolean {
  const letters = toLetters(text)
  return letters.length > 1 && letters.every((letter) => letter !== letter.toLowerCase())
}

/**
 * The words that the story writes with a capital in the middle of a sentence and never in small letters.
 * Headings prove nothing (they may capitalise every word), nor do words in capitals throughout.
 */
export function findLikelyNames({ pages }: Pick<Story, 'pages'>): ReadonlySet<string> {
  const signs = { capital: new Set<string>(), small: new Set<string>() }
  for (const { blocks } of pages) for (const block of blocks) addNameSigns(block, signs)
  return toLikelyNames(signs.capital, signs.small)
}

/** What speaks for a name and what against it. */
export interface NameSigns {
  /** Words with a capital in the middle of a sentence. */
  readonly capital: Pick<Set<string>, 'add'>
  /** Words with none, in small letters. */
  readonly small: Pick<Set<string>, 'add'>
}

export function addNameSigns({ kind, sentences }: Pick<Block, 'kind' | 'sentences'>, signs: NameSigns): void {
  if (kind !== 'paragraph') return
  for (const sentence of sentences) {
    // Every word of every story comes by here.
    sentence.words.forEach((word, index) => {
      const bare = toBareName(word.text)
      const first = bare.charAt(0)
      if (first === first.toLowerCase()) signs.small.add(bare.toLowerCase())
      else if (!isAllCapitals(bare) && bare !== 'I' && !isOpening(word, index, sentence)) signs.capital.add(bare)
    })
  }
}

export const toLikelyNames = (
  capital: Iterable<string>,
  small: Pick<ReadonlySet<string>, 'has'>,
): ReadonlySet<string> => new Set([...capital].filter((name) => !small.has(name.toLowerCase())))

/** Whether a sentence, or speech in it, starts at this word: `Tam said, “Go.”` has two such words. */
function isOpening(word: Word, index: number, sentence: Sentence): boolean {
  const before = sentence.words[index - 1]
  if (before === undefined) return true
  return sentence.marks.some(
    (mark) => mark.start >= before.end && mark.end <= word.start && !/^[,;-]$/u.test(mark.text),
  )
}
