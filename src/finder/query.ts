// From what a person writes to a query: every filter by its name, every mistake told in one line.

import { WORD_KINDS } from '../words/index.ts'
import type { WordQuery } from './find.ts'
import type { WordOrderName } from './order.ts'
import { toFamily, toRhymeWord } from './query-sounds.ts'
import { toSpelling, toVowel } from './query-spellings.ts'
import type { QueryTools, WrittenQuery } from './query-tools.ts'
import { fail, Mistake, splitList, toChoice, toCount, toNumber, toPattern, toSpan } from './query-values.ts'
import type { Spelling } from './spelling.ts'

const ORDERS = ['useful', 'alphabetical', 'shuffled'] as const satisfies readonly WordOrderName[]

/** @returns the query, or the first mistake in one line */
export function readQuery(written: WrittenQuery, tools: QueryTools): WordQuery | { readonly problem: string } {
  try {
    return toQuery(written, tools)
  } catch (error) {
    if (error instanceof Mistake) return { problem: error.message }
    throw error
  }
}

function toQuery(written: WrittenQuery, tools: QueryTools): WordQuery {
  const { picture, object, known, base, newAtStep } = written
  const spellings = (text: string, flag: string): Spelling[] => {
    const parts = splitList(text)
    if (parts.length === 0) return fail(`${flag} needs a spelling, such as a.`)
    return parts.map((one) => (flag === '--vowel' ? toVowel(one, tools) : toSpelling(one, tools)))
  }
  return {
    ...read(written.vowel, (text) => spellings(text, '--vowel'), 'vowel'),
    ...read(written.first, (text) => spellings(text, '--first'), 'first'),
    ...read(written.last, (text) => spellings(text, '--last'), 'last'),
    ...read(written.with, (text) => spellings(text, '--with'), 'with'),
    ...read(written.pattern, (text) => toPattern(text, '--pattern'), 'pattern'),
    ...read(written.lettersPattern, (text) => toPattern(text, '--letters-pattern'), 'lettersPattern'),
    ...read(written.length, (text) => toSpan(text, '--length'), 'length'),
    ...read(written.syllables, (text) => toSpan(text, '--syllables'), 'syllables'),
    ...read(written.rhymesWith, (text) => toRhymeWord(text, tools), 'rhymesWith'),
    ...read(written.family, (text) => toFamily(text, tools), 'family'),
    ...read(written.kind, (text) => splitList(text).map((one) => toChoice(one, WORD_KINDS, '--kind')), 'kinds'),
    ...read(written.order, (text) => toChoice(text, ORDERS, '--order'), 'order'),
    ...read(written.seed, (text) => toNumber(text, '--seed', 0), 'seed'),
    ...read(written.count, toCount, 'count'),
    ...(picture ? { picture } : {}),
    ...(object ? { object } : {}),
    ...(known ? { known } : {}),
    ...(base ? { base } : {}),
    ...(newAtStep ? { newAtStep } : {}),
  }
}

function read<Value, Name extends keyof WordQuery>(
  text: string | undefined,
  to: (text: string) => Value,
  name: Name,
): { [Key in Name]?: Value } {
  return text === undefined ? {} : ({ [name]: to(text) } as { [Key in Name]: Value })
}
