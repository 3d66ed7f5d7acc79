// Finds for each built-in sequence the first step at which a word is readable that may stand for another, and the first at which
// anything can be said for a word.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { hasApostrophe } from '../../src/apostrophe.ts'
import { isReadableInAllForms } from '../../src/finder/forms.ts'
import { isUnhelpful } from '../../src/finder/unhelpful.ts'
import { hashText } from '../../src/hash.ts'
import { createPhonics, createSpelling, type Lexicon } from '../../src/phonics/index.ts'
import type { Accent, Phonics } from '../../src/phonics/types.ts'
import { type CompiledSequence, knowledgeAt, type Sequence, sequenceFromJson } from '../../src/sequence/index.ts'
import { joinSections } from '../../src/words/bytes.ts'
import { createCandidates, inflect } from '../../src/words/candidates.ts'
import { NO_STEP, toColumn } from '../../src/words/first-steps.ts'
import { openStandIns, type StandIn } from '../../src/words/stand-ins.ts'
import { findAllStandIns, findKnown } from '../../src/words/suggest.ts'
import { FORMS } from '../../src/words/use.ts'
import type { WordData } from '../../src/words/word-data.ts'
import { buildStandIns } from './stand-ins.ts'

const ACCENTS = ['general-american', 'southern-british'] as const satisfies readonly Accent[]
const PARTS = ['noun', 'verb', 'adjective', 'adverb'] as const

interface Column {
  readonly name: string
  readonly sequence: Sequence
  readonly phonics: Phonics
}

/**
 * @param data of the same lexicon; its first steps are not asked for
 * @param folder of the compiled sequences
 */
export function buildFirstSteps(lexicon: Lexicon, data: WordData, folder: string): Uint8Array {
  const spelling = createSpelling(lexicon)
  const files = readdirSync(folder).sort()
  const columns = ACCENTS.flatMap((accent) => {
    const phonics = createPhonics(lexicon, accent, spelling)
    return files.map((file): Column => {
      const json = JSON.parse(readFileSync(join(folder, file), 'utf8')) as CompiledSequence
      return { name: toColumn(json.name, accent), sequence: sequenceFromJson(json, accent), phonics }
    })
  })
  const { mayStandFor } = data.fitness()
  const standing = toHashed(listCandidates())
  const standsFrom = columns.map((column) => {
    const toFirst = ({ word }: Hashed) => (mayStandFor(word) ? findFirst(word, column) : NO_STEP)
    return new Map(standing.map((one) => [one.word, toFirst(one)]))
  })
  const helps = listHelped(lexicon, data)
  const helped = toHashed([...helps.keys()])
  return joinSections([
    new TextEncoder().encode(columns.map(({ name }) => name).join('\n')),
    toHashBytes(standing),
    Uint8Array.from(standsFrom.flatMap((first) => standing.map(({ word }) => first.get(word) ?? NO_STEP))),
    toHashBytes(helped),
    Uint8Array.from(
      standsFrom.flatMap((first) => helped.map(({ word }) => findFirstHelp(helps.get(word) ?? NO_HELP, first))),
    ),
  ])
}

interface Hashed {
  readonly word: string
  readonly hash: number
}

function toHashed(words: readonly string[]): readonly Hashed[] {
  const hashed = words.map((word) => ({ word, hash: hashText(word) })).sort((a, b) => a.hash - b.hash)
  const twins = hashed.find(({ hash }, at) => hashed[at + 1]?.hash === hash)
  if (twins) throw new Error(`two words of the table of first steps have one hash: ${twins.word} and another`)
  return hashed
}

const toHashBytes = (hashed: readonly Hashed[]): Uint8Array =>
  new Uint8Array(Uint32Array.from(hashed, ({ hash }) => hash).buffer)

/** What can be said for a word, at whatever step. */
interface Help {
  readonly standIns: readonly StandIn[]
  readonly mayGo: boolean
}

const NO_HELP: Help = { standIns: [], mayGo: false }

/** Every word of the lexicon or of the table of stand-ins for which anything could be said. */
function listHelped(lexicon: Lexicon, { facts, standIns }: WordData): ReadonlyMap<string, Help> {
  const data = { facts, standIns }
  const candidates = createCandidates({ data, lexicon, fitness: { mayStandFor: () => true }, isReadable: () => true })
  const rows = new TextDecoder().decode(buildStandIns()).split('\n')
  const helped = new Map<string, Help>()
  for (const word of new Set([...lexicon.words(), ...rows.map((row) => row.split('\t')[0] ?? '')])) {
    // `king's` is asked about when it comes: what owns decides.
    if (hasApostrophe(word)) continue
    const known = findKnown(word, candidates, data)
    const help = { standIns: findAllStandIns(known, candidates), mayGo: known.leaving.mayGo }
    if (help.mayGo || help.standIns.length > 0) helped.set(word, help)
  }
  return helped
}

/** The first step at which all words of one stand-in can be read. */
function findFirstHelp({ standIns, mayGo }: Help, first: ReadonlyMap<string, number>): number {
  if (mayGo) return 0
  return Math.min(...standIns.map(({ words }) => Math.max(...words.map((word) => first.get(word) ?? NO_STEP))))
}

/** Every word of the table of stand-ins, in every form in which it may be wanted. */
export function listCandidates(): readonly string[] {
  const table = buildStandIns()
  const standIns = openStandIns(table)
  const found = new Set<string>()
  for (const row of new TextDecoder().decode(table).split('\n')) {
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
