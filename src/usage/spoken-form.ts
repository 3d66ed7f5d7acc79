// Which spoken form of a heteronym a sentence of the story asks for, and whether a tagger is worth loading for it.

import { findLookAlike } from '../phonics/heteronyms/part.ts'
import { type SettleOptions, settle } from '../phonics/heteronyms/settle.ts'
import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import type { Heteronyms } from '../phonics/heteronyms/types.ts'
import { findLastIndex } from '../sorted.ts'
import type { Block, Mark, Page, Sentence, Story, Word } from '../story/types.ts'
import type { JudgedWord } from '../verdict/types.ts'
import { toFormTest } from './one-form.ts'

/** How many sentences before one show the tense of the story. */
export const LOOK_BACK = 3

/** The form that the sentence asks for, as in `Pronunciation.form`; undefined where it cannot be told. */
export type FormFinder = (word: Word, sentence: Sentence) => string | undefined

export function createFormFinder(story: Story, heteronyms: Heteronyms, tagger?: Tagger): FormFinder {
  const findBefore = createLookBack(story)
  const known = new Map<Word, string | undefined>()
  return (word, sentence) => {
    if (known.has(word)) return known.get(word)
    const found = settleWord(heteronyms, word, sentence, { tagger, before: findBefore(sentence) })
    const form = found.kind === 'settled' ? found.form : undefined
    known.set(word, form)
    return form
  }
}

/**
 * Whether a tagger might settle what the small words leave open, where it matters: a heteronym whose forms the reader
 * can all read, or none of them, needs no settling. The tagger is slow to load, and few stories need it.
 */
export function isTaggerNeeded(
  story: Story,
  heteronyms: Heteronyms,
  { judge }: { judge(word: Word, sentence: Sentence): Pick<JudgedWord, 'unsettled'> },
): boolean {
  const isNeeded = createTaggerTest(story, heteronyms, { judge })
  return story.pages.some(({ blocks }) => blocks.some(isNeeded))
}

/** The same for one block of the story. */
export function createTaggerTest(
  story: Story,
  heteronyms: Heteronyms,
  { judge }: { judge(word: Word, sentence: Sentence): Pick<JudgedWord, 'unsettled'> },
): (block: Block) => boolean {
  const findBefore = createLookBack(story)
  const hasOneForm = toFormTest(heteronyms)
  const isLeftOpen = (word: Word, sentence: Sentence): boolean =>
    !hasOneForm(word.text) &&
    findLookAlike(heteronyms, word.text) !== undefined &&
    judge(word, sentence).unsettled &&
    settleWord(heteronyms, word, sentence, { before: findBefore(sentence) }).kind === 'tagger-needed'
  return ({ sentences }) => sentences.some((sentence) => sentence.words.some((word) => isLeftOpen(word, sentence)))
}

function settleWord(heteronyms: Heteronyms, word: Word, sentence: Sentence, options: SettleOptions) {
  const { parts, texts } = toParts(sentence)
  return settle(heteronyms, texts, parts.indexOf(word), options)
}

/** Looks at no more of a long book than the pages that stand right before a sentence. */
function createLookBack({ pages }: Story): (sentence: Sentence) => readonly (readonly string[])[] {
  return (sentence) => {
    const { block } = sentence
    const page = findPage(pages, block)
    const blocks = pages[page]?.blocks
    if (blocks === undefined) return []
    const own = block.sentences
    const found = sentencesBefore(blocks, findBlock(blocks, block), own.slice(0, own.indexOf(sentence)))
    return addEarlier(pages, page, found).map((one) => toParts(one).texts)
  }
}

function findPage(pages: readonly Page[], block: Block): number {
  const has = (page: Page | undefined): boolean => page !== undefined && findBlock(page.blocks, block) >= 0
  const at = findLastIndex(pages.length, (index) => (pages[index]?.start ?? 0) <= block.start)
  return has(pages[at]) ? at : pages.findIndex(has)
}

/** Blocks stand in order of place. */
function findBlock(blocks: readonly Block[], wanted: Block): number {
  const at = findLastIndex(blocks.length, (index) => (blocks[index]?.start ?? 0) <= wanted.start)
  return blocks[at] === wanted ? at : blocks.indexOf(wanted)
}

/** With the sentences of earlier pages, where there are too few. */
function addEarlier(pages: readonly Page[], page: number, found: readonly Sentence[]): readonly Sentence[] {
  let all = found
  for (let at = page - 1; at >= 0 && all.length < LOOK_BACK; at--) {
    const { blocks = [] } = pages[at] ?? {}
    all = sentencesBefore(blocks, blocks.length, all)
  }
  return all
}

/**
 * The sentences that show the tense at a place: those of `own` and of the blocks before the one at an index, in order of place.
 */
export function sentencesBefore(
  blocks: readonly Pick<Block, 'sentences'>[],
  index: number,
  own: readonly Sentence[] = [],
): readonly Sentence[] {
  let found = own.slice(-LOOK_BACK)
  for (let at = index - 1; at >= 0 && found.length < LOOK_BACK; at--)
    found = [...(blocks[at]?.sentences ?? []).slice(found.length - LOOK_BACK), ...found]
  return found
}

interface Parts {
  readonly parts: readonly (Word | Mark)[]
  readonly texts: readonly string[]
}

const known = new WeakMap<Sentence, Parts>()

/** Words and marks in order of place, as the tables of heteronyms read them; a sentence is looked back at three times. */
export function toParts(sentence: Sentence): Parts {
  let found = known.get(sentence)
  if (found === undefined) {
    const parts = toOrdered(sentence)
    known.set(sentence, (found = { parts, texts: parts.map(({ text }) => text) }))
  }
  return found
}

/** Words and marks are each in order of place. */
function toOrdered({ words, marks }: Sentence): readonly (Word | Mark)[] {
  const parts: (Word | Mark)[] = []
  let at = 0
  for (const word of words) {
    for (let mark = marks[at]; mark !== undefined && mark.start < word.start; mark = marks[++at]) parts.push(mark)
    parts.push(word)
  }
  for (; at < marks.length; at++) parts.push(marks[at] as Mark)
  return parts
}
