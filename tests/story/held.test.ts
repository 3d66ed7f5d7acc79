// A story that is held while it is edited reads as one that is read anew. Reference: our own whole reading, which the other tests hold
// against remark-parse.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { createHeldStory } from '../../src/story/held.ts'
import { homesOf } from '../../src/story/held-pages.ts'
import { type Range, readStory, type Story, type StoryOptions } from '../../src/story/index.ts'
import { parsePart } from '../../src/story/parse.ts'
import { cutParts } from '../../src/story/parts.ts'
import { expectPart } from '../growth.ts'
import { applyEdit, session, trapSession } from './edits.ts'
import { toPlain } from './plain-story.ts'

const seed = 20_261_129
/** Each is a session of some ten edits. */
const runs = Number(process.env.STORY_RUNS ?? 120)

const toText = (story: Story): string => JSON.stringify(toPlain(story))

const options: readonly StoryOptions[] = [
  {},
  {},
  {},
  { pages: 'rule' },
  { countTitle: false },
  { countHeadings: false, pages: 2 },
]

it(
  'reads every version as it is read anew',
  () => {
    fc.assert(
      fc.property(fc.oneof(session, trapSession), fc.constantFrom(...options), (edited, given) => {
        const held = createHeldStory()
        for (const source of edited.versions)
          expect(toText(held.read(source, given))).toBe(toText(readStory(source, given)))
      }),
      { seed, numRuns: runs },
    )
  },
  60_000 + runs * 3_000,
)

/** What stands before and after an edit at `|`, and what is put there: what it means depends on what is far from it, or changes that. */
const traps: readonly (readonly [string, string])[] = [
  ['- a hen\n\n|Tam ran.', '    '],
  ['- a hen\n\n|Tam ran.\n\n- a pig', '  '],
  ['1. a\n\n|2. b', '    '],
  ['Tam ran.\n\n|It sat.\n\nTam sat. -->\n\nMeg ran.', '<!-- '],
  ['<!-- Tam ran.\n\nIt sat.\n\n|Meg ran.', '--> '],
  ['![pig][red]\n\nTam sat.\n\nMeg ran.\n\n|It sat.', '[red]: pig.png\n\n'],
  ['[pig][red] ran.\n\nTam sat.\n\nMeg ran.\n\n|It sat.', '[red]: pig.png\n\n'],
  ['Tam sat.\n\n|Meg ran.\n\n```\n\nIt sat.', '```\n\n'],
  ['Tam sat.\n\n|Meg ran.\n\n</script>\n\nIt sat.', '<script>\n\n'],
  ['Tam sat.\n\n|Meg ran.\n\nIt sat.', '<div>\n'],
  ['Tam sat.\n|\nMeg ran.\n\nIt sat.', '---\n'],
  ['Tam sat.\n|\nMeg ran.\n\nIt sat.', 'It ran'],
  ['> For you.\n|\nMeg ran.', 'It ran'],
  ['Tam sat.\n\nMeg ran.\n\n|Written by Ann Bell.', 'It ran.\n\n'],
  ['Tam sat.\n\nMeg ran.\n\nText: Ann Bell\n\n|', 'Pictures: Tom Hill'],
  ['Tam sat.\n\n## One\n\nMeg ran.\n\n|\n\nIt sat.', '## Two'],
  ['Tam sat.\n\n---\n\nMeg ran.\n\n|\n\nIt sat.', '---'],
  ['|Tam sat.\n\nMeg ran.', '# Hens\n\n'],
  ['|Tam sat.\n\nMeg ran.', '\uFEFF'],
  ['|Tam sat.\n\nMeg ran.', '---\ntitle: Hens\n---\n\n'],
  ['---\ntitle: Hens\n\nTam sat.\n\nMeg ran.\n\nIt ran.\n\n|It sat.', '---\n\n'],
  ['---\ntitle: Hens|\n---\n\nTam sat.\n\nMeg ran.', '```'],
  ['A &|amp; B sat.\n\nMeg ran.', 'amp;'],
  ['Tam sat.|\r\n\r\nMeg ran.\r\n\r\nIt sat.', '\r'],
  ['| Tam sat.\n\n<!-- note -->\n\nMeg ran.', ' '.repeat(600)],
]

