// Which file of the maker's own folder shows a word: the file is called as the word is.

import { OTHER_PICTURE_NAME, PICTURE_NAME } from './image.ts'

/** `Hat-2.JPG` → `hat`, `ice_cream.png` → `ice cream`. */
const toWordOfName = (name: string): string =>
  name
    .replace(/\.[^.]*$/, '')
    .replace(/[-_ ]?\d+$/, '')
    .replaceAll('_', ' ')
    .trim()
    .toLowerCase()

export interface OwnPictures {
  /** The file that shows a word; of several the first by name. */
  find(word: string): string | undefined
  /** A file that is called as the word is, but of a kind that cannot be printed. */
  findOther(word: string): string | undefined
}

export function sortOwnPictures(names: readonly string[]): OwnPictures {
  const toFinder = (kind: RegExp) => {
    const byWord = new Map<string, string>()
    for (const name of [...names].sort()) {
      const word = toWordOfName(name)
      if (kind.test(name) && !byWord.has(word)) byWord.set(word, name)
    }
    return (word: string): string | undefined => byWord.get(word.toLowerCase())
  }
  return { find: toFinder(PICTURE_NAME), findOther: toFinder(OTHER_PICTURE_NAME) }
}
