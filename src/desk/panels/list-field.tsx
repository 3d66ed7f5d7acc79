// A list of words that can be made longer and shorter, word by word.

import { useState } from 'preact/hooks'
import type { Told } from '../page.ts'
import { toTold } from '../told.ts'
import { Said } from './parts.tsx'

interface ListFieldProps {
  readonly label: string
  readonly hint: string
  readonly problem: Told | null
  readonly items: readonly string[]
  /** Whether the story itself says them; what the folder says is changed there. */
  readonly canRemove: boolean
  /** Answers when it stands in the story, or cannot: each change counts in the text that the one before it has left. */
  onAdd(item: string): Promise<boolean>
  onRemove(item: string): void
}

export function ListField({ label, hint, problem, items, canRemove, onAdd, onRemove }: ListFieldProps) {
  const [text, setText] = useState('')
  const add = async (): Promise<void> => {
    const items = text
      .split(',')
      .map((item) => item.trim())
      .filter((item) => item !== '')
    setText('')
    const left: string[] = []
    for (const item of items) if (!(await onAdd(item))) left.push(item)
    // What could not be added stands there again, unless something else was typed meanwhile.
    if (left.length > 0) setText((now) => (now === '' ? left.join(', ') : now))
  }
  return (
    <fieldset class="list">
      <legend>{label}</legend>
      {items.length > 0 && (
        <ul>
          {items.map((item) => (
            <li key={item}>
              <b class="letters">{item}</b>
              {canRemove && (
                <button type="button" onClick={() => onRemove(item)} aria-label={`Take ${item} away`}>
                  ×
                </button>
              )}
            </li>
          ))}
        </ul>
      )}
      <div class="add">
        <input
          aria-label={`${label}: one more`}
          value={text}
          autocomplete="off"
          spellcheck={false}
          onInput={(event) => setText(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return
            event.preventDefault()
            void add()
          }}
        />
        <button type="button" onClick={add} disabled={text.trim() === ''}>
          Add
        </button>
      </div>
      <p class="hint">{hint}</p>
      {problem && (
        <p class="wrong">
          <Said text={toTold(problem)} />
        </p>
      )}
    </fieldset>
  )
}
