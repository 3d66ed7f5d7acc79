// Builds the lexicon file: aligns the dictionary, learns the guesser, packs both.

import { readFileSync } from 'node:fs'
import { findAlignment, learnCosts } from '../../src/phonics/align.ts'
import { type Transcription, toTranscription } from '../../src/phonics/arpabet.ts'
import { toBritish } from '../../src/phonics/british-spellings.ts'
import { writeHeteronyms } from '../../src/phonics/heteronyms/table.ts'
import { CLOSE, toRowSet } from '../../src/phonics/lattice.ts'
import { encodeLexicon, type LexiconSource } from '../../src/phonics/lexicon/encode.ts'
import { openLexicon } from '../../src/phonics/lexicon/open.ts'
import { readRows } from '../../src/phonics/rows.ts'
import { createSpelling } from '../../src/phonics/spelling.ts'
import { findCareful } from './careful.ts'
import { findComparatives } from './comparatives.ts'
import { findCompoundParts } from './compounds.ts'
import { createNameDoubts } from './doubtful-names.ts'
import { type Aligned, type Careful, toEntries } from './entries.ts'
import { frequencyRank } from './frequency.ts'
import { LIMITS, learnModel } from './guess-model.ts'
import { heteronyms, teachWeights } from './heteronyms/table.ts'
import { measureBoth } from './ordinary.ts'
import { CORRECTIONS, type DictionaryWord, mend, readCorrections, readDictionary } from './pronunciations.ts'
import { findSeams } from './seams.ts'
import { buildSlips, readMisspellings } from './slip-table.ts'
import { isSlip } from './slips.ts'
import { loadWordnet } from './wordnet.ts'
import { findJoinedCompounds, findWordnetCompounds, toDictionaryWords } from './wordnet-compounds.ts'

const ROUNDS = 5

const readData = (name: string): string =>
  readFileSync(new URL(`../../src/phonics/data/${name}`, import.meta.url), 'utf8')

export interface LexiconBuild {
  readonly bytes: Uint8Array
  readonly report: {
    /** Ordinary entries, each transcription one: see `readDictionary`; what the corrections leave out is not counted. */
    readonly entries: number
    readonly aligned: number
    readonly share: number
    /** Entries without an alignment, most used first. */
    readonly residue: readonly string[]
    /** Of the 20,000 most used words that the dictionary has, those with no alignment at all. */
    readonly missed: readonly string[]
    readonly words: number
    readonly inflected: number
    readonly leftOut: Readonly<Record<string, number>>
  }
}

