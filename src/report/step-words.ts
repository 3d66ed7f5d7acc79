// What `sequence --shelf` prints: the words that each step has for a book, and where they are too few.

import { ENOUGH, type Lack, type StepWords } from '../finder/step-words.ts'
import type { Sequence } from '../sequence/types.ts'
import { toAccentName } from './accent.ts'
import type { Paint } from './paint.ts'
import { toStepName } from './step.ts'
import { toColumns, toCount, toList, toPrintable, wrap } from './text.ts'

const STEP_WORDS_SCHEMA = 1

export interface StepWordsReport {
  readonly sequence: Sequence
  readonly steps: readonly StepWords[]
  /** How many books of the shelf are for each step, by its id; undefined where no shelf was given. */
  readonly books: ReadonlyMap<string, number> | undefined
}

interface View {
  readonly width: number
  readonly paint: Paint
}

export function toStepWordsText({ sequence, steps, books }: StepWordsReport, { width, paint }: View): string {
  const thin = steps.filter(({ lacks }) => lacks.length > 0)
  const head = ['step', 'words', 'things', 'doing', 'others', 'new', ...(books ? ['books'] : []), '']
  const rows = steps.map(({ step, words, kinds, brings, lacks }) => [
    step.id,
    ...[words, kinds.things, kinds.doing, kinds.others, brings.length].map(String),
    ...(books ? [String(books.get(step.id) ?? 0)] : []),
    lacks.length > 0 ? '*' : '',
  ])
  const [first = '', ...lines] = toColumns(
    [head, ...rows],
    head.map((_, at) => (at === 0 || at === head.length - 1 ? 'left' : 'right')),
  )
  const paragraphs = [
    thin.length === 0 ? 'Every step has enough words for a book.' : '* has too few words for a book; see below.',
    'Counted are words that small children know, in their base form. “New” are those that the step itself makes readable; things are those that a picture can show.',
    `Enough for a first book (common practice, no source): ${ENOUGH.words} words to choose from, among them ${ENOUGH.things} things and ${ENOUGH.doing} doing words, and ${ENOUGH.brings} new ones where the step teaches a sound.`,
  ]
  const title = `Words for a book at each step of ${sequence.title}; ${toAccentName(sequence.accent)}`
  const parts = [
    ...wrap(toPrintable(title), width).map((line) => paint.strong(line)),
    '',
    paint.quiet(first),
    ...lines,
    ...paragraphs.flatMap((text) => ['', ...wrap(text, width)]),
    ...thin.flatMap((one) => ['', ...toThin(one, width, paint)]),
  ]
  return `${parts.join('\n')}\n`
}

const NAMES: Readonly<Record<Exclude<Lack, 'others'>, readonly [one: string, many: string]>> = {
  words: ['word', 'words'],
  things: ['thing', 'things'],
  doing: ['doing word', 'doing words'],
  brings: ['new word', 'new words'],
}

function toThin({ step, words, kinds, brings, lacks, offers }: StepWords, width: number, paint: Paint): string[] {
  const counts = { words, ...kinds, brings: brings.length }
  const few = lacks.flatMap((lack) => (lack === 'others' ? [] : [toCount(counts[lack], ...NAMES[lack])]))
  const what =
    offers.length === 0 ? 'It offers no word yet.' : `It offers ${offers.map(({ word }) => word).join(', ')}.`
  const advice = lacks.includes('words') ? ' Put it together with the next step, or teach a word by heart.' : ''
  return [
    ...wrap(toPrintable(toStepName(step)), width).map((line) => paint.strong(line)),
    ...wrap(`Only ${toList(few)}. ${what}${advice}`, width - 2).map((line) => `  ${line}`),
  ]
}

/** Described by schemas/step-words.schema.json. */
export const toStepWordsJson = ({ sequence, steps, books }: StepWordsReport) => ({
  schema: STEP_WORDS_SCHEMA,
  sequence: sequence.name,
  accent: sequence.accent,
  enough: ENOUGH,
  steps: steps.map(({ step, words, kinds, brings, lacks, offers }) => ({
    step: step.id,
    words,
    ...kinds,
    brings: brings.map(({ word }) => word),
    offers: offers.map(({ word }) => word),
    lacks,
    books: books ? (books.get(step.id) ?? 0) : null,
  })),
})
