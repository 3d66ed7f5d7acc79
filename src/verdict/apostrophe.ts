// Tells a contraction (`can't`, `it's`) from an owner's ending (`dog's`, `dogs'`).

/** Words whose `'s` is short for `is`, `has` or `us`, and never marks an owner. */
const SHORTENED_BEFORE_S = new Set([
  'he',
  'she',
  'it',
  'that',
  'this',
  'what',
  'where',
  'there',
  'here',
  'who',
  'how',
  'when',
  'why',
  'let',
])

const CURLY = /[’‘ʼ]/
const ANY = /['’‘ʼ]/

/** The word with straight apostrophes, as the tables hold it. */
export function toStraight(word: string): string {
  if (!CURLY.test(word)) return word
  return word.replace(/[’‘ʼ]/g, "'")
}

/** The owner before `'s` or after-`s` apostrophe: `dog` of `dog's`, `dogs` of `dogs'`; undefined for other words. */
export function findOwner(word: string): string | undefined {
  // Asked of every word of a story, and nearly none has an apostrophe.
  if (!ANY.test(word)) return undefined
  const straight = toStraight(word)
  const owner = /^(.+)'s$/i.exec(straight)?.[1] ?? /^(.+s)'$/i.exec(straight)?.[1]
  return owner === undefined || SHORTENED_BEFORE_S.has(owner.toLowerCase()) ? undefined : owner
}

/** Whether the word holds an apostrophe that stands for letters left out. */
export function isContraction(word: string): boolean {
  return /['’‘ʼ]/.test(word) && findOwner(word) === undefined
}

/** The whole word before what is shortened: `they` of `they've`, `would` of `wouldn't`; undefined for other words. */
export function findShortened(word: string): string | undefined {
  return isContraction(word) ? /^(.+?)(?:n't|'(?:d|ll|m|re|s|ve))$/i.exec(toStraight(word))?.[1] : undefined
}
