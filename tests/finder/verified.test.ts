// Every word that any list can propose is judged again by the engine, at every step of every built-in sequence; and every
// one of them is fit for children.

import { cuss } from 'cuss'
import { describe, expect, it } from 'vitest'
import { readOwnRows } from '../../scripts/build/unfit.ts'
import { findWords, openSheet } from '../../src/finder/index.ts'
import { knowledgeAt } from '../../src/sequence/index.ts'
import { isReadable, judge } from '../../src/verdict/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { ACCENTS, SEQUENCES, testPool, testSequence, testTable, testWords } from './sources.ts'

const fitness = testWords().fitness()

/** Words that a slur or a profanity is listed for in the package cuss 2.2.0, and that the project lets through with a reason. */
const rated = (word: string): number => (cuss as Readonly<Record<string, number>>)[word] ?? 0

describe.each(SEQUENCES.flatMap((name) => ACCENTS.map((accent) => ({ name, accent }))))(
  '$name in $accent',
  ({ name, accent }) => {
    const sequence = testSequence(name, accent)
    const phonics = testPhonics(accent)

    // What differs between the accents differs at few steps.
    const tried = sequence.steps.filter((_, at) => accent === ACCENTS[0] || at % 3 === 0)
    it.each(tried.map(({ id }) => id))('lists at %s only what the engine reads there', (step) => {
      const knowledge = knowledgeAt(sequence, step)
      const { words } = findWords(testPool(sequence, step))
      expect(words.length).toBeGreaterThan(0)
      const wrong = words.filter(({ word }) => !isReadable(phonics.read(word), knowledge)).map(({ word }) => word)
      expect(wrong).toEqual([])
      expect(words.filter(({ word }) => !fitness.isFit(word)).map(({ word }) => word)).toEqual([])
    })

    it('says of a sample whether it is known by heart as the engine does', () => {
      for (const { id } of sequence.steps.filter((_, at) => at % 4 === 0)) {
        const knowledge = knowledgeAt(sequence, id)
        const { words } = findWords(testPool(sequence, id), { kinds: ['little'] })
        const wrong = words
          .filter(({ word, isSight }) => isSight !== (judge(phonics.read(word), knowledge).kind === 'sight'))
          .map(({ word }) => word)
        expect(wrong).toEqual([])
      }
    })

    it('gives each word the first step at which the engine reads it', () => {
      const last = sequence.steps.at(-1)?.id ?? ''
      const { words } = findWords(testPool(sequence, last), { known: true, base: true })
      const wrong = words.filter(({ word, readableAt }, at) => {
        if (at % 5 !== 0 || readableAt === null) return false
        const index = sequence.steps.findIndex(({ id }) => id === readableAt)
        const before = sequence.steps[index - 1]?.id
        const pronunciations = phonics.read(word)
        const isEarlier =
          before !== undefined && !pronunciations.heteronym && isReadable(pronunciations, knowledgeAt(sequence, before))
        return isEarlier || !isReadable(pronunciations, knowledgeAt(sequence, readableAt))
      })
      expect(wrong.map(({ word }) => word)).toEqual([])
    })

    it('has only fit words on every sheet', () => {
      for (const { id } of sequence.steps) {
        const words = openSheet(testPool(sequence, id), {})(400).flatMap((part) => part.words)
        expect(words.filter(({ word }) => !fitness.isFit(word)).map(({ word }) => word)).toEqual([])
      }
    })
  },
)

it('lists no word that the package cuss rates at 2, its surest rating, but for those whose row says why a child may have it', () => {
  const allowed = new Set(readOwnRows().flatMap(({ key, word }) => (key === 'plain-first' ? [word] : [])))
  const table = testTable()
  const sequence = testSequence('common-core')
  const { words } = findWords(testPool(sequence, sequence.steps.at(-1)?.id ?? ''))
  expect(words.length).toBeGreaterThan(table.size / 2)
  expect(words.filter(({ word }) => rated(word) === 2 && !allowed.has(word)).map(({ word }) => word)).toEqual([])
})

it('lists no name and no abbreviation', () => {
  const listed = new Set(Array.from({ length: testTable().size }, (_, row) => testTable().wordAt(row)))
  // From memory: given names, places and abbreviations that the pronouncing dictionary holds.
  for (const word of 'london paris emma kevin susan robert mr mrs dr tv usa ibm nato'.split(' '))
    expect(listed.has(word), word).toBe(false)
})
