// What is known at a step, and sequences as plain JSON.

import { describe, expect, it } from 'vitest'
import { compileSequence } from '../../src/sequence/compile.ts'
import { sequenceFromJson } from '../../src/sequence/compiled.ts'
import { findStep, knowledgeAt, toStepIndex } from '../../src/sequence/knowledge.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import { withReader } from '../../src/sequence/reader.ts'
import { toSequence, toStep } from '../verdict/hand-made.ts'
import { toyPhonics } from './toy-phonics.ts'

const sequence = toSequence([
  toStep('one', 'a=æ', {
    sightWords: ['The', 'I'],
    shapes: ['CVC'],
    marks: ['.'],
    limits: { letters: 3, pageWords: 8 },
  }),
  toStep('two', 'b=b', { shapes: ['VC'], capitals: 'first', limits: { letters: 4 } }),
  toStep('three', '', { shapes: 'any', marks: 'any', limits: { letters: 'any' } }),
])

describe('knowledgeAt', () => {
  it('sums the steps so far', () => {
    expect(knowledgeAt(sequence, 'two')).toMatchObject({
      correspondences: new Set(['a=æ', 'b=b']),
      sightWords: new Set(['the', 'I']),
      shapes: new Set(['CVC', 'VC']),
      marks: new Set(['.']),
      capitals: 'first',
      limits: { letters: 4, pageWords: 8 },
    })
  })

  it('lifts what a step lifts', () => {
    const { shapes, marks, limits } = knowledgeAt(sequence, 'three')
    expect({ shapes, marks, limits }).toEqual({ shapes: 'any', marks: 'any', limits: { pageWords: 8 } })
  })

  it('takes what the sequence never speaks of as no limit, but a contraction must be taught', () => {
    const { contractions, numerals, capitals } = knowledgeAt(sequence, 'one')
    expect({ contractions, numerals, capitals }).toEqual({ contractions: new Set(), numerals: true, capitals: 'none' })
  })

  it('keeps the last word on capitals, numerals and limits until a step has another', () => {
    const own = toSequence([
      toStep('one', '', { capitals: 'none', numerals: false, limits: { letters: 3, syllables: 1 } }),
      toStep('two', '', { endings: ['-s'], endingChanges: ['double'] }),
      toStep('three', '', { capitals: 'all', numerals: true, limits: { letters: 5 }, endings: ['-ed'] }),
    ])
    expect(knowledgeAt(own, 'two')).toMatchObject({
      ...{ capitals: 'none', numerals: false, limits: { letters: 3, syllables: 1 } },
      ...{ endings: new Set(['-s']), endingChanges: new Set(['double']) },
    })
    expect(knowledgeAt(own, 'three')).toMatchObject({
      ...{ capitals: 'all', numerals: true, limits: { letters: 5, syllables: 1 } },
      ...{ endings: new Set(['-s', '-ed']), endingChanges: new Set(['double']) },
    })
  })

  it('takes each thing that no step ever speaks of as no limit, and only that', () => {
    const silent = knowledgeAt(toSequence([toStep('one', 'a=æ')]), 'one')
    expect(silent).toMatchObject({ shapes: 'any', marks: 'any', capitals: 'all', numerals: true })
    // A later step speaks of it: then it is not known before.
    const later = toSequence([
      toStep('one', ''),
      toStep('two', '', { shapes: ['CV'], marks: ['.'], capitals: 'first', numerals: false }),
    ])
    const none = { shapes: new Set(), marks: new Set(), capitals: 'none', numerals: false }
    expect(knowledgeAt(later, 'one')).toMatchObject(none)
    expect(knowledgeAt(toSequence([toStep('one', ''), toStep('two', '', { shapes: 'any' })]), 'one').shapes).toEqual(
      new Set(),
    )
  })

  it('sounds out endings that need not be taught, and changes that no step names', () => {
    const steps = [toStep('one', ''), toStep('two', '', { endings: ['-s'], endingChanges: ['double'] })]
    const sounded = (endings: 'taught' | 'sounded' | 'named') =>
      [...knowledgeAt(toSequence(steps, { endings }), 'one').soundedEndings].join(' ')
    expect(sounded('taught')).toBe('')
    expect(sounded('sounded')).toBe("-s -es -ed -ing -er -est 's")
    expect(sounded('named')).toBe("-es -ed -ing -er -est 's")
    expect([...knowledgeAt(toSequence(steps), 'one').soundedChanges]).toEqual(['drop-e', 'ie-to-y', 'y-to-i'])
  })

  it('knows a contraction that is taught by name by heart, also where any is allowed later', () => {
    const own = toSequence([
      toStep('one', '', { contractions: ['Can’t'] }),
      toStep('two', '', { contractions: 'any', sightWords: ['O’Dell'] }),
    ])
    expect(knowledgeAt(own, 'one')).toMatchObject({
      sightWords: new Set(["can't"]),
      contractions: new Set(["can't"]),
    })
    expect(knowledgeAt(own, 'two')).toMatchObject({ sightWords: new Set(["can't", "o'dell"]), contractions: 'any' })
  })

  it('remembers of each word what was known when it was first taught by heart', () => {
    const own = toSequence([
      toStep('one', 'a=æ', { sightWords: ['The'] }),
      toStep('two', 'b=b', { sightWords: ['the', 'said'] }),
    ])
    const { knownWithSightWord } = knowledgeAt(own, 'two')
    const toKeys = (word: string) => [...(knownWithSightWord?.get(word)?.correspondences ?? [])]
    expect([toKeys('the'), toKeys('said')]).toEqual([['a=æ'], ['a=æ', 'b=b']])
  })

  it('of a step goes by its very id before any other case of it', () => {
    const own = toSequence([toStep('One', 'a=æ'), toStep('one', 'b=b')])
    expect([findStep(own, 'one')?.id, findStep(own, 'ONE')?.id]).toEqual(['one', 'One'])
    expect(toStepIndex(own, 'one')).toBe(1)
    expect(knowledgeAt(own, 'ONE')).toBe(knowledgeAt(own, 'One'))
  })

  it('is summed once', () => {
    expect(knowledgeAt(sequence, 'two')).toBe(knowledgeAt(sequence, 'two'))
  })

  it('finds steps in any case', () => {
    expect(findStep(sequence, 'TWO')?.id).toBe('two')
    expect(findStep(sequence, 'four')).toBeUndefined()
    expect([toStepIndex(sequence, 'three'), toStepIndex(sequence, 'four')]).toEqual([2, -1])
    expect(() => knowledgeAt(sequence, 'four')).toThrow('has no step "four"')
  })
})

