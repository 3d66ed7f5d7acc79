// A word bank for writing as a maker reads it: words by kind and vowel, and what else can be used at the step.

import type { FoundWord, SheetKind, SheetPart, ShownEnding } from '../finder/index.ts'
import { type Knowledge, toMarkNames } from '../sequence/index.ts'
import type { Paint } from './paint.ts'
import { toLimit } from './sequence.ts'
import { pad, toColumnCount, toList, wrap } from './text.ts'

export interface WordBank {
  readonly step: string
  readonly parts: readonly SheetPart[]
  readonly endings: readonly ShownEnding[]
  /** What people and animals can be called: the maker's own names first. */
  readonly names: readonly string[]
  readonly knowledge: Pick<Knowledge, 'limits' | 'marks' | 'capitals'>
}

/** The same as words and sentences, for a terminal and for paper. */
export interface BankText {
  readonly sections: readonly {
    readonly head: string
    readonly rows: readonly { readonly label: string; readonly words: readonly string[] }[]
  }[]
  readonly notes: readonly string[]
}

const HEADS: Readonly<Record<SheetKind, string>> = {
  naming: 'Naming words',
  doing: 'Doing words',
  past: 'What happened (past)',
  describing: 'Describing words',
  little: 'Little words',
}

export function toBankText(bank: WordBank): BankText {
  const isNew = ({ readableAt }: FoundWord): boolean => readableAt === bank.step
  const words = bank.parts.flatMap((part) => part.words)
  // Where all is new, or nothing, a sign would tell nothing.
  const hasNew = words.some(isNew) && !words.every(isNew)
  const toShown = (found: FoundWord): string =>
    `${found.word}${hasNew && isNew(found) ? '+' : ''}${found.isSight ? '*' : ''}`
  return {
    sections: bank.parts
      .filter(({ groups }) => groups.length > 0)
      .map(({ kind, groups }) => ({
        head: HEADS[kind],
        rows: groups.map((group) => ({ label: group.label, words: group.words.map(toShown) })),
      })),
    notes: toNotes(
      bank,
      hasNew,
      words.some(({ isSight }) => isSight),
    ),
  }
}

function toNotes(bank: WordBank, hasNew: boolean, hasSight: boolean): readonly string[] {
  const { endings, names, knowledge } = bank
  const signs = [...(hasNew ? ['+ new at this step'] : []), ...(hasSight ? ['* known by heart'] : [])]
  const shown = endings.map(({ ending, examples }) => `${ending} (${examples.join(', ')})`)
  return [
    ...(signs.length > 0 ? [signs.join(', ')] : []),
    ...(shown.length > 0 ? [`Endings: ${shown.join(', ')}.`] : ['Endings: none yet.']),
    ...(names.length > 0 ? [`Names: ${names.join(', ')}.`] : []),
    ...toLimitNotes(knowledge),
    ...(isCut(bank)
      ? [
          'There are more words than a page holds: these are the most useful. All: battledore words --as sheet --count all',
        ]
      : []),
  ]
}

export const isCut = ({ parts }: Pick<WordBank, 'parts'>): boolean => parts.some(({ more }) => more)

const CAPITALS = {
  none: 'no capital letters yet',
  first: 'capital letters to open a sentence and a name',
  all: undefined,
} as const

function toLimitNotes({ limits, marks, capitals }: WordBank['knowledge']): readonly string[] {
  const most = Object.entries(limits).map(([name, limit]) => toLimit(name, limit))
  const known = marks === 'any' ? [] : toMarkNames(marks)
  const own = [
    ...(marks === 'any' ? [] : [known.length === 0 ? 'no marks yet' : toList(known)]),
    CAPITALS[capitals] ?? [],
  ].flat()
  return [
    ...(most.length > 0 ? [`At most ${toList(most)}.`] : []),
    ...(own.length > 0 ? [`Marks and capitals: ${own.join('; ')}.`] : []),
  ]
}

export function toBankLines(
  bank: WordBank,
  { width, paint }: { readonly width: number; readonly paint: Paint },
): string[] {
  const { sections, notes } = toBankText(bank)
  return [
    ...sections.flatMap(({ head, rows }) => [paint.strong(head), ...toRows(rows, width), '']),
    ...notes.flatMap((note) => wrap(note, width)).map((line) => paint.quiet(line)),
  ]
}

/** Each row with its label before it; what does not fit on a line goes on below the first word. */
function toRows(rows: BankText['sections'][number]['rows'], width: number): string[] {
  const wide = Math.max(...rows.map(({ label }) => toColumnCount(label)))
  const indent = wide === 0 ? 0 : wide + 2
  return rows.flatMap(({ label, words }) =>
    wrapWords(words, width - indent).map((line, at) => pad(at === 0 ? label : '', indent, 'left') + line),
  )
}

function wrapWords(words: readonly string[], width: number): string[] {
  const lines: string[] = []
  for (const word of words) {
    const last = lines.at(-1)
    if (last !== undefined && last.length + 2 + word.length <= width) lines[lines.length - 1] = `${last}  ${word}`
    else lines.push(word)
  }
  return lines
}
