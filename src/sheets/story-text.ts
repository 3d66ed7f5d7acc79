// The text of a story as it is printed: with its marked letters, its own breaks, and nothing that only a screen shows.

import type { StoryContext } from '../lint/types.ts'
import { type MarkedText, type Marking, markWord } from '../print/index.ts'
import type { Block } from '../story/types.ts'

type Span = readonly [from: number, to: number]

/** A stretch of a block. A line's end in the file is a space, unless the writer made a hard break of it. */
export function toMarkedText(
  block: Block,
  { textStart, textEnd }: { readonly textStart: number; readonly textEnd: number },
  { story, judge }: Pick<StoryContext, 'story' | 'judge'>,
  marking: Marking,
): MarkedText {
  const { marked, bold } = findSpans(block, judge, marking)
  const places: number[] = []
  let text = ''
  for (let at = textStart; at < textEnd; at++) {
    places[at] = text.length
    const letter = block.text[at] ?? ''
    if (letter === '\n') text += isHardBreak(block, at, story.source) ? '\n' : ' '
    else if (letter !== '\u00ad') text += letter
  }
  places[textEnd] = text.length
  const move = (spans: readonly Span[]): Span[] =>
    spans.flatMap(([from, to]): Span[] => {
      const [start, end] = [places[Math.max(from, textStart)], places[Math.min(to, textEnd)]]
      return start !== undefined && end !== undefined && end > start ? [[start, end]] : []
    })
  return { text, marked: move(marked), bold: move(bold) }
}

/** Two spaces or a backslash before the line's end, as CommonMark has it. */
const isHardBreak = (block: Block, at: number, source: string): boolean =>
  / {2}\r?\n|\\\r?\n/.test(source.slice(Math.max(0, block.toSource(at) - 2), block.toSource(at + 1)))

/** Letters within a word that the writer made bold are letters to practise; whole words are stressed. */
function findSpans(
  block: Block,
  judge: StoryContext['judge'],
  marking: Marking,
): { readonly marked: readonly Span[]; readonly bold: readonly Span[] } {
  const isLetter = (at: number): boolean => /[\p{L}\p{N}'’]/u.test(block.text[at] ?? '')
  const isInWord = (start: number, end: number): boolean =>
    (isLetter(start - 1) && isLetter(start)) || (isLetter(end) && isLetter(end - 1))
  const written = block.emphasis.map(({ textStart, textEnd }): Span => [textStart, textEnd])
  const found =
    marking.wish === 'none'
      ? []
      : block.sentences.flatMap((sentence) =>
          sentence.words.flatMap((word): Span[] => {
            if (word.form !== 'word' || !block.text.startsWith(word.text, word.textStart)) return []
            const { pronunciations, verdict } = judge(word, sentence)
            const { marked } = markWord(word.text, pronunciations, marking, verdict.pronunciation)
            return marked.map(([from, to]): Span => [from + word.textStart, to + word.textStart])
          }),
        )
  return {
    marked: [...written.filter(([start, end]) => isInWord(start, end)), ...found],
    bold: written.filter(([start, end]) => !isInWord(start, end)),
  }
}
