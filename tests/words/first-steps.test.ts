// The table of first steps against the engine that it was made with, asked anew.

import { expect, it } from 'vitest'
import { listCandidates } from '../../scripts/build/first-steps.ts'
import { isReadableInAllForms } from '../../src/finder/forms.ts'
import { isUnhelpful } from '../../src/finder/unhelpful.ts'
import { knowledgeAt } from '../../src/sequence/knowledge.ts'
import { joinSections } from '../../src/words/bytes.ts'
import { createCandidates } from '../../src/words/candidates.ts'
import { NO_STEP, openFirstSteps, toColumn } from '../../src/words/first-steps.ts'
import { hashWord } from '../../src/words/fitness.ts'
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
  const firstStepOf = data.firstSteps.find(toColumn('series', 'general-american'))
  expect(asked.size).toBeGreaterThan(1000)
  expect([...asked].filter((word) => firstStepOf?.(word) === undefined)).toEqual([])
})

it.each(['series', 'england', 'common-core'])('says of %s what the engine says', (name) => {
  const sequence = testSequence(name)
  const phonics = testPhonics(sequence.accent)
  const firstStepOf = testWords().firstSteps.find(toColumn(name, sequence.accent))
  const words = listCandidates().filter((_, at) => at % 7 === 0)
  for (const { id } of sequence.steps.filter((_, at) => at % 4 === 0)) {
    const knowledge = knowledgeAt(sequence, id)
    const now = sequence.steps.findIndex((step) => step.id === id)
    const wrong = words.filter((word) => {
      const isReadable = !isUnhelpful(word) && isReadableInAllForms(phonics.read(word), knowledge)
      return (firstStepOf?.(word) ?? -1) <= now !== isReadable
    })
    expect(wrong, id).toEqual([])
  }
})

it('tells a word that it lacks from one that is never readable', () => {
  const bytes = joinSections([
    new TextEncoder().encode('one us\ntwo us'),
    new Uint8Array(Uint32Array.of(hashWord('pup')).buffer),
    Uint8Array.of(3, NO_STEP),
  ])
  const steps = openFirstSteps(bytes)
  expect([steps.find('one us')?.('pup'), steps.find('two us')?.('pup'), steps.find('two us')?.('pug')]).toEqual([
    3,
    Infinity,
    undefined,
  ])
  expect(steps.find('three us')).toBeUndefined()
})
