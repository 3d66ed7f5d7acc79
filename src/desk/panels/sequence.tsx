// A sequence, read step by step; one's own can be written here, each sound by its example word.

import { useState } from 'preact/hooks'
import { applyChange } from '../actions.ts'
import { useAnswer } from '../answers.ts'
import type { SequenceEdit, SequenceItem, SequenceStep } from '../core/questions.ts'
import { type Page, usePage } from '../page.ts'
import { toAllTold, tryOut } from '../told.ts'
import { NewSequence } from './new-sequence.tsx'
import { Field, Problems, Said } from './parts.tsx'
import { Sheet } from './sheet.tsx'

export function SequenceSheet({ name }: { readonly name: string }) {
  const page = usePage()
  // What is written here is on the disk, and asked for again as every other change is.
  const shown = useAnswer<'sequence'>({
    of: name,
    when: [page.state.shelfAge.value],
    question: () => ({ kind: 'sequence', name }),
  })
  if (shown === undefined)
    return (
      <Sheet title="Sequence">
        <p class="hint">It is being read.</p>
      </Sheet>
    )
  const isOwn = shown.path !== null
  return (
    <Sheet title={shown.title || shown.name} isWide>
      <p>
        {isOwn ? `Your own, in ${shown.path}.` : 'Built in: it can be read here, not changed.'}
        {shown.extends !== null && ` It adds to ${shown.extends}.`} Each step knows all before it.
      </p>
      <Problems problems={shown.problems} />
      {!isOwn && <NewSequence />}
      <ol class="steps">
        {shown.steps.map((step) => (
          <Step key={step.id} step={step} path={shown.path} />
        ))}
      </ol>
      {shown.path !== null && <AddStep path={shown.path} />}
    </Sheet>
  )
}

/** Undefined where it is written; otherwise why not. */
const edit = (page: Page, path: string, wish: SequenceEdit): Promise<string | undefined> =>
  tryOut(async () => {
    const answer = await page.tools.ask({ kind: 'edit sequence', path, edit: wish })
    if (!answer.ok) return toAllTold(answer.problems)
    // Where it could not be saved, the sheet says why above.
    return (await applyChange(page, answer.value, 'The sequence is saved.')) ? undefined : ''
  })

interface StepProps {
  readonly step: SequenceStep
  readonly path: string | null
}

function Step({ step, path }: StepProps) {
  const page = usePage()
  const [text, setText] = useState('')
  const [wrong, setWrong] = useState('')
  const run = async (wish: SequenceEdit): Promise<void> => {
    if (path === null) return
    const why = await edit(page, path, wish)
    setWrong(why ?? '')
    if (why === undefined) setText((now) => (now === text ? '' : now))
  }
  return (
    <li>
      <h3>{step.title === step.id ? step.id : `${step.id}: ${step.title}`}</h3>
      <ul class="items">
        {step.items.map((item) => (
          <Item
            key={item.written}
            item={item}
            onRemove={path === null ? undefined : () => run({ kind: 'remove', step: step.id, what: item.written })}
          />
        ))}
      </ul>
      {step.more.length > 0 && (
        <ul class="more">
          {step.more.map((line) => (
            <li key={line}>
              <Said text={line} />
            </li>
          ))}
        </ul>
      )}
      <Problems problems={step.problems} />
      {path !== null && (
        <form
          class="add"
          onSubmit={(event) => {
            event.preventDefault()
            void run({ kind: 'add', step: step.id, what: text })
          }}
        >
          <input
            aria-label={`Teach at ${step.id}: a sound with a word (ai as in rain), an ending (-ed), or a word by heart`}
            placeholder="ai as in rain, -ed, said"
            value={text}
            autocomplete="off"
            autocapitalize="off"
            onInput={(event) => setText(event.currentTarget.value)}
          />
          <button type="submit" disabled={text.trim() === ''}>
            Teach
          </button>
        </form>
      )}
      {wrong !== '' && (
        <p class="wrong" role="alert">
          <Said text={wrong} />
        </p>
      )}
    </li>
  )
}

function Item({ item, onRemove }: { readonly item: SequenceItem; readonly onRemove: (() => void) | undefined }) {
  return (
    <li class={item.kind}>
      {item.kind === 'sound' ? (
        <>
          <b class="letters">{item.letters}</b> as in <b class="letters">{item.example}</b>
        </>
      ) : (
        <b class="letters">{item.written}</b>
      )}
      {onRemove && item.isOwn && (
        <button type="button" aria-label={`Take ${item.written} away`} onClick={onRemove}>
          ×
        </button>
      )}
    </li>
  )
}

function AddStep({ path }: { readonly path: string }) {
  const page = usePage()
  const [title, setTitle] = useState('')
  const [what, setWhat] = useState('')
  const [wrong, setWrong] = useState('')
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault()
    const items = what.split(/[,;]/).map((one) => one.trim())
    const why = await edit(page, path, { kind: 'add step', title, what: items.filter((one) => one !== '') })
    setWrong(why ?? '')
    if (why !== undefined) return
    setTitle((now) => (now === title ? '' : now))
    setWhat((now) => (now === what ? '' : now))
  }
  return (
    <form class="add-step" onSubmit={submit} aria-labelledby="next-step">
      <h3 id="next-step">Next step</h3>
      <Field label="What you call it">
        <input value={title} required autocomplete="off" onInput={(event) => setTitle(event.currentTarget.value)} />
      </Field>
      <Field label="What is taught" hint="With commas: sh as in ship, -ed, said.">
        <input
          value={what}
          required
          autocomplete="off"
          autocapitalize="off"
          onInput={(event) => setWhat(event.currentTarget.value)}
        />
      </Field>
      {wrong !== '' && (
        <p class="wrong" role="alert">
          <Said text={wrong} />
        </p>
      )}
      <button type="submit">Add the step</button>
    </form>
  )
}
