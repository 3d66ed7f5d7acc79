// Rules over the versions of one story: what a held run says of each is what the plain run says, and text that has not changed is not asked about
// again. Reference: our own `runRules`.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rules } from '../../rules/index.ts'
import { createStoryContext, type ReadingSettings } from '../../src/lint/context.ts'
import { createBag } from '../../src/lint/held/bag.ts'
import type { HomesOf } from '../../src/lint/held/block-facts.ts'
import type { Finish } from '../../src/lint/held/echo.ts'
import { createHeldRun } from '../../src/lint/held/held-run.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { runRules } from '../../src/lint/run.ts'
import type { Message, Rule, RuleSettings } from '../../src/lint/types.ts'
import { loadTagger } from '../../src/phonics/heteronyms/tagger.ts'
import { readStory } from '../../src/story/index.ts'
import type { Block } from '../../src/story/types.ts'
import { isTaggerNeeded } from '../../src/usage/spoken-form.ts'
import { toWordKey } from '../../src/verdict/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { readSequence } from '../unified/pipeline.ts'

const phonics = testPhonics('general-american')
const sequence = readSequence('series')
const tagger = await loadTagger()

/** Every rule speaks, at limits that a few words reach. */
const LOUD: RuleSettings = {
  ...Object.fromEntries(rules.map(({ id }) => [id, { severity: 'warning' as const }])),
  'max-new-words': { severity: 'error', options: { page: 2, book: 4 } },
  'max-page-sentences': { severity: 'error', options: { sentences: 2 } },
  'max-page-words': { severity: 'error', options: { words: 8 } },
  'max-sentence-words': { severity: 'error', options: { words: 4 } },
}

const READING: ReadingSettings = { phonics, sequence, step: 'pink-6' }
const NAMED: ReadingSettings = { phonics, sequence, step: 'green-8', names: ['Old Ned', 'Tam'] }

/** What comes after the rules: a note that counts, as the search for other words writes it. */
const COUNTING: Finish = {
  block: (messages, _, countOf) => messages.map((message) => withCount(message, countOf)),
  loose: (messages, countOf) => messages.map((message) => withCount(message, countOf)),
}

const withCount = (message: Message, countOf: (word: string) => number): Message =>
  message.word === undefined ? message : { ...message, note: `${message.note} ×${countOf(toWordKey(message.word))}` }

/** The same object for as long as a text stays; of texts that are alike, by their order. */
function createHomes(): (story: readonly Block[]) => HomesOf {
  const homes = new Map<string, { readonly block: Block }>()
  return (blocks) => {
    const times = new Map<string, number>()
    const found = new Map<Block, { readonly block: Block }>()
    for (const block of blocks) {
      const key = `${block.kind} ${block.text}`
      const time = (times.get(key) ?? 0) + 1
      times.set(key, time)
      const home = homes.get(`${key} ${time}`) ?? { block }
      homes.set(`${key} ${time}`, home)
      found.set(block, home)
    }
    return (page) => ({
      homes: page.blocks.map((block) => found.get(block) ?? { block }),
      starts: page.blocks.map(({ start }) => start),
    })
  }
}

interface Version {
  readonly source: string
  readonly reading?: ReadingSettings
  readonly settings?: RuleSettings
  readonly hasTagger?: boolean
}

function createHeld(own: readonly Rule[] = rules) {
  const held = createHeldRun()
  const toHomes = createHomes()
  return ({ source, reading = READING, settings = LOUD, hasTagger = false }: Version) => {
    const story = readStory(source)
    const plain = createStoryContext(story, reading)
    const context = hasTagger ? createStoryContext(story, { ...reading, tagger }) : plain
    held.open(story, toHomes(story.pages.flatMap(({ blocks }) => blocks)), [reading, settings])
    const needsTagger = held.isTaggerNeeded(plain, phonics.heteronyms)
    const { messages, figures } = held.run(context, own, settings, { hasTagger, finish: COUNTING })
    return { story, context, needsTagger, messages, figures }
  }
}

function expectAsPlain(check: ReturnType<typeof createHeld>, version: Version): void {
  const { story, context, needsTagger, messages, figures } = check(version)
  const words = story.pages.flatMap((page) =>
    page.blocks.flatMap((block) => block.sentences.flatMap((one) => one.words)),
  )
  const countOf = (word: string) => words.filter(({ text }) => toWordKey(text) === word).length
  const { reading = READING, settings = LOUD } = version
  const plain = createStoryContext(story, reading)
  expect(messages).toEqual(runRules(context, rules, settings).map((message) => withCount(message, countOf)))
  expect(figures).toEqual(context.figures())
  expect(needsTagger).toBe(isTaggerNeeded(story, phonics.heteronyms, plain))
}

