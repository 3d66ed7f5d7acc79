// From a base form to its inflected forms and back, by the regular spelling rules and the table of irregular forms.

import { IRREGULAR_DEGREES, IRREGULAR_PLURALS } from './irregular.ts'
import { IRREGULAR_THIRD, IRREGULAR_VERBS, SECOND_FORMS } from './irregular-verbs.ts'

/** What an ending makes of a base form. `participle` is the past participle where it is not the past form: `eaten`. */
export type Inflection = 'none' | 'plural' | 'third' | 'past' | 'participle' | 'ing' | 'comparative' | 'superlative'

/** A base form that a word may come from. Not every one is a word: the caller knows its words. */
export interface Base {
  readonly base: string
  readonly inflection: Inflection
}

const FORMS = new Map<string, string>()
const BASES = new Map<string, Base[]>()

function addIrregular(base: string, inflection: Inflection, form: string): void {
  FORMS.set(`${base} ${inflection}`, form)
  addBase(base, inflection, form)
}
function addBase(base: string, inflection: Inflection, form: string): void {
  const bases = BASES.get(form)
  if (bases === undefined) BASES.set(form, [{ base, inflection }])
  else bases.push({ base, inflection })
}
for (const [base, form] of IRREGULAR_PLURALS) addIrregular(base, 'plural', form)
for (const [base, form] of IRREGULAR_THIRD) addIrregular(base, 'third', form)
for (const [base, past, participle] of IRREGULAR_VERBS) {
  addIrregular(base, 'past', past)
  if (participle !== past) addIrregular(base, 'participle', participle)
}
for (const [base, form, inflection] of SECOND_FORMS) addBase(base, inflection, form)
for (const [base, more, most] of IRREGULAR_DEGREES) {
  addIrregular(base, 'comparative', more)
  addIrregular(base, 'superlative', most)
}

/**
 * The inflected form of a lower-case base: `tub`, `plural` → `tubs`. A regular guess for a word that the table lacks.
 */
export function toForm(base: string, inflection: Inflection): string {
  const irregular =
    FORMS.get(`${base} ${inflection}`) ?? (inflection === 'participle' ? FORMS.get(`${base} past`) : undefined)
  if (irregular !== undefined) return irregular
  switch (inflection) {
    case 'none':
      return base
    case 'plural':
    case 'third':
      return addS(base)
    case 'past':
    case 'participle':
      return addVowelEnding(base, 'ed')
    case 'ing':
      return addVowelEnding(base, 'ing')
    case 'comparative':
      return addVowelEnding(base, 'er')
    case 'superlative':
      return addVowelEnding(base, 'est')
  }
}

/**
 * Bases that a lower-case word may come from, irregular ones first: `tubs` → `tub` as plural and as third person. May
 * hold the word itself: `sheep`.
 */
export function toBases(word: string): readonly Base[] {
  const known = found.get(word)
  if (known !== undefined) return known
  const bases = findBases(word)
  if (found.size > MOST_KEPT) found.clear()
  found.set(word, bases)
  return bases
}

/** Every sentence asks for the same words again. What is kept has a bound, since a server never ends. */
const found = new Map<string, readonly Base[]>()
const MOST_KEPT = 20_000

function findBases(word: string): readonly Base[] {
  const bases = [...(BASES.get(word) ?? [])]
  const tryBase = (base: string, inflection: Inflection): void => {
    if (base.length > 1 && toForm(base, inflection) === word) bases.push({ base, inflection })
  }
  for (const { ending, inflections } of ENDINGS) {
    if (!word.endsWith(ending)) continue
    const stem = word.slice(0, -ending.length)
    if (!/[aeiouy]/.test(stem)) continue
    const stems = [stem, `${stem}e`]
    if (stem.endsWith('i')) stems.push(`${stem.slice(0, -1)}y`)
    if (stem.endsWith('y')) stems.push(`${stem.slice(0, -1)}ie`)
    if (stem.at(-1) === stem.at(-2)) stems.push(stem.slice(0, -1))
    for (const inflection of inflections) for (const base of stems) tryBase(base, inflection)
  }
  return bases.filter((a, i) => bases.findIndex((b) => b.base === a.base && b.inflection === a.inflection) === i)
}

const ENDINGS: readonly { readonly ending: string; readonly inflections: readonly Inflection[] }[] = [
  { ending: 's', inflections: ['plural', 'third'] },
  { ending: 'es', inflections: ['plural', 'third'] },
  { ending: 'ed', inflections: ['past'] },
  { ending: 'ing', inflections: ['ing'] },
  { ending: 'er', inflections: ['comparative'] },
  { ending: 'est', inflections: ['superlative'] },
]

function addS(base: string): string {
  if (/[^aeiou]y$/.test(base)) return `${base.slice(0, -1)}ies`
  return /(s|x|z|ch|sh|[^aeiou]o)$/.test(base) ? `${base}es` : `${base}s`
}

function addVowelEnding(base: string, ending: string): string {
  if (ending === 'ing' && base.endsWith('ie')) return `${base.slice(0, -2)}ying`
  if (base.endsWith('e') && !(ending === 'ing' && /(?:ee|oe|ye|^.e)$/.test(base))) return base.slice(0, -1) + ending
  if (/[^aeiou]y$/.test(base) && ending !== 'ing') return `${base.slice(0, -1)}i${ending}`
  return (isDoubled(base) ? base + base.at(-1) : base) + ending
}

// One short vowel before one last consonant, in a word of one syllable: run → running, but rain, fix, play.
// Longer words double when the stress is on the last syllable, which letters do not show: a few are listed.
function isDoubled(base: string): boolean {
  return (
    /^[^aeiou]*(?:qu)?[aeiouy][bdfgklmnprtvz]$/.test(base) ||
    /(?:abet|admit|begin|commit|compel|control|embed|equip|excel|expel|forget|forgot|occur|omit|patrol|permit|propel|rebel|recur|refer|regret|repel|submit|transfer|transmit|upset|defer|infer|confer|prefer|incur|allot)$/.test(
      base,
    )
  )
}