it.each(traps)('%j with %j put in and taken out', (marked, put) => {
  for (const more of ['', 'A hen ran.\n\nIt was wet.\n\n', '- 6 hens\n\n- a *pig*\n\n', 'A **hen** ran. '.repeat(80)]) {
    const [before = '', after = ''] = marked.split('|')
    const front = before.startsWith('---') || before === '' ? before : more + before
    const back = `${after}\n\n${more}\n`
    const held = createHeldStory()
    for (const source of [front + back, front + put + back, front + back, `${front}${put}x${back}`, front + put + back])
      expect(toText(held.read(source))).toBe(toText(readStory(source)))
  }
})

describe('keeps the blocks that an edit does not touch, wherever they move', () => {
  const toHomes = ({ pages }: Story) => pages.flatMap((page) => homesOf(page).homes)

  it.each([
    ['in plain blocks', '', (at: number) => `Tam **sat** on hen ${at}.`],
    ['in blocks that the parser reads in one go', '', (at: number) => `Tam sat on [a hen](x.png) ${at}.`],
    ['in lists', '', (at: number) => `- a *hen* ${at}\n- a pig &amp; ${at}`],
    ['in a source that cannot be cut', '\n\n[x]: x.png', (at: number) => `Tam *sat* on [a hen][x] ${at}.`],
    ['in headings', '', (at: number) => `## Hen *${at}* &amp; co`],
  ])('%s', (_, end, toText) => {
    const source = Array.from({ length: 50 }, (_, at) => toText(at)).join('\n\n') + end
    for (const at of [0.001, 0.3, 0.5, 0.8]) {
      const held = createHeldStory()
      const before = toHomes(held.read(source))
      for (const put of ['x', 'xx', 'Meg ran.\n\n'])
        for (const edit of [
          { at, isAtLine: true, cut: 0, put },
          { at, isAtLine: true, cut: put.length, put: '' },
        ]) {
          const after = toHomes(held.read(applyEdit(source, edit)))
          expect(after.filter((home) => !before.includes(home)).length).toBeLessThanOrEqual(2)
          expect(before.filter((home) => !after.includes(home)).length).toBeLessThanOrEqual(2)
          held.read(source)
        }
    }
  })
})

/** Versions one after another: only what stands between two texts changes, so that the blocks are known and their page is not. */
it.each([
  ['a break that moves', ['Tam sat.\n\n---\n\n\n\nMeg ran.', 'Tam sat.\n\n\n\n---\n\nMeg ran.']],
  ['a break of another length', ['Tam sat.\n\n---\n\n---\n\nMeg ran.', 'Tam sat.\n\n-----\n\n---\n\nMeg ran.']],
  ['a picture that comes', ['Tam sat.\n\n---\n\n\n\nMeg ran.', 'Tam sat.\n\n---\n![\n](x)\nMeg ran.']],
  [
    'a break that is a heading',
    ['A hen.\n\n---\n\nMeg ran.', 'A hen.\n\n## \n\nMeg ran.', 'A hen.\n\n# a\n\nMeg ran.'],
  ],
  [
    'a page that goes, and comes again',
    ['A.\n\n---\n\nB.\n\n---\n\nC.', 'A.\n\n---\n\nC.', 'A.\n\n---\n\nB.\n\n---\n\nC.'],
  ],
  ['a heading that becomes the title', ['Tam.\n\n# Hens\n\nMeg.', '# Hens\n\nMeg.', 'Tam.\n\n# Hens\n\nMeg.']],
  ['what cannot be read', ['Tam sat.\n\nMeg ran.', 'Tam sat.\0\n\nMeg ran.', 'Tam sat!\n\nMeg ran.']],
  [
    'what stands too deep twice',
    [
      `${'- '.repeat(60)}a\n\nTam sat.\n\n${'- '.repeat(60)}b`,
      `Meg ran.\n\n${'- '.repeat(60)}a\n\nTam sat.\n\n${'- '.repeat(60)}b`,
    ],
  ],
  ['a text that becomes a heading', ['Tam\n\nMeg sat.', '# Tam\n\nMeg sat.', 'Tam\n===\n\nMeg sat.']],
  ['text whose end moves', ['Tam sat<!-- a -->\n\nMeg ran.', 'Tam sat<!-- ab -->\n\nMeg ran.', 'Tam sat\n\nMeg ran.']],
  ['text written in another way', ['Tam & *Meg*\n\nIt ran.', 'Tam &amp; *Meg*\n\nIt ran.', 'Tam & _Meg_\n\nIt ran.']],
  ['emphasis that comes and goes', ['A *hen* sat\n\nIt ran.', 'A hen *sat*\n\nIt ran.', 'A *hen sat*\n\nIt ran.']],
  ['a source that is cut no more', ['A.\n\nB.\n\n```\n\nC.\n\n```', 'A.\n\nB.\n\n\n\nC.\n\n```', 'A.\n\nB.\n\nC.\n\n']],
])('%s: %j', (_, versions) => {
  const held = createHeldStory()
  for (const source of versions) expect(toText(held.read(source))).toBe(toText(readStory(source)))
  // Once more, as somebody who undoes it.
  for (const source of versions.toReversed()) expect(toText(held.read(source))).toBe(toText(readStory(source)))
})

