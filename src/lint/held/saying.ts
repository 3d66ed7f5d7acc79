// What rules said of one block, in such a form that it can be said again: in another place, and where the story has had its
// words before.

import type { Block, Page } from '../../story/types.ts'
import type { WordUse } from '../../usage/count.ts'
import { type CountedWord, toKind } from '../../verdict/index.ts'
import type { Figures, Verdict } from '../../verdict/types.ts'
import type { MadeRules } from '../made-rules.ts'
import type { Message, StoryContext } from '../types.ts'
import type { IsFirst } from '../word-faults.ts'

/** Messages in a row. Where they have a name, some are said only where the story first has what is named. */
interface SaidPart {
  readonly name: string | undefined
  readonly first: readonly Message[]
  readonly later: readonly Message[]
}

interface Heard extends SaidPart {
  readonly first: Message[]
}

export interface Saying {
  /** The block as it stood when the rules were asked. */
  readonly block: Block
  readonly parts: readonly SaidPart[]
  /** Its words with their verdicts, in order of first place. */
  readonly uses: readonly JudgedUse[]
  /** How many of its running words can be read so. */
  readonly counts: KindCounts
  /** Whether all of it is said, whatever the story has had before. */
  readonly isPlain: boolean
  /** What was last made of it, and of the page that begins with it: kept here, since a look-up for each is too slow. */
  finished: Finished | undefined
  page: PageMemory | undefined
}

/** Messages of one block as they were last finished, in order of place, where they were last said, and what they stand on. */
export interface Finished {
  /** Of each part, whether the story has it first here; empty where that makes no difference. */
  readonly chosen: readonly boolean[]
  readonly counts: ReadonlyMap<string, number>
  messages: readonly Message[]
  start: number
  page: number
}

/** A page of the story as it stands, with what was said of its blocks. */
export interface SaidPage {
  readonly page: Page
  readonly sayings: readonly Saying[]
  /** Where its blocks start now. */
  readonly starts: readonly number[]
  /** What is known of a page with just these blocks. */
  readonly memory: PageMemory
}

interface PageMemory {
  readonly sayings: readonly Saying[]
  readonly figures: Figures
  /** What rules said of the page, and where it stood then. */
  said: (Pick<SaidPage, 'page' | 'starts'> & { readonly messages: readonly Message[] }) | undefined
}

export type KindCounts = Readonly<Record<Verdict['kind'], number>>

export type JudgedUse = WordUse & Pick<CountedWord, 'verdict'>

/** Stands for the memory of what the story has had: notes what is asked, and answers as it is told to. */
export interface Asker {
  readonly isFirst: IsFirst
  /** What is said by a step where all it asks for comes first, and where the story has had it. */
  hear(step: () => void, take: MadeRules['take']): Heard
}

export function createAsker(): Asker {
  let answer = true
  let asked: string | undefined
  return {
    isFirst(name) {
      asked = name
      return answer
    },
    hear(step, take) {
      asked = undefined
      step()
      const first = take()
      const name = asked
      if (name === undefined) return { name, first, later: first }
      answer = false
      step()
      answer = true
      return { name, first, later: take() }
    },
  }
}

/** Hands a block to the rules. */
export function sayBlock(
  block: Block,
  page: Page,
  { made, asker, context }: { readonly made: MadeRules; readonly asker: Asker; readonly context: StoryContext },
): Saying {
  const parts: SaidPart[] = []
  let open: Message[] | undefined
  const hear = (step: () => void): void => {
    const { name, first, later } = asker.hear(step, made.take)
    if (name !== undefined) {
      parts.push({ name, first, later })
      open = undefined
    } else if (open) open.push(...first)
    else if (first.length > 0) {
      open = first
      parts.push({ name, first, later: first })
    }
  }
  hear(() => made.block(block, page))
  for (const sentence of block.sentences) {
    hear(() => made.sentence(sentence, page))
    for (const word of sentence.words) for (const ask of made.wordSteps) hear(() => ask(word, sentence))
    hear(() => made.marks(sentence))
  }
  const { uses } = context.countIn([{ ...page, blocks: [block] }])
  const toJudged = (use: WordUse): JudgedUse => ({ ...use, verdict: context.judge(use.word, use.sentence).verdict })
  const judged = uses.map(toJudged)
  const isPlain = parts.every(({ name }) => name === undefined)
  return { block, parts, uses: judged, counts: countKinds(judged), isPlain, finished: undefined, page: undefined }
}

function countKinds(uses: readonly JudgedUse[]): KindCounts {
  const counts = { decodable: 0, sight: 0, name: 0, unreadable: 0 }
  for (const { form, verdict, times } of uses) counts[toKind(form, verdict)] += times
  return counts
}

type Movable = { -readonly [Field in keyof Message]: Message[Field] }

/** Messages of a block that has moved. */
export function moveMessages(messages: readonly Message[], by: number, page: number): readonly Message[] {
  if (by === 0 && messages.every((message) => message.page === page)) return messages
  return messages.map((message) => {
    // Copied and then set: twice as fast as an object that is spread into another, and this is most of a keystroke.
    const moved: Movable = { ...message }
    moved.start += by
    moved.end += by
    moved.page = page
    if (message.letterRanges.length > 0)
      moved.letterRanges = message.letterRanges.map(({ start, end }) => ({ start: start + by, end: end + by }))
    return moved
  })
}
