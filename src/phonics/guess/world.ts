// Letters that other languages say otherwise than English does: where a guess turns on them, it is a mere guess.
//
// From the project's own knowledge of names, no source; measured on the names of many lands.

import type { RawUnit } from '../raw.ts'

/** Letters of a unit with the sounds that both English and most other lands give them; any other sound is doubtful. */
const ALIKE: ReadonlyMap<string, RegExp> = new Map([
  ['a', /^(?:AA|AH)$/], // Imani
  ['ai', /^AY$/], // Mai
  ['ao', /^AW$/], // Bao
  ['au', /^AW$/], // Klaus
  ['ch', /^CH$/], // Chike, not Chiamaka with a k
  ['e', /^(?:EH|EY|AH)$/], // Esi
  ['ei', /^EY$/], // Mei
  ['g', /^G$/], // Gita
  ['i', /^(?:IY|Y)$/], // Amina
  ['j', /^JH$/], // Jabari, not Jakub
  ['o', /^(?:OW|AO)$/], // Omari
  ['u', /^(?:UW|UH)$/], // Sunita
  ['y', /^(?:Y|IY)$/], // Yuki
])

/** Groups of letters that no English word of every day has, each with a name that has it. */
const FOREIGN: readonly (readonly [pattern: RegExp, example: string])[] = [
  [/^[aeiou](?:[bcdfghjkmpqtvwxz])e$/, 'Ife'],
  [/^(?:ae|ao|eo|ia|ie|io|iu|oi(?!l|nk)|uo)/, 'Aoife, Oisin'],
  [/aa(?!h*$)|ae|aoi|eoi|ii|iu|(?<!q)u[uo]/, 'Aaliyah, Adaeze, Saoirse'],
  [/^(?:bj|cz|dj|dz|fj|gj|hj|hl|hr|kj|lj|ml|mp|mb|nd|ng|nj|nk|ny|sv|sz|tl|ts|vl|vr|xh|zb|zd|zh|zl)/, 'Ndidi, Xhosa'],
  [
    /bh|cz|dh(?!e)|dj|(?<![aeiou])gh|kh|lj|mh|nh|[rs]z(?=[aeiou])|zh|[^aeious]j[^aeiou]|aj[^aeiou]|oj[^aeiou]/,
    'Siobhan, Khadija, Wojtek',
  ],
  [/q(?!u)|[aeiou]h[bcdfgjklmnpqrtvxz]|[^aeiouys]tr$|[a-z]{4}iz$|[jq]$/, 'Tariq, Mehmet, Piotr, Manoj'],
]

/** Whether the letters are those of a word of another land. */
export const looksForeign = (word: string): boolean => FOREIGN.some(([pattern]) => pattern.test(word))

/**
 * Whether the sounds of a guess are those that another land would give its letters too. Only an open vowel letter can be
 * long, so a shut-in one must be what English says.
 */
export function isSaidAlike(units: readonly RawUnit[]): boolean {
  return units.every((unit) => {
    const alike = ALIKE.get(unit.letters)
    return alike === undefined || alike.test(unit.phones.join(' '))
  })
}

/** `j` said as in `Jan`, `ch` said as in `Chiamaka`: of the guesses, one that English seldom makes. */
export function isSaidOddly(units: readonly RawUnit[]): boolean {
  return units.some(({ letters, phones }) => {
    if (letters.includes('j')) return !phones.includes('JH')
    return /^(?:ch|g)$/.test(letters) && !ALIKE.get(letters)?.test(phones.join(' '))
  })
}

/** A word that does not end as English words do: a, i, o or u at the end. */
export const endsOpen = (word: string): boolean => /[aiou]$/.test(word) && !/(?:oo|ou|[^aeiou]oi)$/.test(word)
