// Which letters may stand together in one group, on a table small enough to work out by hand. Common practice, no source: `ear` is one group in
// `near` and two in `react`; `carry` has a doubled r, and `care` the group `are`.

import { describe, expect, it } from 'vitest'
import { CLOSE, toArcs, toRowSet } from '../../src/phonics/lattice.ts'
import { readRows } from '../../src/phonics/rows.ts'

const set = toRowSet(
  readRows(
    'ea\tIY\near\tIY R\near\tER\nr\tR\nrr\tR\na\tAE\na\tEY\na_e\tEY\nar\tAA R\nare\tEH R\nb\tB\nc\tK\nc\tS\nce\tS\ne\t-\ni\tIH\nei\tIY\nn\tN\nt\tT\ny\tIY\nd\tD',
  ),
)

/** Every way through a word that says the sounds, its groups parted by bars; + closes a split vowel. */
function findWays(word: string, sounds?: string, rows = set): readonly string[] {
  const phones = sounds?.split(' ')
  const { arcs, size } = toArcs(rows, word, phones)
  const ways = new Map<number, string[]>([[0, ['']]])
  for (const { from, to, row } of arcs) {
    const letters = row === CLOSE ? '+' : (rows.rows[row]?.letters ?? '')
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

// Each table holds what its words need, and the way that must not be found.
describe('what may stand behind a long vowel, and in a split one', () => {
  const ways = (table: string, word: string, sounds: string) =>
    findWays(
      word,
      sounds,
      toRowSet(readRows(table.replaceAll(' ', '\t').replaceAll('.', ' ').replaceAll(',', '\n'))),
    ).join(' ')

  it.each([
    ['n N,a EY,a_e EY,c S,ce S', 'nace', 'N EY S', 'n|a_e|c|+', 'ce would take the e of a_e'],
    ['n N,e IY,c S,ce S,e -', 'nece', 'N IY S', 'n|e|c|e', 'the same behind each long vowel'],
    ['n N,i AY,c S,ce S,e -', 'nice', 'N AY S', 'n|i|c|e', ''],
    ['n N,o OW,c S,ce S,e -', 'noce', 'N OW S', 'n|o|c|e', ''],
    ['n N,u UW,c S,ce S,e -', 'nuce', 'N UW S', 'n|u|c|e', ''],
    ['n N,u Y.UW,c S,ce S,e -', 'nuce', 'N Y UW S', 'n|u|c|e', ''],
    ['n N,o AO,c S,ce S,e -', 'noce', 'N AO S', 'n|o|ce n|o|c|e', 'not behind another vowel'],
    ['n N,ai EY,c S,ce S,e -', 'naice', 'N EY S', 'n|ai|ce n|ai|c|e', 'nor behind two letters'],
    ['n N,i AY,ge JH', 'nige', 'N AY JH', 'n|i|ge', 'a soft g has its own e'],
    ['n N,i AY,dge JH', 'nidge', 'N AY JH', 'n|i|dge', 'and so have these'],
    ['n N,i AY,que K', 'nique', 'N AY K', 'n|i|que', ''],
    ['n N,i AY,gue G', 'nigue', 'N AY G', 'n|i|gue', ''],
    ['n N,i AY,ngue NG', 'ningue', 'N AY NG', 'n|i|ngue', ''],
    ['n N,i AY,re R', 'nire', 'N AY R', 'n|i|re', ''],
    ['n N,a EY,che SH', 'nache', 'N EY SH', 'n|a|che', ''],
    ['n N,i AY,le L', 'nile', 'N AY L', '', 'but no l: the hole of molehill is split'],
    ['n N,a EY,che K', 'nache', 'N EY K', '', 'nor this'],
    ['n N,a_e EY,tt T', 'natte', 'N EY T', '', 'nothing is split over a doubled letter'],
    ['n N,a_e EY,r R', 'nare', 'N EY R', '', 'nor over r'],
    ['n N,a_e EY,g JH', 'nage', 'N EY JH', '', 'nor over a soft g'],
    ['n N,a_e EY,g G', 'nage', 'N EY G', 'n|a_e|g|+', 'a hard one may stand there'],
    ['n N,a_e EY,ce S', 'nacee', 'N EY S', '', 'nor over a consonant with an e'],
    ['n N,a_e EY,th TH', 'nathe', 'N EY TH', 'n|a_e|th|+', 'two letters of one sound may'],
    ['n N,a_e EY,s S,t T', 'naste', 'N EY S T', 'n|a_e|s|t|+', 'and two consonants'],
    ['n N,a_e EY,i IH,t T', 'naite', 'N EY IH T', '', 'but no vowel'],
    ['n N,a_e EY,e -', 'naee', 'N EY', '', 'nor a silent vowel letter'],
    ['c S,ce S,ei IY,i IY,t T', 'ceit', 'S IY T', 'c|ei|t', 'no ce before i'],
    ['c S,ce S,ea IY,a IY,t T', 'ceat', 'S IY T', 'ce|a|t c|ea|t', 'before other letters there may be one'],
    ['che K,i IY,ei IY,ch K,t T', 'cheit', 'K IY T', 'che|i|t ch|ei|t', 'and another with an e stands before i too'],
    ['n N,o AO,or AO.R,r R', 'nor', 'N AO R', 'n|or n|o|r', 'a single letter may leave the r to itself'],
    ['n N,oo AO,oor AO.R,r R', 'noor', 'N AO R', 'n|oor', 'a pair may not where the table has it with the r'],
    ['th TH,thr TH.R,r R,o OW', 'thro', 'TH R OW', 'thr|o th|r|o', 'which is not asked of consonants'],
    ['n N,ear ER,r R,y IY', 'nearry', 'N ER R IY', 'n|ear|r|y', 'three letters may stop before an r'],
    ['n N,er ER,r R,y IY', 'nerry', 'N ER R IY', '', 'two may not'],
    ['n N,ear ER,e -', 'neare', 'N ER', '', 'and none before the last e'],
    ['n N,ear ER,e -,d D', 'neared', 'N ER D', 'n|ear|e|d', 'but before another'],
  ])('of %s, %s said %s is %s: %s', (table, word, sounds, expected) => {
    expect(ways(table, word, sounds).split(' ').sort()).toEqual(expected.split(' ').sort())
  })
})

it.each([
  ['bate', false],
  ['bates', false],
  ['bated', false],
  ["bate's", false],
  ['bately', false],
  ['batey', false],
  ['bateb', true],
  ['batesb', true],
  ['batebs', true],
])('the closing e of %s stands inside: %s', (word, inside) => {
  const letters = toRowSet(readRows("b\tB\na_e\tEY\nt\tT\ns\tS\nd\tD\nly\tL IY\ny\tIY\n's\tS"))
  const closes = toArcs(letters, word, undefined).arcs.filter(({ row }) => row === CLOSE)
  expect(closes.map((arc) => arc.inside)).toEqual([inside])
})

it('draws each step once, in the order of the letters', () => {
  const { arcs, width } = toArcs(set, 'near', undefined)
  expect(new Set(arcs.map((arc) => JSON.stringify(arc))).size).toBe(arcs.length)
  expect(width).toBe(1)
  expect(arcs.map(({ from }) => from)).toEqual(arcs.map(({ from }) => from).sort((x, y) => x - y))
  expect(arcs.filter(({ row }) => row !== CLOSE).every(({ inside }) => !inside)).toBe(true)
})
