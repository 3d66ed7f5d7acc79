// What `sequence` shows: the steps and what each adds.

import type { Sequence, Step } from '../sequence/types.ts'
import { toAccentName } from './accent.ts'
import type { Paint } from './paint.ts'
import { toCount, toList, wrap } from './text.ts'

const SEQUENCE_SCHEMA = 1

/** The sequence as a plain value, described by schemas/steps.schema.json. */
export function toSequenceJson(sequence: Sequence): unknown {
  return {
    schema: SEQUENCE_SCHEMA,
    name: sequence.name,
    title: sequence.title,
    accent: sequence.accent,
    steps: sequence.steps.map(({ id, title, adds }) => ({ id, title, adds: toAddsFields(adds) })),
  }
}

const toAddsFields = ({ correspondences, ...adds }: Step['adds']) => ({
  correspondences: correspondences.map(({ letters, example, key }) => ({
    letters,
    example,
    sound: key.slice(key.indexOf('=') + 1),
  })),
  ...adds,
})

export function toSequenceText(sequence: Sequence, { width, paint }: { width: number; paint: Paint }): string {
  const head = [
    paint.strong(`${sequence.name}: ${sequence.title}`),
    `${toCount(sequence.steps.length, 'step')}.${sequence.steps.length === 1 ? '' : ' Each step knows all before it.'}`,
    `The example words are said in a ${toAccentName(sequence.accent)}.`,
    '',
  ]
  const steps = sequence.steps.flatMap((step) => [
    ...toHead(step, width).map((line) => paint.strong(line)),
    ...toAddsLines(step).flatMap((line) => hang(line, width)),
    '',
  ])
  return `${[...head, ...steps].join('\n').trimEnd()}\n`
}

const toHead = ({ id, title }: Step, width: number): string[] =>
  title === id
    ? [id]
    : wrap(title, width - id.length - 2).map((line, at) => (at === 0 ? `${id}  ${line}` : `    ${line}`))

/** Wrapped, with what follows the first line set in. */
const hang = (line: string, width: number): string[] =>
  wrap(line, width - 4).map((part, at) => (at === 0 ? `  ${part}` : `    ${part}`))

/** One line for each kind of thing, such as `sight words: the, said`. */
function toAddsLines({ adds }: Pick<Step, 'adds'>): string[] {
  const lines: string[] = []
  const add = (label: string, items: readonly string[] | 'any') => {
    if (items === 'any') lines.push(`${label}: any`)
    else if (items.length > 0) lines.push(`${label}: ${items.join(', ')}`)
  }
  add(
    'sounds',
    adds.correspondences.map(({ letters, example }) => `${letters} as in ${example}`),
  )
  add('sight words', adds.sightWords)
  add('shapes', adds.shapes)
  add('endings', adds.endings)
  add('changes before an ending', adds.endingChanges)
  add('contractions', adds.contractions)
  add('marks', adds.marks)
  if (adds.capitals) lines.push(`capital letters: ${adds.capitals}`)
  if (adds.numerals !== undefined) lines.push(`numerals: ${adds.numerals ? 'yes' : 'no'}`)
  const limits = Object.entries(adds.limits).map(([name, limit]) => toLimit(name, limit as number | 'any'))
  if (limits.length > 0) lines.push(`limits: ${toList(limits)}`)
  return lines
}

const LIMITS: Readonly<Record<string, readonly [noun: string, where: string]>> = {
  letters: ['letter', 'in a word'],
  syllables: ['syllable', 'in a word'],
  sentenceWords: ['word', 'in a sentence'],
  pageSentences: ['sentence', 'on a page'],
  pageWords: ['word', 'on a page'],
}

export function toLimit(name: string, limit: number | 'any'): string {
  const [noun, where] = LIMITS[name] ?? [name, '']
  return `${limit === 'any' ? `any number of ${noun}s` : toCount(limit, noun)} ${where}`
}