export function buildLexicon(): LexiconBuild {
  const rows = readRows(readData('correspondences.tsv'))
  const set = toRowSet(rows)
  const { words, leftOut } = readDictionary()
  const entries = words.flatMap(({ word, transcriptions }) => transcriptions.map(({ phones }) => ({ word, phones })))
  const costs = learnCosts(set, entries, ROUNDS)
  const align = (word: string, { phones, stress }: Transcription): Aligned | undefined => {
    const found = findAlignment(set, { word, phones }, costs)
    return found && { phones, stress, ...found }
  }

  const residue: string[] = []
  const careful: Careful[] = []
  const wordnet = loadWordnet()
  const own = toCorrected(words)
  const compounds = findWordnetCompounds(wordnet, new Set(own.map(({ word }) => word)))
  const parts = findCompoundParts(words, wordnet, compounds)
  const listed = new Set([...own, ...compounds].map(({ word }) => word))
  const joined = findJoinedCompounds(wordnet, listed, parts)
  const put = toDictionaryWords([...compounds, ...joined], own).map((one) => ({ ...one, given: true }))
  const compared = findComparatives(own, listed, wordnet).map((one) => ({ ...one, given: true }))
  const corrected = inOrder([...own, ...put, ...compared]).filter(({ word }) => !isSlip(word, wordnet))
  let aligned = 0
  let total = 0
  for (const { word, transcriptions, given } of corrected) {
    const able = new Map<Transcription, Aligned>()
    for (const one of transcriptions) {
      const found = align(word, one)
      if (found) able.set(one, found)
      else residue.push(`${word} ${one.phones.join(' ')}`)
    }
    total += transcriptions.length
    aligned += able.size
    const kept = findCareful({ word, transcriptions }, (one) => able.get(one)?.cost ?? Infinity, given)
    if (kept.length > 0) careful.push({ word, pronunciations: kept.map((one) => able.get(one) as Aligned) })
  }

  const fixed = new Set(heteronyms.map(({ word }) => word))
  const stored = toEntries(careful, rows, wordnet, fixed)
  // The guesser learns from one pronunciation a word, names and all.
  const learnt = careful.flatMap(({ word, pronunciations }) => (word.includes("'") ? [] : pronunciations.slice(0, 1)))
  const toModel = (places: ReadonlyMap<number, number>) => {
    const inFile = (id: number): number => (id === CLOSE ? CLOSE : (places.get(id) ?? 0))
    const placed = rows.toSorted((x, y) => inFile(x.id) - inFile(y.id))
    return learnModel(
      learnt.map(({ path, stress }) => ({ path: path.map(inFile), stress })),
      placed,
      LIMITS,
    )
  }
  const rowLines = rows.map(({ letters, phones }) => `${letters}\t${phones.length === 0 ? '-' : phones.join(' ')}`)
  const known = new Set(careful.map(({ word }) => word))
  // `etc` and its like are left out by the corrections: they are abbreviations.
  const used = corrected
    .filter(({ transcriptions }) => transcriptions.length > 0)
    .map(({ word }) => word)
    .filter((word) => (frequencyRank.get(word) ?? Infinity) < 20_000)
  const rank = (line: string) => frequencyRank.get(line.split(' ')[0] ?? '') ?? Infinity
  // What is ordinary is measured with the words as they are stored.
  const { isDoubtful, isNameToo } = createNameDoubts(wordnet, rows)
  const isGiven = new Set(corrected.filter(({ given }) => given).map(({ word }) => word))
  const unsure = new Set(
    careful.flatMap(({ word, pronunciations }) =>
      !isGiven.has(word) && isDoubtful(word, pronunciations[0]?.path ?? []) ? [word] : [],
    ),
  )
  const unsureAsName = new Set(
    careful.flatMap(({ word, pronunciations }) =>
      !isGiven.has(word) && isNameToo(word, pronunciations[0]?.path ?? []) ? [word] : [],
    ),
  )
  const slips = buildSlips(
    stored.map(({ word }) => word),
    wordnet,
    readMisspellings(readData('misspellings.tsv')),
  )
  const encode = (ordinary: string, model: LexiconSource['toModel'], seams?: LexiconSource['seams']) =>
    encodeLexicon({
      ...(seams && { seams }),
      rows: rowLines,
      entries: stored,
      toModel: model,
      ordinary,
      parts,
      heteronyms: writeHeteronyms(heteronyms),
      weights: teachWeights(),
      unsure,
      unsureAsName,
      slips,
    })
  const first = openLexicon(encode('', () => new Uint8Array()))
  const seams = findSeams(first.words(), readData('seams.tsv'), createSpelling(first), wordnet)
  return {
    bytes: encode(measureBoth(first, rows), toModel, seams),
    report: {
      entries: total,
      aligned,
      share: aligned / total,
      residue: residue.sort((x, y) => rank(x) - rank(y)),
      missed: used.filter((word) => !known.has(word)),
      words: stored.length,
      inflected: stored.filter((entry) => 'ending' in entry).length,
      leftOut,
    },
  }
}

/** The dictionary with the project's corrections, and the spoken forms of heteronyms one by one in the order of their table. */
function toCorrected(words: readonly DictionaryWord[]): (DictionaryWord & { given: boolean })[] {
  const rows = CORRECTIONS.flatMap((name) => readCorrections(readData(name)))
  const corrections = new Map(rows.map((row) => [row.word, row.transcriptions]))
  for (const { word, forms } of heteronyms)
    corrections.set(
      word,
      forms.map(({ sounds }) => mend(word, toTranscription(sounds))),
    )
  const all = words.map((word) => {
    const given = corrections.get(word.word)
    corrections.delete(word.word)
    return given ? { word: word.word, transcriptions: given, given: true } : { ...word, given: false }
  })
  const added = [...corrections].map(([word, transcriptions]) => ({ word, transcriptions, given: true }))
  const known = new Set([...all, ...added].map(({ word }) => word))
  // The dictionary is American: what Britain writes otherwise is said as the American word.
  const british = all.flatMap((entry) => {
    const word = toBritish(entry.word)
    return word === undefined || known.has(word) ? [] : [{ ...entry, word }]
  })
  return inOrder([...all, ...added, ...british])
}

const inOrder = <T extends DictionaryWord>(words: readonly T[]): T[] =>
  words.toSorted((x, y) => (x.word < y.word ? -1 : 1))
