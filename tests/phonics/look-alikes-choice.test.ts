// Which form of a look-alike is taken last: by the topic of the sentences before, by what is usual, and where no verb can stand; and which tense a verb
// behind it shows. Over small tables of their own. Common practice, no source.

import { describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import {
  findByCase,
  findByTopicBefore,
  findFallback,
  findForm,
  findThing,
} from '../../src/phonics/heteronyms/choose.ts'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { findTenseForm } from '../../src/phonics/heteronyms/read.ts'
import { findFollowingTense } from '../../src/phonics/heteronyms/tense.ts'
import type { Heteronym, HeteronymForm } from '../../src/phonics/heteronyms/types.ts'
import { findTaggedUsed, findUsed } from '../../src/phonics/heteronyms/used.ts'
import { toBlocks } from './blocks.ts'
import { type TagsOf, toTagged } from './tagged-words.ts'

/** The word in stars, in its sentence. */
const at = (text: string) =>
  toPlace(cutWords(text.replaceAll('*', '')), cutWords(text.slice(0, text.indexOf('*'))).length)

const form = (name: string, classes: HeteronymForm['classes'], topics?: string): HeteronymForm => ({
  form: name,
  classes,
  sounds: 'B AW1',
  meaning: name,
  ...(topics === undefined ? {} : { topics }),
})

describe('the topic of the sentences before', () => {
  const BOW: Heteronym = {
    word: 'bow',
    forms: [form('knot', ['noun'], 'ribbon arrow'), form('bend', ['noun', 'verb'], 'king stage')],
  }
  const TEAR: Heteronym = { word: 'tear', forms: [form('eye', ['noun'], 'cry'), form('rip', ['noun'], 'coat')] }
  const AX: Heteronym = {
    word: 'axes',
    forms: [form('tool', ['noun', 'verb'], 'wood'), form('line', ['verb', 'noun'], 'sum')],
  }
  const ask = (row: Heteronym, classes: HeteronymForm['classes'] | undefined, ...before: string[]) =>
    findByTopicBefore(row, classes, before.map(cutWords))

  it.each([
    ['knot', ['noun'], 'She had a ribbon.'],
    ['knot', ['noun'], 'She had a ribbon.', 'It was red.'],
    ['knot', ['noun'], 'She had a Ribbon and an arrow.'],
    ['bend', ['noun'], 'The king came.'],
    [undefined, ['noun'], 'The king had a ribbon.'],
    [undefined, ['noun'], 'The hen came.'],
    [undefined, ['noun'], 'She had a bow and a ribbon.'],
    [undefined, ['verb'], 'The king came.'],
    [undefined, ['adverb'], 'The king came.'],
    [undefined, undefined, 'The king came.'],
  ] as const)('gives %s for %j after “%s”', (expected, classes, ...before) => {
    expect(ask(BOW, classes, ...(before as readonly string[]))).toBe(expected)
  })

  it('tells forms of one class apart whatever the neighbours say', () => {
    expect(ask(TEAR, undefined, 'Her coat was old.')).toBe('rip')
    expect(ask(AX, undefined, 'They cut the wood.')).toBe('tool')
  })

  it('is asked only where there are sentences before', () => {
    expect(findByTopicBefore(BOW, ['noun'], undefined)).toBeUndefined()
    expect(findByTopicBefore(BOW, ['noun'], [])).toBeUndefined()
  })
})

describe('the usual one of two things', () => {
  const TEARS: Heteronym = {
    word: 'tears',
    thing: 'eye',
    forms: [form('eye', ['noun'], 'cry'), form('rip', ['noun', 'verb'], 'coat')],
  }
  const LEAD: Heteronym = { ...TEARS, forms: [form('eye', ['noun']), form('rip', ['noun', 'adjective'])] }

  it.each([
    ['eye', ['noun'], 'The *tears* fell.'],
    ['eye', ['noun', 'adjective'], 'The *tears* fell.'],
    ['eye', ['noun', 'past'], 'The *tears* fell.'],
    ['eye', ['noun'], 'The *tears* made her cry.'],
    ['rip', ['noun'], 'The *tears* in her coat.'],
    [undefined, ['noun'], 'The *tears* in her coat made her cry.'],
    [undefined, ['noun', 'verb'], 'The *tears* fell.'],
    ['rip', ['verb'], 'The *tears* fell.'],
    [undefined, undefined, 'The *tears* fell.'],
  ] as const)('is %s for %j in “%s”', (expected, classes, text) => {
    expect(findForm(TEARS, at(text), classes) ?? findThing(TEARS, at(text), classes)).toBe(expected)
  })

  it('is none where the other may describe what follows', () => {
    expect(findThing(LEAD, at('The *tears* roof fell.'), ['noun', 'adjective'])).toBeUndefined()
    expect(findThing(LEAD, at('The *tears* fell.'), ['noun'])).toBe('eye')
  })
})

describe('the form of last resort', () => {
  const row = (...other: HeteronymForm['classes']): Heteronym => ({
    word: 'record',
    fallback: 'thing',
    forms: [form('thing', ['noun']), form('do', other)],
  })

  it.each([
    ['thing', 'Big *record* sales fell.'],
    ['thing', 'They sold the *record* sleeve.'],
    [undefined, 'Sit, *record* sales fell.'],
    [undefined, 'They sing and *record* sales.'],
    [undefined, 'Old men *record* sales.'],
    [undefined, 'The birds *record* sales.'],
    [undefined, 'Now see Tam *record* sales.'],
    [undefined, 'They can big *record* sales.'],
    [undefined, 'Big *record* the sales.'],
  ])('is %s in “%s” where the other is a verb', (expected, text) => {
    expect(findFallback(row('verb'), at(text))).toBe(expected)
    expect(findFallback(row('past', 'noun'), at(text))).toBe(expected)
    expect(findFallback(row('adjective'), at(text))).toBe('thing')
  })

  it('is none where the row has none', () => {
    expect(findFallback({ word: 'record', forms: row('noun').forms }, at('Big *record* sales.'))).toBeUndefined()
  })
})

it('a small letter says nothing where every form has a capital', () => {
  const only: Heteronym = { word: 'nice', forms: [{ ...form('town', ['noun']), written: 'capital' }] }
  expect(findByCase(only, at('We like *nice* cake.'))).toBeUndefined()
})

const VERBS: TagsOf = {
  I: ['Verb', 'Infinitive'],
  N: ['Noun'],
  P: ['Verb', 'PresentTense'],
  V: ['Verb'],
  X: ['PresentTense'],
}

function ask(asked: string): string {
  const [, kind = '', text = ''] = /^(\w+) \| (.*)$/.exec(asked) ?? []
  const { sentence, tags } = toTagged(text, VERBS)
  const place = toPlace(sentence, toTagged(text.slice(0, text.indexOf('*')), VERBS).sentence.length)
  if (kind === 'following') return findFollowingTense(place, tags) ?? '-'
  return (kind === 'used' ? findUsed(place) : findTaggedUsed(place, tags)) ?? '-'
}

const LINES = `
  a verb joined behind it
    past: following | I *read* and sat.
    past: following | I *read* it or sat.
    past: following | I *read* it to him, and went home.
    present: following | I *read* and sing/P a little.
    present: following | I *read* and sing/I a little.
    present: following | I *read* to Tam and Meg/N or sing/P.
    -: following | I *read* and sing/V a little.
    -: following | I *read* and Meg/N sat.
    -: following | I *read* and put/P it down.
    -: following | I *read* and nice/X it is.
    -: following | I *read* then sat.
    -: following | I *read* but Tam and sat.
    -: following | I *read*. Tam and sat.
    -: following | I sat and *read* it.
    -: following | I *read* and
  used without to behind it
    used-to: used | He was so *used* all his life to it.
    used-to: used | A noise to which he was *used*.
    used-to: used | Men to whom he was *used*.
    verb: used | He was so *used* all his life. To sit is fun.
    verb: used | It was *used* all his life to dig.
    verb: used | So he *used* a net.
    verb: used | A net which he *used*.
    verb: used | A net to which he *used* a hook.
    verb: used | He went to bed with what he *used*.
    verb: used | It was *used* by men to whom we sang.
  there used to be
    used-to: used | So many as there *used* to dig.
    used-to: used | The day of what she *used* to hear of him.
    used-to: used | As the old big hens whom it *used* to love.
  the one who did so
    used-to: used | Then he *used* to dig.
    used-to: used | The old red hen *used* to dig.
    used-to: used | After this Meg *used* to dig.
    used-to: used | Before that Meg *used* to dig.
    used-to: used | In winter they *used* to dig.
    used-to: used | He sat where an old hen *used* to dig.
    -: used | The net which an old hen *used* to dig.
    -: used | The net the men *used* to dig.
  used to, told by the tagger
    verb: tags | It is *used* to dig/I holes.
    verb: tags | The net is *used* to dig/I holes.
    used-to: tags | It is *used* to noise/N here.
    -: tags | He is *used* to dig/I holes.
    -: tags | They often are *used* to dig/I holes.
    -: tags | It sat *used* to noise/N here.
    -: tags | It is *used* to
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})

const READ = `
  read, by who does so and when
    past: The old queen *read* to us.
    past: But mother *read* to us.
    past: Mother *read* to us.
    -: And mother *read* to us.
    -: I saw mother *read* to us.
    -: Did mother *read* to us?
    -: The hens *read* to us.
    present: Hens *read* to us.
    present: *Read* to us.
    present: She said, “*Read* to us.
    past: It was fun when you *read* it.
    present: It was fun if you *read* it.
    present: It was fun whenever you *read* it.
    past: You saw it yesterday when you *read* it.
`

describe.each(toBlocks(READ))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(findTenseForm({ word: 'read', forms: [] }, at(asked), undefined, undefined) ?? '-').toBe(expected)
    expect(findTenseForm({ word: 'read', forms: [] }, at(asked), ['noun'], undefined)).toBeUndefined()
    expect(findTenseForm({ word: 'live', forms: [] }, at(asked), undefined, undefined)).toBeUndefined()
  })
})
