// A sheet that lies over the page. The browser itself keeps the keys inside it.

import type { ComponentChildren } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import { usePage } from '../page.ts'
import { Trouble } from './saving.tsx'

interface SheetProps {
  readonly title: string
  readonly isWide?: boolean
  readonly children: ComponentChildren
}

/** Esc and the button put it away; the focus goes back to where it was, or into the text of a story that was opened. */
export function Sheet({ title, isWide = false, children }: SheetProps) {
  const { state } = usePage()
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const before = document.activeElement
    dialog.current?.showModal()
    return () => {
      if (before instanceof HTMLElement && before.isConnected && before !== document.body) before.focus()
      else state.session.peek()?.view.focus()
    }
  }, [state])
  const close = (): void => {
    state.dialog.value = undefined
  }
  return (
    <dialog ref={dialog} class={isWide ? 'over wide' : 'over'} aria-labelledby="over-title" onClose={close}>
      <div class="over-head">
        <h2 id="over-title">{title}</h2>
        <button type="button" onClick={close}>
          Put away
        </button>
      </div>
      <Trouble />
      {children}
    </dialog>
  )
}
