// Adds to messages the words that could stand there instead. Found for the messages only, so that a clean story costs
// nothing.

import type { CountOf, Finish } from '../lint/held/echo.ts'
import type { Message, StoryContext } from '../lint/types.ts'
import { type Silence, toSilentNote } from '../lint/wording.ts'
import type { Block, Sentence, Word } from '../story/index.ts'
import { toWordCounts } from '../usage/count.ts'
import { toParts } from '../usage/spoken-form.ts'
import { toWordKey } from '../verdict/index.ts'
import { isBeing, isLittleWord, type Suggester, type Surroundings } from '../words/index.ts'

export interface SuggestTools {
  readonly suggester: Suggester
}

const NAMES = 'no-unlisted-name'

/** Rules whose messages another word does not answer. */
const NO_WORD_WANTED: ReadonlySet<string> = new Set([NAMES, 'no-unsettled-heteronym'])

/** `the Lion` may be a name or not: a word that could stand there is told beside. */
const isBeingByName = (rule: string, word: string): boolean =>
  rule === NAMES && isBeing(toWordKey(word).replace(/'s$/, ''))

/** Whether a message is about a word that another could stand for. */
export const wantsWord = ({ word, rule, reason, suggestions }: Message): boolean =>
  word !== undefined &&
  reason !== undefined &&
  suggestions.length === 0 &&
  (!NO_WORD_WANTED.has(rule) || isBeingByName(rule, word))

interface Place {
  readonly word: Word
  readonly sentence: Sentence
}

/** For each message the place of its word, where another word is wanted for it. */
type Places = readonly (Place | undefined)[]

/**
 * The same messages in the same order, with what could stand there, or the advice for where nothing can. `context` is that
 * of the run which they come from.
 */
export function withSuggestions(
  messages: readonly Message[],
  context: StoryContext,
  { suggester }: SuggestTools,
): readonly Message[] {
  const places = findPlaces(
    messages,
    context.story.pages.flatMap((page) => page.blocks),
  )
  let counts: ReadonlyMap<string, number> | undefined
  const countOf = (key: string): number => {
    counts ??= toWordCounts(context.count())
    return counts.get(key) ?? 1
  }
  return addToMessages(messages, places, { context, suggester, countOf })
}

/** The same while a story is held: block by block, and with the count of its words at hand. */
export function createFinish(context: StoryContext, { suggester }: SuggestTools): Finish {
  const finish = (messages: readonly Message[], toBlocks: () => readonly Block[], countOf: CountOf) =>
    messages.some(wantsWord)
      ? addToMessages(messages, findPlaces(messages, toBlocks()), { context, suggester, countOf })
      : messages
  return {
    block: (messages, block, countOf) => finish(messages, () => [block], countOf),
    loose: (messages, countOf) => finish(messages, () => context.story.pages.flatMap((page) => page.blocks), countOf),
  }
}

const NONE: readonly string[] = []

interface AddTools extends SuggestTools {
  readonly context: StoryContext
  readonly countOf: CountOf
}

const addToMessages = (
  messages: readonly Message[],
  places: Places,
  { context, suggester, countOf }: AddTools,
): readonly Message[] => {
  const surroundingsOf = createSurroundingsOf()
  const silentNoteOf = createSilentNotes(countOf)
  return messages.map((message, at) => {
    const place = places[at]
    if (place?.word.form !== 'word' || context.judge(place.word, place.sentence).verdict.readable) return message
    const { text } = place.word
    const wanted = suggester.mayHelp(text) ? { word: text, place: surroundingsOf(place) } : undefined
    const suggestions = wanted === undefined ? NONE : suggester.suggest(wanted)
    if (suggestions.length > 0) return { ...message, suggestions }
    if (message.rule === NAMES) return message
    const canGo = wanted !== undefined && suggester.canGo(wanted)
    const ruleNote = message.note
    if (ruleNote === undefined) return canGo ? { ...message, canGo } : message
    return { ...message, note: silentNoteOf(text, ruleNote, canGo), ruleNote, canGo }
  })
}

/** A story says the same of a word wherever it stands: that is made once, and a report then meets one text. */
function createSilentNotes(countOf: CountOf): (text: string, ruleNote: string, canGo: boolean) => string {
  const known = new Map<string, { readonly ruleNote: string; readonly canGo: boolean; readonly note: string }>()
  return (text, ruleNote, canGo) => {
    const before = known.get(text)
    if (before?.ruleNote === ruleNote && before.canGo === canGo) return before.note
    const key = toWordKey(text)
    const note = toKeptNote(ruleNote, { count: countOf(key), isLittle: isLittleWord(key), canGo })
    known.set(text, { ruleNote, canGo, note })
    return note
  }
}

const MOST_NOTES = 10_000

/** One text is said of many words, in one story after another; what is kept has a bound. */
function toKeptNote(ruleNote: string, silence: Silence): string {
  const before = keptNotes.get(ruleNote)
  const isSame =
    before?.count === silence.count && before.isLittle === silence.isLittle && before.canGo === silence.canGo
  if (isSame) return before.note
  const note = toSilentNote(ruleNote, silence)
  if (keptNotes.size >= MOST_NOTES) keptNotes.clear()
  keptNotes.set(ruleNote, { ...silence, note })
  return note
}

const keptNotes = new Map<string, Silence & { readonly note: string }>()

/** @param blocks in order of place, as what a story says of itself is */
function findPlaces(messages: readonly Message[], blocks: readonly Block[]): Places {
  const places = new Array<Place | undefined>(messages.length).fill(undefined)
  const startOf = (at: number | undefined): number =>
    at === undefined ? Number.POSITIVE_INFINITY : (messages[at]?.start ?? 0)
  const wanted: number[] = []
  let isOrdered = true
  let last = -1
  for (let at = 0; at < messages.length; at++) {
    const message = messages[at] as Message
    if (!wantsWord(message)) continue
    if (message.start < last) isOrdered = false
    last = message.start
    wanted.push(at)
  }
  if (!isOrdered) wanted.sort((one, other) => startOf(one) - startOf(other))
  let next = 0
  for (const block of blocks) {
    if (startOf(wanted[next]) >= block.end) continue
    for (const sentence of block.sentences) {
      if (startOf(wanted[next]) >= sentence.end) continue
      for (const word of sentence.words) {
        while (startOf(wanted[next]) < word.start) next++
        for (; startOf(wanted[next]) === word.start; next++) places[wanted[next] as number] = { word, sentence }
      }
    }
  }
  return places
}

/** The words and marks of the sentence before and after a word; one sentence has several that are asked for in turn. */
function createSurroundingsOf(): (place: Place) => Surroundings {
  let last: Sentence | undefined
  let [parts, texts]: [readonly unknown[], readonly string[]] = [[], []]
  return ({ word, sentence }) => {
    if (last !== sentence) {
      const found = toParts(sentence)
      parts = found.parts
      texts = found.texts.map(toWordKey)
      last = sentence
    }
    const at = parts.indexOf(word)
    return { before: texts.slice(0, at), after: texts.slice(at + 1) }
  }
}
