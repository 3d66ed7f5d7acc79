// Words that are not said by their letters' sounds: `TV` by the names of its letters, `Mr` as the word it stands for.

import { toStraight } from '../apostrophe.ts'
import { startsWithCapital } from '../letter-kinds.ts'

/** How it is said: by the names of all its letters, of its first letter alone (`X-ray`), or as another word. */
export type Abbreviation =
  | { readonly kind: 'letters' }
  | { readonly kind: 'first letter'; readonly letter: string }
  /** One word, or several where the sentence has to tell. */
  | { readonly kind: 'short'; readonly full: readonly string[] }

/** Sorted; with the words that they stand for. */
const SHORT: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    cm: ['centimetre'],
    dr: ['doctor'],
    etc: ['and so on'],
    ft: ['foot', 'feet'],
    hr: ['hour'],
    hrs: ['hours'],
    jr: ['junior'],
    kg: ['kilogram'],
    km: ['kilometre'],
    lb: ['pound'],
    ltd: ['limited'],
    ml: ['millilitre'],
    mr: ['mister'],
    mrs: ['missis'],
    ms: ['miz'],
    prof: ['professor'],
    rd: ['road'],
    sr: ['senior'],
    st: ['saint', 'street'],
    vs: ['against'],
  }),
)

/** The same, where they have a capital: `capt` is a made word. Sorted. */
const TITLES: ReadonlyMap<string, readonly string[]> = new Map([
  ['Aug', ['August']],
  ['Capt', ['captain']],
  ['Feb', ['February']],
  ['Fri', ['Friday']],
  ['Lt', ['lieutenant']],
  ['Mt', ['mount']],
  ['Nov', ['November']],
  ['Oct', ['October']],
  ['Sept', ['September']],
  ['Sgt', ['sergeant']],
  ['Thurs', ['Thursday']],
  ['Tues', ['Tuesday']],
])

/** Said by their letters' names; none is a word of its own. Sorted. */
const LETTERS = new Set(
  'abc bbc cd cia diy dj dvd eu fbi gp hq iq kph mp mph nhs nyc ok pc pj pm pta pto rv sos suv tv ufo uk usa vip xl'.split(
    ' ',
  ),
)

/** The same, where they stand in capitals: in small letters they are noises, names or words. Sorted. */
const CAPITALS = new Set('AI ATM CEO FAQ HMS ICT ID IOU LOL MOT OAP PE PSHE RAF RE RSVP UN'.split(' '))

/** The spoken form of a word that its sentence shows to be an abbreviation. */
export const ABBREVIATED = 'abbreviation'

/** What a sentence must have round a word for it to be an abbreviation there. */
export type PlaceSign = 'thing' | 'determiner' | 'place' | 'after number' | 'by number' | 'after name' | 'before name'

/** Words of their own too, so that only their sentence tells, with its sign and what they are short for: none is said by its letters' names. Sorted. */
const IN_PLACE: ReadonlyMap<string, readonly [PlaceSign, full?: string]> = new Map([
  ['AD', ['by number']],
  ['AM', ['after number']],
  ['Apr', ['by number', 'April']],
  ['Co', ['after name', 'company']],
  ['Dec', ['by number', 'December']],
  ['IT', ['determiner']],
  ['Jan', ['by number', 'January']],
  ['LA', ['place']],
  ['Mar', ['by number', 'March']],
  ['Mon', ['by number', 'Monday']],
  ['Rev', ['before name', 'reverend']],
  ['Sat', ['by number', 'Saturday']],
  ['Sun', ['by number', 'Sunday']],
  ['Thu', ['by number', 'Thursday']],
  ['Tue', ['by number', 'Tuesday']],
  ['US', ['thing']],
  ['Wed', ['by number', 'Wednesday']],
  ['am', ['after number']],
  ['g', ['after number', 'gram']],
  ['l', ['after number', 'litre']],
  ['m', ['after number', 'metre']],
  ['min', ['after number', 'minute']],
  ['mins', ['after number', 'minutes']],
  ['mm', ['after number', 'millimetre']],
  ['oz', ['after number', 'ounce']],
  ['p', ['after number', 'pence']],
  ['sec', ['after number', 'second']],
  ['secs', ['after number', 'seconds']],
])

const LONGEST_IN_PLACE = 6

/** What makes a word an abbreviation that is a plain word elsewhere; undefined where nothing does. */
export const findPlaceSign = (word: string): PlaceSign | undefined =>
  word.length > LONGEST_IN_PLACE ? undefined : findInPlace(word)?.[0]

/** Also `Co.` and `US’s`. Asked of every word, and nearly none has more than small letters. */
const findInPlace = (word: string) =>
  IN_PLACE.get(word) ??
  (/^[a-z]+$/.test(word) ? undefined : IN_PLACE.get(withoutEnding(toStraight(word).replaceAll('.', ''))))

/** Letters without a vowel that are a noise all the same: `SHH`, `HMM`, `BRR`, `ZZZ`, `PSST`. */
const NOISE = /sh|ss|zz|mm|hm|rr|ff|ps+t|tsk|pf/

/**
 * Undefined for words that are said by their letters' sounds.
 * @param inPlace whether the sentence has shown that the word is an abbreviation
 */
export function findAbbreviation(word: string, inPlace = false): Abbreviation | undefined {
  const placed = inPlace ? findInPlace(word) : undefined
  if (placed !== undefined) return placed[1] === undefined ? { kind: 'letters' } : { kind: 'short', full: [placed[1]] }
  // Asked of every word, and nearly none has more than small letters.
  if (/^[a-z]+$/.test(word)) return findListed(word)
  const straight = toStraight(word)
  const bare = straight.replaceAll('.', '')
  const plain = withoutEnding(bare)
  // `Ms` first as it stands: it is no `M` with an ending.
  const listed = findListed(bare.toLowerCase()) ?? findListed(plain.toLowerCase())
  if (listed !== undefined) return listed
  const title = TITLES.get(bare)
  if (title !== undefined) return { kind: 'short', full: title }
  if (isDotted(word) || CAPITALS.has(plain) || isLettersOnly(plain)) return { kind: 'letters' }
  if (!'-‐‑'.includes(word[1] ?? '.')) return undefined
  const [, letter, rest] = /^([B-HJ-NP-Zb-hj-np-z])[-‐‑](\p{L}{3,})$/u.exec(word) ?? []
  if (letter === undefined || rest?.[0]?.toLowerCase() === letter.toLowerCase()) return undefined
  return { kind: 'first letter', letter }
}

function findListed(small: string): Abbreviation | undefined {
  const full = small.length < 5 ? SHORT.get(small) : undefined
  if (full !== undefined) return { kind: 'short', full }
  return LETTERS.has(small) ? { kind: 'letters' } : undefined
}

/** `TVs`, `TV's`: without what stands after a capital. */
function withoutEnding(bare: string): string {
  const stem = bare.endsWith("'s") ? bare.slice(0, -2) : bare.endsWith('s') ? bare.slice(0, -1) : ''
  return startsWithCapital([...stem].at(-1) ?? '') ? stem : bare
}

/** `U.K.`, `a.m.` */
const isDotted = (word: string): boolean => word.includes('.') && /^(?:\p{L}\.){2,}\p{L}?\.?$/u.test(word)

/** Capitals without a vowel: `DVD`. */
const isLettersOnly = (word: string): boolean =>
  /^[B-DF-HJ-NP-TV-XZ]{2,4}$/.test(word) && !NOISE.test(word.toLowerCase())
