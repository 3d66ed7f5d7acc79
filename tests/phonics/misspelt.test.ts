// The right form of a word whose ending was put on without its change. The rules of spelling are those of English Appendix 1 (Department for
// Education 2013), years 1 and 2; what needs no change is common practice, no source.

import { expect, it } from 'vitest'
import type { Inflection } from '../../src/phonics/inflect.ts'
import { findRightForm } from '../../src/phonics/misspelt.ts'

const ask = (stem: string, ending: string): string =>
  findRightForm({ stem, ending: ending as Inflection['ending'], change: 'none' }) ?? '-'

it.each(
  // An e at the end goes before -ing, and meets the e of the other endings.
  (
    'bake ing baking, like ed liked, nice er nicer, nice est nicest, queue ing queuing, rescue ing rescuing, see ing -, free ed -, ' +
    'canoe ing -, bake es -, bake s -, meet ing -, feed er -, heal ed -, glue ed -, fuel ing -, ' +
    // y after a consonant becomes i, but not before -ing.
    'cry s cries, cry es cries, cry ed cried, dry er drier, dry est driest, cry ing -, baby s babies, play s -, play ed -, buy er -, ' +
    'yell ed -, bicycle s -, ' +
    // -es after a hiss.
    "bus s buses, fox s foxes, buzz s buzzes, catch s catches, wish s wishes, cat s -, cat 's -, chat s -, bush ed -, month s -, ship s -, " +
    // Some things in -o.
    'hero s heroes, potato s potatoes, photo s -, piano s -, mango s -, zoo s -, ' +
    // One consonant after one short vowel is doubled.
    'hop ed hopped, hop ing hopping, run er runner, big est biggest, quit ing quitting, hum ing humming, stop ed stopped, hop s -, rain ed -, ' +
    'jump ed -, fix ed -, row ing -, open ed -, spy er spier, hug ed hugged, fit est fittest, sob ing sobbing, nod ed nodded, pin ed pinned, ' +
    'wag ed wagged, rev ed revved, quiz ed quizzed, trek ed trekked, ebb ed -, egg ed -, add ed -, up er upper'
  )
    .split(', ')
    .map((one) => one.split(' ') as [string, string, string]),
)('%s with -%s: %s', (stem, ending, expected) => {
  expect(ask(stem, ending)).toBe(expected)
})

it('finds nothing wrong where the change was made', () => {
  expect(findRightForm({ stem: 'hop', ending: 'ed', change: 'double' })).toBeUndefined()
  expect(findRightForm({ stem: 'cry', ending: 'ed', change: 'y-to-i' })).toBeUndefined()
})
