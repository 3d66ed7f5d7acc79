import { dictionary } from 'cmu-pronouncing-dictionary'
import { describe, expect, it } from 'vitest'
import { ate } from '../../src/phonics/heteronyms/rows/ate.ts'
import { read } from '../../src/phonics/heteronyms/rows/read.ts'
import { senses } from '../../src/phonics/heteronyms/rows/senses.ts'
import { stress } from '../../src/phonics/heteronyms/rows/stress.ts'
import { use } from '../../src/phonics/heteronyms/rows/use.ts'
import { findHeteronym, heteronyms } from '../../src/phonics/heteronyms/table.ts'
import type { Heteronym } from '../../src/phonics/heteronyms/types.ts'

const words = heteronyms.map(({ word }) => word)

/** Every pronunciation of the CMU Pronouncing Dictionary: under `word`, `word(2)`, `word(3)`… */
function toDictionary(word: string): readonly string[] {
  return [word, `${word}(2)`, `${word}(3)`, `${word}(4)`, `${word}(5)`].flatMap((key) => dictionary[key] ?? [])
}

describe('the table of heteronyms', () => {
  it('has each word once, and each file in order', () => {
    expect(new Set(words).size).toBe(words.length)
    for (const rows of [ate, read, senses, stress, use] as readonly (readonly Heteronym[])[]) {
      const own = rows.map(({ word }) => word)
      expect(own).toEqual([...own].sort())
    }
  })

  it('holds the words that a story for children meets first', () => {
    const common =
      'read live lives wind tear tears use used close lead bow row wound minute present object record content desert ' +
      'does sow sewer dove bass polish refuse house excuse separate perfect upset'
    expect(common.split(' ').filter((word) => !findHeteronym(word))).toEqual([])
  })

  it.each(heteronyms.map((row) => [row.word, row] as const))(
    '%s: forms differ in key and sound, and are in the dictionary or marked',
    (word, row) => {
      expect(row.forms.length).toBe(2)
      expect(new Set(row.forms.map(({ form }) => form)).size).toBe(2)
      expect(new Set(row.forms.map(({ sounds }) => sounds)).size).toBe(2)
      for (const form of row.forms) {
        expect(toDictionary(word).includes(form.sounds), `${word} ${form.form}`).toBe(!('byHand' in form))
        expect(form.sounds).toMatch(/^[A-Z]{1,2}[012]?( [A-Z]{1,2}[012]?)*$/)
        expect(form.meaning.length).toBeGreaterThan(3)
        expect(form.example.toLowerCase().split(/[^a-z]+/)).toContain(word)
        for (const phrase of form.phrases ?? [])
          expect(phrase.split(' ').filter((part) => part === '_')).toHaveLength(1)
      }
      if (row.otherwise !== undefined) expect(row.forms.map(({ form }) => form)).toContain(row.otherwise)
    },
  )

  it('leaves out words with one sound, and finds a word in any case', () => {
    for (const word of ['leaves', 'closed', 'cat', '', 'constructor']) expect(findHeteronym(word)).toBeUndefined()
    expect(findHeteronym('Read')?.word).toBe('read')
  })
})
