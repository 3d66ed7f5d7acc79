// What `level` prints: a text with its earliest step, and the words that hold it back.

import type { Sequence } from '../sequence/types.ts'
import type { HeldWord, Level } from '../shelf/index.ts'
import { toCsv, toShareFigure } from './csv.ts'
import { toExplainCommand } from './explain-command.ts'
import { OPEN_NOTE, toHeldFields, toHeldText } from './held-back.ts'
import type { Paint } from './paint.ts'
import { toPercentOf } from './share.ts'
import { toColumns, toCount, toPercent, toPrintable, wrap } from './text.ts'

const LEVEL_SCHEMA = 1

export interface LevelledText {
  /** As shown to people. */
  readonly path: string
  readonly sequence: Sequence
  /** The name or path by which the sequence was found. */
  readonly asked: string
  /** The share that was asked for, 0 to 1. */
  readonly wanted: number
  readonly level: Omit<Level, 'holdingBack'> & { readonly holdingBack: readonly HeldWord[] }
}

interface View {
  readonly width: number
  readonly paint: Paint
}

/** How many words are shown where there are more. */
const MOST_WORDS = 12

export function toPrettyLevel(text: LevelledText, { width, paint }: View): string {
  const { sequence, level, wanted, path } = text
  const words = toCount(level.words, 'word')
  const last = sequence.steps.at(-1)?.id ?? ''
  const title = sequence.steps.find(({ id }) => id === level.step)?.title
  const answer =
    level.step === null
      ? `Beyond the last step: at ${last}, ${toPercentOf(level.share, wanted)} of ${words} can be read, and ${toPercent(wanted)} are wanted.`
      : `Earliest step: ${level.step}, “${title}”. There ${toPercent(level.share)} of ${words} can be read.`
  const lines = [answer, ...toHoldingLines(text)]
  return `${[paint.strong(toPrintable(path)), ...lines.flatMap((line) => wrap(line, width - 2)).map((line) => `  ${line}`), ''].join('\n')}\n`
}

function toHoldingLines({ level: { holdingBack, step }, asked, sequence }: LevelledText): readonly string[] {
  if (holdingBack.length === 0) return []
  const shown = holdingBack.slice(0, MOST_WORDS).map((word) => toHeldText(word))
  const more = holdingBack.length - shown.length
  const rest = more > 0 ? `, and ${more} more` : ''
  const when =
    step === null
      ? 'Words that no step makes readable, each with its first line and column'
      : 'Words that hold it back, each with its first line and column, and the step that makes it readable'
  const isNever = holdingBack.some(({ readableAt }) => readableAt === null)
  const command = toExplainCommand('WORD', { asked, accent: sequence.accent })
  const why = `What such a word lacks, and the line that would teach it: ${command}`
  const isOpen = holdingBack.slice(0, MOST_WORDS).some((word) => word.isOpen)
  return [`${when}: ${shown.join(', ')}${rest}.`, ...(isOpen ? [OPEN_NOTE] : []), ...(isNever ? [why] : [])]
}

/** How many texts stand at each step. */
export function toPrettySum(found: readonly LevelledText[], { width, paint }: View): string {
  const sequences = [...new Set(found.map(({ sequence }) => sequence))]
  const rows = sequences.flatMap((sequence) => {
    const own = found.filter((one) => one.sequence === sequence)
    const counts = sequence.steps.map(
      ({ id, title }) => [id, title, own.filter(({ level }) => level.step === id).length] as const,
    )
    const beyond = ['', 'beyond the last step', own.filter(({ level }) => level.step === null).length] as const
    return [...counts, beyond]
      .filter(([, , count]) => count > 0)
      .map(([id, title, count]) => [id, String(count), title])
  })
  const columns = toColumns(
    [['step', 'texts', ''], ...rows.map(([id = '', count = '']) => [id, count, ''])],
    ['left', 'right', 'left'],
  )
  const room = width - 4 - Math.max(...columns.map((line) => line.length))
  const lines = columns.flatMap((line, at) => {
    const [title = '', ...more] = wrap(rows[at - 1]?.[2] ?? '', room)
    const indent = ' '.repeat(width - 2 - room)
    return [`${line}  ${title}`.trimEnd(), ...more.map((part) => `${indent}${part}`)]
  })
  const head = `${toCount(found.length, 'text')}, at ${toPercent(found[0]?.wanted ?? 0)} of the running words:`
  return `${[...wrap(paint.strong(head), width), ...lines.map((line) => `  ${line}`)].join('\n')}\n`
}

/** Described by schemas/level.schema.json. */
export function toJsonLevels(found: readonly LevelledText[], wanted: number) {
  return {
    schema: LEVEL_SCHEMA,
    share: wanted,
    texts: found.map(({ path, sequence, level }) => ({
      path,
      sequence: sequence.name,
      accent: sequence.accent,
      step: level.step,
      words: level.words,
      readableShare: level.share,
      steps: sequence.steps.map(({ id }, at) => ({ step: id, readableShare: level.shares[at] ?? 0 })),
      holdingBack: level.holdingBack.map(toHeldFields),
    })),
  }
}

export function toCsvReport(found: readonly LevelledText[]): string {
  const head = ['path', 'sequence', 'step', 'words', 'readable share', 'words that hold it back']
  const rows = found.map(({ path, sequence, level }) => [
    path,
    sequence.name,
    level.step ?? 'beyond the last step',
    level.words,
    toShareFigure(level.share),
    level.holdingBack.map(({ word }) => word).join(' '),
  ])
  return toCsv([head, ...rows])
}
