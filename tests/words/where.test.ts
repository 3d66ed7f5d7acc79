// The signs by which the table of stand-ins says where a word can stand or go are the project's own, no source.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { CONDITIONS } from '../../src/words/conditions/index.ts'
import { findLeaving } from '../../src/words/leaving-out.ts'
import { openStandIns } from '../../src/words/stand-ins.ts'
import { toPlaceTest } from '../../src/words/where.ts'
import { data, lexicon } from './small.ts'

const factsOf = (word: string) => {
  const at = lexicon.indexOf(word)
  return at < 0 ? undefined : data.facts.factsAt(at)
}

/** Whether a condition holds at the word in brackets. */
function holds(where: string, sentence: string): boolean {
  const tokens = sentence.toLowerCase().match(/[\w'[\]]+|[^\w\s]/g) ?? []
  const at = tokens.findIndex((token) => token.startsWith('['))
  return toPlaceTest(where, CONDITIONS)({ before: tokens.slice(0, at), after: tokens.slice(at + 1) }, factsOf)
}

describe('where a word can stand', () => {
  it.each([
    ['<fell,ran', 'He fell [into] it.'],
    ['>up', 'He [got] up.'],
    ['=lamp', 'He [made] a big red lamp.'],
    ['~hands', 'He [carried] it in his hands.'],
    ['!<fell', 'He ran [into] it.'],
    ['e+<off', 'He ran off [again].'],
    ['lv', 'He [saw] the big dog.'],
    ['lt', 'He [asked] the man to sit.'],
    ['Pu', 'He [woke] him up.'],
    ['ue', 'He [woke] up.'],
    ['qs', '[Could] you sit?'],
    ['mg', 'He is [going] to the hut.'],
    ['He', 'The man sat [alone].'],
    ['ex', '"Stop!" [says] Sam.'],
  ])('%s: %s', (where, sentence) => {
    expect(holds(where, sentence)).toBe(true)
  })

  it.each([
    ['<fell', 'He ran [into] it.'],
    ['=lamp', 'He [made] a big red hat of lamp oil.'],
    ['~hands', 'He [carried] it up the hill and in at the red gate with his hands.'],
    ['e+<off', 'He ran off [again] it.'],
    ['lv', 'He [saw] the big hat.'],
    ['lt', 'He [asked] the man.'],
    ['ue', 'He [woke] up the man.'],
    ['qs', 'I [could] sit.'],
    ['mg', 'He is [going] to sit.'],
    ['He', 'I sat [alone].'],
    ['ex', '"Stop." [says] Sam.'],
  ])('%s, not here: %s', (where, sentence) => {
    expect(holds(where, sentence)).toBe(false)
  })

  it('tells a sign that stands for nothing', () => {
    expect(() => toPlaceTest('e+zz', CONDITIONS)).toThrow('no condition is called zz')
  })

  it('knows every sign of the table', () => {
    const text = readFileSync(new URL('../../src/words/data/stand-ins.tsv', import.meta.url), 'utf8')
    const table = openStandIns(new TextEncoder().encode(text))
    const kinds = { n: 'noun', v: 'verb', a: 'adjective', d: 'adverb', '=': 'form' } as const
    const place = { before: ['he'], after: ['it'] }
    const rows = text.split('\n').filter((row) => row !== '' && !row.startsWith('#'))
    expect(rows.length).toBeGreaterThan(3000)
    for (const row of rows) {
      const [word = '', kind = ''] = row.split('\t')
      const part = kinds[kind as keyof typeof kinds]
      expect(part, row).toBeDefined()
      expect(() => table.find(word, part), row).not.toThrow()
      const use = part === 'form' ? undefined : part
      expect(() => findLeaving(word, factsOf(word), table, factsOf).canGo(use, place), row).not.toThrow()
    }
  })

  it('holds its rows sorted, each word once as each kind', () => {
    const text = readFileSync(new URL('../../src/words/data/stand-ins.tsv', import.meta.url), 'utf8')
    const keys = text
      .split('\n')
      .filter((row) => row !== '' && !row.startsWith('#'))
      .map((row) => row.split('\t').slice(0, 2).join('\t'))
    expect(new Set(keys).size).toBe(keys.length)
    const words = keys.map((key) => key.split('\t')[0] ?? '')
    expect(words).toEqual([...words].sort())
  })
})
