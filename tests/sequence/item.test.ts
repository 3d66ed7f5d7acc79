// One thing that is taught, as a teacher types it. Which words are in the dictionary is the dictionary's own; the rest is ours.

import { describe, expect, it } from 'vitest'
import { toProblemText } from '../../src/problem/index.ts'
import { resolveItem, toItemKey, type Unlisted } from '../../src/sequence/item.ts'
import type { TaughtCorrespondence } from '../../src/sequence/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const phonics = testPhonics('general-american')
const examples: readonly TaughtCorrespondence[] = [
  { letters: 'ai', example: 'rain', key: 'ai=eɪ' },
  { letters: 'm', example: 'map', key: 'm=m' },
]
const resolve = (written: string, unlisted?: Unlisted) => resolveItem(written, phonics, examples, unlisted)

const toSaid = (written: string, unlisted?: Unlisted) => {
  const resolved = resolve(written, unlisted)
  return 'problem' in resolved ? `${resolved.problem.code}: ${toProblemText(resolved.problem)}` : resolved
}

describe('what can be taught', () => {
  it.each([
    ['ai as in rain', { kind: 'correspondence', written: 'ai as in rain', keys: ['ai=eɪ'] }],
    [' n as in bank ', { kind: 'correspondence', written: 'n as in bank', keys: ['n=ŋ'] }],
    ['-ed', { kind: 'ending', written: '-ed', ending: '-ed' }],
    ["'s", { kind: 'ending', written: "'s", ending: "'s" }],
    ['’s', { kind: 'ending', written: "'s", ending: "'s" }],
    ['said', { kind: 'word', written: 'said' }],
    ["can't", { kind: 'word', written: "can't" }],
    ['a', { kind: 'word', written: 'a' }],
    ['I', { kind: 'word', written: 'I' }],
    ['O', { kind: 'word', written: 'O' }],
    ['Zubrick', { kind: 'word', written: 'Zubrick' }],
    ["it's", { kind: 'word', written: "it's" }],
    ["o'clock", { kind: 'word', written: "o'clock" }],
    ['well-known', { kind: 'word', written: 'well-known' }],
  ])('%s', (written, item) => {
    expect(resolve(written)).toEqual({ item })
  })

  // Letters that say one sound in other words, and words of their own: any dictionary has them.
  it.each(['a', 'air', 'are', 'ear', 'oar', 'or', 'ore', 'ow'])('%s is a word', (written) => {
    expect(resolve(written)).toEqual({ item: { kind: 'word', written } })
  })

  it.each([
    ['ai as in rain', 'teach'],
    ['-ed', 'endings'],
    ["'s", 'endings'],
    ['said', 'sight words'],
    ["can't", 'contractions'],
    ['can’t', 'contractions'],
    ['canʼt', 'contractions'],
  ])('%s stands under %s', (written, key) => {
    const resolved = resolve(written)
    expect('item' in resolved && toItemKey(resolved.item)).toBe(key)
  })
})

describe('what cannot, with the nearest that can', () => {
  it.each([
    ['ai', 'bad-value: `ai` stands alone: a sound is written with an example word. Did you mean `ai as in rain`?'],
    ['AI', 'bad-value: `AI` stands alone: a sound is written with an example word. Did you mean `ai as in rain`?'],
    ['m', 'bad-value: `m` stands alone: a sound is written with an example word. Did you mean `m as in map`?'],
    ['k', 'bad-value: `k` stands alone: a sound is written with an example word. Write it as `ai as in rain`.'],
    ['igh', 'bad-value: `igh` stands alone: a sound is written with an example word. Write it as `ai as in rain`.'],
    ['oo', 'bad-value: `oo` stands alone: a sound is written with an example word. Write it as `ai as in rain`.'],
    ['EE', 'bad-value: `EE` stands alone: a sound is written with an example word. Write it as `ai as in rain`.'],
    ['str', 'bad-value: `str` stands alone: a sound is written with an example word. Write it as `ai as in rain`.'],
    ['i', 'bad-value: `i` stands alone: a sound is written with an example word. Write it as `ai as in rain`.'],
    ['é', 'bad-value: `é` stands alone: a sound is written with an example word. Write it as `ai as in rain`.'],
    [
      'ai as rain',
      'bad-example: `ai as rain` cannot be read: write letters and an example word. Did you mean `ai as in rain`?',
    ],
    ['-ign', 'bad-value: `-ign` is no ending that can be taught. Did you mean `-ing`?'],
    [
      '-ation',
      "bad-value: `-ation` is no ending that can be taught. The endings are -s, -es, -ed, -ing, -er, -est, 's.",
    ],
    [
      '7up',
      'bad-value: `7up` cannot be read. Write a sound with an example word (`ai as in rain`), an ending (`-ed`), or a word known by heart (`said`).',
    ],
    ['thier', 'bad-value: `thier` is not in the dictionary, so it is no word to learn by heart. Did you mean `their`?'],
    [
      'zubrick',
      'bad-value: `zubrick` is not in the dictionary, so it is no word to learn by heart. A sound is written with an example word, as `ai as in rain`; an ending with a dash, as `-ed`.',
    ],
  ])('%s', (written, said) => {
    expect(toSaid(written)).toBe(said)
  })
})

describe.each(['7up', 'up7', "'seven", "se'ven!", 'a_e', ''])('%j', (written) => {
  it('cannot be read at all', () => {
    expect(toSaid(written)).toContain(`\`${written}\` cannot be read. Write a sound with an example word`)
  })
})

it('only what begins with a capital and goes on small is a name without question', () => {
  for (const written of ['zubrickO', 'ZUBRICK', 'zUbrick'])
    expect([written, toSaid(written)]).toEqual([written, expect.stringContaining('is not in the dictionary')])
})

describe('a word that nobody knows, in a sequence', () => {
  it("is taken, and doubted where it may be a maker's own", () => {
    const resolved = resolve('zubrick', 'doubted')
    expect(resolved).toMatchObject({
      item: { kind: 'word', written: 'zubrick' },
      doubt: { code: 'unknown-name', severity: 'warning' },
    })
    expect('doubt' in resolved && resolved.doubt && toProblemText(resolved.doubt)).toMatch(
      /^`zubrick` is not in the dictionary; it is taken as you wrote it\. A sound is written with an example word/,
    )
  })

  it('is taken without a word where the file itself tells the slip', () => {
    expect(resolve('thier', 'doubted')).toEqual({ item: { kind: 'word', written: 'thier' } })
  })
})
