// Which letters may stand together in one group, on a table small enough to work out by hand. Common practice, no source: `ear` is one group in
// `near` and two in `react`; `carry` has a doubled r, and `care` the group `are`.

import { expect, it } from 'vitest'
import { CLOSE, toArcs, toRowSet } from '../../src/phonics/lattice.ts'
import { readRows } from '../../src/phonics/rows.ts'

const set = toRowSet(
  readRows(
    'ea\tIY\near\tIY R\near\tER\nr\tR\nrr\tR\na\tAE\na\tEY\na_e\tEY\nar\tAA R\nare\tEH R\nb\tB\nc\tK\nc\tS\nce\tS\ne\t-\ni\tIH\nei\tIY\nn\tN\nt\tT\ny\tIY\nd\tD',
  ),
)

/** Every way through a word that says the sounds, its groups parted by bars; + closes a split vowel. */
function findWays(word: string, sounds?: string): readonly string[] {
  const phones = sounds?.split(' ')
  const { arcs, size } = toArcs(set, word, phones)
  const ways = new Map<number, string[]>([[0, ['']]])
  for (const { from, to, row } of arcs) {
    const letters = row === CLOSE ? '+' : (set.rows[row]?.letters ?? '')
    ways.set(to, [
      ...(ways.get(to) ?? []),
      ...(ways.get(from) ?? []).map((way) => (way === '' ? letters : `${way}|${letters}`)),
    ])
  }
  // Only in the states OPEN and LONG, the first and the last of four, may a word end.
  return [...new Set([...(ways.get(size - 4) ?? []), ...(ways.get(size - 1) ?? [])])].sort()
}

it.each([
  ['near', 'N IY R', 'n|ear'],
  ['beat', 'B IY T', 'b|ea|t'],
  ['beaty', 'B IY T IY', 'b|ea|t|y'],
  ['earn', 'ER N', 'ear|n'],
  ['carry', 'K AE R IY', 'c|a|rr|y'],
  ['card', 'K AA R D', 'c|ar|d'],
  ['care', 'K EH R', 'c|are'],
  ['cared', 'K EH R D', 'c|are|d'],
  ['cared', 'K AA R D', 'c|ar|e|d'],
  ['bare', 'B AA R', ''],
  ['barry', 'B AA R R IY', ''],
  ['nace', 'N EY S', 'n|a_e|c|+ n|a|c|e'],
  ['nace', 'N AE S', 'n|a|ce n|a|c|e'],
  ['ceit', 'S IY T', 'c|ei|t'],
  ['bat', 'B EY T', 'b|a|t'],
  ['bate', 'B EY T', 'b|a_e|t|+ b|a|t|e'],
  ['bate', 'B EY', ''],
])('%s said %s is %s', (word, sounds, expected) => {
  expect(findWays(word, sounds).join(' ')).toBe(expected)
})

it('takes any sounds where none are given', () => {
  expect(findWays('nat')).toEqual(['n|a|t'])
  expect(findWays('near')).toContain('n|ear')
  expect(findWays('zat')).toEqual([])
})
