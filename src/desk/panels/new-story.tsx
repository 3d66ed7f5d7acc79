// A new story, or a copy of one: asks for its title and step, and makes the file under a name that is free.

import { useEffect, useState } from 'preact/hooks'
import { type Result, succeed } from '../../problem/index.ts'
import type { About, Choice, DeskEdit } from '../core/questions.ts'
import { openBytes } from '../folder/open-bytes.ts'
import { findFree } from '../new-file.ts'
import { type Page, usePage } from '../page.ts'
import { openStory } from '../stories.ts'
import { toAllTold, tryOut } from '../told.ts'
import { Field, Said } from './parts.tsx'
import { Sheet } from './sheet.tsx'

export function NewStory({ copyOf }: { readonly copyOf: string | undefined }) {
  const page = usePage()
  const [title, setTitle] = useState('')
  const [step, setStep] = useState('')
  const [steps, setSteps] = useState<readonly Choice[]>([])
  const [wrong, setWrong] = useState('')
  useEffect(() => {
    const open = async (): Promise<string | undefined> => {
      const begun = await begin(page, copyOf)
      if (!begun.ok) return toAllTold(begun.problems)
      const { about, title: old } = begun.value
      setSteps(about.choices.steps)
      setStep(about.step.value ?? about.choices.steps[0]?.value ?? '')
      if (copyOf !== undefined) setTitle((typed) => (typed === '' ? `${old}, again` : typed))
      return about.choices.steps.length > 0 ? undefined : toNoSteps(about)
    }
    void tryOut(open).then((why) => setWrong(why ?? ''))
  }, [page, copyOf])
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault()
    const made = await tryOut(() => make(page, { title: title.trim(), step, copyOf }))
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
        {wrong !== '' && (
          <p class="wrong" role="alert">
            <Said text={wrong} />
          </p>
        )}
        <button type="submit" class="strong" disabled={steps.length === 0}>
          {copyOf === undefined ? 'Begin the story' : 'Make the copy'}
        </button>
      </form>
    </Sheet>
  )
}

const FRESH = '# New story\n\n'

/** Without a sequence there is no step to choose from. */
const toNoSteps = ({ problems, sequence }: About): string =>
  toAllTold([...problems, ...(sequence.problem ? [sequence.problem] : [])]) || 'There is no step to choose from.'

interface Begun {
  readonly about: About
  readonly title: string
}

async function begin(page: Page, copyOf: string | undefined): Promise<Result<Begun>> {
  const text = copyOf === undefined ? succeed(FRESH) : await readText(page, copyOf)
  if (!text.ok) return text
  const story = { path: copyOf ?? 'new-story.md', text: text.value, version: 0 }
  const about = await page.tools.ask({ kind: 'about', story })
  return succeed({ about, title: about.title.value ?? 'The story' })
}

/** As it stands on the screen, where it is open; a text that is not UTF-8 as it can be read. */
async function readText(page: Page, path: string): Promise<Result<string>> {
  const session = page.state.session.peek()
  if (session?.keeper.name === path) return succeed(session.view.state.doc.toString())
  const read = await page.tools.folder.read(path)
  if (!read.ok) return read
  const opened = openBytes(path, read.value.bytes)
  return opened.ok ? succeed(opened.value.kept.text) : opened
}

interface Wish {
  readonly title: string
  readonly step: string
  readonly copyOf: string | undefined
}

/** Undefined where it is made and open; otherwise why not. */
async function make(page: Page, { title, step, copyOf }: Wish): Promise<string | undefined> {
  const path = await findFree(page.tools.folder, title, { otherwise: 'story', ending: '.md' })
  const first = copyOf === undefined ? succeed(`# ${title}\n\n\n`) : await readText(page, copyOf)
  if (!first.ok) return toAllTold(first.problems)
  let text = first.value
  for (const edit of [
    { key: 'title', value: title },
    { key: 'step', value: step },
  ] as const) {
    const answer = await page.tools.ask({ kind: 'set', story: { path, text, version: 0 }, edit })
    if (!answer.ok) return toAllTold(answer.problems)
    text = apply(text, answer.value.edits)
  }
  return openStory(page, path, text)
}

function apply(text: string, edits: readonly DeskEdit[]): string {
  return [...edits]
    .reverse()
    .reduce((done, { start, end, text: added }) => done.slice(0, start) + added + done.slice(end), text)
}
