// A page or a book brings more new words than it may.

import { defineRule } from '../../src/lint/rule.ts'
import { toCount, toQuoted } from '../../src/lint/wording.ts'
import type { DifferentWord } from '../../src/usage/count.ts'
import { findNewWords } from '../../src/usage/count.ts'

/** How many words a message names. */
const MOST_NAMED = 8

export default defineRule({
  id: 'max-new-words',
  summary: 'More new words on a page, or in a book, than you allow.',
  severity: 'off',
  options: {
    page: { type: 'number', default: 5, minimum: 0, description: 'The most new words on a page; 0 sets no limit.' },
    book: { type: 'number', default: 0, minimum: 0, description: 'The most new words in the book; 0 sets no limit.' },
  },
  messages: { many: '{what} brings {found}; your settings allow at most {allowed}: {words}' },
  create: ({ story, options, report }) => {
    const check = (words: readonly DifferentWord[], allowed: number, what: string, page: number): void => {
      const first = words[allowed]
      if (allowed === 0 || first === undefined) return
      const named = words.slice(0, MOST_NAMED).map(({ word }) => toQuoted(word.text))
      const more = words.length - named.length
      report({
        at: first.word,
        messageId: 'many',
        data: {
          what,
          found: toCount(words.length, 'new word'),
          allowed,
          words: named.join(', ') + (more > 0 ? ` and ${more} more` : ''),
        },
        reason: 'new-words',
        note: 'Use words again that the readers have met, or spread the new ones over more pages.',
        page,
      })
    }
    return {
      story: ({ pages }) => {
        const fresh = findNewWords(story.count(), story.earlierWords)
        for (const { number } of pages)
          check(
            fresh.filter(({ word }) => word.page === number),
            options.page,
            `Page ${number}`,
            number,
          )
        check(fresh, options.book, 'The book', fresh[options.book]?.word.page ?? 1)
      },
    }
  },
})
