// What groups of letters say first to a beginner, row by row against the CMU Pronouncing Dictionary: each example has the letters with the
// sound, where the row says that they stand. That this sound comes first is common practice, no source.

import { describe, expect, it } from 'vitest'
import { findBonds, isOneGroup } from '../../src/phonics/guess/bonds.ts'
import { CONSONANTS, type PlainRow, SPLIT, VOWELS } from '../../src/phonics/guess/plain-table.ts'
import { testSpelling } from '../lexicon-for-tests.ts'

/** Where the letters stand with the sounds in a word of the dictionary. */
const findPlaces = (word: string, letters: string, sounds: string): readonly number[] =>
  testSpelling()
    .spell(word)
    .cuttings.flatMap(({ raw }) => raw.units)
    .filter((unit) => (unit.base ?? unit.letters) === letters && unit.phones.join(' ') === sounds)
    .map(({ spans }) => spans[0]?.[0] ?? -1)

const toPairs = ([, sounds, examples]: PlainRow): readonly (readonly [sound: string, example: string])[] => {
  const words = examples.split('/')
  return sounds.split('/').map((sound, at) => [sound, words[at] ?? ''] as const)
}

describe.each([
  ['consonants', CONSONANTS],
  ['vowels', VOWELS],
  ['split vowels', SPLIT],
] as const)('%s', (_, rows) => {
  it('say in their example what the row says, at a place that it means', () => {
    const wrong = rows.flatMap((row) => {
      const [letters, , , where] = row
      return toPairs(row)
        .filter(([sound, example]) => {
          const places = findPlaces(example, letters, sound)
          const isMeant = (at: number) =>
            where === undefined || where.test(`${example.slice(0, at)}|${example.slice(at)}`)
          return !places.some(isMeant)
        })
        .map(([sound, example]) => `${letters} ${sound} ${example}`)
    })
    expect(wrong).toEqual([])
  })
})

