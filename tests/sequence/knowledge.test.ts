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

  it('do not come back in an accent they were not compiled for', () => {
    expect(() => sequenceFromJson({ ...json, correspondences: {} })).toThrow(RangeError)
  })
})
