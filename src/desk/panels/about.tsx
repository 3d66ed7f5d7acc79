// About this story: its settings by name. What is chosen here is written into the top of the file as the smallest change.

import { applyChange, toFault, toggleFile } from '../actions.ts'
import { useAnswer } from '../answers.ts'
import type { About as AboutAnswer, AboutEdit, SettingKey } from '../core/questions.ts'
import { type Page, usePage } from '../page.ts'
import { toAllTold } from '../told.ts'
import { ListField } from './list-field.tsx'
import { Field, Problems } from './parts.tsx'
import { Readers } from './readers.tsx'

/** Asks for the change and puts it in. What cannot be set is told. */
async function set(page: Page, edit: AboutEdit, said: string): Promise<boolean> {
  const session = page.state.session.peek()
  if (session === undefined) return false
  try {
    const answer = await page.tools.ask({ kind: 'set', story: session.toStory(), edit })
    if (answer.ok) return await applyChange(page, answer.value, said)
    page.state.trouble.value = toAllTold(answer.problems)
  } catch (error) {
    toFault(page)(error)
  }
  return false
}

/** While somebody types, it can wait. In milliseconds. */
const REST = 200

export function About() {
  const page = usePage()
  const session = page.state.session.value
  const about = useAnswer<'about'>({
    of: session,
    when: [session?.version.value],
    rest: REST,
    question: () => session && { kind: 'about', story: session.toStory() },
  })
  // Every file of a reader is read: not at each key.
  const readers = useAnswer<'readers'>({
    of: session,
    when: [page.state.shelfAge.value],
    question: () => session && { kind: 'readers', story: session.toStory() },
  })
  if (session === undefined || about === undefined) return null
  const isLocked = !about.isOpen || session.saved.value.kind === 'read-only'
  return (
    <form class="about" onSubmit={(event) => event.preventDefault()} aria-label="About this story">
      <Problems problems={about.problems} />
      <fieldset disabled={isLocked}>
        <legend class="unseen">Settings of this story</legend>
        <TextField about={about} name="title" label="Title" />
        <Steps about={about} />
      </fieldset>
      <Readers readers={readers ?? []} />
      <fieldset disabled={isLocked}>
        <legend class="unseen">Words of this story</legend>
        <Lists about={about} />
        <TextField about={about} name="order" label="Place on the shelf" hint="A number: 1 stands first." />
      </fieldset>
      <div class="row below">
        <button type="button" aria-pressed={session.isFile.value} onClick={() => toggleFile(page)}>
          Show the file as it is
        </button>
        <ToBeginning />
      </div>
    </form>
  )
}

function ToBeginning() {
  const page = usePage()
  const session = page.state.session.value
  if (session === undefined) return null
  const { original } = session.keeper
  const text = session.view.state.doc.toString()
  if (text === original || session.saved.value.kind === 'read-only') return null
  return (
    <button
      type="button"
      onClick={() =>
        applyChange(
          page,
          { path: session.keeper.name, before: text, edits: [{ start: 0, end: text.length, text: original }] },
          'The story is as it was when you opened it. Undo brings your changes back.',
        )
      }
    >
      As it was when I opened it
    </button>
  )
}

interface AboutProps {
  readonly about: AboutAnswer
}

/** What the story does not say itself comes from somewhere: the folder, the sequence, or what holds for all. */
const toFrom = ({ isOwn, from }: AboutAnswer[SettingKey]): string | undefined =>
  isOwn || from === '' ? undefined : `From ${from.replace(/(?::\d+)+$/, '')}.`

/** What the story lists stands beside what the folder lists. */
const toAlso = ({ isOwn, inherited = [] }: AboutAnswer[SettingKey]): string | undefined =>
  isOwn && inherited.length > 0 ? `The folder lists too: ${inherited.join(', ')}.` : undefined

function TextField({
  about,
  name,
  label,
  hint,
}: AboutProps & { readonly name: 'title' | 'order'; readonly label: string; readonly hint?: string }) {
  const page = usePage()
  const setting = about[name]
  return (
    <Field label={label} hint={toFrom(setting) ?? hint} problem={setting.problem}>
      <input
        key={setting.value ?? ''}
        defaultValue={setting.value ?? ''}
        autocomplete="off"
        onChange={(event) => {
          const value = event.currentTarget.value.trim()
          if (value !== (setting.value ?? ''))
            void set(page, { key: name, value: value === '' ? null : value }, `${label}: ${value || 'none'}.`)
        }}
      />
    </Field>
  )
}

function Steps({ about }: AboutProps) {
  const page = usePage()
  const { sequences, steps, accents } = about.choices
  const select = (key: 'sequence' | 'step' | 'accent', choices: typeof sequences, label: string) => (
    <Field label={label} hint={toFrom(about[key])} problem={about[key].problem}>
      <select
        value={about[key].value ?? ''}
        onChange={(event) => void set(page, { key, value: event.currentTarget.value }, `The ${key} is chosen.`)}
      >
        {!choices.some(({ value }) => value === about[key].value) && (
          <option value={about[key].value ?? ''}>{about[key].value ?? 'Choose one'}</option>
        )}
        {choices.map(({ value, title }) => (
          <option key={value} value={value}>
            {key === 'step' && title !== value ? `${value}: ${title}` : title}
          </option>
        ))}
      </select>
    </Field>
  )
  return (
    <>
      {select('step', steps, 'Step that its readers have reached')}
      {select('sequence', sequences, 'Sequence')}
      <button
        type="button"
        onClick={() => {
          page.state.dialog.value = { kind: 'sequence', name: about.sequence.value }
        }}
      >
        Look at this sequence…
      </button>
      {select('accent', accents, 'Accent')}
    </>
  )
}

const LISTS = [
  { key: 'names', label: 'Names in this story', hint: 'You tell them to the child yourself.' },
  { key: 'sight words', label: 'Words known by heart', hint: 'Beside those of the step.' },
  { key: 'practises', label: 'Practises', hint: 'Letters, as ai or a_e.' },
  { key: 'introduces', label: 'Brings for the first time', hint: 'Words, for the figures of the shelf.' },
] as const

function Lists({ about }: AboutProps) {
  const page = usePage()
  return (
    <>
      {LISTS.map(({ key, label, hint }) => (
        <ListField
          key={key}
          label={label}
          hint={toFrom(about[key]) ?? toAlso(about[key]) ?? hint}
          problem={about[key].problem}
          items={about[key].value}
          canRemove={about[key].isOwn}
          onAdd={(add) => set(page, { key, add }, `${add} is added.`)}
          onRemove={(remove) => set(page, { key, remove }, `${remove} is taken away.`)}
        />
      ))}
    </>
  )
}
