// A sequence of one's own, begun with its first steps: a line a step.

import { useState } from 'preact/hooks'
import { applyChange } from '../actions.ts'
import { findFree } from '../new-file.ts'
import { type Told, usePage } from '../page.ts'
import { tryOut } from '../told.ts'
import { Field, Problems } from './parts.tsx'

type Accent = 'general-american' | 'southern-british'

const EXAMPLE = 'First letters: a as in cat, m as in mat, t as in mat'

export function NewSequence() {
  const page = usePage()
  const [title, setTitle] = useState('')
  const [accent, setAccent] = useState<Accent>('general-american')
  const [lines, setLines] = useState('')
  const [wrong, setWrong] = useState<readonly Told[]>([])
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault()
    setWrong([])
    const fault = await tryOut(async () => {
      await write()
      return undefined
    })
    if (fault !== undefined) setWrong([{ message: fault, expected: [] }])
  }
  const write = async (): Promise<void> => {
    const steps = lines.split('\n').filter((line) => line.trim() !== '')
    const path = await findFree(page.tools.folder, title, { otherwise: 'sequence', ending: '.yaml' })
    const answer = await page.tools.ask({ kind: 'new sequence', sequence: { path, title, accent, steps } })
    if (!answer.ok) setWrong(answer.problems)
    else if (await applyChange(page, answer.value, `${path} is written.`))
      page.state.dialog.value = { kind: 'sequence', name: path }
  }
  return (
    <details class="new-sequence">
      <summary>Write a sequence of your own</summary>
      <form onSubmit={submit}>
        <Field label="What you call it">
          <input required value={title} autocomplete="off" onInput={(event) => setTitle(event.currentTarget.value)} />
        </Field>
        <Field label="Accent">
          <select value={accent} onChange={(event) => setAccent(event.currentTarget.value as Accent)}>
            <option value="general-american">General American</option>
            <option value="southern-british">Southern British</option>
          </select>
        </Field>
        <Field label="A line a step" hint={`As: ${EXAMPLE}. Words before a colon are the title of the step.`}>
          <textarea
            required
            rows={5}
            value={lines}
            autocapitalize="off"
            spellcheck={false}
            onInput={(event) => setLines(event.currentTarget.value)}
          />
        </Field>
        <div aria-live="polite">
          <Problems problems={wrong} />
        </div>
        <button type="submit">Write it</button>
      </form>
    </details>
  )
}