describe('what is known stays the same object', () => {
  const before = 'Tam sat.\n\nThe hen *ran*.\n\n---\n\nMeg ran.\n\n---\n\nA pig sat.\n\nIt hid.'

  it('a page that an edit neither touches nor moves', () => {
    const held = createHeldStory()
    const { pages } = held.read(before)
    expect(held.read(before).pages).toEqual(pages)
    expect(held.read(before).pages.map((page, at) => page === pages[at])).toEqual([true, true, true])
    const typed = held.read(before.replace('Meg ran', 'Meg and Tam ran')).pages
    expect(typed.map((page, at) => page === pages[at])).toEqual([true, false, false])
    const atEnd = held.read(`${before.replace('Meg ran', 'Meg and Tam ran')} a`).pages
    expect(atEnd.map((page, at) => page === typed[at])).toEqual([true, true, false])
  })

  it('a block, until it moves; and one that has moved, until it moves again', () => {
    const held = createHeldStory()
    const blocksOf = (source: string) => held.read(source).pages.flatMap((page) => page.blocks)
    const first = blocksOf(before)
    const longer = before.replace('Tam sat', 'Tam sat up')
    const moved = blocksOf(longer)
    expect(moved.map((block, at) => block === first[at])).toEqual([false, false, false, false, false])
    expect(moved.map(({ start }) => start)).toEqual(
      readStory(longer).pages.flatMap(({ blocks }) => blocks.map(({ start }) => start)),
    )
    // The edit at the end touches no other block.
    const last = blocksOf(`${longer} a`)
    expect(last.map((block, at) => block === moved[at])).toEqual([true, true, true, true, false])
    // Back where they were read, they are what they were.
    expect(blocksOf(before).map((block, at) => block === first[at])).toEqual([false, true, true, true, false])
  })

  it('the sentences of a block, asked twice', () => {
    const held = createHeldStory()
    held.read(before)
    const block = held.read(`A.\n\n${before}`).pages[1]?.blocks[0]
    expect(block?.sentences).toBe(block?.sentences)
    expect(block?.sentences[0]?.block).toBe(block)
    expect(homesOf(readStory(before).pages[1] ?? expect.fail()).starts).toEqual([before.indexOf('Meg')])
  })
})

