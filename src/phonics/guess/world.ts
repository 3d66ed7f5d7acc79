// Letters that other languages say otherwise than English does: where a guess turns on them, it is a mere guess.
//
// From the project's own knowledge of names, no source; measured on the names of many lands.

import { isVowel } from '../arpabet.ts'
import type { RawUnit } from '../raw.ts'

type Said = Pick<RawUnit, 'letters' | 'phones'>

/** Letters of a unit with the sounds that both English and most other lands give them; any other sound is doubtful. */
const ALIKE: ReadonlyMap<string, RegExp> = new Map([
  ['a', /^(?:AA|AH)$/], // Imani
  ['ai', /^AY$/], // Mai
  ['ao', /^AW$/], // Bao
  ['au', /^AW$/], // Klaus
  ['c', /^K$/], // Luca, not Araceli
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
const FOREIGN: readonly RegExp[] = [
  /^[aeiou](?:[bcdfghjkmpqtvwxz])e$/, // Ife
  /^(?:ae|ao|eo|ia|ie|io|iu|oi(?!l|nk)|uo)/, // Aoife, Oisin
  /aa(?!h*$)|ae|aoi|eoi|ii|iu|(?<!q)u[uo]/, // Aaliyah, Adaeze, Saoirse
  /^gi[aou]/, // Giorgos, Giulia
  /(?<!tre)kk/, // Mikkel, Akkaraju
  // Ndidi, Nnamdi, Xhosa
  /^(?:(?!ll)([^aeiou])\1|bj|cs|cz|dj|dz|fj|gj|hj|hl|hr|kj|kw|lj|ml|mp|mb|nd|ng|nj|nk|ny|sv|sz|tl|ts|vl|vr|xh|zb|zd|zh|zl)/,
  // Siobhan, Khadija, Eszter, Wojtek, Pirjo, Anrijs, Daksh; not gobjam
  /ksh$|bh|cz|dh(?!e)|dj|(?<![iu])gh|kh|lj|mh|nh|rz(?=[aeiouy])|sz|zh|zs|[^aeious]j[^aeiou]|[aeio]j(?:[^aeiou]|$)|ij|irj|[ae]tj/,
  // Tariq, Miquel, Kacper, Mehmet, Piotr, Badr, Hafiz, Tiziano, Manoj; not zabgiz
  /c[bdfgjpvwz]|q(?!u)|[aeiou]qu[ei]|[aeiou]h[bcdfgjklmnpqrtvxz]|[^s]tr$|[bdgkpv]r$|[ao]gn$|[aeiou][^aeiou]iz$|r[iv]iz$|[aeiou]triz$|zi[ao]|[jq]$/,
]

/** Whether the letters are those of a word of another land. */
export const looksForeign = (word: string): boolean => FOREIGN.some((pattern) => pattern.test(word))

/**
 * Whether the sounds of a guess are those that another land would give its letters too. Only an open vowel letter can be
 * long, so a shut-in one must be what English says.
 */
export function isSaidAlike(units: readonly Said[]): boolean {
  return units.every((unit, at) => {
    // A silent e in the middle of a word is an English way: Wi-re-mu.
    if (/^[aeiou](?:_e|re)$/.test(unit.letters)) return false
    // Worn down at the end: Oleg, but not Soren.
    const after = units[at + 1]
    const isLast = after !== undefined && at === units.length - 2
    if (unit.letters === 'e' && unit.phones[0] === 'AH' && isLast && after.letters !== 'n') return false
    // Lukas
    if (unit.letters === 's' && unit.phones[0] === 'Z' && after === undefined) return false
    const alike = ALIKE.get(unit.letters)
    return alike === undefined || alike.test(unit.phones.join(' '))
  })
}

/** Vowel letters with an r, as both English and most other lands say them. */
const ALIKE_WITH_R: ReadonlyMap<string, string> = new Map([
  ['ar', 'AA R'], // Marta
  ['or', 'AO R'], // Igor
])

/** Whether nothing in a name can be said otherwise: every vowel is one that the table above has, and is said so. */
export function isSaidAlikeThroughout(units: readonly Said[]): boolean {
  const isKnown = ({ letters, phones }: Said) =>
    !/[aeiouy]/.test(letters) || ALIKE.has(letters) || ALIKE_WITH_R.get(letters) === phones.join(' ')
  return isSaidAlike(units) && !isSaidOddly(units) && units.every(isKnown)
}

/** Letters with a sound that English gives them in a few words only: Alessandro, Gustav, Toluwani, Gorazd, Nazzareno. */
const ODD: ReadonlyMap<string, RegExp> = new Map([
  ['ss', /Z/],
  ['v', /F/],
  ['w', /^$/],
  ['z', /S|ZH/],
  ['zz', /S/],
])

/** `j` said as in `Jan`, `ch` said as in `Chiamaka`, `Sio` as in `mansion`: of the guesses, one that English seldom makes. */
export function isSaidOddly(units: readonly Said[]): boolean {
  return units.some(({ letters, phones }, at) => {
    if (at === 0 && /^[cst]i/.test(letters) && /^(?:CH|SH|ZH)$/.test(phones[0] ?? '')) return true
    // Da-wid, not daw-id; and no n says ny but in another tongue.
    if (/^[aeo]w$/.test(letters) && /^[aeiou]/.test(units[at + 1]?.letters ?? '')) return true
    if (letters === 'n' && phones.length > 1) return true
    // Lorenz and Heinz end in ts where they are borne.
    if (letters === 'z' && at === units.length - 1 && /^[lnrt]$/.test(units[at - 1]?.letters ?? '')) return true
    if (ODD.get(letters)?.test(phones.join(' '))) return true
    if (letters.includes('j')) return !phones.includes('JH')
    return /^(?:ch|g)$/.test(letters) && !ALIKE.get(letters)?.test(phones.join(' '))
  })
}

/** Pairs of letters with a sound that English gives them, and few other tongues. */
const ENGLISH_PAIRS: ReadonlyMap<string, RegExp> = new Map([
  ['ai', /EY/], // Aisling
  ['ar', /^ER$/], // Gaspar
  ['au', /AO/],
  ['aw', /AO/], // Dawid
  ['ay', /EY/], // Aykal
  ['ea', /IY|EH/], // Andrea
  ['ei', /IY|AY/], // Leif
  ['eu', /UW/],
  ['ew', /UW/], // Newroz
  ['ie', /AY/],
  ['oa', /OW/], // Joao
  ['oe', /OW/], // Joel
  ['oi', /OY/], // Moises
  ['ir', /^ER$/], // Stirnir
  ['or', /^ER$/], // Theodor
  ['ou', /AW/], // Doukas
  ['ow', /AW/],
  ['ue', /UW/], // Miguel
  ['th', /TH|DH/], // Margoth
  ['ui', /UW/], // Luis
])

/** Whether a name is said by a habit of English that most lands do not share. */
export function isEnglishHabit(units: readonly Said[]): boolean {
  const vowels = units.filter(({ phones }) => phones.some(isVowel))
  // Elnur and Tane; Yunt and Ulduz, but not Zub.
  if (units.some(({ letters }, at) => letters === 'ur' || /^[aeiou]_e$/.test(letters) || isShortU(units, at)))
    return true
  if (vowels.length < 2) return vowels.some(isClosedHabit)
  const last = vowels.at(-1)
  // The worn-down or short a at the end: Berdan, Fergal.
  const isShut = last !== units.at(-1) && last?.letters === 'a' && /^A[EH]$/.test(last.phones.join(' '))
  // Shamsuddeen; in the first syllable it may be a made name, `Zubmog`.
  if (units.some((unit, at) => vowels.indexOf(unit) > 0 && isWornU(units, at))) return true
  return isShut || units.some((unit, at) => isHabit(unit, units[at + 1]))
}

/** Of a word of one vowel: Nour, Maik, Leif, Luis. A made name has `ea`, `oa` or `ay` sooner. */
const isClosedHabit = (vowel: Said): boolean =>
  /^(?:ai|au|ei|eu|ie|oe|ou|ue|ui)$/.test(vowel.letters) && isHabit(vowel, undefined)

const isWornU = (units: readonly Said[], at: number): boolean =>
  units[at]?.letters === 'u' && units[at]?.phones[0] === 'AH' && !isNoisy(units, at) && !endsInUs(units, at)

/** `Rumpus` ends as half of Rome did. */
const endsInUs = (units: readonly Said[], at: number): boolean =>
  at === units.length - 2 && units[at + 1]?.letters === 's'

/** `Flump` and `Kerplunk` are noises. */
const isNoisy = (units: readonly Said[], at: number): boolean =>
  /^(?:mp|nk)$/.test(`${units[at + 1]?.letters}${units[at + 2]?.letters}`)

/** A short u before two consonant letters that are not one sound. */
function isShortU(units: readonly Said[], at: number): boolean {
  const [vowel, next, after] = units.slice(at, at + 3)
  if (vowel?.letters !== 'u' || vowel.phones[0] !== 'AH') return false
  if (next?.letters === 'ng') return true
  const isPair = after !== undefined && next?.letters.length === 1 && !after.phones.some(isVowel)
  return isPair && !isNoisy(units, at)
}

function isHabit({ letters, phones }: Said, next: Said | undefined): boolean {
  const sound = phones.join(' ')
  if (letters === 'e') return next !== undefined && /^(?:EY|IH|IY)$/.test(sound) // Vedrana, Eluned
  // Valter; Nary and Ada
  if (letters === 'a') return (sound === 'AE' && next?.letters === 'l') || /^E[HY]$/.test(sound)
  // Dinis; Rosendo
  if (letters === 's') return sound === 'Z' && (next === undefined || next.phones.some(isVowel))
  if (letters === 'u') return sound === 'Y UW' // Musa
  return ENGLISH_PAIRS.get(letters)?.test(sound) ?? false
}

/** A word that does not end as English words do: a, i, o or u at the end. */
export const endsOpen = (word: string): boolean => /[aiou]$/.test(word) && !/(?:oo|ou|[^aeiou]oi)$/.test(word)
