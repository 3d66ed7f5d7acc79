// `battledore explain`: what it says of a word, and what it says where there is none.

import { afterAll, expect, it } from 'vitest'
import { createVocabularyWorld } from '../vocabulary-world.ts'

const world = createVocabularyWorld({
  'dig.yaml': 'name: dig\nsteps:\n  - id: only\n    teach: [d as in dig, i as in dig, g as in dig, e as in bed]\n',
  'one.yaml':
    'name: one\nsteps:\n  - id: first\n    teach: [a as in cat, t as in cat]\n    limits: {letters: 1, syllables: 1}\n  - id: last\n    limits: {letters: any, syllables: any}\n',
})
afterAll(() => world.remove())

it.each([[['']], [['  ']], [['cat', '']]])('tells of an empty word: %j', async (words) => {
  expect(await world.run('explain', ...words)).toEqual({
    code: 2,
    out: '',
    err: 'battledore: An empty word was given. Name the words to explain, or - to read them from standard input.\n',
  })
})

it('says that one is allowed', async () => {
  const { out } = await world.run('explain', 'rabbit', '--step', 'first', '--sequence', 'one.yaml')
  const text = out.replace(/\s+/g, ' ')
  expect(text).toContain('it has 6 letters, and at most 1 is allowed')
  expect(text).toContain('it has 2 syllables, and at most 1 is allowed')
})

it('tells the right form of a misspelt word', async () => {
  const { out } = await world.run('explain', 'makeing', '--step', 'first', '--sequence', 'one.yaml')
  expect(out).toBe('makeing  (not in the dictionary)\n  This is misspelt: making.\n')
  const json = await world.run('explain', 'thedog', '--format', 'ndjson')
  expect(JSON.parse(json.out)).toMatchObject({ source: 'guess', meant: 'the dog', readings: [], readableAt: null })
})

it.each([
  ['TV', 'An abbreviation: its letters are said by their names.'],
  ['UK', 'An abbreviation: its letters are said by their names.'],
  ['Mr', 'Short for mister; its letters do not say that.'],
  ['St', 'Short for saint or street; its letters do not say that.'],
  ['X-ray', 'It begins with the name of the letter X, not with its sound.'],
])('tells of %s what it is', async (word, what) => {
  const { out } = await world.run('explain', word)
  expect(out).toBe(`${word}\n  ${what}\n  No step of this sequence makes it readable.\n`)
})

it('tells of a letter that is taught nowhere once, big or small', async () => {
  const { out } = await world.run('explain', 'Dad', '--step', 'first', '--sequence', 'one.yaml')
  expect(out.replace(/\s+/g, ' ').match(/which no step of this sequence teaches/g)).toHaveLength(1)
})

// The g of `dig` is taught, and the gg is not: the sound is no news.
it('names letters whose sound is taught by the letters that say it, as a check does', async () => {
  const { out } = await world.run('explain', 'egg', 'dug', '--step', 'only', '--sequence', 'dig.yaml')
  const text = out.replace(/\s+/g, ' ')
  expect(text).toContain(
    'it has `gg` that sounds like the `g` in `dig`, which no step of this sequence teaches (to teach it, add `gg as in egg` to a step)',
  )
  expect(text).toContain('it has `u` as in `cup`, which no step of this sequence teaches')
  const later = await world.run('explain', 'won', '--step', 'pink-3')
  expect(later.out.replace(/\s+/g, ' ')).toContain(
    'it has `o` as in `son`, which is taught later (from step green-13 on)',
  )
})

it('says where it is not known how a word is said', async () => {
  const { out } = await world.run('explain', 'Aoife')
  expect(out).toContain('It is not known how this is said. The letters would say:')
  expect(out).toContain('No step of this sequence makes it readable.')
  const json = await world.run('explain', 'Aoife', '--format', 'ndjson')
  expect(JSON.parse(json.out)).toMatchObject({ unsure: true, readableAt: null })
})

it('shows the ie of `cried` by a word that has ie', async () => {
  const { out } = await world.run('explain', 'cried', '--step', 'green-8')
  expect(out).toMatch(/^ *cat +rat +pie +dig$/m)
})

// The steps are those of the series: /ɪ/ with a weak second vowel is taught at none, the `i` of tiger at green-12.
it('names no one step where the meanings differ in theirs, but one for each', async () => {
  const { out } = await world.run('explain', 'minute')
  const text = out.replace(/\s+/g, ' ')
  expect(text).not.toContain('Readable from step')
  expect(text).toContain('/ˈmɪnət/ (sixty seconds, or a short time) at no step; /maɪˈnuːt/ (very tiny) from step')
  expect(text).toContain('Of /ˈmɪnət/, `u…e` breaks the rules')
  const { out: atStep } = await world.run('explain', 'read', '--step', 'green-2')
  expect(atStep).not.toContain('it can be sounded out')
})

// The u of put is taught at green-11, the tt of kitten at green-6, in the series.
it.each([
  ['putting', ['green-11', 'green-6'], 'green-11'],
  ['read', ['green-2', 'green-13'], 'green-13'],
  ['minute', [null, 'green-12'], null],
  // The second is the town, and that has a capital.
  ['nice', ['green-8', 'green-15'], 'green-8'],
  ['Nice', ['green-8', 'green-15'], 'green-15'],
])('tells other programs of %s the step of each form, and as its own that of the last', async (word, steps, last) => {
  const found = JSON.parse((await world.run('explain', word, '--format', 'ndjson')).out)
  expect(found.readings.map((one: { readableAt: string | null }) => one.readableAt)).toEqual(steps)
  expect(found.readableAt).toBe(last)
})

it('says at a step how many of the forms are readable', async () => {
  const { out } = await world.run('explain', 'putting', '--step', 'green-6')
  const text = out.replace(/\s+/g, ' ')
  expect(text).toContain('At green-6 only /ˈpʌtɪŋ/ is readable.')
  expect(text).toContain('/ˈpʊtɪŋ/ (setting in a place) from step green-11 on')
})

it('shows only the form that the parts of a word with hyphens tell', async () => {
  const { out } = await world.run('explain', 'wind-up')
  expect(out).toContain('to turn or wrap round')
  expect(out).not.toContain('moving air')
  expect(out).toContain('Readable from step green-12.')
})
