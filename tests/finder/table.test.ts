import fc from 'fast-check'
import { expect, it } from 'vitest'
import { packListTable } from '../../src/finder/pack.ts'
import { type ListEntry, type ListUnit, openListTable } from '../../src/finder/table.ts'

const unit: fc.Arbitrary<ListUnit> = fc.record({
  letters: fc.stringMatching(/^[a-z]{1,3}(_e)?$/),
  key: fc.stringMatching(/^[a-z]{1,3}=[ʃɪæaːk]{0,2}$/),
  sound: fc.stringMatching(/^[ʃɪæaːk]{0,2}$/),
  kind: fc.constantFrom('correspondence', 'inflection', 'silent'),
  vowel: fc.boolean(),
})
const pronunciation = fc.record({ units: fc.array(unit, { maxLength: 9 }), stressed: fc.nat(8), syllables: fc.nat(9) })
const first = fc.record({ step: fc.option(fc.nat(126), { nil: undefined }), isSight: fc.boolean() })
const entries: fc.Arbitrary<ListEntry[]> = fc
  .uniqueArray(fc.tuple(fc.stringMatching(/^[a-z']{1,12}$/), pronunciation, pronunciation, first), {
    selector: ([word]) => word,
    maxLength: 40,
  })
  .map((rows) =>
    rows
      .sort(([left], [right]) => (left < right ? -1 : 1))
      .map(([word, american, british, step], row) => ({
        word,
        place: row * 1000 + word.length,
        pronunciations: { 'general-american': american, 'southern-british': british },
        firstSteps: new Map([['series general-american', step]]),
      })),
  )

it('opens to what was packed', () => {
  fc.assert(
    fc.property(entries, (packed) => {
      const table = openListTable(packListTable(packed, ['series general-american']))
      expect(table.size).toBe(packed.length)
      packed.forEach((entry, row) => {
        expect(table.wordAt(row)).toBe(entry.word)
        expect(table.rowOf(entry.word)).toBe(row)
        expect(table.placeAt(row)).toBe(entry.place)
        expect(table.pronunciationAt(row, 'general-american')).toEqual(entry.pronunciations['general-american'])
        expect(table.pronunciationAt(row, 'southern-british')).toEqual(entry.pronunciations['southern-british'])
        const wanted = entry.firstSteps.get('series general-american')
        const column = table.findColumn('series', 'general-american')
        expect(column?.stepAt(row)).toBe(wanted?.step ?? Infinity)
        expect(column?.isSightAt(row)).toBe(wanted?.isSight)
      })
      expect(table.rowOf('zzzzzzzzzzzzzz')).toBe(-1)
      expect(table.findColumn('england', 'general-american')).toBeUndefined()
    }),
  )
})

it('throws where the bytes end too early', () => {
  const bytes = packListTable([], ['a b'])
  expect(() => openListTable(bytes.subarray(0, bytes.length - 3))).toThrow(RangeError)
})
