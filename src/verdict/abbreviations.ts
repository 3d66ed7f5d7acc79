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
    jr: ['junior'],
    kg: ['kilogram'],
    km: ['kilometre'],
    lb: ['pound'],
    ltd: ['limited'],
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

/** The same, where they have a capital: `capt` is a made word. */
const TITLES: ReadonlyMap<string, readonly string[]> = new Map([
  ['Capt', ['captain']],
  ['Sgt', ['sergeant']],
])

/** Said by their letters' names; none is a word of its own. Sorted. */
const LETTERS = new Set(
  'abc bbc cd cia diy dj dvd eu fbi gp hq iq mp nhs nyc ok pc pj pm pta pto rv sos suv tv ufo uk usa vip xl'.split(' '),
)

/** The same, where they stand in capitals: in small letters they are noises, names or words. Sorted. */
const CAPITALS = new Set('AI ATM CEO HMS ID LOL PE RAF RSVP UN'.split(' '))

/** Letters without a vowel that are a noise all the same: `SHH`, `HMM`, `BRR`, `ZZZ`, `PSST`. */
const NOISE = /sh|ss|zz|mm|hm|rr|ff|ps+t|tsk|pf/

/** Undefined for words that are said by their letters' sounds. */
export function findAbbreviation(word: string): Abbreviation | undefined {
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
