import { describe, expect, it } from 'vitest'
import { measurePictures } from '../../scripts/accuracy/pictures.ts'
import { SEEN_BRANCHES, UNHELD_BRANCHES } from '../../scripts/build/showable.ts'

describe('nouns that a picture can name', () => {
  const [dolch, abstract, heldOut, heldOutAbstract] = measurePictures()

  it('finds at least 85 of the 95 picture nouns of Dolch (1948)', () => {
    expect(dolch?.words).toBe(95)
    expect(dolch?.nameable, `not found: ${dolch?.wrong.join(' ')}`).toBeGreaterThanOrEqual(85)
  })

  it('calls at most 5 of 100 abstract nouns nameable', () => {
    expect(abstract?.words).toBe(100)
    expect(abstract?.nameable, `found: ${abstract?.wrong.join(' ')}`).toBeLessThanOrEqual(5)
  })

  it('holds on words written after the rule was made', () => {
    expect(heldOut?.nameable, `not found: ${heldOut?.wrong.join(' ')}`).toBeGreaterThanOrEqual(45)
    expect(heldOutAbstract?.nameable, `found: ${heldOutAbstract?.wrong.join(' ')}`).toBeLessThanOrEqual(4)
  })

  it('keeps the branches sorted', () => {
    for (const branches of [SEEN_BRANCHES, UNHELD_BRANCHES]) {
      const keys = branches.map(([lemma, number]) => `${lemma} ${number}`)
      expect(keys).toEqual([...keys].sort())
    }
  })
})
