import { describe, expect, it } from 'vitest'
import { createLevelFinder } from '../../src/shelf/index.ts'
import { phonics, series, toContext } from './engine.ts'
import { FIVE_PAGES } from './five-pages.ts'

const levels = createLevelFinder(phonics, series)
const find = (text: string, share = 0.9, names: readonly string[] = []) =>
  levels.find(toContext(text, 'pink-1', names).count(), names, share)

describe('the earliest step', () => {
  // By hand: `e` comes at pink-5. Before it red, hen and fish cannot be read: 21 of 26. After it only fish: 25 of 26.
  it('of the book of five pages', () => {
    const level = find(FIVE_PAGES)
    expect(level).toMatchObject({ step: 'pink-5', share: 25 / 26, words: 26 })
    expect(level.holdingBack.map(({ word, times }) => [word, times])).toEqual([
      ['red', 2],
      ['hen', 2],
      ['fish', 1],
    ])
    expect(level.holdingBack[0]?.readableAt).toBe('pink-5')
    expect(level.shares[3]).toBe(21 / 26)
  })

  it('is the step where the share is just reached', () => {
    expect(find(FIVE_PAGES, 25 / 26).step).toBe('pink-5')
    expect(find(FIVE_PAGES, 25 / 26 + 0.001).step).not.toBe('pink-5')
    expect(find(FIVE_PAGES, 0).step).toBe('pink-1')
  })

  it('says honestly that a text is beyond the last step, and which words keep it there', () => {
    const level = find('Zyxwvq. The colonel said: кот.', 0.9)
    expect(level.step).toBeNull()
    expect(level.holdingBack.every(({ readableAt }) => readableAt === null)).toBe(true)
    expect(level.holdingBack.map(({ word }) => word)).toContain('кот')
  })

  it('reads an allowed name from the first step on', () => {
    expect(find('Josie sat.', 1).step).not.toBe('pink-1')
    expect(find('Josie sat.', 1, ['Josie']).step).toBe('pink-1')
  })
})

it.each(series.steps.map(({ id }, at) => [id, at] as const))(
  'the share at %s is the readable share of a check at that step',
  (step, at) => {
    const text = `${FIVE_PAGES}\nThe wind said: "They run and jump." Priya made a boat in the rain. Read it!`
    const context = toContext(text, step, ['Priya'])
    expect(levels.find(context.count(), ['Priya'], 0.9).shares[at]).toBe(context.figures().total.readableShare)
  },
)