describe('withReader', () => {
  it('of a reader who knows nothing more leaves all as it is', () => {
    const step = knowledgeAt(sequence, 'one')
    expect(withReader(step, {})).toEqual(step)
  })

  it('has endings of its own, and lacks others', () => {
    const step = knowledgeAt(toSequence([toStep('one', '', { endings: ['-s', '-ed'] })]), 'one')
    expect(withReader(step, { endings: ['-ing', '-er'], endingsNotYet: ['-s', '-er'] }).endings).toEqual(
      new Set(['-ed', '-ing']),
    )
  })

  it('is put together once for each reader and step', () => {
    const [one, two] = [knowledgeAt(sequence, 'one'), knowledgeAt(sequence, 'two')]
    const reader = { sightWords: ['hen'] }
    expect(withReader(one, reader)).toBe(withReader(one, reader))
    expect(withReader(two, reader).correspondences).toEqual(new Set(['a=æ', 'b=b']))
    expect(withReader(one, { sightWords: ['cow'] }).sightWords).toEqual(new Set(['the', 'I', 'cow']))
  })

  it('adds first and takes away then, and leaves the step as it was', () => {
    const step = knowledgeAt(sequence, 'one')
    const own = withReader(step, {
      sightWords: ['Cow', 'hen'],
      sightWordsNotYet: ['the', 'hen'],
      correspondences: ['sh=ʃ'],
      correspondencesNotYet: ['a=æ'],
    })
    expect(own.sightWords).toEqual(new Set(['I', 'cow']))
    expect(own.correspondences).toEqual(new Set(['sh=ʃ']))
    expect(step.sightWords).toEqual(new Set(['the', 'I']))
  })
})

describe('compiled sequences', () => {
  const yaml = `name: x
title: X
accent: general-american
steps:
  - id: a
    teach: [a as in cat, o as in hop]
    capitals: none
  - id: b
    shapes: any
`
  const { compiled, problems } = compileSequence(yaml, { phonicsFor: toyPhonics })
  const json = JSON.parse(JSON.stringify(compiled))

  it('come back from JSON as they were loaded, in each accent', () => {
    expect(problems).toEqual([])
    const load = (accent: 'general-american' | 'southern-british') =>
      loadSequence(yaml, { phonicsFor: toyPhonics, accent }).sequence
    expect(sequenceFromJson(json)).toEqual(load('general-american'))
    expect(sequenceFromJson(json, 'southern-british')).toEqual(load('southern-british'))
  })

  it('hold the mistakes that are in the file, and nothing where it cannot be read', () => {
    const wrong = compileSequence('steps: [', { phonicsFor: toyPhonics, path: 'x.yaml' })
    expect(wrong.compiled).toBeUndefined()
    expect(wrong.problems).toMatchObject([{ path: 'x.yaml' }])
    const slip = compileSequence(yaml.replace('hop', 'hup'), { phonicsFor: toyPhonics })
    expect(slip.problems).toHaveLength(1)
    expect(Object.values(slip.compiled?.correspondences ?? {}).map((steps) => steps[0]?.length)).toEqual([1, 1])
  })

  it('do not come back in an accent they were not compiled for', () => {
    expect(() => sequenceFromJson({ ...json, correspondences: {} })).toThrow(
      new RangeError('The sequence "x" was not compiled for general-american.'),
    )
  })
})
