// Adds to messages the words that could stand there instead. Found for the messages only, so that a clean story costs
// nothing.

import { toStraight } from '../apostrophe.ts'
import type { Message, StoryContext } from '../lint/types.ts'
import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import type { WordHelp } from '../resources/types.ts'
import type { Sentence, Word } from '../story/index.ts'
import { findUse, type Suggester, toTaggedUse } from '../words/index.ts'

export interface SuggestTools {
  readonly help: WordHelp
  readonly suggester: Suggester
  /** Asked where the words around one do not tell what it is; without it, a word is taken for what it mainly is. */
  tagger?(): Promise<Tagger>
}

/** Rules whose messages another word does not answer. */
const NO_WORD_WANTED: ReadonlySet<string> = new Set(['no-unlisted-name', 'no-unsettled-heteronym'])

/** Whether a message is about a word that another could stand for. */
export const wantsWord = ({ word, rule, reason, suggestions }: Message): boolean =>
  word !== undefined && reason !== undefined && suggestions.length === 0 && !NO_WORD_WANTED.has(rule)

interface Place {
  readonly word: Word
  readonly sentence: Sentence
}

/** The same messages in the same order. `context` is that of the run which they come from. */
export async function withSuggestions(
  messages: readonly Message[],
  context: StoryContext,
  tools: SuggestTools,
): Promise<readonly Message[]> {
  const places = findPlaces(context)
  const done: Message[] = []
  for (const message of messages) {
    const place = wantsWord(message) ? places.get(message.start) : undefined
    const isUnreadable = place?.word.form === 'word' && !context.judge(place.word, place.sentence).verdict.readable
    const suggestions = place && isUnreadable ? await suggest(place, tools) : []
    done.push(suggestions.length === 0 ? message : { ...message, suggestions })
  }
  return done
}

function findPlaces({ story }: StoryContext): ReadonlyMap<number, Place> {
  const places = new Map<number, Place>()
  for (const page of story.pages)
    for (const block of page.blocks)
      for (const sentence of block.sentences)
        for (const word of sentence.words) places.set(word.start, { word, sentence })
  return places
}

async function suggest({ word, sentence }: Place, { help, suggester, tagger }: SuggestTools): Promise<string[]> {
  const text = toStraight(word.text.toLowerCase())
  const facts = help.factsOf(text)
  if (facts?.main === undefined) return []
  const before = sentence.words[sentence.words.indexOf(word) - 1]?.text
  const use =
    findUse(
      text,
      facts,
      before === undefined ? undefined : { word: before, facts: help.factsOf(before.toLowerCase()) },
    ) ?? toTaggedUse(text, tagger ? findTags(word, sentence, await tagger()) : new Set(), facts)
  return suggester
    .suggest({ word: word.text, part: use?.part, inflection: use?.inflection, before })
    .map((one) => one.word)
}

function findTags(word: Word, sentence: Sentence, tagger: Tagger): ReadonlySet<string> {
  const parts = [...sentence.words, ...sentence.marks].sort((left, right) => left.start - right.start)
  return tagger(parts.map(({ text }) => text))[parts.findIndex(({ start }) => start === word.start)] ?? new Set()
}
