// The table of first steps against the engine that it was made with, asked anew.

import { expect, it } from 'vitest'
import { listCandidates } from '../../scripts/build/first-steps.ts'
import { hasApostrophe } from '../../src/apostrophe.ts'
import { isReadableInAllForms } from '../../src/finder/forms.ts'
import { isUnhelpful } from '../../src/finder/unhelpful.ts'
import { hashText } from '../../src/hash.ts'
import { knowledgeAt } from '../../src/sequence/knowledge.ts'
import { joinSections } from '../../src/words/bytes.ts'
import { createCandidates } from '../../src/words/candidates.ts'
import { NO_STEP, openFirstSteps, toColumn } from '../../src/words/first-steps.ts'
import { createSuggester } from '../../src/words/suggest.ts'
import { toUses } from '../../src/words/use.ts'
import { testSequence, testWords } from '../finder/sources.ts'
import { testLexicon, testPhonics } from '../lexicon-for-tests.ts'

it('knows every word that any word of the lexicon is looked up with', () => {
  const data = testWords()
  const lexicon = testLexicon()
  const asked = new Set<string>()
  const isReadable = (word: string): boolean => asked.add(word) !== undefined
  const candidates = createCandidates({ data, lexicon, fitness: data.fitness(), isReadable })
  for (const word of lexicon.words()) {
    const facts = candidates.factsOf(word)
    candidates.asItIs(word)
    if (facts) for (const use of toUses(word, facts)) candidates.listed(word, use)
  }
  const column = data.firstSteps.find(toColumn('series', 'general-american'))
  expect(asked.size).toBeGreaterThan(1000)
  expect([...asked].filter((word) => column?.standsFrom(word) === undefined)).toEqual([])
})

it.each(['series', 'england', 'common-core'])('says of %s what the engine says', (name) => {
  const sequence = testSequence(name)
  const phonics = testPhonics(sequence.accent)
  const column = testWords().firstSteps.find(toColumn(name, sequence.accent))
  const words = listCandidates().filter((_, at) => at % 7 === 0)
  const { mayStandFor } = testWords().fitness()
  for (const { id } of sequence.steps.filter((_, at) => at % 4 === 0)) {
    const knowledge = knowledgeAt(sequence, id)
    const now = sequence.steps.findIndex((step) => step.id === id)
    const wrong = words.filter((word) => {
      const isReadable = mayStandFor(word) && !isUnhelpful(word) && isReadableInAllForms(phonics.read(word), knowledge)
      return (column?.standsFrom(word) ?? -1) <= now !== isReadable
    })
    expect(wrong, id).toEqual([])
  }
})

it('tells a word that it lacks from one that is never readable', () => {
  const bytes = joinSections([
    new TextEncoder().encode('one us\ntwo us'),
    new Uint8Array(Uint32Array.of(hashText('pup')).buffer),
    Uint8Array.of(3, NO_STEP),
    new Uint8Array(Uint32Array.of(hashText('puppy')).buffer),
    Uint8Array.of(4, NO_STEP),
  ])
  const steps = openFirstSteps(bytes)
  const [one, two] = ['one us', 'two us'].map((name) => steps.find(name))
  expect([one?.standsFrom('pup'), two?.standsFrom('pup'), two?.standsFrom('pug')]).toEqual([3, Infinity, undefined])
  expect([one?.isHelpedFrom('puppy'), two?.isHelpedFrom('puppy'), one?.isHelpedFrom('pup')]).toEqual([
    4,
    Infinity,
    Infinity,
  ])
  expect(steps.find('three us')).toBeUndefined()
})

it.each(['series', 'england', 'common-core'])('tells for %s exactly the words that anything is said for', (name) => {
  const sequence = testSequence(name)
  const phonics = testPhonics(sequence.accent)
  const data = testWords()
  const lexicon = testLexicon()
  const column = data.firstSteps.find(toColumn(name, sequence.accent))
  const words = [...lexicon.words().filter((_, at) => at % 11 === 0), ...listCandidates()].filter(
    (word) => !hasApostrophe(word),
  )
  for (const { id } of sequence.steps.filter((_, at) => at % 9 === 4)) {
    const knowledge = knowledgeAt(sequence, id)
    const now = sequence.steps.findIndex((step) => step.id === id)
    const isReadable = (word: string) => !isUnhelpful(word) && isReadableInAllForms(phonics.read(word), knowledge)
    const asked = createSuggester({ data, lexicon, fitness: data.fitness(), isReadable })
    const wrong = words.filter((word) => asked.mayHelp(word) !== (column?.isHelpedFrom(word) ?? -1) <= now)
    expect(wrong, id).toEqual([])
    expect(words.some((word) => asked.mayHelp(word))).toBe(true)
  }
})
