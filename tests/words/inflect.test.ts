import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Inflection, toBases, toForm } from '../../src/words/inflect.ts'
import { IRREGULAR_DEGREES, IRREGULAR_PLURALS } from '../../src/words/irregular.ts'
import { IRREGULAR_VERBS } from '../../src/words/irregular-verbs.ts'

// Common dictionary knowledge, no source. The doubling, e-dropping and y-to-i words are those of England's
// English Appendix 1 (2013), year 1 and year 2 spelling: hunt, buzz, jump, happy, copy, hike, shine, nice, pat, hum,
// drop, sad, fat, run.
const FORMS: readonly (readonly [string, Inflection, string])[] = [
  ['boat', 'plural', 'boats'],
  ['box', 'plural', 'boxes'],
  ['baby', 'plural', 'babies'],
  ['day', 'plural', 'days'],
  ['foot', 'plural', 'feet'],
  ['sheep', 'plural', 'sheep'],
  ['catch', 'third', 'catches'],
  ['fly', 'third', 'flies'],
  ['go', 'third', 'goes'],
  ['hunt', 'past', 'hunted'],
  ['buzz', 'past', 'buzzed'],
  ['jump', 'ing', 'jumping'],
  ['happy', 'comparative', 'happier'],
  ['copy', 'past', 'copied'],
  ['copy', 'ing', 'copying'],
  ['hike', 'past', 'hiked'],
  ['hike', 'ing', 'hiking'],
  ['nice', 'superlative', 'nicest'],
  ['pat', 'past', 'patted'],
  ['hum', 'ing', 'humming'],
  ['drop', 'past', 'dropped'],
  ['sad', 'comparative', 'sadder'],
  ['fat', 'superlative', 'fattest'],
  ['run', 'ing', 'running'],
  ['run', 'past', 'ran'],
  ['eat', 'participle', 'eaten'],
  ['hop', 'participle', 'hopped'],
  ['rain', 'past', 'rained'],
  ['fix', 'ing', 'fixing'],
  ['play', 'past', 'played'],
  ['see', 'ing', 'seeing'],
  ['tie', 'ing', 'tying'],
  ['quit', 'ing', 'quitting'],
  ['good', 'superlative', 'best'],
]

describe('toForm and toBases', () => {
  for (const [base, inflection, form] of FORMS) {
    it(`${base} → ${form}`, () => {
      expect(toForm(base, inflection)).toBe(form)
      const back = toBases(form).filter((found) => found.base === base)
      // A regular past serves as the participle too, and is given once.
      expect(back.map((found) => found.inflection)).toContain(
        inflection === 'participle' && form.endsWith('ed') ? 'past' : inflection,
      )
    })
  }

  it('finds no base that the rules would inflect otherwise', () => {
    expect(toBases('bared').map((found) => found.base)).not.toContain('bar')
    expect(toBases('sing')).toEqual([])
    expect(toBases('bed')).toEqual([])
  })

  it('always leads back from a form to its base', () => {
    const word = fc.stringMatching(/^[bcdfgmnprst]{1,2}[aeiou]{1,2}[bdgmnpt]{1,2}$/)
    const inflection = fc.constantFrom<Inflection>('plural', 'third', 'past', 'ing', 'comparative', 'superlative')
    fc.assert(
      fc.property(word, inflection, (base, kind) => {
        expect(toBases(toForm(base, kind))).toContainEqual({ base, inflection: kind })
      }),
    )
  })

  it('keeps the tables sorted, each base once', () => {
    for (const table of [IRREGULAR_PLURALS, IRREGULAR_VERBS, IRREGULAR_DEGREES]) {
      const bases = table.map(([base]) => base)
      expect(bases).toEqual([...new Set(bases)].sort())
    }
  })
})
