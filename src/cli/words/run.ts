// Lists words: opens the data, asks the finder, prints.

import {
  createPool,
  findLeading,
  makeBox,
  type Pool,
  readQuery,
  type WordQuery,
  type WrittenQuery,
} from '../../finder/index.ts'
import { findUntaught } from '../../finder/query-spellings.ts'
import { readWordFiles } from '../../packaged/word-files.ts'
import type { Lexicon } from '../../phonics/index.ts'
import { type Result, toProblemLine } from '../../problem/index.ts'
import { isCut, toBankLines, type WordBank } from '../../report/bank.ts'
import { PLAIN } from '../../report/paint.ts'
import type { WordList } from '../../report/word-list.ts'
import { toWordsAside, toWordsText, type WordsView } from '../../report/words.ts'
import { toWordsCsv, toWordsJson, toWordsPlain } from '../../report/words-data.ts'
import { openWordFiles } from '../../resources/word-files.ts'
import { findStep } from '../../sequence/index.ts'
import type { WordData } from '../../words/index.ts'
import type { CommandContext, ExitCode } from '../command.ts'
import type { AskedReader, FoundReader } from '../list-reader.ts'
import { toOwnFitness } from '../own-fitness.ts'
import { type BankWish, makeBank } from './bank.ts'
import { makeContrast } from './contrast.ts'

/** The wishes as typed, and how to print what is found. */
export interface WordsOptions extends AskedReader, WrittenQuery {
  readonly notOn?: string
  readonly format: 'pretty' | 'plain' | 'csv' | 'json'
  readonly set?: 'box' | 'contrast' | 'mixed'
  readonly sounds?: string
  readonly as?: 'list' | 'sheet'
}

export interface ListTools extends FoundReader {
  readonly lexicon: Lexicon
  /** Where the data of the package lies. */
  readonly folder: string
  /** Columns that a sheet is laid out in. */
  readonly width: number
}

type WordsTools = ListTools & WordsView

type Io = CommandContext['io']

/** How many words a list has for a person where nobody says. */
const LIST = 60

export async function words(options: WordsOptions, tools: WordsTools, io: Io): Promise<ExitCode> {
  const list = await makeList(options, tools, io)
  if ('problem' in list) {
    io.stderr.write(`battledore: ${list.problem}\n`)
    return 2
  }
  io.stdout.write(print(list, options.format, tools))
  // The words alone are for a program or a spreadsheet; what a person must know goes beside them.
  if (options.format !== 'pretty') for (const line of toWordsAside(list, options.format)) io.stderr.write(`${line}\n`)
  return isUnfulfilled(list) ? 1 : 0
}

/** A set, or things to be shown, of which there are none. */
const isUnfulfilled = ({ words, as, showAs }: WordList): boolean =>
  words.length === 0 && (showAs !== null || (as !== 'list' && as !== 'sheet'))

type Made = WordList | { readonly problem: string }
type Found = Partial<
  Pick<WordList, 'words' | 'pairs' | 'more' | 'relaxed' | 'hasObjects' | 'isAll' | 'showAs' | 'instead' | 'bank'>
>

/** Flags that one command cannot follow together: one of them would be passed over without a word. */
function findClash({ as, set, sounds }: WordsOptions): string | undefined {
  if (as === 'sheet' && set !== undefined)
    return `--as sheet and --set ${set} do not go together: ask for the sheet or for the set.`
  if (sounds !== undefined && set !== 'contrast')
    return `--sounds is for pairs of words: write --set contrast --sounds ${sounds}.`
  return undefined
}

