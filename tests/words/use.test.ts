import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { WordFacts } from '../../src/words/index.ts'
import { findUse, toUses } from '../../src/words/use.ts'
import { testWords } from '../finder/sources.ts'
import { testLexicon } from '../lexicon-for-tests.ts'

function factsOf(word: string): WordFacts | undefined {
  const place = testLexicon().indexOf(word)
  return place < 0 ? undefined : testWords().facts.factsAt(place)
}

function use(before: string, word: string, after = ''): string {
  const facts = factsOf(word)
  if (!facts) throw new Error(`${word} is not in the lexicon`)
  const split = (text: string): string[] => text.split(' ').filter(Boolean)
  const found = findUse(word, facts, { before: split(before), after: split(after) }, factsOf)
  return found === undefined ? 'not told' : `${found.part} ${found.inflection}`
}

describe('how a sentence uses a word', () => {
  it.each([
    ['the', 'play', '', 'noun none'],
    ['can', 'play', '', 'verb none'],
    ['they', 'sleep', '', 'verb none'],
    ['big', 'play', '', 'noun none'],
    ['his', 'walks', '', 'noun plural'],
    ['she', 'walks', '', 'verb third'],
    ['the', 'light', 'box', 'adjective none'],
    ['the', 'light', '.', 'noun none'],
    ['the dog had', 'jumped', '.', 'verb participle'],
    ['the dog', 'jumped', '.', 'verb past'],
    ['he', 'hurt', 'him', 'verb past'],
    ['can', 'hurt', 'him', 'verb none'],
    ['they have', 'come', 'out', 'verb participle'],
    ['they had', 'become', 'sad', 'verb participle'],
    ['they will', 'come', 'out', 'verb none'],
    ['they stopped', 'singing', '.', 'verb ing'],
    ['let us', 'play', '.', 'verb none'],
    ['they went to', 'visit', 'him', 'verb none'],
    ['he worked', 'hard', 'all day', 'adverb none'],
    ['they went to', 'bed', '.', 'noun none'],
    ['is', 'very', 'happy', 'adverb none'],
  ])('%s [%s] %s is a %s', (before, word, after, expected) => {
    expect(use(before, word, after)).toBe(expected)
  })

  it('knows a word of one kind by itself', () => {
    expect(use('', 'rabbits')).toBe('noun plural')
  })

  it.each([
    ['', 'play', ''],
    ['the', 'visiting', 'queen'],
    ['', 'took', 'his walk'],
    ['they', 'hurt', 'him'],
    ['they went to', 'work', '.'],
  ])('says where it is not told: %s [%s] %s', (before, word, after) => {
    expect(use(before, word, after)).toBe('not told')
  })
})

it('tells no use that a word alone would not allow', () => {
  const lexicon = testLexicon()
  const word = fc.nat(lexicon.size - 1).map((at) => lexicon.wordAt(at))
  const token = fc.oneof(word, fc.constantFrom(...'. , “ ” had was the a very he they can to not and of'.split(' ')))
  const around = fc.array(token, { maxLength: 3 })
  fc.assert(
    fc.property(word, around, around, (wanted, before, after) => {
      const facts = factsOf(wanted)
      if (facts?.main === undefined || facts.main === 'little') return
      const found = findUse(wanted, facts, { before, after }, factsOf)
      if (found !== undefined) expect(toUses(wanted, facts), `${before} [${wanted}] ${after}`).toContainEqual(found)
    }),
    { numRuns: Number(process.env['USE_RUNS'] ?? 3000) },
  )
})
