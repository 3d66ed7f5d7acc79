// Too small a share of a page, or of the whole story, can be read at this step.

import { defineRule } from '../../src/lint/rule.ts'
import { toCount } from '../../src/lint/wording.ts'
import type { Page, Range } from '../../src/story/types.ts'
import type { Figures } from '../../src/verdict/types.ts'

export default defineRule({
  id: 'min-readable-share',
  summary: 'A page with too small a share of readable words.',
  severity: 'warning',
  options: {
    definition: {
      type: 'string',
      choices: ['readable', 'decodable'],
      default: 'readable',
      description:
        'What counts: `decodable` words only, or all that are `readable`, with sight words and allowed names.',
    },
    of: {
      type: 'string',
      choices: ['page', 'story'],
      default: 'page',
      description: 'What the share is taken of.',
    },
    share: {
      type: 'number',
      default: 0.75,
      minimum: 0,
      maximum: 1,
      description: 'The least share, 0 to 1.',
    },
  },
  messages: { low: '{what} has {counted} of {words} {definition} ({found} %); at least {wanted} % are wanted' },
  create: ({ story, options, report }) => {
    const check = (figures: Figures | undefined, what: string, at: Range | undefined, page: number): void => {
      if (figures === undefined || at === undefined) return
      const { decodable, sight, names } = figures
      const isDecodable = options.definition === 'decodable'
      if ((isDecodable ? figures.decodableShare : figures.readableShare) >= options.share) return
      const counted = isDecodable ? decodable : decodable + sight + names
      const words = toCount(figures.words, 'word')
      const wanted = Math.round(options.share * 1000) / 10
      const found = toPercentBelow((100 * counted) / figures.words, wanted)
      const data = { what, counted, words, definition: options.definition, found, wanted }
      report({
        at,
        messageId: 'low',
        data,
        reason: 'share',
        note: 'Replace the words that are marked, the commonest first.',
        page,
      })
    }
    if (options.of === 'story') {
      return {
        story: ({ pages }) => check(story.figures().total, 'The story', pages.map(findFirstBlock).find(Boolean), 1),
      }
    }
    return {
      page: (page) =>
        check(story.figures().pages[page.number - 1], `Page ${page.number}`, findFirstBlock(page), page.number),
    }
  },
})

/** Rounded as in the figures of the report, unless that would read as what is wanted. */
function toPercentBelow(exact: number, wanted: number): number {
  const rounded = Math.round(exact)
  return rounded < wanted ? rounded : Math.floor(exact)
}

/** A page is pointed at where it begins: a line under all of it would hide the words that are to blame. */
function findFirstBlock(page: Page): Range | undefined {
  return page.blocks[0]
}
