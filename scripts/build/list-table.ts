// Builds the table of words that can be listed: reads every word in use in both accents, and finds the first step of each
// built-in sequence at which it is readable.

import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { deflateSync } from 'node:zlib'
import { findFirstStepOfAllForms, toWritten } from '../../src/finder/forms.ts'
import { isInUse } from '../../src/finder/in-use.ts'
import { packListTable } from '../../src/finder/pack.ts'
import { toListPronunciation } from '../../src/finder/pronunciation.ts'
import type { FirstStep, ListEntry, ListPronunciation } from '../../src/finder/table.ts'
import { isUnhelpful } from '../../src/finder/unhelpful.ts'
import { createPhonics, createSpelling, type Lexicon, openLexicon } from '../../src/phonics/index.ts'
import type { Accent, Phonics, Pronunciation } from '../../src/phonics/types.ts'
import { type CompiledSequence, type Sequence, sequenceFromJson } from '../../src/sequence/index.ts'
import { findReadableAt, judgeInSequence } from '../../src/verdict/index.ts'
import { toColumn } from '../../src/words/first-steps.ts'
import { openWordData, type WordData, type WordFacts } from '../../src/words/index.ts'
import { toBases } from '../../src/words/inflect.ts'

/** Writes lists.bin from the files that are made before it: a third as large when it is squeezed. */
export function writeListTable(dist: string): void {
  const lexicon = openLexicon(readFileSync(join(dist, 'lexicon.bin')))
  const data = openWordData(readFileSync(join(dist, 'words.bin')), lexicon.size)
  const names = readdirSync(join(dist, 'sequences'))
    .map((file) => file.replace(/\.json$/, ''))
    .sort()
  const sequenceIn = (name: string, accent: Accent): Sequence =>
    sequenceFromJson(
      JSON.parse(readFileSync(join(dist, 'sequences', `${name}.json`), 'utf8')) as CompiledSequence,
      accent,
    )
  writeFileSync(join(dist, 'lists.bin'), deflateSync(buildListTable(lexicon, data, names, sequenceIn), { level: 9 }))
}

const ACCENTS = ['general-american', 'southern-british'] as const satisfies readonly Accent[]

interface Column {
  readonly name: string
  readonly sequence: Sequence
  readonly phonics: Phonics
}

/** About ten seconds. @param sequenceIn a built-in sequence in an accent, by its name */
function buildListTable(
  lexicon: Lexicon,
  data: WordData,
  names: readonly string[],
  sequenceIn: (name: string, accent: Accent) => Sequence,
): Uint8Array {
  const spelling = createSpelling(lexicon)
  const columns = ACCENTS.flatMap((accent) => {
    const phonics = createPhonics(lexicon, accent, spelling)
    return names.map((name): Column => ({ name: toColumn(name, accent), sequence: sequenceIn(name, accent), phonics }))
  })
  const entries = lexicon.words().flatMap((word, place): ListEntry[] => {
    if (!/^(?:a|[a-z'][a-z']+)$/.test(word) || isUnhelpful(word)) return []
    const facts = data.facts.factsAt(place)
    if (!isInUse(facts, toBaseFacts(word, facts, lexicon, data))) return []
    return [
      {
        word,
        place,
        pronunciations: toPronunciations(word, columns),
        firstSteps: new Map(columns.map((column) => [column.name, findFirst(word, column)])),
      },
    ]
  })
  return packListTable(
    entries,
    columns.map(({ name }) => name),
  )
}

function toBaseFacts(word: string, { inflection }: WordFacts, lexicon: Lexicon, { facts }: WordData): WordFacts[] {
  return toBases(word).flatMap((one) => {
    const at = one.base === word || one.inflection !== inflection ? -1 : lexicon.indexOf(one.base)
    return at < 0 ? [] : [facts.factsAt(at)]
  })
}

function findFirst(word: string, { sequence, phonics }: Column): FirstStep {
  const pronunciations = phonics.read(toWritten(word))
  const step = findFirstStepOfAllForms(pronunciations, sequence)
  const id = sequence.steps[step ?? -1]?.id
  return { step, isSight: id !== undefined && judgeInSequence(pronunciations, sequence, id).kind === 'sight' }
}

function toPronunciations(word: string, columns: readonly Column[]): Record<Accent, ListPronunciation> {
  const inAccent = (accent: Accent): ListPronunciation => {
    const own = columns.filter(({ phonics }) => phonics.accent === accent)
    const read = own
      .map(({ sequence, phonics }) => findPronunciation(word, sequence, phonics))
      .find((pronunciation) => pronunciation !== undefined)
    return toListPronunciation(read ?? own[0]?.phonics.read(word).pronunciations[0])
  }
  return { 'general-american': inAccent('general-american'), 'southern-british': inAccent('southern-british') }
}

/** The pronunciation by which the word is first sounded out: of two ways to say it, the one that children meet. */
function findPronunciation(word: string, sequence: Sequence, phonics: Phonics): Pronunciation | undefined {
  const pronunciations = phonics.read(word)
  const step = findReadableAt(pronunciations, sequence)
  if (step === undefined) return undefined
  const verdict = judgeInSequence(pronunciations, sequence, step)
  return verdict.kind === 'decodable' ? verdict.pronunciation : undefined
}
