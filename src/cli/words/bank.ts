// Finds the words of a word bank for writing, as many as go on one page.

import { findEndings, openSheet, type Pool, type WordQuery } from '../../finder/index.ts'
import type { WordBank } from '../../report/bank.ts'

export interface BankWish {
  readonly query: WordQuery
  readonly pool: Pool
  /** The maker's own names, and names for stories. */
  readonly own: readonly string[]
  readonly names: readonly string[]
  /** Whether it goes on a page. */
  fits(bank: WordBank): boolean
}

/** More words of one part than any page holds. */
const MOST = 512
const LEAST = 4
const NAMES = 24

/** As many words of each part as fit together, or as many as are asked for. */
export function makeBank(wish: BankWish): WordBank {
  const { query, pool } = wish
  const open = openSheet(pool, { ...query, base: query.base ?? true })
  const rest = {
    step: pool.reader.sequence.steps[pool.stepIndex]?.id ?? pool.reader.step,
    endings: findEndings(pool),
    names: findNames(wish),
    knowledge: pool.knowledge,
  }
  const toBank = (count: number): WordBank => ({ parts: open(count), ...rest })
  let [from, to] = [LEAST, Math.min(query.count ?? MOST, MOST)]
  if (wish.fits(toBank(query.count ?? Infinity))) return toBank(query.count ?? Infinity)
  while (from < to) {
    const middle = Math.ceil((from + to) / 2)
    if (wish.fits(toBank(middle))) from = middle
    else to = middle - 1
  }
  return toBank(from)
}

/** Names begin with a capital letter; where none is taught, nobody has a name. */
function findNames({ pool, own, names }: BankWish): readonly string[] {
  if (pool.knowledge.capitals === 'none') return own
  const readable = names.filter((name) => pool.canRead(name) && pool.isFitWord(name) && !own.includes(name))
  // Short ones are for early readers, and more of them fit; of these, names from the whole alphabet.
  const short = [...readable]
    .sort((one, other) => one.length - other.length)
    .slice(0, 3 * NAMES)
    .sort()
  const count = Math.min(short.length, Math.max(0, NAMES - own.length))
  return [...own, ...Array.from({ length: count }, (_, at) => short[Math.floor((at * short.length) / count)] ?? '')]
}
