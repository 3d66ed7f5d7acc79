import { dictionary } from 'cmu-pronouncing-dictionary'
import { describe, expect, it } from 'vitest'
import { readHeteronyms } from '../../scripts/build/heteronyms/read.ts'
import { heteronyms, table } from '../../scripts/build/heteronyms/table.ts'
import { toProblemLine } from '../../src/problem/index.ts'

const words = heteronyms.map(({ word }) => word)

/** Every pronunciation of the CMU Pronouncing Dictionary: under `word`, `word(2)`, `word(3)`… */
function toDictionary(word: string): readonly string[] {
  return [word, `${word}(2)`, `${word}(3)`, `${word}(4)`, `${word}(5)`].flatMap((key) => dictionary[key] ?? [])
}

describe('the table of heteronyms', () => {
  it('has each word once', () => {
    expect(new Set(words).size).toBe(words.length)
  })

  it('holds the words that a story for children meets first', () => {
    const common =
      'read live lives wind tear tears use used close lead bow row wound minute present object record content desert ' +
      'does sow sewer dove bass polish refuse house excuse separate perfect upset'
    expect(common.split(' ').filter((word) => !table.find(word))).toEqual([])
  })

  it('has no topic that is itself a look-alike: two of them in a text would sway each other', () => {
    const topics = heteronyms.flatMap(({ forms }) => forms.flatMap(({ topics = '' }) => topics.split(' ')))
    expect(topics.filter((topic) => words.includes(topic))).toEqual([])
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
    for (const word of ['leaves', 'closed', 'cat', '', 'constructor']) expect(table.find(word)).toBeUndefined()
    expect(table.find('Read')?.word).toBe('read')
  })
})

const ROWS = `- word: row
  forms:
    - form: line
      classes: [noun, verb]
      sounds: R OW1
      meaning: a line of things
      example: Six ducks swam in a row.
      phrases:
        - in a _
    - form: quarrel
      classes: [noun]
      sounds: R AW1
      by hand: true
      meaning: a quarrel
      example: The boys had a row.
`
const toProblems = (yaml: string) => readHeteronyms(yaml, 'rows.yaml').problems.map(toProblemLine)

describe('a file of heteronyms', () => {
  it('is read as it stands', () => {
    const { rows, problems } = readHeteronyms(ROWS, 'rows.yaml')
    expect(problems).toEqual([])
    expect(rows[0]?.forms[1]).toMatchObject({ form: 'quarrel', byHand: true, sounds: 'R AW1' })
  })

  it.each([
    ['meaning: a quarrel', 'meanng: a quarrel', 'rows.yaml:14:7'],
    ['classes: [noun]', 'classes: [nuon]', 'rows.yaml:11:17'],
    ['sounds: R AW1', 'sounds: raw', 'rows.yaml:12:15'],
    ['sounds: R AW1', 'sounds: R OW1', 'rows.yaml:12:15'],
    ['form: quarrel', 'form: line', 'rows.yaml:10:13'],
    ['- in a _', '- in a', 'rows.yaml:9:11'],
    ['- in a _', "- '@numbr _'", 'rows.yaml:9:11'],
    ['had a row', 'had a fight', 'rows.yaml:15:16'],
    ['- word: row', '- word: row\n  otherwise: lin', 'rows.yaml:2:14'],
    ['- word: row', '- word: Row', 'rows.yaml:1:9'],
  ])('with `%s` written as `%s` is told so at its place', (right, wrong, place) => {
    const problems = toProblems(ROWS.replace(right, wrong))
    expect(
      problems.some((line) => line.startsWith(place)),
      problems.join('\n'),
    ).toBe(true)
  })

  it('tells a row out of order, and one that is there twice', () => {
    expect(toProblems(`${ROWS}${ROWS.replaceAll('row', 'bow')}`)[0]).toMatch(/^rows\.yaml:16:9.*belongs before/)
    expect(toProblems(`${ROWS}${ROWS}`)[0]).toMatch(/^rows\.yaml:16:9.*twice/)
  })
})
