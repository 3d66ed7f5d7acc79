// Words with an ending are read with the word that they are made of, and not before the ending is taught. Steps by the built-in
// sequences: the ending, its change and the syllables, whichever comes last. Which word is which is common practice, no source.

import { describe, expect, it } from 'vitest'
import { loadBuiltIn } from '../../src/packaged/data.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const american = () => testPhonics('general-american')
const read = (word: string) => american().read(word)
const show = (word: string): string =>
  read(word)
    .pronunciations[0]?.units.map(({ letters, base, kind }) => {
      const shown = base === undefined ? letters : `${letters}<${base}`
      return kind === 'inflection' ? `+${shown}` : shown
    })
    .join(' ') ?? ''

const stepOf = (word: string, id: string): string => findReadableAt(read(word), loadBuiltIn(id) as Sequence) ?? 'never'

describe('what they are made of', () => {
  it.each([
    ['crosses', 'c r o ss +es'],
    ['finesses', 'f i n e ss<sse +es'],
    ['purred', 'p urr +ed'],
    // What people do by bus, with a text, a prep and a chicken; who has a talent, a wood or legs; what was dropped.
    ['bussed', 'b u ss<s +ed'],
    ['chickening', 'ch i ck e n +ing'],
    ['droppings', 'd r o pp<p +ing +s'],
    ['furred', 'f urr<ur +ed'],
    ['prepping', 'p r e pp<p +ing'],
    ['talented', 't a l e n t +ed'],
    ['texted', 't e x t +ed'],
    ['texting', 't e x t +ing'],
    ['wooded', 'w oo d +ed'],
    // No endings: a herring, an inning, the noun `seed`.
    ['herring', 'h e rr i ng'],
    ['naked', 'n a k e d'],
    ['seed', 's ee d'],
    ['wicked', 'w i ck e d'],
    ['whirring', 'wh irr<ir +ing'],
    ['stirred', 's t irr<ir +ed'],
    ['blessed', 'b l e ss +ed'],
    ['putting', 'p u tt<t +ing'],
    ['unfinished', 'u n f i n i sh +ed'],
    ['unlocked', 'u n l o ck +ed'],
    ['unscrewed', 'u n s c r ew +ed'],
    ['jagged', 'j a gg e d'],
    ['seed', 's ee d'],
    ['sacred', 's a c r e d'],
    ['wobbly', 'w o bb l y'],
    ['probably', 'p r o b a b l y'],
    ['riper', 'r i<i_e p +er'],
    ['shyer', 'sh y +er'],
    ['rainier', 'r ai n i<y +er'],
    ['sharing', 'sh ar<are +ing'],
    ['grumpily', 'g r u m p i<y l y'],
    ['fluffiness', 'f l u ff i<y n e ss'],
    // The audit of issue 11, and by machine: a stem that takes the ending, whatever kind of thing WordNet takes the word for.
    ['freer', 'f r e<ee +er'],
    ['freest', 'f r e<ee +est'],
    ['truer', 't r u<ue +er'],
    ['doers', 'd o +er +s'],
    ['banger', 'b a ng +er'],
    ['builder', 'b ui l d +er'],
    ['climber', 'c l i mb +er'],
    ['clicker', 'c l i ck +er'],
    ['buckler', 'b u ck l<le +er'],
    ['enabler', 'e n a b l<le +er'],
    ['dangler', 'd a n g l<le +er'],
    ['sooner', 's oo n +er'],
    ['panicked', 'p a n i ck<c +ed'],
    ['axed', 'a x<xe +ed'],
    ['enclosing', 'e n c l o<o_e s +ing'],
    ['supper', 's u pp er'],
    ['liver', 'l i v er'],
    ['butter', 'b u tt er'],
    ['after', 'a f t er'],
    ['rafter', 'r a f t er'],
  ])('%s: %s', (word, units) => {
    expect(show(word)).toBe(units)
    expect(read(word).source).toBe('dictionary')
  })

  it.each([
    ['plonked', 'p l o n k +ed'],
    ['squished', 's qu i sh +ed'],
    ['plonking', 'p l o n k +ing'],
    ['picnicking', 'p i c n i ck<c +ing'],
    ['dampest', 'd a m p +est'],
    ['zubbies', 'z u bb ie<y +s'],
  ])('%s, which nobody listed: %s, and nothing else', (word, units) => {
    expect(show(word)).toBe(units)
    expect(read(word).pronunciations.every(({ units: all }) => all.at(-1)?.kind === 'inflection')).toBe(true)
  })
})

describe('the step', () => {
  it.each(
    toRows(`
    crosses green-7, wobbly green-12, wiggly green-12, giggly green-12, twinkly green-12, wobblier green-13, giggliest green-13
    unfinished green-13, unscrewed green-7, jagged blue-6, riper green-11, shyer green-8, growed green-7, stillest green-8, rainier green-13
    grumpily green-13, shakily green-13, dirtily green-13, fluffily green-13, stickily green-13, snowily green-13
    whirring green-11, plonked green-7, clonked green-7, sploshed green-7, squished green-7, splotched green-7
    sploshing green-6, plonking green-6, nappies green-12, undies green-13
    lower green-8, lighter green-8, slower green-8, lowest green-8, madder green-11, flatter green-11, fatter green-11
    nothing green-13, purred green-7, purring green-6, sharing green-11, caring green-11, staring green-11, scaring green-11
    letter green-5, summer green-5, better green-5, after green-5, matter green-5
    prettier green-12, busier green-15, promised green-15, comes green-1, coming green-11, surely green-15, busily green-15
    `),
  )('%s is %s in the series', (word, step) => {
    expect(stepOf(word, 'series')).toBe(step)
  })

  it('putting is that of put: the golfer puts nothing into a bag', () => {
    const putting = read('putting')
    const { form } = putting.pronunciations.find(({ units }) => units[1]?.sound === 'ʊ') ?? {}
    const pronunciations = putting.pronunciations.filter((one) => one.form === form)
    expect(findReadableAt({ ...putting, pronunciations }, loadBuiltIn('series') as Sequence)).toBe('green-11')
  })

  it.each(
    toRows(
      'raise y2-4, raised y2-4, cause y2-4, caused y2-4, choose y2-4, choosing y2-4, freeze y2-4, freezing y2-4, sneeze y2-4, ' +
        'sneezed y2-4, please y2-4, pleased y2-4, pleases y2-4, houses y1-9, hoping y2-4',
    ),
  )('%s is %s in the English curriculum', (word, step) => {
    const british = testPhonics('southern-british')
    expect(findReadableAt(british.read(word), loadBuiltIn('england') as Sequence)).toBe(step)
  })

  it.each(toRows('hope k-2, hoping g2-3, breathing g2-3'))('%s is %s in the Common Core', (word, step) => {
    expect(stepOf(word, 'common-core')).toBe(step)
  })
})

function toRows(text: string): [string, string][] {
  return text
    .trim()
    .split(/,\s|\n\s*/)
    .map((one) => one.trim().split(' ') as [string, string])
}

it('nothing is said to be the mischest: only what is called so takes -est', () => {
  expect(read('mischest').source).toBe('guess')
})
