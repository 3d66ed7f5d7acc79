// What a word that another might stand for is by itself, wherever it stands.

import { toStraight } from '../apostrophe.ts'
import type { Candidates } from './candidates.ts'
import { isLittleWord } from './little.ts'
import type { WordData } from './word-data.ts'

export interface Nature {
  /** In small letters, with plain apostrophes. */
  readonly whole: string
  /** `written-out`: two words drawn together; `as-it-is`: a little word; `none`: nothing is ever offered. */
  readonly way: 'written-out' | 'as-it-is' | 'replaced' | 'none'
  /** Without an owner's ending, which is put back. */
  readonly stem: string
  readonly owner: string
}

const OWNER = "'s"

export function findNature(
  written: string,
  candidates: Pick<Candidates, 'factsOf'>,
  data: Pick<WordData, 'standIns'>,
): Nature {
  const whole = toStraight(written.toLowerCase())
  const owner = whole.length > OWNER.length && whole.endsWith(OWNER) ? OWNER : ''
  const stem = whole.slice(0, whole.length - owner.length)
  return { whole, stem, owner, way: findWay(whole, stem, owner, { ...candidates, ...data }) }
}

function findWay(
  whole: string,
  stem: string,
  owner: string,
  { standIns, factsOf }: Pick<Candidates, 'factsOf'> & Pick<WordData, 'standIns'>,
): Nature['way'] {
  const hasApostrophe = whole.includes("'")
  if (hasApostrophe && standIns.find(whole, 'form').length > 0) return 'written-out'
  if (hasApostrophe && owner === '') return 'none'
  // A little word has only what the table says of it as it is: `until`, `till`.
  if (isLittleWord(whole)) return 'as-it-is'
  const main = isLittleWord(stem) ? undefined : factsOf(stem)?.main
  return main === undefined || main === 'little' ? 'none' : 'replaced'
}