/** The words that are wished for, or the first mistake in one line. */
export async function makeList(options: WordsOptions, tools: ListTools, io: Io): Promise<Made> {
  const clash = findClash(options)
  if (clash !== undefined) return { problem: clash }
  const asked = await openQuery(options, tools, io)
  if ('problem' in asked) return asked
  const { query, pool } = asked
  const found = find(options, asked, tools)
  if ('problem' in found) return found
  const { sequence, step, phonics, name } = tools
  return {
    as: options.as === 'sheet' ? 'sheet' : (options.set ?? 'list'),
    sequence,
    step: { id: step, title: findStep(sequence, step)?.title ?? step },
    accent: phonics.accent,
    reader: name ?? null,
    words: [],
    pairs: [],
    more: false,
    relaxed: [],
    hasObjects: query.object === true,
    isAll: false,
    showAs: query.object ? 'object' : query.picture ? 'picture' : null,
    instead: null,
    bank: null,
    untaught: findUntaught(options, { ...tools, pool }),
    ...found,
  }
}

interface Asked {
  readonly query: WordQuery
  readonly pool: Pool
  readonly data: WordData
}

/** The wishes read and the data opened, or the first mistake in one line. */
async function openQuery(
  options: WordsOptions,
  tools: ListTools,
  io: Io,
): Promise<Asked | { readonly problem: string }> {
  const { lexicon, folder, sequence, step, builtIn, extra, phonics, settings } = tools
  const { data, table } = openWordFiles(readWordFiles(folder), lexicon.size)
  const fitness = toOwnFitness(settings, data)
  const sources = { table, facts: data.facts, lexicon, phonics, fitness }
  const pool = createPool(sources, { sequence, step, builtIn, extra })
  const query = readQuery(options, { ...tools, pool })
  if ('problem' in query) return query
  const used = options.notOn === undefined ? undefined : await readUsedWords(options.notOn, io)
  if (used?.ok === false) return { problem: used.problems.map(toProblemLine).join(' ') }
  return { query: used ? { ...query, not: used.value } : query, pool, data }
}

function find(options: WordsOptions, asked: Asked, tools: ListTools): Found | { readonly problem: string } {
  const { query, pool } = asked
  if (options.as === 'sheet') return makeSheet(asked, tools)
  if (options.set === 'contrast') return makeContrast(options, query, pool, tools)
  if (options.set === 'box' || options.set === 'mixed') return makeBox(options.set, query, pool, tools.sequence)
  const forPeople = options.format === 'pretty' ? LIST : Infinity
  return findLeading(pool, { ...query, count: query.count ?? forPeople })
}

/** Lines of a printed page in the letters of a terminal, with a margin. */
const PAGE = 58

function makeSheet(asked: Asked, tools: ListTools): Found {
  const view = { width: tools.width, paint: PLAIN }
  // Its head has two lines and one below.
  const fits = (bank: WordBank): boolean =>
    asked.query.count !== undefined || toBankLines(bank, view).length + 3 <= PAGE
  const bank = makeBank(toBankWish(asked, tools, fits))
  return { words: bank.parts.flatMap((part) => part.words), more: isCut(bank), bank }
}

/** A word bank of which as much is taken as fits, or the first mistake in one line. */
export async function findBank(
  options: WordsOptions,
  tools: ListTools,
  fits: (bank: WordBank) => boolean,
  io: Io,
): Promise<WordBank | { readonly problem: string }> {
  const asked = await openQuery(options, tools, io)
  return 'problem' in asked ? asked : makeBank(toBankWish(asked, tools, fits))
}

/** People and animals can be called by the names of the settings, and by those of the package. */
const toBankWish = ({ query, pool, data }: Asked, { settings }: ListTools, fits: BankWish['fits']): BankWish => ({
  ...{ query, pool, fits },
  own: settings.names.map(({ value }) => value),
  names: data.names(),
})

async function readUsedWords(folder: string, io: Io): Promise<Result<ReadonlySet<string>>> {
  const { findUsedWords } = await import('./used-words.ts')
  return findUsedWords(folder, io)
}

function print(list: WordList, format: WordsOptions['format'], view: WordsView): string {
  switch (format) {
    case 'plain':
      return toWordsPlain(list)
    case 'csv':
      return toWordsCsv(list)
    case 'json':
      return `${JSON.stringify(toWordsJson(list), null, 2)}\n`
    default:
      return toWordsText(list, view)
  }
}
