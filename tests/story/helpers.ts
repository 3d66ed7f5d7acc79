// Short ways to ask a story for what a test compares.

import {
  createLines,
  readStory,
  type Sentence,
  type Story,
  type StoryOptions,
  type Word,
} from '../../src/story/index.ts'

export function sentencesOf(story: Story): Sentence[] {
  return story.pages.flatMap((page) => page.blocks.flatMap((block) => block.sentences))
}

export function wordsOf(story: Story): Word[] {
  return sentencesOf(story).flatMap((sentence) => sentence.words)
}

export function wordTexts(source: string, options?: StoryOptions): string[] {
  return wordsOf(readStory(source, options)).map((it) => it.text)
}

/** The sentences as a child reads them, without Markdown. */
export function sentenceTexts(source: string): string[] {
  return sentencesOf(readStory(source)).map((it) => it.block.text.slice(it.textStart, it.textEnd))
}

/** `word line:column-line:column` for each word. */
export function placesOf(source: string): string[] {
  const lines = createLines(source)
  return wordsOf(readStory(source)).map((it) => `${it.text} ${toPlace(lines, it.start)}-${toPlace(lines, it.end)}`)
}

export function placeOf(source: string, word: string): string | undefined {
  return placesOf(source)
    .find((it) => it.startsWith(`${word} `))
    ?.slice(word.length + 1)
}

/** The words of each page, as one string a page. */
export function pageTexts(source: string, options?: StoryOptions): string[] {
  return readStory(source, options).pages.map((page) =>
    page.blocks.flatMap((block) => block.sentences.flatMap((it) => it.words.map((word) => word.text))).join(' '),
  )
}

function toPlace(lines: ReturnType<typeof createLines>, offset: number): string {
  const { line, column } = lines.toPoint(offset)
  return `${line}:${column}`
}
