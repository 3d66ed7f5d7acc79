// Messages in the least room: each text once for the whole cache, all else as numbers. A shelf says the same of the same
// words in every book, so this is a tenth of the plain form, and quicker to read.

import type { StoryRecord } from '../../check/record.ts'
import type { Message } from '../../lint/types.ts'
import type { Range } from '../../story/types.ts'

/** Numbers of texts; NONE for undefined and null. */
export type PackedMessage = readonly [
  texts: readonly number[],
  start: number,
  end: number,
  page: number,
  letters: readonly number[],
  letterRanges: readonly number[],
  suggestions: readonly number[],
  /** 1 where the sentence does without the word. */
  canGo: 0 | 1,
]

const NONE = -1

export type PackedRecord = Omit<StoryRecord, 'messages'> & { readonly messages: readonly PackedMessage[] }

export const packRecord = (record: StoryRecord, texts: Texts): PackedRecord => ({
  ...record,
  messages: record.messages.map((message) => packMessage(message, texts)),
})

export const unpackRecord = (record: PackedRecord, texts: readonly string[]): StoryRecord => ({
  ...record,
  messages: record.messages.map((message) => unpackMessage(message, texts)),
})

export interface Texts {
  readonly list: readonly string[]
  toNumber(text: string | null | undefined): number
}

/** Gives each different text a number, in order of first use. */
export function createTexts(known: readonly string[] = []): Texts {
  const list = [...known]
  const numbers = new Map(known.map((text, number) => [text, number]))
  return {
    list,
    toNumber(text) {
      if (text === undefined || text === null) return NONE
      const number = numbers.get(text)
      if (number !== undefined) return number
      numbers.set(text, list.length)
      return list.push(text) - 1
    },
  }
}

function packMessage(message: Message, { toNumber }: Texts): PackedMessage {
  const { rule, severity, word, reason, readableAt, note, url, ruleNote, start, end, page } = message
  return [
    [rule, severity, message.message, word, reason, readableAt, note, url, ruleNote].map(toNumber),
    start,
    end,
    page,
    message.letters.flat(),
    message.letterRanges.flatMap((range) => [range.start, range.end]),
    message.suggestions.map(toNumber),
    message.canGo ? 1 : 0,
  ]
}

function unpackMessage(packed: PackedMessage, texts: readonly string[]): Message {
  const [texted, start, end, page, letters, ranges, more, canGo] = packed
  const [rule, severity, message, word, reason, readableAt, note, url, rulesOwn] = texted
  const find = (number: number | undefined): string | undefined => texts[number ?? NONE]
  return {
    rule: find(rule) ?? '',
    severity: find(severity) === 'error' ? 'error' : 'warning',
    message: find(message) ?? '',
    start,
    end,
    page,
    word: find(word),
    reason: find(reason),
    letters: toPairs(letters),
    letterRanges: toPairs(ranges).map(([from, to]): Range => ({ start: from, end: to })),
    readableAt: find(readableAt) ?? null,
    note: find(note),
    ruleNote: find(rulesOwn),
    url: find(url) ?? '',
    suggestions: more.map((number) => find(number) ?? ''),
    canGo: canGo === 1,
  }
}

function toPairs(numbers: readonly number[]): (readonly [number, number])[] {
  const pairs: (readonly [number, number])[] = []
  for (let at = 0; at + 1 < numbers.length; at += 2) pairs.push([numbers[at] ?? 0, numbers[at + 1] ?? 0])
  return pairs
}