// Common practice, no source: the bar stands before the letters of the row.
describe('where a row holds', () => {
  const rows = [...CONSONANTS, ...VOWELS]
  const PLACES = `
    c S: |city |cent |cycle not |cat |clap pa|c
    c K: |cat |clap pa|c not |city |cent |cycle
    dge JH: bri|dge not bu|dget
    ge JH: lar|ge pa|ge bul|ge hin|ge not |get ed|ge
    gn N: |gnat not si|gnal
    h HH: |hat |hymn be|hind not o|hm
    kn N: |knee not sic|kness
    le AH L: tab|le ank|le puzz|le cast|le rif|le cab|le midd|le ogg|le app|le not |leg tab|let who|le
    mb M: la|mb not nu|mber
    n NG: ba|nk li|nx thi|nks not mo|nkey |net
    n NG/N: mo|nkey u|nkind not |net i|n
    n N: |net i|n ba|nd not ba|nk li|nx
    ng NG: si|ng lo|ngs not fi|nger a|ngry
    qu K W: |queen |quick not |qutb
    tch CH: ca|tch di|tch not wel|tch
    w W: |web |win not sa|w |wry
    wh W: |when not |whr
    wr R: |write not a|wry
    x K S: bo|x mar|x not |xylem
    y Y: |yes |yam not da|y be|yond |yttrium
    a AE: c|at b|ag not c|ar s|aw d|ay r|ain |ah sof|a
    a AA: sp|a not sof|a sp|at
    a AH: sof|a tub|a not sp|a sof|as
    air EH R: h|air not f|airy
    ar AA R: c|ar f|arm not v|ary c|arry c|are
    are EH R: c|are not c|ared
    e EH: b|ed not h|er s|ea f|ew k|ey m|e
    e IY: m|e sh|e not caf|e |e m|et
    ear IH R/EH R: n|ear b|eard not w|eary
    eer IH R: d|eer not d|eery
    er ER: f|ern sist|er not h|ero m|erry
    ere IH R: h|ere not w|ered
    ey IY/EY: k|ey not k|eyed
    i IH: s|it not b|ird p|ie sk|i
    i AY/IY: h|i sk|i not tax|i |i h|it
    i IY: tax|i not h|i tax|is
    ie AY/IY: p|ie ch|ief t|ied not v|iew p|ier
    ir ER: b|ird not v|irus st|irring
    ire AY R: f|ire not f|ires
    o AA: h|ot not f|ork g|o b|oat c|ow t|oy
    o OW: g|o zer|o not tri|o h|ot
    oar AO R: b|oard not s|oary
    oe OW: t|oe not p|oem
    oor AO R: d|oor not d|oory
    or AO R: f|ork not st|ory s|orry
    ore AO R: m|ore not b|ored
    u AH: c|up not t|urn b|uy bl|ue fl|u
    u UW: fl|u not c|up q|u
    ue UW/Y UW: bl|ue not d|uel
    ur ER: t|urn not f|ury h|urry
    ure Y UH R/UH R: c|ure not c|ured
    y AY: m|y sk|y not happ|y |y m|yth
    y IY: happ|y pupp|y not m|y da|y happ|ys
    y IH: g|ym m|yth not t|yre m|y |yes`

  const lines = PLACES.trim()
    .split(/\n\s*/)
    .map((line) => /^(\S+) (.+?): (.+) not (.+)$/.exec(line)?.slice(1) ?? []) as [string, string, string, string][]

  it.each(lines)('%s says %s in %s, not in %s', (letters, sounds, yes, no) => {
    const where = rows.find((row) => row[0] === letters && row[1] === sounds)?.[3]
    for (const place of yes.split(' ')) expect(where?.test(place), place).toBe(true)
    for (const place of no.split(' ')) expect(where?.test(place), place).toBe(false)
  })

  it('is told for each row that does not hold everywhere', () => {
    const told = new Set(lines.map(([letters, sounds]) => `${letters} ${sounds}`))
    expect(
      rows.filter(([, , , where]) => where !== undefined).map(([letters, sounds]) => `${letters} ${sounds}`),
    ).toEqual(expect.arrayContaining([...told]))
    expect(rows.filter((row) => row[3] !== undefined && !told.has(`${row[0]} ${row[1]}`))).toEqual([])
  })
})

// Common practice, no source: letters that belong together are never parted in a word that nobody listed; a bar parts the rest.
it.each(
  `r|a|bb|i|t t|ur|n M|a|r|e|k n|igh|t eigh|t r|ai|n d|ay h|air d|eer d|oor b|oar|d c|are h|ere f|ire m|ore c|ure h|au|n|t s|aw
  t|augh|t b|ough|t ch|i|p d|u|ck ph|o|n|e sh|i|p th|i|n wh|e|n b|r|i|dge c|a|tch s|ea|t s|ea A|n|d|r|e|a n|ear s|ee f|ew k|ey
  t|ie t|ie|d kn|ee wr|i|t|e l|a|mb s|i|ng f|i|n|g|er b|oa|t S|a|m|o|a t|oe N|o|e|ll|e c|oi|n b|oy m|oo|n ou|t c|ow qu|ee|n b|l|ue
  M|a|n|u|e|l n|u|m|b|er s|i|ck|n|e|ss c|a|r|e|s`
    .trim()
    .split(/\s+/),
)('%s', (marked) => {
  const word = marked.replaceAll('|', '').toLowerCase()
  const parts = marked.split('|')
  const starts = new Set(parts.map((_, at) => parts.slice(0, at).join('').length))
  const inside = Array.from(word, (_, at) => at).filter((at) => !starts.has(at))
  expect([...findBonds(word)].sort((x, y) => x - y)).toEqual(inside)
})

// Common practice, no source: what is one group of letters, and nothing else.
it.each([
  ['a', true],
  ['sh', true],
  ['igh', true],
  ['ough', true],
  ['rr', true],
  ['st', false],
  ['shi', false],
  ['', false],
] as const)('%s is one group of letters: %s', (letters, expected) => {
  expect(isOneGroup(letters)).toBe(expected)
})
