// Two words without the space between: `redhen`, `itwas`, `adog`.

/** Little words that are short enough to stand at the end of many words; after them, or before, only a longer one counts. */
const FIRST = new Set('a am an as at be by do go he i if in is it me my no of on or so to up us we'.split(' '))
const SECOND = new Set('am as at be by he if in is it me my no of on to up us we'.split(' '))
const LEAST_PART = 3
/** Only words of every day have a little word run into them. */
const EVERYDAY = 1500

/** Likelier than a wrong letter in one word. */
const COMMON = 600

export interface TwoWords {
  readonly words: string
  /** Whether both stand in every other story. */
  readonly isCommon: boolean
}

/** The likeliest of the ways to part it: the one whose rarer word is used most. */
export function findTwo(word: string, rank: (one: string) => number): TwoWords | undefined {
  let best: (TwoWords & { readonly rarer: number }) | undefined
  for (let at = 1; at < word.length; at++) {
    const [one, two] = [word.slice(0, at), word.slice(at)]
    const isLong = one.length >= LEAST_PART && two.length >= LEAST_PART
    const isLittle = (FIRST.has(one) && two.length >= LEAST_PART) || (SECOND.has(two) && one.length >= LEAST_PART)
    if (!isLong && !isLittle) continue
    const rarer = Math.max(FIRST.has(one) ? 0 : rank(one), SECOND.has(two) ? 0 : rank(two))
    if (rarer < (isLong ? Infinity : EVERYDAY) && rarer < (best?.rarer ?? Infinity))
      best = { words: `${one === 'i' ? 'I' : one} ${two}`, isCommon: rarer < COMMON, rarer }
  }
  return best
}
