// Stories, pronunciations and a sequence written by hand, so that the run is tested without Markdown and without the dictionary.
// A page is a string, a line is a sentence; words are letters and apostrophes, digits are numerals, all else are marks.

import { createStoryContext, type ReadingSettings } from '../../src/lint/context.ts'
import type { StoryContext } from '../../src/lint/types.ts'
import { NO_HETERONYMS } from '../../src/phonics/heteronyms/table.ts'
import { NO_SLIPS } from '../../src/phonics/lexicon/slip-words.ts'
import type { Phonics, WordPronunciations } from '../../src/phonics/types.ts'
import type { Block, Mark, Page, Sentence, Story, Word } from '../../src/story/types.ts'
import { toPronunciations, toSequence, toStep } from '../verdict/hand-made.ts'

const PRONUNCIATIONS = [
  toPronunciations('bed', 'b=b e=ɛ d=d'),
  toPronunciations('duck', 'd=d u=ʌ ck=k'),
  toPronunciations('frog', 'f=f r=r o=ɒ g=g'),
  toPronunciations('had', 'h=h a=æ d=d'),
  toPronunciations('hen', 'h=h e=ɛ n=n'),
  toPronunciations('in', 'i=ɪ n=n'),
  toPronunciations('met', 'm=m e=ɛ t=t'),
  toPronunciations('priya', 'p=p r=r i=iː y=j a=ə'),
  toPronunciations('ran', 'r=r a=æ n=n'),
  toPronunciations('said', 's=s ai=ɛ d=d'),
  toPronunciations('the', 'th=ð e=ə'),
  toPronunciations('?zub', 'z=z u=ʌ b=b'),
] as const satisfies readonly WordPronunciations[]

const phonics: Phonics = {
  accent: 'general-american',
  heteronyms: NO_HETERONYMS,
  read(word) {
    const known = PRONUNCIATIONS.find((pronunciations) => pronunciations.word === word.toLowerCase())
    if (known === undefined) return { word, source: 'guess', pronunciations: [], heteronym: false }
    return { ...known, word }
  },
  isListed: (word) => PRONUNCIATIONS.some((one) => one.word === word.toLowerCase()),
  slips: NO_SLIPS,
}

const TAUGHT = 'a=æ b=b d=d e=ɛ f=f g=g h=h i=ɪ m=m n=n o=ɒ r=r s=s t=t u=ʌ z=z'

const sequence = toSequence([
  toStep('one', TAUGHT, {
    shapes: ['CVC', 'VC'],
    marks: ['.'],
    limits: { letters: 3, sentenceWords: 4, pageWords: 6, pageSentences: 2 },
  }),
  toStep('two', 'ck=k', { capitals: 'first', sightWords: ['the'], marks: [',', '“', '”'], limits: { letters: 4 } }),
  toStep('three', '', { shapes: ['CCVC'], numerals: true }),
])

export function toContext(pages: readonly string[], more: Partial<ReadingSettings> = {}): StoryContext {
  return createStoryContext(toStory(pages), { phonics, sequence, step: 'one', ...more })
}

/** The pages follow one another with a line of `---` between them. */
export function toStory(pages: readonly string[]): Story {
  const source = pages.join('\n---\n')
  let start = 0
  const made = pages.map((text, index) => {
    const page = toPage(text, start, index + 1)
    start = page.end + '\n---\n'.length
    return page
  })
  return {
    source,
    frontMatter: undefined,
    title: undefined,
    pages: made,
    pictures: [],
    notes: [],
    comments: [],
    problems: [],
  }
}

function toPage(text: string, start: number, number: number): Page {
  const sentences: Sentence[] = []
  const toSource = (offset: number): number => start + offset
  const block: Block = { kind: 'paragraph', text, sentences, emphasis: [], toSource, start, end: start + text.length }
  for (const { 0: line, index } of text.matchAll(/[^\n]+/gu)) sentences.push(toSentence(line, index, block, number))
  return { number, blocks: [block], start, end: block.end }
}

function toSentence(line: string, textStart: number, block: Block, page: number): Sentence {
  const words: Word[] = []
  const marks: Mark[] = []
  for (const { 0: text, index } of line.matchAll(/[\p{L}']+|\d+|[^\s]/gu)) {
    const start = block.start + textStart + index
    const range = { start, end: start + text.length }
    if (!/[\p{L}\d]/u.test(text)) marks.push({ ...range, text })
    else {
      const form = /\d/u.test(text) ? 'numeral' : /[a-z]/iu.test(text) ? 'word' : 'foreign'
      const toSource = (from: number, to: number) => ({ start: start + from, end: start + to })
      words.push({ ...range, text, form, textStart: textStart + index, page, toSource })
    }
  }
  const textEnd = textStart + line.length
  return { block, textStart, textEnd, words, marks, start: block.start + textStart, end: block.start + textEnd }
}
