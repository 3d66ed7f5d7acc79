// Puts another word in the place of one: the article before it, its case, and the letters that were bold go with it.

import type { Range, Sentence, Story, Word } from '../story/index.ts'
import { createWordRanges, type FindWordRange } from '../story/word-range.ts'
import { toCaseOf } from '../words/index.ts'
import type { Edit } from './edit.ts'

/** Letters of the old word that were emphasised by themselves: `oa` of `b**oa**t`. */
interface Emphasised {
  readonly letters: string
  readonly mark: '*' | '**'
}

/** A place that takes another word. */
export interface Slot extends Range {
  /** The word that stands there. */
  readonly word: string
  /** The `a` or `an` right before it. */
  readonly article: (Range & { readonly text: string }) | undefined
  /** The word right after it, with nothing but space or a comma between; undefined for none. */
  readonly next: (Range & { readonly text: string }) | undefined
  readonly emphasised: readonly Emphasised[]
}

/** From where a word begins in the source to its slot; undefined where marks reach beyond the word: `**The b**oat`. */
export type FindSlot = (start: number) => Slot | undefined

/** Looks through the words of the story once, when first asked. */
export function createSlots(story: Story): FindSlot {
  let places: ReadonlyMap<number, Place> | undefined
  const ranges = createWordRanges(story.source)
  return (start) => {
    places ??= listPlaces(story)
    const place = places.get(start)
    return place && toSlot(place, story.source, ranges)
  }
}

interface Place {
  readonly word: Word
  readonly sentence: Sentence
}

function listPlaces({ pages }: Story): Map<number, Place> {
  const places = new Map<number, Place>()
  for (const { blocks } of pages)
    for (const { sentences } of blocks)
      for (const sentence of sentences) for (const word of sentence.words) places.set(word.start, { word, sentence })
  return places
}

function toSlot({ word, sentence }: Place, source: string, ranges: FindWordRange): Slot | undefined {
  const stretch = source.slice(word.start, word.end) === word.text ? word : ranges(word)
  if (stretch === undefined) return undefined
  const { start, end } = stretch
  const at = sentence.words.indexOf(word)
  const [before, after] = [sentence.words[at - 1], sentence.words[at + 1]]
  const isArticle = before !== undefined && /^an?$/i.test(source.slice(before.start, before.end))
  const isRightBefore = isArticle && /^[\s*_]*$/.test(source.slice(before.end, start))
  return {
    ...{ start, end, word: word.text },
    next: after && /^,?\s+$/.test(source.slice(end, after.start)) ? after : undefined,
    article: isRightBefore ? { start: before.start, end: before.end, text: before.text } : undefined,
    emphasised: sentence.block.emphasis
      .filter((one) => one.start >= start && one.end <= end)
      .map(({ textStart, textEnd, kind }) => ({
        letters: sentence.block.text.slice(textStart, textEnd),
        mark: kind === 'strong' ? '**' : '*',
      })),
  }
}

/** One edit from the article, where that changes, to the end of the word. */
export function putIn(slot: Slot, source: string, text: string): Edit {
  const { start, end, article } = slot
  const emphasised = emphasise(text, slot.emphasised)
  if (article === undefined) return { start, end, text: emphasised }
  const fitting = toCaseOf(article.text, opensWithVowel(text) ? 'an' : 'a')
  if (fitting.toLowerCase() === article.text.toLowerCase()) return { start, end, text: emphasised }
  return { start: article.start, end, text: fitting + source.slice(article.end, start) + emphasised }
}

/**
 * Takes the word out with the space beside it; the word after it takes its capital, and the article before it follows. Undefined
 * where other marks stand between the words.
 */
export function takeOut(slot: Slot, source: string): Edit | undefined {
  const { start, end, word, next, article } = slot
  if (next === undefined) {
    const [gap = ''] = /[ \t]*$/.exec(source.slice(0, start)) ?? []
    return gap === '' || slot.emphasised.length > 0 ? undefined : { start: start - gap.length, end, text: '' }
  }
  const first = source.slice(next.start, next.start + 1)
  if (slot.emphasised.length > 0 || !/\p{L}/u.test(first)) return undefined
  const opens = word !== word.toLowerCase() && first !== first.toUpperCase()
  const rest = opens ? { end: next.start + 1, text: first.toUpperCase() } : { end: next.start, text: '' }
  if (article === undefined) return { start, ...rest }
  const fitting = toCaseOf(article.text, opensWithVowel(next.text) ? 'an' : 'a')
  return { start: article.start, end: rest.end, text: fitting + source.slice(article.end, start) + rest.text }
}

/** By sound: a unit, an hour. Common practice, no source. */
export const opensWithVowel = (text: string): boolean =>
  /^(?:[aeio]|u(?!ni(?!n)|s[aeiu])|heir|honest|hour)/i.test(text) && !/^(?:eu|ew|one\b|once\b)/i.test(text)

/** The same letters where the new word has them, once each; otherwise the whole word, so that no other letters stand out. */
function emphasise(text: string, emphasised: readonly Emphasised[]): string {
  const [first] = emphasised
  if (first === undefined) return text
  let done = ''
  let rest = text
  for (const { letters, mark } of emphasised) {
    const at = rest.toLowerCase().indexOf(letters.toLowerCase())
    if (at < 0) {
      const whole = emphasised.some((one) => one.mark === '**') ? '**' : first.mark
      return `${whole}${text}${whole}`
    }
    done += `${rest.slice(0, at)}${mark}${rest.slice(at, at + letters.length)}${mark}`
    rest = rest.slice(at + letters.length)
  }
  return done + rest
}
