// A switch in the story, as the maker reads it: which word is kept, and why.

import { type EditorView, WidgetType } from '@codemirror/view'

export interface Kept {
  /** Undefined where a whole rule is switched off. */
  readonly word: string | undefined
  readonly what: string
  readonly reason: string
}

/** @example <!-- battledore ignore no-irregular-word "won" -- a word of the song --> */
export function toKept(comment: string): Kept {
  const [, body = '', reason = ''] = /^\s*<!--\s*battledore\s+(.*?)(?:\s+--\s+(.*?))?\s*-->\s*$/.exec(comment) ?? []
  const [, word] = /["“]([^"”]*)["”]/.exec(body) ?? []
  return { word, what: body, reason }
}

const toKeptText = ({ word, what, reason }: Kept): string =>
  `${word === undefined ? `Switch: ${what}` : `Kept here: ${word}`}${reason === '' ? '' : ` (${reason})`}`

export class KeptWidget extends WidgetType {
  readonly kept: Kept

  constructor(kept: Kept) {
    super()
    this.kept = kept
  }

  override eq({ kept }: KeptWidget): boolean {
    return toKeptText(kept) === toKeptText(this.kept)
  }

  override toDOM(view: EditorView): HTMLElement {
    const dom = document.createElement('div')
    dom.className = 'kept'
    dom.appendChild(document.createElement('span')).textContent = toKeptText(this.kept)
    if (view.state.readOnly) return dom
    const button = dom.appendChild(document.createElement('button'))
    button.type = 'button'
    button.textContent = 'Keep no longer'
    button.addEventListener('click', () => takeOut(view, dom))
    return dom
  }

  override ignoreEvent(): boolean {
    return true
  }
}

function takeOut(view: EditorView, dom: HTMLElement): void {
  const line = view.state.doc.lineAt(view.posAtDOM(dom))
  view.dispatch({
    changes: { from: line.from, to: Math.min(line.to + 1, view.state.doc.length) },
    userEvent: 'delete.switch',
  })
  view.focus()
}
