// The last line of `battledore print`: what was made, and what to do with it now.

import { count, type Laid } from '../print/index.ts'
import type { SheetKind, Wishes } from './types.ts'

export interface Made {
  readonly kind: SheetKind
  readonly laid: Laid
  readonly wishes: Pick<Wishes, 'cut' | 'fold'>
  readonly bytes: number
}

/** Larger files take a home printer minutes, and do not go by mail. */
const LARGE = 20_000_000

export function toAdvice(path: string, { kind, laid, wishes, bytes }: Made): string {
  const sides = laid.duplex === undefined ? [] : [toTurn(laid.duplex)]
  const sheets = laid.duplex === undefined ? laid.sheets.length : Math.ceil(laid.sheets.length / 2)
  return [
    `${path}: ${[count(sheets, 'sheet'), ...laid.counts].join(', ')}.`,
    'Print at 100 %, not “fit to page”.',
    ...sides,
    ...toHands(kind, wishes),
    bytes > LARGE ? `The file has ${Math.round(bytes / 1e6)} million bytes: smaller pictures would print faster.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ')
}

const toTurn = (edge: 'short-edge' | 'long-edge'): string =>
  `Print on both sides, turned at the ${edge === 'short-edge' ? 'short' : 'long'} edge.`

/** What hands do now. */
function toHands(kind: SheetKind, { cut, fold }: Made['wishes']): readonly string[] {
  if (kind === 'list' || kind === 'bank') return []
  if (kind === 'book') return FOLDS[fold]
  const how = cut === 'lines' ? ['Cut on the lines.'] : cut === 'none' ? [] : ['Cut from mark to mark.']
  const small = kind === 'wall' || kind === 'slips' ? [] : ['Small pieces of card can be swallowed.']
  return [...how, ...(kind === 'slips' ? ['Fold each along its line, the words inside.'] : []), ...small]
}

const FOLDS: Readonly<Record<Wishes['fold'], readonly string[]>> = {
  staple: ['Lay the sheets on one another, fold them in the middle, and staple the fold.'],
  'one-sheet': [
    'Fold all lines, cut the whole line in the middle, fold lengthwise, push the ends together, and fold round.',
  ],
  none: [],
}
