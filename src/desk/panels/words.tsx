// Words: the bank at this step. A press puts a word at the cursor.

import { useState } from 'preact/hooks'
import { backToText, putWord } from '../actions.ts'
import { useAnswer } from '../answers.ts'
import type { BankAnswer, BankWish, CheckAnswer, Choices } from '../core/questions.ts'
import { usePage } from '../page.ts'
import { Field, Problems } from './parts.tsx'

const KIND_NAMES: Readonly<Record<Choices['kinds'][number], string>> = {
  naming: 'naming (hat, dog)',
  doing: 'doing (run, sit)',
  describing: 'describing (big, red)',
  little: 'little words (the, in)',
}

/** Between two letters of a wish, or of the story. In milliseconds. */
const REST = 120

/** What can be chosen hangs on who reads, not on the text. */
const toReader = (check: CheckAnswer | undefined): string | undefined =>
  check?.checked ? [check.sequence.name, check.step.id, check.accent, check.reader?.name].join(' ') : undefined

export function Words() {
  const page = usePage()
  const session = page.state.session.value
  const [wish, setWish] = useState<BankWish>({})
  const answer = useAnswer<'words'>({
    of: session,
    when: [session?.version.value, wish],
    rest: REST,
    question: () => session && { kind: 'words', story: session.toStory(), wish },
  })
  const choices = useAnswer<'choices'>({
    of: session,
    when: [toReader(session?.check.value), page.state.shelfAge.value],
    question: () => session && { kind: 'choices', story: session.toStory() },
  })
  return (
    <>
      <Filters wish={wish} onWish={setWish} choices={choices?.ok ? choices.value : undefined} />
      {answer && <Found answer={answer} />}
      <div class="row below">
        <button type="button" onClick={() => backToText(page)}>
          Back to the text
        </button>
      </div>
    </>
  )
}

interface FilterProps {
  readonly wish: BankWish
  readonly choices: Choices | undefined
  onWish(wish: BankWish): void
}

function Filters({ wish, onWish, choices }: FilterProps) {
  const set = (key: keyof BankWish, value: string | boolean): void => {
    const { [key]: _, ...rest } = wish
    onWish(value === '' || value === false ? rest : { ...rest, [key]: value })
  }
  const text = (key: 'search' | 'rhymesWith') => (
    <input
      type="text"
      value={wish[key] ?? ''}
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      onInput={(event) => set(key, event.currentTarget.value.trim())}
    />
  )
  const select = (key: 'pattern' | 'vowel' | 'kind', options: readonly (readonly [value: string, name: string])[]) => (
    <select value={wish[key] ?? ''} onChange={(event) => set(key, event.currentTarget.value)}>
      <option value="">any</option>
      {options.map(([value, name]) => (
        <option key={value} value={value}>
          {name}
        </option>
      ))}
    </select>
  )
  const tick = (key: 'picture' | 'unused' | 'newAtStep', label: string) => (
    <label class="tick">
      <input type="checkbox" checked={wish[key] ?? false} onChange={(event) => set(key, event.currentTarget.checked)} />
      {label}
    </label>
  )
  const toOptions = (patterns: Choices['patterns'] = []) =>
    patterns.map(({ value, letters, example, step }) => [value, `${letters} as in ${example} (${step})`] as const)
  return (
    <form class="filters" onSubmit={(event) => event.preventDefault()} aria-label="Which words">
      <Field label="Holds the letters">{text('search')}</Field>
      <Field label="Sound or pattern">{select('pattern', toOptions(choices?.patterns))}</Field>
      <Field label="Kind">
        {select(
          'kind',
          (choices?.kinds ?? []).map((kind) => [kind, KIND_NAMES[kind]]),
        )}
      </Field>
      <details>
        <summary>More wishes</summary>
        <Field label="Vowel">{select('vowel', toOptions(choices?.vowels))}</Field>
        <Field label="Rhymes with">{text('rhymesWith')}</Field>
        {tick('picture', 'a picture can show it')}
        {tick('unused', 'not yet in this story')}
        {tick('newAtStep', 'only what this step brings')}
      </details>
    </form>
  )
}

function Found({ answer }: { readonly answer: BankAnswer }) {
  const page = usePage()
  return (
    <section aria-label="Words that fit">
      <Problems problems={answer.problems} />
      {answer.words.length === 0 && answer.problems.length === 0 && <p>No word fits all of this. Take a wish away.</p>}
      <ul class="bank">
        {answer.words.map(({ word, byHeart }) => (
          <li key={word}>
            <button type="button" class="word" onClick={() => putWord(page, word)}>
              {word}
              {byHeart && <small> by heart</small>}
            </button>
          </li>
        ))}
      </ul>
      {answer.more && <p class="hint">There are more. Ask for letters or a kind to see others.</p>}
    </section>
  )
}
