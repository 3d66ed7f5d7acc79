// Opens and closes stories. One is open at a time.

import { batch } from '@preact/signals'
import { showPanel, toFault } from './actions.ts'
import type { Page } from './page.ts'
import { createPictures } from './pictures.ts'
import { openSession } from './session.ts'
import { toAllTold } from './told.ts'

const turns = new WeakMap<Page['state'], Promise<unknown>>()

/**
 * One opening after the other, so that what was pressed last is what is open, and nothing is opened twice.
 * @param fresh the text of a story that has no file yet
 * @returns why it could not be opened
 */
export function openStory(page: Page, path: string, fresh?: string): Promise<string | undefined> {
  const turn = (turns.get(page.state) ?? Promise.resolve()).then(() => open(page, path, fresh))
  turns.set(
    page.state,
    turn.catch(() => undefined),
  )
  return turn
}

async function open(page: Page, path: string, fresh: string | undefined): Promise<string | undefined> {
  const { state, tools, voice } = page
  if (state.session.peek()?.keeper.name === path) {
    state.place.value = 'write'
    return undefined
  }
  await closeStory(page)
  const keeper = await tools.open(path, fresh)
  if (!keeper.ok) return toAllTold(keeper.problems)
  const session = openSession(keeper.value, {
    ask: tools.ask,
    cspNonce: tools.cspNonce,
    picture: createPictures(tools.folder, path),
    onPlace: () => showPanel(page, 'places'),
    onTyping: () => voice.hush(),
    onFault: toFault(page),
    onCount: (places) => voice.say(toCountText(places)),
    onSaved(name) {
      state.shelfAge.value++
      void tools.ask({ kind: 'changed', paths: [name] }).catch(toFault(page))
    },
  })
  if (fresh !== undefined) session.view.dispatch({ selection: { anchor: session.view.state.doc.length } })
  batch(() => {
    state.session.value = session
    state.place.value = 'write'
    state.panel.value = 'places'
  })
  return undefined
}

async function closeStory({ state }: Page): Promise<void> {
  const session = state.session.peek()
  if (session === undefined) return
  state.session.value = undefined
  await session.close()
}

function toCountText(places: number): string {
  if (places === 0) return 'No place asks for a look any more.'
  return places === 1 ? '1 place asks for a look.' : `${places} places ask for a look.`
}

/** What cannot be opened is told. */
export async function openFromShelf(page: Page, path: string): Promise<void> {
  const wrong = await openStory(page, path)
  if (wrong !== undefined) page.state.trouble.value = wrong
}