const PARAGRAPHS = [
  'Meg ran.',
  'Sid had the zub. The zub sat in mud.',
  'Last week Tam went in. They read it.',
  'They read it. Tam read to Sid, and Sid met Priya.',
  'priya sat; Priya ran!',
  'Old Ned sat. Ned had 6 hens and 10 ducks.',
  'Zub met a zub and Zog.',
  'A zog дом ran in the wind.',
  'Will you wind it up? The dove dove in.',
  '# Meg And The Zub',
  'Text: Ann Bell',
  '<!-- battledore ignore no-unknown-word -->',
  '<!-- battledore disable "zub" -->',
  '<!-- battledore enable -->',
  '> For the adult: the night.',
  '---',
]

const toSource = (blocks: readonly string[]): string => `${blocks.join('\n\n')}\n`

const paragraphs = fc.array(fc.constantFrom(...PARAGRAPHS), { minLength: 1, maxLength: 9 })
/** An edit: so many blocks out at a place, and these in. */
const edits = fc.array(
  fc.tuple(fc.nat(9), fc.nat(2), fc.array(fc.constantFrom(...PARAGRAPHS), { maxLength: 2 }), fc.boolean()),
  { minLength: 1, maxLength: 6 },
)

describe('a held run', () => {
  it('says of every version what the plain run says', { timeout: 120_000 }, () => {
    const property = fc.property(paragraphs, edits, fc.constantFrom(READING, NAMED), (first, changes, reading) => {
      const check = createHeld()
      expectAsPlain(check, { source: toSource(first), reading })
      let blocks: readonly string[] = first
      for (const [at, out, put, hasTagger] of changes) {
        const place = at % (blocks.length + 1)
        blocks = [...blocks.slice(0, place), ...put, ...blocks.slice(place + out)]
        expectAsPlain(check, { source: toSource(blocks), reading, hasTagger })
      }
    })
    fc.assert(property, { seed: 20_261_129, numRuns: 25, endOnFailure: true })
  })

  const BOOK = Array.from({ length: 12 }, (_, at) => `Meg ran. Sid had the zub ${at}.`)
  const withPages = (blocks: readonly string[]) =>
    toSource(blocks.flatMap((one, at) => (at % 3 ? [one] : ['---', one])))

  it.each<readonly [string, (blocks: readonly string[]) => readonly string[]]>([
    ['nothing', (blocks) => blocks],
    ['the first block', ([, ...blocks]) => ['Tam sat.', ...blocks]],
    ['the last block', (blocks) => [...blocks.slice(0, -1), 'Tam sat.']],
    ['a word in the middle', (blocks) => blocks.with(5, 'Meg sat. Sid had the zub 5.')],
    ['a block more', (blocks) => [...blocks.slice(0, 4), 'Tam sat.', ...blocks.slice(4)]],
    ['a block less', (blocks) => blocks.toSpliced(7, 1)],
    ['all but the ends', (blocks) => blocks.toSpliced(1, 10, 'Tam sat.')],
    ['all', () => ['Tam sat.']],
    ['a page of its own', (blocks) => [...blocks.slice(0, 4), '---', ...blocks.slice(4)]],
    ['two blocks that change places', ([one = '', two = '', ...blocks]) => [two, one, ...blocks]],
    ['a name that is no name any more', (blocks) => blocks.with(9, 'Sid met meg.')],
  ])('says so after a change of %s, and after it is taken back', (_, change) => {
    const check = createHeld()
    for (const blocks of [BOOK, change(BOOK), BOOK]) expectAsPlain(check, { source: withPages(blocks) })
  })

  it('says so where settings, names or the tagger change from version to version', () => {
    const check = createHeld()
    const source = toSource(PARAGRAPHS)
    const versions: readonly Version[] = [
      { source },
      { source, hasTagger: true },
      { source, reading: NAMED },
      { source, reading: NAMED, hasTagger: true },
      { source, reading: NAMED },
      { source, settings: {} },
      { source, settings: { ...LOUD, 'no-unknown-word': { severity: 'off' } } },
      { source: `${source}\n\nOld Ned ran.\n`, reading: NAMED },
      { source },
    ]
    for (const version of versions) expectAsPlain(check, version)
  })
})

