// Finds for every word that may stand for another the first step of each built-in sequence at which it is readable.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { isReadableInAllForms } from '../../src/finder/forms.ts'
import { isUnhelpful } from '../../src/finder/unhelpful.ts'
import { createPhonics, createSpelling, type Lexicon } from '../../src/phonics/index.ts'
import type { Accent, Phonics } from '../../src/phonics/types.ts'
import { type CompiledSequence, knowledgeAt, type Sequence, sequenceFromJson } from '../../src/sequence/index.ts'
import { joinSections } from '../../src/words/bytes.ts'
import { inflect } from '../../src/words/candidates.ts'
import { NO_STEP, toColumn } from '../../src/words/first-steps.ts'
import { hashWord } from '../../src/words/fitness.ts'
import { openStandIns } from '../../src/words/stand-ins.ts'
import { FORMS } from '../../src/words/use.ts'
import { buildStandIns } from './stand-ins.ts'

const ACCENTS = ['general-american', 'southern-british'] as const satisfies readonly Accent[]
const PARTS = ['noun', 'verb', 'adjective', 'adverb'] as const

interface Column {
  readonly name: string
  readonly sequence: Sequence
  readonly phonics: Phonics
}

/** @param folder of the compiled sequences */
export function buildFirstSteps(lexicon: Lexicon, folder: string): Uint8Array {
  const spelling = createSpelling(lexicon)
  const files = readdirSync(folder).sort()
  const columns = ACCENTS.flatMap((accent) => {
    const phonics = createPhonics(lexicon, accent, spelling)
    return files.map((file): Column => {
      const json = JSON.parse(readFileSync(join(folder, file), 'utf8')) as CompiledSequence
      return { name: toColumn(json.name, accent), sequence: sequenceFromJson(json, accent), phonics }
    })
  })
  const words = listCandidates()
  const hashed = words.map((word) => ({ word, hash: hashWord(word) })).sort((a, b) => a.hash - b.hash)
  const twins = hashed.find(({ hash }, at) => hashed[at + 1]?.hash === hash)
  if (twins) throw new Error(`two words that may stand for others have one hash: ${twins.word} and another`)
  return joinSections([
    new TextEncoder().encode(columns.map(({ name }) => name).join('\n')),
    new Uint8Array(Uint32Array.from(hashed, ({ hash }) => hash).buffer),
    Uint8Array.from(columns.flatMap((column) => hashed.map(({ word }) => findFirst(word, column)))),
  ])
}

/** Every word of the table of stand-ins, in every form in which it may be wanted. */
export function listCandidates(): readonly string[] {
  const table = new TextDecoder().decode(buildStandIns())
  const standIns = openStandIns(table)
  const found = new Set<string>()
  for (const row of table.split('\n')) {
    const [word = ''] = row.split('\t')
    for (const standIn of standIns.find(word, 'form')) for (const one of standIn.words) found.add(one)
    for (const part of PARTS)
      for (const standIn of standIns.find(word, part))
        for (const inflection of ['none', ...FORMS[part]] as const)
          for (const one of inflect(standIn, { part, inflection }).words) found.add(one)
  }
  return [...found].filter((word) => word !== '').sort()
}

/** @throws where a later step takes back what an earlier one gave: one number could not tell it */
function findFirst(word: string, { sequence, phonics }: Column): number {
  if (isUnhelpful(word)) return NO_STEP
  const pronunciations = phonics.read(word)
  const readable = sequence.steps.map(({ id }) => isReadableInAllForms(pronunciations, knowledgeAt(sequence, id)))
  const first = readable.indexOf(true)
  if (first < 0) return NO_STEP
  if (readable.includes(false, first))
    throw new Error(`${word} is readable at ${sequence.steps[first]?.id}, and later not`)
  return first
}
