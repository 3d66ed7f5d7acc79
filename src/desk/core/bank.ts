// The word bank at the step of the story: what was wished for, of what the child can read and is fit for children.

import { toStraight } from '../../apostrophe.ts'
import type { PreparedStory } from '../../check/check-story.ts'
import { toFitness } from '../../check/who-reads.ts'
import { type FoundWord, findLeading, findWords, type Pool, readQuery, type WordQuery } from '../../finder/index.ts'
import { type Problem, toProblem } from '../../problem/index.ts'
import type { StoryText } from './questions/shared.ts'
import type { BankAnswer, BankWish, BankWord } from './questions/words.ts'
import { type DeskState, toolsOf } from './state.ts'
import { openStory, toPrepared } from './stories.ts'

/** How many words the bank shows where nobody says. */
const USUAL = 60

export async function findBank(story: StoryText, wish: BankWish, state: DeskState): Promise<BankAnswer> {
  const { version } = story
  const prepared = toPrepared(await openStory(story, state))
  if (!prepared.ok) return { version, words: [], more: false, problems: prepared.problems }
  const found = findByWish(prepared.value, wish, await openPool(prepared.value, state), state)
  if ('problem' in found) return { version, words: [], more: false, problems: [found.problem] }
  return { version, ...found, problems: [] }
}

const pools = new WeakMap<PreparedStory['sequence'], Map<string, Pool>>()

/** Made once for each place: where the sequence is one's own, a pool judges every word that it is asked for. */
export async function openPool({ sequence, step, reader, settings }: PreparedStory, state: DeskState): Promise<Pool> {
  const help = await toolsOf(state).lists()
  const known = pools.get(sequence) ?? new Map<string, Pool>()
  pools.set(sequence, known)
  const key = JSON.stringify([step, reader, toFitness(settings)])
  const pool = known.get(key) ?? help.poolFor({ sequence, step, reader, ...toFitness(settings) })
  if (known.size > 8) known.clear()
  known.set(key, pool)
  return pool
}

/** Kinds may be several, with commas. */
export type WrittenWish = Omit<BankWish, 'kind'> & { readonly kind?: string }

type Found = Pick<BankAnswer, 'words' | 'more'> | { readonly problem: Problem }

/** @param more what is asked for beside that */
export function findByWish(
  prepared: PreparedStory,
  wish: WrittenWish,
  pool: Pool,
  state: DeskState,
  more: { readonly known?: boolean } = {},
): Found {
  const { sequence, story } = prepared
  const { pattern, vowel, kind, rhymesWith, picture, unused, newAtStep, count = USUAL } = wish
  const query = readQuery(
    {
      ...(pattern !== undefined && { with: pattern }),
      ...(vowel !== undefined && { vowel }),
      ...(kind !== undefined && { kind }),
      ...(rhymesWith !== undefined && rhymesWith.trim() !== '' && { rhymesWith }),
      ...(picture && { picture }),
      ...(newAtStep && { newAtStep }),
      ...more,
    },
    { sequence, phonics: toolsOf(state).phonicsFor(sequence.accent), pool },
  )
  if ('problem' in query) return { problem: toPlainProblem(query.problem) }
  const whole: WordQuery = unused ? { ...query, not: listUsed(story) } : query
  const search = toStraight((wish.search ?? '').trim().toLowerCase())
  if (search === '') {
    const { words, more } = findLeading(pool, { ...whole, count })
    return { words: words.map(toBankWord), more }
  }
  const all = findWords(pool, whole).words.filter(({ word }) => word.toLowerCase().includes(search))
  const begins = (one: FoundWord): boolean => one.word.toLowerCase().startsWith(search)
  const inOrder = [...all.filter(begins), ...all.filter((one) => !begins(one))]
  return { words: inOrder.slice(0, count).map(toBankWord), more: inOrder.length > count }
}

const toBankWord = ({ word, kind, isSight, readableAt }: FoundWord): BankWord => ({
  word,
  kind,
  byHeart: isSight,
  readableAt,
})

const listUsed = ({ pages }: PreparedStory['story']): ReadonlySet<string> =>
  new Set(
    pages.flatMap(({ blocks }) =>
      blocks.flatMap(({ sentences }) =>
        sentences.flatMap(({ words }) => words.map(({ text }) => toStraight(text.toLowerCase()))),
      ),
    ),
  )

/** The finder speaks of flags, which a page has not. */
const toPlainProblem = (text: string): Problem =>
  toProblem({
    code: 'bad-value',
    message: text
      .replace(/ For an invented word ask.*$/, '')
      .replace(/^--\S+ /, 'This ')
      .replace(/\.$/, ''),
  })
