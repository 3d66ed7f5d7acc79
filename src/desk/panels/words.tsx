// Words: the bank at this step. A press puts a word at the cursor.

import { useEffect, useState } from 'preact/hooks'
import { backToText, putWord, toFault } from '../actions.ts'
import { whenAsked } from '../asked.ts'
import type { BankAnswer, BankWish, Choices } from '../core/questions.ts'
import { usePage } from '../page.ts'
import type { Session } from '../state.ts'
import { Field, Problems } from './parts.tsx'

const KIND_NAMES: Readonly<Record<Choices['kinds'][number], string>> = {
  naming: 'naming (hat, dog)',
  doing: 'doing (run, sit)',
  describing: 'describing (big, red)',
  little: 'little words (the, in)',
}

export function Words() {
  const page = usePage()
  const session = page.state.session.value
  const [wish, setWish] = useState<BankWish>({})
  const [choices, setChoices] = useState<Choices | undefined>(undefined)
  const [answer, setAnswer] = useState<BankAnswer | undefined>(undefined)
  const version = session?.version.value
  useEffect(() => {
    if (session === undefined) return
    const later = setTimeout(() => ask(session, wish), 120)
    return () => clearTimeout(later)
  }, [session, version, wish])
  async function ask(of: Session, asked: BankWish): Promise<void> {
    try {
      const story = of.toStory()
      const found = await whenAsked(page.tools.ask({ kind: 'words', story, wish: asked }))
      if (found) setAnswer(found)
      const offered = await whenAsked(page.tools.ask({ kind: 'choices', story }))
      if (offered?.ok) setChoices(offered.value)
    } catch (error) {
      toFault(page)(error)
    }
  }
  return (
    <>
      <Filters wish={wish} onWish={setWish} choices={choices} />
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
