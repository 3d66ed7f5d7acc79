// The known word of which a misspelt one is a slip: two letters swapped, an apostrophe forgotten, a letter doubled or not.

import type { Phonics } from './types.ts'

/** Shorter words have too many neighbours for a doubled letter to mean anything. */
const LEAST_FOR_DOUBLES = 4

/**
 * The nearest known word; undefined for a word that is known, and where nothing is near.
 * @param isBetter which of several is taken first: those that the child can read
 */
export function findSlip(
  word: string,
  { read, isListed }: Pick<Phonics, 'read' | 'isListed'>,
  isBetter: (candidate: string) => boolean = () => true,
): string | undefined {
  const small = word.toLowerCase().replace(/[’‘ʼ]/g, "'")
  // `thier` can be read as more than thy; but who writes it means another word, if one is near.
  const isMade = () =>
    read(small).pronunciations[0]?.units.some(({ base, letters }) => base === 'y' && letters === 'i') ?? false
  // Nobody slips into `looong`.
  if (/([aeiou])\1\1/.test(small)) return undefined
  if (!/^[a-z']{3,}$/.test(small) || (isListed(small) && !isMade())) return undefined
  const near = [...new Set(isListed(small) ? toSwapped(small) : toNeighbours(small))].filter(
    (one) => one !== small && isListed(one),
  )
  return near.find(isBetter) ?? near[0]
}

function toNeighbours(word: string): readonly string[] {
  const doubles = word.length < LEAST_FOR_DOUBLES ? [] : [...word].flatMap((_, at) => toDoubles(word, at))
  // `littel` is little: nobody means the name Littell.
  const le = word.endsWith('el') ? [`${word.slice(0, -2)}le`] : []
  return [...toShortened(word), ...le, ...doubles, ...toSwapped(word)]
}

const toSwapped = (word: string): readonly string[] =>
  [...word].slice(1).map((letter, at) => `${word.slice(0, at)}${letter}${word[at]}${word.slice(at + 2)}`)

/** `don't`, `you're`, `I'm`. */
const toShortened = (word: string): readonly string[] =>
  [/n(t)$/, /(ll|re|ve)$/, /(m)$/].flatMap((ending) => {
    const found = ending.exec(word)
    const at = found === null ? 0 : word.length - (found[1] ?? '').length
    return at === 0 ? [] : [`${word.slice(0, at)}'${word.slice(at)}`]
  })

function toDoubles(word: string, at: number): readonly string[] {
  const letter = word[at] ?? ''
  const once = word[at + 1] === letter ? [`${word.slice(0, at)}${word.slice(at + 1)}`] : []
  return [`${word.slice(0, at)}${letter}${word.slice(at)}`, ...once]
}
