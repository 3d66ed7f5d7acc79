// The word that was meant by a slip of the pen, over a small dictionary of its own. Common practice, no source: letters swapped, doubled or not,
// an apostrophe forgotten are the slips that children and their parents make.

import { describe, expect, it } from 'vitest'
import { findSlip } from '../../src/phonics/slip.ts'
import type { Unit, WordPronunciations } from '../../src/phonics/types.ts'

const WORDS = new Set(
  (
    "little table hotel panel until rabbit happen believe friend their don't they're they'll they've i'm can't won't thier no on not ton " +
    'bell bel loose lose form from god good to too off of the see bee ash has'
  ).split(' '),
)

/** `thier` is read as thy with the ending -er. */
const unit = (letters: string, base?: string): Unit => ({ letters, ...(base === undefined ? {} : { base }) }) as Unit
const READ: Readonly<Record<string, readonly Unit[]>> = {
  thier: [unit('th'), unit('i', 'y'), unit('er')],
  form: [unit('f'), unit('or'), unit('m')],
  form2: [],
}

const phonics = {
  isListed: (word: string) => WORDS.has(word),
  read: (word: string) =>
    ({ pronunciations: READ[word] === undefined ? [] : [{ units: READ[word] }] }) as unknown as WordPronunciations,
}

describe('a slip', () => {
  it.each([
    ['littel', 'little'],
    ['tabel', 'table'],
    ['untill', 'until'],
    ['rabit', 'rabbit'],
    ['hapen', 'happen'],
    ['happpen', 'happen'],
    ['belll', 'bell'],
    ['beleive', 'believe'],
    ['freind', 'friend'],
    ['rfiend', 'friend'],
    ['friedn', 'friend'],
    ['thier', 'their'],
    ['Thier', 'their'],
    ['dont', "don't"],
    ['Dont', "don't"],
    ['theyre', "they're"],
    ['theyll', "they'll"],
    ['theyve', "they've"],
    ['cant', "can't"],
    ['nto', 'not'],
    ['hte', 'the'],
  ])('%s is %s', (word, meant) => {
    expect(findSlip(word, phonics)).toBe(meant)
  })

  it.each([
    ['little', 'a known word'],
    ['form', 'a known word beside another'],
    ['Form', 'the same with a capital'],
    ['don’t', 'a known word with a curly apostrophe'],
    ['donʼt', 'the same with a letter for it'],
    ['on', 'a word of two letters'],
    ['goo', 'too short for a doubled letter to mean anything'],
    ['seee1', 'no letters alone'],
    ['1nto', 'no letters alone'],
    ['xyzzy', 'near nothing'],
    ['litttttle', 'far away'],
    ['loooose', 'drawn out'],
    ['seee', 'drawn out'],
    ['im', 'of two letters'],
    ['', 'nothing'],
  ])('%j is none: %s', (word) => {
    expect(findSlip(word, phonics)).toBeUndefined()
  })

  it('prefers the word that the child can read, and else takes the first', () => {
    expect(findSlip('nto', phonics)).toBe('not')
    expect(findSlip('lloose', phonics)).toBe('loose')
    const near = { ...phonics, isListed: (word: string) => ['bell', 'ble'].includes(word) }
    expect(findSlip('bel', near)).toBe('ble')
    const two = { ...phonics, isListed: (word: string) => ['hammer', 'hamre'].includes(word) }
    expect(findSlip('hamer', two)).toBe('hammer')
    expect(findSlip('hamer', two, (word) => word === 'hamre')).toBe('hamre')
    expect(findSlip('hamer', two, () => false)).toBe('hammer')
  })
})
