// The nearest valid name for a misspelt one.

import { describe, expect, it } from 'vitest'
import { findNearest, findNearestBeginning } from '../src/nearest.ts'

describe('findNearest', () => {
  const keys = ['title', 'teach', 'sight words', 'shapes', 'endings', 'limits']

  it.each([
    ['titel', 'title'],
    ['Tech', 'teach'],
    ['sightwords', 'sight words'],
    ['sight', 'sight words'],
    ['shape', 'shapes'],
    ['lim', 'limits'],
  ])('%s → %s', (word, nearest) => {
    expect(findNearest(word, keys)).toBe(nearest)
  })

  it('finds nothing where nothing is near', () => {
    expect(findNearest('marks', keys)).toBeUndefined()
    expect(findNearest('x', keys)).toBeUndefined()
    expect(findNearest('title', [])).toBeUndefined()
  })

  it('does not choose between two completions', () => {
    expect(findNearest('gr', ['green-1', 'green-2'])).toBeUndefined()
  })

  it('takes the first of two equally near names', () => {
    expect(findNearest('green-3', ['green-1', 'green-2'])).toBe('green-1')
  })
})

describe('findNearestBeginning', () => {
  const rules = ['no-irregular-word', 'no-unused-name', 'no-unused-switch', 'max-page-words']

  it.each([
    ['no-ireg', 'no-irregular-word'],
    ['no-iregular', 'no-irregular-word'],
    ['max-paeg', 'max-page-words'],
    ['no-unused-swich', 'no-unused-switch'],
  ])('%s → %s', (word, nearest) => {
    expect(findNearestBeginning(word, rules)).toBe(nearest)
  })

  it.each(['no-unused', 'no-swan', 'no', '', 'min-page'])('finds nothing for %j', (word) => {
    expect(findNearestBeginning(word, rules)).toBeUndefined()
  })
})