// What is read again behind an edit: never the whole. Counted in parts that are cut and parts that are parsed; the clock is not asked.
describe('of a story of many parts', () => {
  /** Each is a part of its own: the parser must see it, and it is long enough. */
  const toHard = (name: string) => `${name} *ran* to [a pond](x.png). ${'It hid and sat. '.repeat(70)}End.`
  const names = ['Ann', 'Bob', 'Cal', 'Dot', 'Eve', 'Fay', 'Gus', 'Hal']

  function open(source: string) {
    const work = { cut: [] as string[], read: [] as string[] }
    const toName = (text: string, { start, end }: Range) => text.slice(start, end).trim().split(' ')[0] ?? ''
    const held = createHeldStory({
      *cut(text, ...rest) {
        for (const part of cutParts(text, ...rest)) {
          work.cut.push(toName(text, part))
          yield part
        }
      },
      parse(text, part, base) {
        work.read.push(toName(text, part))
        return parsePart(text, part, base)
      },
    })
    held.read(source)
    const all = { ...work }
    return {
      all,
      edit(to: string) {
        Object.assign(work, { cut: [], read: [] })
        expect(toText(held.read(to))).toBe(toText(readStory(to)))
        return work
      },
    }
  }

  const story = names.map(toHard).join('\n\n')

  it('reads each part once at first', () => {
    expect(open(story).all).toEqual({ cut: names, read: names })
  })

  it.each([
    // The part before is cut again, for where it ends depends on what follows; cut as it was, it is not read again.
    ['in the middle of one', 'Dot *ran*', 'Dot *rans*', ['Cal', 'Dot', 'Eve'], ['Dot']],
    ['at the start of one', 'Dot *ran*', 'xDot *ran*', ['Cal', 'xDot', 'Eve'], ['xDot']],
    ['in the first', 'Ann *ran*', 'Ann *rans*', ['Ann', 'Bob'], ['Ann']],
    ['in the second', 'Bob *ran*', 'Bob *rans*', ['Ann', 'Bob', 'Cal'], ['Bob']],
    ['in the last', 'Hal *ran*', 'Hal *rans*', ['Gus', 'Hal'], ['Hal']],
    ['of a letter for another', 'Dot *ran*', 'Dot *Ran*', ['Cal', 'Dot', 'Eve'], ['Dot']],
    ['that takes letters away', 'Dot *ran*', 'Dot *r*', ['Cal', 'Dot', 'Eve'], ['Dot']],
    ['of a text between two', '\n\nDot', '\n\nZoe sat.\n\nDot', ['Cal', 'Zoe', 'Dot'], ['Zoe']],
    ['that takes one away', `${toHard('Dot')}\n\n`, '', ['Cal', 'Eve'], []],
    ['of blank lines', '\n\nDot', '\n\n\n\nDot', ['Cal', 'Dot'], []],
  ])('an edit %s', (_, old, put, cut, read) => {
    const { edit } = open(story)
    expect(edit(story.replace(old, put))).toEqual({ cut, read })
    // And once more, from there.
    const again = story.replace(old, put).replace('Gus *ran*', 'Gus *rans*')
    if (!old.includes('Hal')) expect(edit(again)).toEqual({ cut: ['Fay', 'Gus', 'Hal'], read: ['Gus'] })
  })

  it('reads nothing again where nothing has changed', () => {
    expect(open(story).edit(story)).toEqual({ cut: [], read: [] })
  })

  it('cuts a source anew where it could not be cut, and reads it as one where it cannot be', () => {
    const whole = open(`${story}\n\n[x]: y`)
    expect(whole.all).toEqual({ cut: ['Ann'], read: ['Ann'] })
    expect(whole.edit(story)).toEqual({ cut: names, read: names })
    expect(whole.edit(story.replace('Dot *ran*', 'Dot *rans*'))).toEqual({ cut: ['Cal', 'Dot', 'Eve'], read: ['Dot'] })
    expect(whole.edit(`${story}\n\n[x]: y`)).toEqual({ cut: ['Ann'], read: ['Ann'] })
  })

  it('cuts all anew where the front matter ends elsewhere, and reads what stands before the edit no more', () => {
    const top = '---\ntitle: Tip\n---\n\n'
    const { edit } = open(top + story)
    // The front matter stays, and what is behind it.
    expect(edit(`---\ntitle: Tips\n---\n\n${story}`)).toEqual({ cut: ['Ann'], read: [] })
    expect(edit(story)).toEqual({ cut: ['Ann'], read: [] })
    expect(edit(top + story)).toEqual({ cut: ['Ann'], read: [] })
  })
})

describe('of a long story', () => {
  const FRONT = '---\ntitle: Hens\n---\n\n'
  const KINDS = [
    (at: number) => `- a *hen* ${at}\n- a \`x\` pig`,
    (at: number) => `Tam **sat** on hen ${at}.`,
    (at: number) => `Meg ran to [a pond](x.png) ${at}.`,
  ]
  const blocks = Array.from({ length: 400 }, (_, at) => KINDS[at % KINDS.length]?.(at) ?? '')
  const long = `${FRONT}${blocks.join('\n\n')}\n`
  const middle = long.length >> 1

  it.each([
    ['in the front matter', FRONT.indexOf('Hens')],
    ['in the first block', FRONT.length + 4],
    ['in the middle', middle],
    ['between two blocks', long.indexOf('\n\n', middle) + 1],
    ['in the last block', long.length - 2],
  ])('an edit %s is read in a small part of the time that the whole takes', (_, at) => {
    const held = createHeldStory()
    held.read(long)
    let version = long
    const edit = () => {
      version = `${version.slice(0, at)}x${version.slice(at)}`
      held.read(version)
    }
    expectPart(edit, () => readStory(long), 3)
    // Nothing is read again where nothing has changed.
    expectPart(
      () => held.read(version),
      () => readStory(long),
      30,
    )
  })
})
