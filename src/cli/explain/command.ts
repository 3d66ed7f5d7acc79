// `battledore explain`: how the letters of a word say its sounds, and when it becomes readable.

import { DEFAULT_SEQUENCE } from '../../check/check-story.ts'
import { findWhoReads, type WhoReads } from '../../check/who-reads.ts'
import { hasCapital } from '../../letter-kinds.ts'
import { findSlips } from '../../phonics/slip.ts'
import type { Accent, WordPronunciations } from '../../phonics/types.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { findUnitExamples } from '../../report/examples.ts'
import { type ExplainedWord, toExplainJson, toExplainText } from '../../report/explain.ts'
import { findFormReasons } from '../../report/form-reasons.ts'
import { knowledgeAt, toStepIndex } from '../../sequence/knowledge.ts'
import type { Sequence } from '../../sequence/types.ts'
import { findReadableAt, judgeInSequence, keepForm } from '../../verdict/index.ts'
import { type AddCommand, complainOf, toPaint, toWidth, withExamples } from '../command.ts'
import { readStdin } from '../files/read.ts'
import type { Io } from '../io.ts'
import { accentOption, formatOption, sequenceOption, stepOption } from '../options.ts'
import { createResources } from '../resources.ts'

interface Options {
  readonly format: 'pretty' | 'ndjson'
  readonly accent?: Accent
  readonly sequence: string
  readonly step?: string
}

export const addExplain: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('explain')
    .description('show how the letters of words say their sounds, and when each word becomes readable')
    .argument('[WORD...]', 'the words; - reads them from standard input, one a line')
    .addOption(stepOption())
    .addOption(sequenceOption().default(DEFAULT_SEQUENCE))
    .addOption(accentOption())
    .addOption(formatOption(['pretty', 'ndjson']))
    .action(async (given: string[], options: Options) => {
      const who = await findWhoReads(
        {
          sequence: { value: options.sequence, origin: '--sequence' },
          step: { value: options.step, origin: '--step' },
          accent: { value: options.accent, origin: '--accent' },
        },
        createResources(io),
      )
      if (!who.ok) {
        complainOf(io, who.problems)
        return leave(2)
      }
      const words = await readWords(given, io)
      if (!words.ok) {
        complainOf(io, words.problems)
        return leave(2)
      }
      await print(words.value, who.value, options.format, io)
    })
  withExamples(
    command,
    ['battledore explain won can', 'see why `won` cannot be sounded out where `can` can'],
    ['battledore explain night --step pink-3', 'see why a word is not readable at a step'],
    ['battledore explain - --format ndjson < words.txt', 'a JSON object a line, for other programs'],
  )
}

async function readWords(given: readonly string[], io: Io): Promise<Result<readonly string[]>> {
  const message = 'Name the words to explain, or - to read them from standard input'
  if (given.length === 0) return fail({ code: 'bad-value', message })
  if (given.some((word) => word.trim() === ''))
    return fail({ code: 'bad-value', message: 'An empty word was given', note: `${message}.` })
  if (!given.includes('-')) return succeed(given)
  const input = await readStdin(io)
  if (!input.ok) return input
  const lines = input.value
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
  return succeed(given.flatMap((word) => (word === '-' ? lines : [word])))
}

type Place = Pick<WhoReads, 'sequence' | 'phonics' | 'step'>

/** How much is gathered before it is written: a write a word would be most of the time of a long list. */
const CHUNK = 1 << 16

async function print(words: readonly string[], place: Place, format: Options['format'], io: Io): Promise<void> {
  const view = { width: toWidth(io), paint: await toPaint(io) }
  let text = ''
  words.forEach((word, at) => {
    const explained = explain(word, place)
    text +=
      format === 'ndjson'
        ? `${JSON.stringify(toExplainJson(explained))}\n`
        : `${at > 0 ? '\n' : ''}${toExplainText(explained, view)}`
    if (text.length < CHUNK) return
    io.stdout.write(text)
    text = ''
  })
  io.stdout.write(text)
}

export function explain(word: string, { sequence, phonics, step }: Place): ExplainedWord {
  const pronunciations = phonics.read(word)
  const formsReadableAt = findFormSteps(pronunciations, sequence)
  const toPlace = (at: string | null): number => (at === null ? Infinity : toStepIndex(sequence, at))
  // Which form a story means is not known here, so that the word waits for the last of them, as in a check. Small letters are no town's.
  const isMeant = findMeantForms(word, phonics)
  const meant = formsReadableAt.filter((_, at) => isMeant(pronunciations.pronunciations[at]?.form))
  const last = meant.sort((one, other) => toPlace(one) - toPlace(other)).at(-1)
  return {
    word,
    pronunciations,
    // Of a word with a capital nothing here tells whether it is a name.
    slips: hasCapital(word) || pronunciations.meant !== undefined ? [] : findSlips(word, phonics),
    step,
    readableAt: last === undefined ? (findReadableAt(pronunciations, sequence) ?? null) : last,
    verdict: step === undefined ? undefined : judgeInSequence(pronunciations, sequence, step),
    taught: step === undefined ? undefined : { sequence, knowledge: knowledgeAt(sequence, step) },
    examples: pronunciations.pronunciations.map((pronunciation) => findUnitExamples(pronunciation, sequence)),
    meanings: pronunciations.pronunciations.map(({ meaning }) => meaning),
    formsReadableAt,
    formsReasons: findFormReasons(pronunciations, formsReadableAt, sequence),
    formsReadable: step === undefined ? [] : formsReadableAt.map((at) => toPlace(at) <= toPlace(step)),
  }
}

/** `nice` is not the town, whose form is written with a capital. */
function findMeantForms(word: string, { heteronyms }: Place['phonics']): (form: string | undefined) => boolean {
  const forms = hasCapital(word) ? [] : (heteronyms.find(word)?.forms ?? [])
  const capital = new Set<string | undefined>(
    forms.flatMap(({ form, written }) => (written === 'capital' ? [form] : [])),
  )
  return (form) => !capital.has(form)
}

/** When each pronunciation's form becomes readable; empty where all do at once. */
function findFormSteps(pronunciations: WordPronunciations, sequence: Sequence): readonly (string | null)[] {
  if (!pronunciations.heteronym) return []
  const steps = pronunciations.pronunciations.map(
    ({ form }) => findReadableAt(keepForm(pronunciations, form), sequence) ?? null,
  )
  return new Set(steps).size > 1 ? steps : []
}
