// What a slip of the pen does to the letters of a word: two swapped, one doubled or not, one left out, one wrong or too many, an apostrophe forgotten.

/** Every word that two neighbouring letters, swapped, make of it. */
export const toSwapped = (word: string): readonly string[] =>
  [...word].slice(1).map((letter, at) => `${word.slice(0, at)}${letter}${word[at]}${word.slice(at + 2)}`)

/** The word with the letter at a place doubled, or with only one of two. */
export function toDoubles(word: string, at: number): readonly string[] {
  const letter = word[at] ?? ''
  const once = word[at + 1] === letter ? [`${word.slice(0, at)}${word.slice(at + 1)}`] : []
  return [`${word.slice(0, at)}${letter}${word.slice(at)}`, ...once]
}

const ALPHABET = [...'abcdefghijklmnopqrstuvwxyz']

/** Every word that has one letter more: `people` of `peple`. */
export const toLonger = (word: string): readonly string[] =>
  ['', ...word].flatMap((_, at) => ALPHABET.map((letter) => `${word.slice(0, at)}${letter}${word.slice(at)}`))

/** Every word with one letter changed or taken out: `calendar` of `calender`. */
export const toChanged = (word: string): readonly string[] =>
  [...word].flatMap((_, at) => ['', ...ALPHABET].map((letter) => `${word.slice(0, at)}${letter}${word.slice(at + 1)}`))

/** `don't`, `you're`, `I'm`. */
export const toShortened = (word: string): readonly string[] =>
  [/n(t)$/, /(ll|re|ve)$/, /(m)$/].flatMap((ending) => {
    const found = ending.exec(word)
    const at = found === null ? 0 : word.length - (found[1] ?? '').length
    return at === 0 ? [] : [`${word.slice(0, at)}'${word.slice(at)}`]
  })
