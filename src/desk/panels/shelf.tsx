// Shelf: the stories of the folder in the order in which they are read, and what the chosen one brings.

import { useState } from 'preact/hooks'
import { STORY_NAME } from '../../files/index.ts'
import { useAnswer } from '../answers.ts'
import type { BookRow, ShelfAnswer } from '../core/questions.ts'
import { type Told, usePage } from '../page.ts'
import { openFromShelf } from '../stories.ts'
import { toAllTold } from '../told.ts'
import { BookFigures } from './book-figures.tsx'
import { LeftBehindStories } from './left-behind.tsx'
import { MoreFiles } from './more-files.tsx'
import { Problems, Said } from './parts.tsx'

export function Shelf() {
  const page = usePage()
  const [chosen, setChosen] = useState<string | undefined>(page.state.session.peek()?.keeper.name)
  const shelf = useAnswer<'shelf'>({
    of: page,
    when: [page.state.shelfAge.value],
    question() {
      const open = page.state.session.peek()?.toStory()
      return { kind: 'shelf', ...(open && { open }) }
    },
  })
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
      <MoreFiles />
      {shelf && <LeftBehindStories shelf={shelf} />}
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
            <th scope="col" class="number roomy">
              Order
            </th>
            <th scope="col">Title</th>
            <th scope="col">Step</th>
            <th scope="col" class="number roomy">
              Pages
            </th>
            <th scope="col" class="number roomy">
              Words
            </th>
            <th scope="col" class="number roomy">
              New words
            </th>
            <th scope="col">Can be read</th>
            <th scope="col" class="roomy">
              <span class="unseen">Open it</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shelf.books.map((book) => (
            <tr key={book.path} class={book.path === chosen ? 'chosen' : ''}>
              <td class="number roomy">{book.order ?? ''}</td>
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
              <td class="step-id">{book.step?.id ?? 'not said'}</td>
              <td class="number roomy">{book.pages}</td>
              <td class="number roomy">{book.words}</td>
              <td class="number roomy">{book.newWords.length}</td>
              <td>{toReadable(book)}</td>
              <td class="roomy">
                <button type="button" onClick={() => openFromShelf(page, book.path)} aria-label={`Open ${book.title}`}>
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

/** The shelf is about many files: each says which it is. */
const withStory = (problem: Told): Told =>
  problem.path !== undefined && STORY_NAME.test(problem.path) && !problem.message.includes(problem.path)
    ? { ...problem, message: `${problem.path}: ${problem.message}` }
    : problem

/** @example all of it / 93 %, 3 words not yet */
function toReadable({ readableShare, notYet }: BookRow): string {
  if (readableShare === null || notYet === null) return 'no step, so not known'
  if (notYet === 0) return 'all of it'
  return `${Math.floor(readableShare * 100)} %, ${notYet === 1 ? '1 word' : `${notYet} words`} not yet`
}

function Rest({ shelf }: { readonly shelf: ShelfAnswer }) {
  const page = usePage()
  return (
    <>
      <Problems problems={shelf.problems.map(withStory)} />
      {shelf.missingSteps.map(({ sequence, title, steps }) => (
        <p key={sequence}>
          No story yet for these steps of {title}: {steps.join(', ')}.
        </p>
      ))}
      {shelf.neverReturning.length > 0 && <p>Sight words that never come back: {shelf.neverReturning.join(', ')}.</p>}
      {shelf.unread.length > 0 && (
        <section aria-labelledby="unread-title">
          <h3 id="unread-title">Not read as stories</h3>
          <ul class="problems">
            {shelf.unread.map(({ path, problems }) => (
              <li key={path} class="row">
                <span>
                  <b>{path}</b>: <Said text={toAllTold(problems)} />
                </span>
                <button type="button" onClick={() => openFromShelf(page, path)} aria-label={`Open ${path}`}>
                  Open
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}
