// The word bank for writing: its parts, its groups, what it says beside its words, and that a terminal holds it on one page.

import { describe, expect, it } from 'vitest'
import { makeBank } from '../../src/cli/words/bank.ts'
import { findEndings, openSheet, type SheetKind } from '../../src/finder/index.ts'
import { toBankLines, toBankText, type WordBank } from '../../src/report/bank.ts'
import { PLAIN } from '../../src/report/paint.ts'
import { testPool, testSequence, testWords } from './sources.ts'

const sequence = testSequence('series')
const open = (step: string) => openSheet(testPool(sequence, step), { base: true })
const partOf = (step: string, kind: SheetKind, count = Infinity) => {
  const part = open(step)(count).find((one) => one.kind === kind)
  if (part === undefined) throw new Error(`there is no part ${kind}`)
  return part
}
const wordsOf = (step: string, kind: SheetKind, count = Infinity): string[] =>
  partOf(step, kind, count).words.map(({ word }) => word)

describe('the parts', () => {
  it('has what happened: past forms that can be read, of whatever base', () => {
    expect(wordsOf('pink-6', 'past')).toEqual(
      expect.arrayContaining(['bit', 'dug', 'fed', 'got', 'hid', 'met', 'ran', 'sat']),
    )
    expect(wordsOf('blue-5', 'past')).toEqual(expect.arrayContaining(['swam', 'went', 'slept', 'kept']))
    expect(wordsOf('pink-2', 'past')).not.toContain('got')
    // Past and base are one: cut, hit.
    expect(wordsOf('pink-6', 'past')).toEqual(expect.arrayContaining(['cut', 'hit']))
  })

  it('has a word under all kinds that it is to a child', () => {
    for (const word of ['mop', 'pin', 'hug', 'run', 'nap']) {
      expect(wordsOf('pink-6', 'naming'), word).toContain(word)
      expect(wordsOf('pink-6', 'doing'), word).toContain(word)
    }
    for (const word of ['yet', 'fifteen', 'indeed', 'seventeen', 'forty']) {
      expect(wordsOf('green-14', 'describing'), word).not.toContain(word)
    }
    expect(wordsOf('green-14', 'little')).toEqual(expect.arrayContaining(['yet', 'fifteen', 'forty']))
  })

  it('groups by vowel in the order of teaching, each group by the alphabet, long words last', () => {
    const labels = partOf('green-2', 'naming').groups.map(({ label }) => label)
    expect(labels.slice(0, 5)).toEqual(['a', 'i', 'o', 'u', 'e'])
    expect(labels).toContain('ai')
    expect(labels.at(-1)).toBe('longer')
    for (const { label, words } of partOf('green-2', 'naming').groups) {
      const listed = words.map(({ word }) => word)
      expect(listed).toEqual([...listed].sort())
      if (!/others|longer/.test(label))
        expect(words.every(({ pronunciation }) => pronunciation.syllables === 1)).toBe(true)
    }
  })

  it('has a few words in one row', () => {
    expect(partOf('pink-1', 'past').groups.map(({ label }) => label)).toEqual([''])
  })

  it('keeps words of the step where it is cut, and says so', () => {
    const part = partOf('green-2', 'naming', 20)
    expect(part.more).toBe(true)
    expect(part.words).toHaveLength(20)
    expect(part.words.filter(({ readableAt }) => readableAt === 'green-2')).toHaveLength(10)
    expect(partOf('pink-1', 'naming', 400).more).toBe(false)
  })
})

describe('what it says beside its words', () => {
  const bankAt = (step: string, name = 'series', fits = (_: WordBank): boolean => true): WordBank =>
    makeBank({ query: {}, pool: testPool(testSequence(name), step), own: ['Tansy'], names: testWords().names(), fits })

  it('shows each ending that is taught on words that can be read', () => {
    expect(findEndings(testPool(sequence, 'pink-6'))).toEqual([])
    expect(findEndings(testPool(sequence, 'blue-2'))).toEqual([{ ending: '-s', examples: ['cats'] }])
    const all = findEndings(testPool(sequence, 'green-14'))
    expect(all.find(({ ending }) => ending === '-ed')?.examples).toEqual(['jumped', 'hopped', 'baked', 'cried'])
  })

  it('names only what can be read, and nobody before there are capital letters', () => {
    expect(bankAt('pink-2').names).toEqual(['Tansy'])
    const { names } = bankAt('pink-5')
    expect(names[0]).toBe('Tansy')
    expect(names).toContain('Ben')
    const pool = testPool(sequence, 'pink-5')
    expect(names.slice(1).every((name) => pool.canRead(name))).toBe(true)
    expect(names.length).toBeLessThanOrEqual(24)
  })

  it('marks what is new, and what is known by heart', () => {
    const { sections, notes } = toBankText(bankAt('pink-4'))
    const words = sections.flatMap(({ rows }) => rows.flatMap((row) => row.words))
    expect(words).toEqual(expect.arrayContaining(['cup+', 'cat', 'the*', 'and+*']))
    expect(notes[0]).toBe('+ new at this step, * known by heart')
    expect(notes.join(' ')).toContain('At most 3 letters in a word')
    expect(notes.join(' ')).toContain('full stop')
  })

  it('says that it is cut only where it is', () => {
    const isTold = (bank: WordBank): boolean =>
      toBankText(bank).notes.some((note) => note.startsWith('There are more words'))
    expect(isTold(bankAt('pink-4'))).toBe(false)
    expect(isTold(bankAt('green-14', 'series', ({ parts }) => parts.every((part) => part.words.length < 40)))).toBe(
      true,
    )
  })
})

it('goes on one page of a terminal at every step', () => {
  const view = { width: 80, paint: PLAIN }
  for (const { id } of sequence.steps) {
    const fits = (bank: WordBank): boolean => toBankLines(bank, view).length <= 55
    const bank = makeBank({ query: {}, pool: testPool(sequence, id), own: [], names: testWords().names(), fits })
    const lines = toBankLines(bank, view)
    expect(lines.length, id).toBeLessThanOrEqual(55)
    expect(
      lines.every((line) => line.length <= 80),
      id,
    ).toBe(true)
  }
})
