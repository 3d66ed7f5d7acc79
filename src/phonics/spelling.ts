// How any word is cut into units, whatever the accent: from the lexicon, by its parts and endings, or by guessing.

import { findSeam } from './compounds.ts'
import { type Cutting, joinCuttings, type Spelled, toInflected } from './cutting.ts'
import { findDerived } from './derived.ts'
import { toEnded } from './ended.ts'
import { CHANGES, ENDINGS, findInflections, type Inflection } from './inflect.ts'
import type { Lexicon } from './lexicon/open.ts'
import { startOf } from './places.ts'
import { type RawPronunciation, type RawUnit, toRawPronunciation } from './raw.ts'
import { findSqueezed, stretch } from './stretched.ts'
import { createUnlisted } from './unlisted.ts'

const AS_NAME = { unsureAsName: true } as const

/** Two parts so short are more often the letters of a name. */
const SHORT_PART = 3

export interface Spelling {
  /** A word of small letters a–z and inner apostrophes. Cached. */
  spell(word: string): Spelled
  /** Whether `spell` would find it without guessing, which costs far more than the look. */
  isListed(word: string): boolean
}

export function createSpelling(lexicon: Lexicon): Spelling {
  const unlisted = createUnlisted(lexicon)
  const cache = new Map<string, Spelled>()

  function spell(word: string): Spelled {
    const known = cache.get(word)
    if (known) return known
    const spelled =
      findStored(word) ??
      findOwner(word) ??
      unlisted.findMisspelt(word) ??
      findInflected(word) ??
      findCompound(word) ??
      findMade(word) ??
      unlisted.findNoise(word) ??
      unlisted.findTorn(word) ??
      findStretched(word) ??
      unlisted.guess(word)
    cache.set(word, spelled)
    return spelled
  }

  function findStored(word: string): Spelled | undefined {
    const stored = lexicon.find(word)
    if (!stored) return undefined
    const made = stored.unsure ? unlisted.findPlain(word) : undefined
    if (made) return made
    const doubt = stored.unsure ? ({ unsure: true } as const) : stored.unsureAsName ? AS_NAME : {}
    const { seams } = stored
    const withSeams = (raw: RawPronunciation): RawPronunciation => (seams === undefined ? raw : { ...raw, seams })
    if ('pronunciations' in stored) {
      const isForm = lexicon.heteronyms.find(word) !== undefined
      const cuttings = stored.pronunciations.map(({ path, stress }) => ({
        raw: withSeams(toEnded(word, fromY(word, toRawPronunciation(path, lexicon.rows, stress)), isForm, toStems)),
        stem: word,
      }))
      return { source: 'dictionary', cuttings, ...doubt }
    }
    const ending = ENDINGS[stored.ending]
    const change = CHANGES[stored.change]
    const inflection = findInflections(word).find((one) => one.ending === ending && one.change === change)
    if (!inflection) return undefined
    const stem = findStored(inflection.stem)?.cuttings.filter((_, k) => (stored.mask >> k) & 1) ?? []
    const cuttings = toInflected(stem, inflection).map(({ raw, ...more }) => ({
      raw: withSeams({ units: raw.units }),
      ...more,
    }))
    return { source: 'dictionary', cuttings, ...doubt }
  }

  const toStems = (stem: string): readonly Cutting[] => findStored(stem)?.cuttings ?? []

  /** The i of `happiness` and `plentiful` stands for the y of `happy` and `plenty`, worn down or not. */
  function fromY(word: string, raw: RawPronunciation): RawPronunciation {
    if (!word.includes('i')) return raw
    const [, stem] = /^(.+[^aeiou])i(?:ness|less|ful|ly|ment|hood)(?:es|ly|ness)?$/.exec(word) ?? []
    if (stem === undefined) return raw
    const at = raw.units.findIndex((unit) => unit.letters === 'i' && startOf(unit) === stem.length)
    const phone = raw.units[at]?.phones[0]
    // None is worn down before -ment: there is no `senty` in `sentiment`.
    const isY = phone === 'IY' || (/^(?:IH|AH)$/.test(phone ?? '') && !word.startsWith('ment', stem.length + 1))
    if (!isY || !endsInHappyY(`${stem}y`)) return raw
    return { ...raw, units: raw.units.map((unit, k) => (k === at ? { ...unit, base: 'y' } : unit)) }
  }

  const endsInHappyY = (word: string): boolean => {
    const stored = lexicon.indexOf(word) < 0 ? undefined : findStored(word)
    return (
      stored?.cuttings.some(({ raw }) => {
        const last = raw.units.at(-1)
        return last?.letters === 'y' && last.phones[0] === 'IY'
      }) === true
    )
  }

  /** Any word or name can own something: `Zub's`, `the boys'`. */
  function findOwner(word: string): Spelled | undefined {
    if (word.endsWith("s'")) {
      const plural = spell(word.slice(0, -1))
      const mark: RawUnit = { letters: "'", spans: [[word.length - 1, word.length]], phones: [], kind: 'inflection' }
      return {
        ...plural,
        cuttings: plural.cuttings.map(({ raw, stem }) => ({ raw: { units: [...raw.units, mark] }, stem })),
      }
    }
    if (!word.endsWith("'s") || word.length < 3) return undefined
    const stem = spell(word.slice(0, -2))
    return { ...stem, cuttings: toInflected(stem.cuttings, { stem: word.slice(0, -2), ending: "'s", change: 'none' }) }
  }

  /** A known stem with a regular ending: `yakking`. */
  function findInflected(word: string): Spelled | undefined {
    for (const inflection of doubledFirst(findInflections(word))) {
      if (inflection.stem.length < 3 || isUndoubled(inflection) || !isComparable(inflection)) continue
      const stem = findStored(inflection.stem)
      const cuttings = stem ? toInflected(stem.cuttings, inflection) : []
      // `Samed` is no form of `same`, though `samed` would be one; `Dinis` is as doubtful as `Dini`.
      // Nor need `Ilyas` be several, or `Enes` and `Marloes`.
      const isFamily =
        inflection.ending.endsWith('s') && !/[aiou]s$|^..es$|oes$/.test(word) && !stem?.unsure && !stem?.unsureAsName
      const doubt = isFamily ? {} : ({ unsureAsName: true } as const)
      if (cuttings.length > 0) return { source: 'dictionary', cuttings, ...doubt }
    }
    return undefined
  }

  /** `furred` is of `fur`, since children know that and no `Furr`. */
  function doubledFirst(all: readonly Inflection[]): readonly Inflection[] {
    const [first] = all
    if (first?.change !== 'none') return all
    const isKnown = ({ stem }: Inflection) => lexicon.parts.has(lexicon.indexOf(stem))
    const doubled = all.find((one) => one.change === 'double' && isKnown(one))
    return doubled === undefined || isKnown(first) ? all : [doubled, ...all]
  }

  /** `dampest`, since there is `dampness`; no `mischest`: a `Mischer` is a name. */
  const isComparable = ({ stem, ending, change }: Inflection): boolean =>
    // A `zeer` is no more of a `zee` than a deer is.
    (ending !== 'est' && !(ending === 'er' && stem.endsWith('ee'))) ||
    change === 'y-to-i' ||
    ['ly', 'ness'].some((end) => lexicon.indexOf(stem + end) >= 0) ||
    ['er', 'r'].some((end) => 'ending' in (lexicon.find(stem + end) ?? {}))

  /** Two known words that people put together: `henhouse`. It is read by its parts; that `rivershop` is a word is only a guess. */
  function findCompound(word: string): Spelled | undefined {
    const seam = findSeam(word, lexicon)
    const at = seam?.at
    const first = at === undefined ? undefined : findStored(word.slice(0, at))
    const second = at === undefined ? undefined : findStored(word.slice(at))
    if (at === undefined || !first || !second) return undefined
    const cuttings = joinCuttings(first.cuttings, second.cuttings, at)
    if (cuttings.length === 0) return undefined
    if (seam?.isSure) return { source: 'dictionary', cuttings }
    // `Subash` is no ash; `Mudfoot` is somebody's dog.
    const isShort = at <= SHORT_PART && word.length - at <= SHORT_PART
    return { source: 'guess', cuttings, ...(isShort && { unsureAsName: true as const }) }
  }

  /** `blankness` and `fluffiness`, of a known word that is no name. */
  function findMade(word: string): Spelled | undefined {
    const cuttings = findDerived(word, (stem) => {
      const stored = findStored(stem)
      return stored === undefined || stored.unsure || stored.unsureAsName ? [] : stored.cuttings
    })
    // Emilly and Gabrielly are borne, and made of no `Emil`.
    const doubt = word.endsWith('lly') ? ({ unsureAsName: true } as const) : {}
    return cuttings.length > 0 ? { source: 'dictionary', cuttings, ...doubt } : undefined
  }

  /** `Nooo`, `looong`: a known word drawn out, or else the letters of the short one. */
  function findStretched(word: string): Spelled | undefined {
    const squeezed = findSqueezed(word)
    const listed = squeezed.filter((one) => lexicon.find(one.word))
    const known = listed.find((one) => lexicon.find(one.word)?.unsure !== true) ?? listed[0] ?? squeezed[0]
    if (!known) return undefined
    const { cuttings, ...more } = spell(known.word)
    // `Siyaaa` is as doubtful as `Siya`.
    const drawn = cuttings.map(({ raw, stem }) => ({ raw: stretch(raw, word, known), stem }))
    return { ...more, source: 'guess', cuttings: drawn }
  }

  function isListed(word: string): boolean {
    const known = cache.get(word)
    if (known) return known.source === 'dictionary'
    const stored = findStored(word)
    if (stored) return stored.source === 'dictionary'
    const owner = /^(.*s)'$|^(.+)'s$/.exec(word)
    if (owner) return isListed(owner[1] ?? owner[2] ?? '')
    const found = unlisted.findMisspelt(word) ?? findInflected(word) ?? findCompound(word) ?? findMade(word)
    return found?.source === 'dictionary'
  }

  return { spell, isListed }
}

/** `bag` would double its g: `baging` is no form of it. */
const isUndoubled = ({ stem, ending, change }: Inflection): boolean =>
  change === 'none' && /^(ed|ing|er|est)$/.test(ending) && /^[^aeiou]*[aeiou][bdfgklmnprtvz]$/.test(stem)