/** Notes all that it is asked about. */
function createListener() {
  const asked: string[] = []
  const rule = defineRule({
    id: 'no-listening',
    summary: '',
    severity: 'error',
    options: {},
    messages: { word: '{word}', page: 'page {page}' },
    create: ({ report }) => ({
      word: (word) => {
        asked.push(word.text)
        report({ at: word, word, messageId: 'word', data: { word: word.text } })
      },
      page: (page) => {
        asked.push(`page ${page.number}`)
        report({ at: page, messageId: 'page', data: { page: page.number } })
      },
    }),
  })
  const check = createHeld([rule])
  return (...blocks: readonly string[]) => {
    asked.length = 0
    const { messages } = check({ source: toSource(blocks) })
    return { asked: asked.join(' '), messages }
  }
}

describe('what has not changed is not asked again', () => {
  it('where one word changes, only its block and its page are', () => {
    const ask = createListener()
    expect(ask('Meg ran.', 'Sid sat.', '---', 'Tam had it.').asked).toBe('Meg ran Sid sat Tam had it page 1 page 2')
    expect(ask('Meg ran.', 'Sid sat.', '---', 'Tam had it.').asked).toBe('')
    expect(ask('Meg ran.', 'Sid hid.', '---', 'Tam had it.').asked).toBe('Sid hid page 1')
    expect(ask('Meg ran.', 'Sid hid.', '---', 'Tam had it.', 'Meg hid.').asked).toBe('Meg hid page 2')
  })

  it('where text moves, nothing is, and it is said where it stands now', () => {
    const ask = createListener()
    const { messages } = ask('Meg ran.', 'Sid sat.', '---', 'Tam had it.')
    const moved = ask('Tam ran up.', 'Meg ran.', 'Sid sat.', '---', 'Tam had it.')
    expect(moved.asked).toBe('Tam ran up page 1')
    const of = (all: readonly Message[]) => all.filter(({ page, word }) => page === 2 && word !== undefined)
    expect(of(moved.messages).map(({ start }) => start)).toEqual(of(messages).map(({ start }) => start + 13))
    // Of a page that stays where it is, the very same messages.
    const { messages: later } = ask('Tam ran up.', 'Meg ran.', 'Sid sat.', '---', 'Tam had it.', 'Pat hid.')
    expect(later.filter(({ page }) => page === 1).every((one) => moved.messages.includes(one))).toBe(true)
  })

  it('a page that is numbered anew is asked again, but not its words', () => {
    const ask = createListener()
    ask('Meg ran.', '---', 'Sid sat.')
    expect(ask('Tam hid.', '---', 'Meg ran.', '---', 'Sid sat.').asked).toBe('Tam hid page 1 page 2 page 3')
  })

  it('a block with a word of two spoken forms is asked again where the three sentences before it change', () => {
    const ask = createListener()
    const three = 'Meg ran. Meg hid. Meg sat.'
    ask('Sid sat.', three, 'They read it.', 'Sid hid.')
    expect(ask('Sid ran.', three, 'They read it.', 'Sid hid.').asked).toBe('Sid ran page 1')
    expect(ask('Sid ran.', 'Meg ran. Meg had it. Meg sat.', 'They read it.', 'Sid hid.').asked).toBe(
      'Meg ran Meg had it Meg sat They read it page 1',
    )
  })

  it('a word is asked again where it becomes a likely name, or stops to be one', () => {
    const ask = createListener()
    ask('Zub ran.', 'Meg ran.')
    expect(ask('Zub ran.', 'Meg ran.', 'Sid met Zub.').asked).toBe('Zub ran Sid met Zub page 1')
    expect(ask('Zub ran.', 'Meg ran.', 'Sid met Zub.', 'A zub sat.').asked).toMatch(/^Zub ran Sid met Zub A zub sat/)
    expect(ask('Zub ran.', 'Meg ran.', 'Sid met Zub.').asked).toMatch(/^Zub ran Sid met Zub/)
  })
})

describe('a bag', () => {
  it('counts up and down, and has what is counted above nothing', () => {
    const bag = createBag()
    bag.add('hen', 2)
    bag.add('pig', 1)
    bag.add('hen', -1)
    bag.add('pig', -1)
    expect([bag.count('hen'), bag.has('hen'), bag.count('pig'), bag.has('pig')]).toEqual([1, true, 0, false])
    expect([...bag.names()]).toEqual(['hen'])
  })

  it('tells what is counted otherwise than when changes were last forgotten', () => {
    const bag = createBag()
    bag.add('hen', 2)
    bag.add('pig', 1)
    expect(bag.changes()).toEqual([
      ['hen', 0],
      ['pig', 0],
    ])
    bag.forgetChanges()
    expect(bag.changes()).toEqual([])
    bag.add('hen', 1)
    bag.add('hen', 1)
    bag.add('pig', -1)
    bag.add('pig', 1)
    expect(bag.changes()).toEqual([['hen', 2]])
  })
})
