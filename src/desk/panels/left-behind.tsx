// Stories that are in no file, but kept by this browser.

import { useEffect, useState } from 'preact/hooks'
import { toFault } from '../actions.ts'
import { toClock } from '../clock.ts'
import type { ShelfAnswer } from '../core/questions.ts'
import { type LeftBehind, usePage } from '../page.ts'
import { openFromShelf } from '../stories.ts'

/** Never saved, or gone from the disk. */
export function LeftBehindStories({ shelf }: { readonly shelf: ShelfAnswer }) {
  const page = usePage()
  const [drafts, setDrafts] = useState<readonly LeftBehind[]>([])
  useEffect(() => {
    page.tools.listDrafts().then(setDrafts, toFault(page))
  }, [page, shelf])
  const open = page.state.session.peek()?.keeper.name
  const known = new Set([...shelf.books, ...shelf.unread].map(({ path }) => path))
  const names = [...new Set(drafts.map(({ name }) => name))].filter((name) => !known.has(name) && name !== open)
  if (names.length === 0) return null
  return (
    <section aria-labelledby="left-title">
      <h3 id="left-title">In this browser only, in no file</h3>
      <ul class="problems">
        {names.map((name) => (
          <li key={name} class="row">
            <span>
              {name}, of {toClock(drafts.find((draft) => draft.name === name)?.at ?? 0)}
            </span>
            <button type="button" onClick={() => openFromShelf(page, name)} aria-label={`Open ${name}`}>
              Open
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
