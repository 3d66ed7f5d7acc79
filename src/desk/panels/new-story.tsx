// A new story, or a copy of one: asks for its title and step, and makes the file under a name that is free.

import { useEffect, useState } from 'preact/hooks'
import type { About, Choice, DeskEdit } from '../core/questions.ts'
import { type Page, usePage } from '../page.ts'
import { openStory } from '../stories.ts'
import { toTold } from '../told.ts'
import { Field } from './parts.tsx'
import { Sheet } from './sheet.tsx'

export function NewStory({ copyOf }: { readonly copyOf: string | undefined }) {
  const page = usePage()
  const [title, setTitle] = useState('')
  const [step, setStep] = useState('')
  const [steps, setSteps] = useState<readonly Choice[]>([])
  const [wrong, setWrong] = useState('')
  useEffect(() => {
    void begin(page, copyOf).then(({ about, title: old }) => {
      setSteps(about.choices.steps)
      setStep(about.step.value ?? about.choices.steps[0]?.value ?? '')
      if (copyOf !== undefined) setTitle((typed) => (typed === '' ? `${old}, again` : typed))
    })
  }, [page, copyOf])
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault()
    const made = await make(page, { title: title.trim(), step, copyOf })
    if (made === undefined) page.state.dialog.value = undefined
    else setWrong(made)
  }
  return (
    <Sheet title={copyOf === undefined ? 'New story' : 'Copy of a story'}>
      <form onSubmit={submit}>
        <Field label="Title">
          <input
            // biome-ignore lint/a11y/noAutofocus: the first thing to say of a new story
            autoFocus
            required
            value={title}
            autocomplete="off"
            onInput={(event) => setTitle(event.currentTarget.value)}
          />
        </Field>
        <Field label="Step that its readers have reached">
          {/* Nothing can be chosen, and no story begun, before the steps are known. */}
          <select value={step} disabled={steps.length === 0} onChange={(event) => setStep(event.currentTarget.value)}>
            {steps.map(({ value, title: name }) => (
              <option key={value} value={value}>
                {name === value ? value : `${value}: ${name}`}
              </option>
            ))}
          </select>
        </Field>
        {wrong !== '' && <p class="wrong">{wrong}</p>}
        <button type="submit" class="strong" disabled={steps.length === 0}>
          {copyOf === undefined ? 'Begin the story' : 'Make the copy'}
        </button>
      </form>
    </Sheet>
  )
}

const FRESH = '# New story\n\n'

async function begin(page: Page, copyOf: string | undefined): Promise<{ about: About; title: string }> {
  const text = copyOf === undefined ? FRESH : await readText(page, copyOf)
  const about = await page.tools.ask({ kind: 'about', story: { path: copyOf ?? 'new-story.md', text, version: 0 } })
  return { about, title: about.title.value ?? 'The story' }
}

async function readText(page: Page, path: string): Promise<string> {
  const read = await page.tools.folder.read(path)
  if (!read.ok) return FRESH
  return new TextDecoder().decode(read.value.bytes).replaceAll(/\r\n?/g, '\n')
}

interface Wish {
  readonly title: string
  readonly step: string
  readonly copyOf: string | undefined
}

/** Undefined where it is made and open; otherwise why not. */
async function make(page: Page, { title, step, copyOf }: Wish): Promise<string | undefined> {
  const path = await findFree(page, title)
  const first = copyOf === undefined ? `# ${title}\n\n\n` : await readText(page, copyOf)
  let text = first
  for (const edit of [
    { key: 'title', value: title },
    { key: 'step', value: step },
  ] as const) {
    const answer = await page.tools.ask({ kind: 'set', story: { path, text, version: 0 }, edit })
    if (!answer.ok) return answer.problems.map(toTold).join(' ')
    text = apply(text, answer.value.edits)
  }
  return openStory(page, path, text)
}

function apply(text: string, edits: readonly DeskEdit[]): string {
  return [...edits]
    .reverse()
    .reduce((done, { start, end, text: added }) => done.slice(0, start) + added + done.slice(end), text)
}

/** The name of the file is the title, in letters that every system takes. */
async function findFree(page: Page, title: string): Promise<string> {
  const list = await page.tools.folder.list()
  const taken = new Set(list.ok ? list.value.map(({ name }) => name.toLowerCase()) : [])
  const plain = title.normalize('NFKD').toLowerCase().replaceAll(/\p{M}/gu, '')
  const stem =
    plain
      .replaceAll(/[^a-z0-9]+/g, '-')
      .replaceAll(/^-|-$/g, '')
      .slice(0, 60) || 'story'
  for (let number = 1; ; number++) {
    const name = number === 1 ? `${stem}.md` : `${stem}-${number}.md`
    if (!taken.has(name)) return name
  }
}
