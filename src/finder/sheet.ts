// A word bank for writing: what can be used at a step, by kind of word and by vowel, as much as goes on one page.

import { IRREGULAR_PASTS, type WordKind } from '../words/index.ts'
import { type FoundWord, findThese, findWords, type WordQuery } from './find.ts'
import { toUsefulness } from './order.ts'
import type { Pool } from './pool.ts'
import { groupByVowel, type VowelGroup } from './vowel-groups.ts'

/** Stories are told in the past, so what happened has a part of its own: sat, ran, got. */
export type SheetKind = WordKind | 'past'

export interface SheetPart {
  readonly kind: SheetKind
  readonly groups: readonly VowelGroup[]
  /** All words of the groups. */
  readonly words: readonly FoundWord[]
  /** Whether there are more. */
  readonly more: boolean
}

/** @param count how many words of each part at most */
export type OpenSheet = (count: number) => readonly SheetPart[]

const SHEET_KINDS = ['naming', 'doing', 'past', 'describing', 'little'] as const satisfies readonly SheetKind[]

/** Nobody writes for small children with words that they do not know. */
const isForWriting = ({ facts, isSight }: FoundWord): boolean => facts.known > 0 || isSight

/** Of the words that a part has room for, so many at most are there because the step brings them. */
const SHARE_NEW = 1 / 2

/** The doing words of a story are mostly in the past. */
const PAST = 2

/** Fewer words are looked through at a glance. */
const LEAST_GROUPED = 10

/** Finds the words once; each call cuts them to another size. */
export function openSheet(pool: Pool, query: WordQuery): OpenSheet {
  const kinds = SHEET_KINDS.filter((kind) => query.kinds === undefined || query.kinds.includes(toWordKind(kind)))
  const all = kinds.map((kind) => ({ kind, words: findPart(kind, pool, query).filter(isForWriting) }))
  const { id: now } = pool.reader.sequence.steps[pool.stepIndex] ?? { id: '' }
  return (count) =>
    all.map(({ kind, words }) => {
      const own = kind === 'little' ? words.slice(0, count) : cut(words, kind === 'past' ? PAST * count : count, now)
      const groups =
        kind === 'little' || own.length < LEAST_GROUPED ? toOneGroup(own) : groupByVowel(own, pool.reader.sequence)
      return { kind, groups, words: groups.flatMap((group) => group.words), more: own.length < words.length }
    })
}

const toWordKind = (kind: SheetKind): WordKind => (kind === 'past' ? 'doing' : kind)

function findPart(kind: SheetKind, pool: Pool, query: WordQuery): readonly FoundWord[] {
  if (kind !== 'past') return findWords(pool, { ...query, kinds: [kind], count: Infinity, forWriting: true }).words
  // A form is no base form, and it may mainly be something else: left, felt.
  const { base: _, kinds: __, ...others } = query
  const found = findThese(pool, { ...others, kinds: ['doing'] }, IRREGULAR_PASTS)
  const toCost = ({ facts }: FoundWord): number => toUsefulness({ ...facts, inflection: 'none' }, false)
  return found.filter(({ facts }) => facts.main !== 'little').sort((one, other) => toCost(one) - toCost(other))
}

/** The most useful ones, those that the step brings among them before all others. */
function cut(words: readonly FoundWord[], count: number, now: string): readonly FoundWord[] {
  if (words.length <= count) return words
  const fresh = words
    .filter(({ readableAt, facts }) => readableAt === now && facts.known >= 2)
    .slice(0, Math.ceil(count * SHARE_NEW))
  return [...new Set([...fresh, ...words])].slice(0, count)
}

const toOneGroup = (words: readonly FoundWord[]): readonly VowelGroup[] =>
  words.length === 0 ? [] : [{ label: '', words: [...words].sort((one, other) => (one.word < other.word ? -1 : 1)) }]
