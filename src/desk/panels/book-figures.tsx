// What one book of the shelf brings, and what can be done with it.

import type { BookRow } from '../core/questions.ts'
import { usePage } from '../page.ts'
import { openFromShelf } from '../stories.ts'

export function BookFigures({ book }: { readonly book: BookRow }) {
  const page = usePage()
  const rows: readonly (readonly [string, string])[] = [
    ['New words', book.newWords.join(', ') || 'none'],
    ['New sight words', book.newSightWords.join(', ') || 'none'],
    [
      'Sight words that come back',
      book.returns.map(({ word, times }) => (times === 1 ? word : `${word} (${times} times)`)).join(', ') || 'none',
    ],
    ...book.practises.map(
      ({ pattern, words, different }) => [`Practises ${pattern}`, `${words} words, ${different} different`] as const,
    ),
    [
      'All of it can be read',
      book.earliestStep === null ? 'at no step of its sequence' : `from ${book.earliestStep} on`,
    ],
  ]
  return (
    <section class="figures" aria-labelledby="figures-title">
      <h3 id="figures-title">{book.title}</h3>
      <dl>
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <div class="row">
        <button type="button" class="strong" onClick={() => openFromShelf(page, book.path)}>
          Open
        </button>
        <button
          type="button"
          onClick={() => {
            page.state.dialog.value = { kind: 'new', copyOf: book.path }
          }}
        >
          Copy
        </button>
      </div>
    </section>
  )
}
