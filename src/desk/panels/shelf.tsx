// Shelf: the stories of the folder in the order in which they are read, and what the chosen one brings.

import { useEffect, useState } from 'preact/hooks'
import { toFault } from '../actions.ts'
import { whenAsked } from '../asked.ts'
import type { BookRow, ShelfAnswer } from '../core/questions.ts'
import { type Page, usePage } from '../page.ts'
import { openStory } from '../stories.ts'
import { Problems } from './parts.tsx'

export function Shelf() {
  const page = usePage()
  const age = page.state.shelfAge.value
  const [shelf, setShelf] = useState<ShelfAnswer | undefined>(undefined)
  const [chosen, setChosen] = useState<string | undefined>(page.state.session.peek()?.keeper.name)
  useEffect(() => {
    const open = page.state.session.peek()?.toStory()
    const asked = page.tools.ask({ kind: 'shelf', ...(open && { open }) })
    whenAsked(asked).then((answer) => answer && setShelf(answer), toFault(page))
  }, [page, age])
  const book = shelf?.books.find(({ path }) => path === chosen)
  return (
    <section class="shelf" aria-labelledby="shelf-title">
      <div class="shelf-head">
        <h2 id="shelf-title">Stories in {page.tools.folder.label}</h2>
        <button
          type="button"
          class="strong"
          onClick={() => {
            page.state.dialog.value = { kind: 'new' }
          }}
        >
          New story
        </button>
      </div>
      {shelf === undefined ? (
        <p class="hint">The folder is being read.</p>
      ) : (
        <Stories shelf={shelf} chosen={chosen} onChoose={setChosen} />
      )}
      {book && <BookFigures book={book} />}
      {shelf && <Rest shelf={shelf} />}
      <p class="caution">This page checks text. It assesses no child, and it is no test for any condition.</p>
    </section>
  )
}

interface StoriesProps {
  readonly shelf: ShelfAnswer
  readonly chosen: string | undefined
  onChoose(path: string): void
}

function Stories({ shelf, chosen, onChoose }: StoriesProps) {
  const page = usePage()
  if (shelf.books.length === 0)
    return (
      <div class="empty">
        <p>There is no story in this folder yet.</p>
        <p class="hint">
          A story is a text file that ends in .md. Press New story, give it a title, and write: you see on the letters
          what your readers cannot read yet.
        </p>
      </div>
    )
  return (
    <div class="scroll">
      <table>
        <thead>
          <tr>
            <th scope="col" class="number">
              Order
            </th>
            <th scope="col">Title</th>
            <th scope="col">Step</th>
            <th scope="col" class="number">
              Pages
            </th>
            <th scope="col" class="number">
              Words
            </th>
            <th scope="col" class="number">
              New words
            </th>
            <th scope="col">Can be read</th>
            <th scope="col">
              <span class="unseen">Open it</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shelf.books.map((book) => (
            <tr key={book.path} class={book.path === chosen ? 'chosen' : ''}>
              <td class="number">{book.order ?? ''}</td>
              <th scope="row">
                <button
                  type="button"
                  class="plain"
                  aria-pressed={book.path === chosen}
                  onClick={() => onChoose(book.path)}
                >
                  {book.title}
                </button>
              </th>
              <td>{book.step?.id ?? 'not said'}</td>
              <td class="number">{book.pages}</td>
              <td class="number">{book.words}</td>
              <td class="number">{book.newWords.length}</td>
              <td>{toReadable(book)}</td>
              <td>
                <button type="button" onClick={() => open(page, book.path)} aria-label={`Open ${book.title}`}>
                  Open
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

async function open(page: Page, path: string): Promise<void> {
  if (page.state.session.peek()?.keeper.name === path) {
    page.state.place.value = 'write'
    return
  }
  const wrong = await openStory(page, path)
  if (wrong !== undefined) page.state.trouble.value = wrong
}

/** @example all of it / 93 %, not readable: 3 */
function toReadable({ readableShare, notYet }: BookRow): string {
  if (readableShare === null || notYet === null) return 'no step, so not known'
  if (notYet === 0) return 'all of it'
  return `${Math.floor(readableShare * 100)} %, not yet: ${notYet}`
}

function BookFigures({ book }: { readonly book: BookRow }) {
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
        <button type="button" class="strong" onClick={() => open(page, book.path)}>
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

function Rest({ shelf }: { readonly shelf: ShelfAnswer }) {
  return (
    <>
      <Problems problems={shelf.problems} />
      {shelf.missingSteps.map(({ sequence, steps }) => (
        <p key={sequence}>
          No story yet in {sequence} for: {steps.join(', ')}.
        </p>
      ))}
      {shelf.neverReturning.length > 0 && <p>Sight words that never come back: {shelf.neverReturning.join(', ')}.</p>}
      {shelf.unread.length > 0 && (
        <section aria-labelledby="unread-title">
          <h3 id="unread-title">Not read as stories</h3>
          <ul class="problems">
            {shelf.unread.map(({ path, reason }) => (
              <li key={path}>
                {path}: {reason}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}
