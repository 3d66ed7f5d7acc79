// What `battledore print` can be asked, as typed and as read.

import { findNearest } from '../../nearest.ts'
import type { CutWish, PaperName, SizeWish } from '../../print/index.ts'
import { fail, type Problem, type Result, succeed, toExpected } from '../../problem/index.ts'
import { SHEET_KINDS, type SheetKind, type Wishes } from '../../sheets/index.ts'
import type { WordsOptions } from '../words/run.ts'

/** As typed. */
export interface PrintOptions extends Omit<WordsOptions, 'format' | 'set' | 'as' | 'sounds'> {
  readonly set?: 'box' | 'mixed'
  readonly words?: string
  readonly wordsFrom?: string
  readonly paper?: string
  readonly out?: string
  readonly force?: boolean
  readonly format: 'pdf' | 'svg'
  readonly letters: string
  readonly letterShapes?: string
  readonly spacing: 'usual' | 'wide' | 'wider'
  readonly size: string
  readonly mark: string
  readonly cut: string
  readonly numbers?: boolean
  readonly backs: string
  readonly fold: string
  readonly group: 'letter' | 'ending'
  readonly sides: string
  readonly turn?: string
  readonly pictures?: string
  readonly ownSet: boolean
  readonly colour: string
  readonly failOn: 'error' | 'never'
}

export function readKind(text: string): Result<SheetKind> {
  const kind = SHEET_KINDS.find((one) => one === text || `${one}s` === text || one === `${text}s`)
  return kind ? succeed(kind) : toUnknown('print', text, SHEET_KINDS)
}

/** Every choice that is no choice, told at once. */
export function readWishes(kind: SheetKind, options: PrintOptions): Result<Wishes> {
  const problems: Problem[] = []
  const choose = <const Choice extends string>(flag: string, text: string, choices: readonly Choice[]): Choice => {
    const found = choices.find((one) => one === text.toLowerCase())
    if (found === undefined) problems.push(...toUnknown(flag, text, choices).problems)
    return found ?? (choices[0] as Choice)
  }
  const cuts = options.cut.split(',').map((text) => choose('--cut', text.trim(), ['corners', 'lines', 'none', 'words']))
  const size = readSize(options.size)
  if (!size.ok) problems.push(...size.problems)
  const wishes: Wishes = {
    paper: options.paper === undefined ? undefined : choose<PaperName>('--paper', options.paper, ['a4', 'letter']),
    size: size.ok ? size.value : 'usual',
    mark: choose('--mark', options.mark, ['none', 'practised', 'by-heart']),
    cut: cuts.find((cut): cut is CutWish => cut !== 'words') ?? 'corners',
    isCutInWords: cuts.includes('words'),
    backs: choose('--backs', options.backs, ['none', 'words']),
    fold: choose('--fold', options.fold, ['staple', 'one-sheet', 'none']),
    sides: choose('--sides', options.sides, ['both', 'fronts', 'backs']),
    turn:
      options.turn === undefined
        ? undefined
        : choose<'short-edge' | 'long-edge'>('--turn', options.turn, ['short-edge', 'long-edge']),
    isGrey: choose('--colour', options.colour, ['colour', 'grey']) === 'grey',
  }
  problems.push(...findMisplaced(kind, wishes))
  return problems.length > 0 ? fail(...problems) : succeed(wishes)
}

/** A wish that this kind of sheet cannot fulfil would be passed over without a word. */
function findMisplaced(kind: SheetKind, { backs, fold, isCutInWords }: Wishes): readonly Problem[] {
  const only = (isWished: boolean, flag: string, home: SheetKind): readonly Problem[] =>
    isWished && kind !== home
      ? fail({ code: 'bad-value', message: `${flag} is for \`print ${home}\`, not for \`print ${kind}\`` }).problems
      : []
  return [
    ...only(backs === 'words', '--backs words', 'cards'),
    ...only(fold !== 'staple', `--fold ${fold}`, 'book'),
    ...only(isCutInWords, '--cut words', 'strips'),
  ]
}

function toUnknown(flag: string, text: string, choices: readonly string[]) {
  const nearest = findNearest(text, choices)
  const list = `${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}`
  return fail({
    code: 'bad-value',
    message: `${flag} can be ${list}; this is \`${text}\``,
    expected: toExpected(nearest),
  })
}

/** Millimetres that a child can read and a sheet can hold. */
const [SMALLEST, LARGEST] = [2, 60]

function readSize(text: string): Result<SizeWish> {
  if (text === 'small' || text === 'usual' || text === 'large') return succeed(text)
  const number = Number(text.replace(/\s*mm$/, ''))
  if (text.trim() !== '' && number >= SMALLEST && number <= LARGEST) return succeed(number)
  return fail({
    code: 'bad-value',
    message: `--size can be small, usual, large, or the height of the small x from ${SMALLEST} to ${LARGEST} mm; this is \`${text}\``,
  })
}
