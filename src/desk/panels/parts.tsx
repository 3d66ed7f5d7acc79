// Small parts that several panels show: a sentence with letters in it, a list of what is wrong, letters over example words.

import type { ComponentChildren } from 'preact'
import type { Letters } from '../core/questions.ts'
import type { Told } from '../page.ts'
import { toTold } from '../told.ts'

/** What stands between backticks are letters and words of the child's: `o` as in `son`. */
export function Said({ text }: { readonly text: string }) {
  return (
    <>
      {text.split('`').map((part, at) =>
        at % 2 === 1 ? (
          <b class="letters" key={at}>
            {part}
          </b>
        ) : (
          part
        ),
      )}
    </>
  )
}

export function Problems({ problems }: { readonly problems: readonly Told[] }) {
  if (problems.length === 0) return null
  return (
    <ul class="problems">
      {problems.map((problem) => (
        <li key={problem.message}>
          <Said text={toTold(problem)} />
        </li>
      ))}
    </ul>
  )
}

/** A word taken apart: its letters, and below each the word in which they are taught so. */
export function OpenWord({ letters }: { readonly letters: readonly Letters[] }) {
  if (letters.length === 0) return null
  return (
    <ul class="open-word" aria-label="Its letters, with example words">
      {letters.map((one, at) => (
        <li key={at} class={one.isBlamed ? 'to-blame' : ''}>
          <b>{one.letters}</b>
          <i>{one.isSilent ? 'silent' : (one.example ?? 'not taught')}</i>
          {one.isBlamed && <span class="unseen">, not yet</span>}
        </li>
      ))}
    </ul>
  )
}

interface FieldProps {
  readonly label: string
  readonly hint?: string | undefined
  readonly problem?: Told | null | undefined
  readonly children: ComponentChildren
}

/** The label holds its control, so nothing has to be named twice. */
export function Field({ label, hint, problem, children }: FieldProps) {
  return (
    <div class="field">
      {/* biome-ignore lint/a11y/noLabelWithoutControl: the control is handed in */}
      <label>
        <span>{label}</span>
        {children}
      </label>
      {hint !== undefined && <p class="hint">{hint}</p>}
      {problem && (
        <p class="wrong">
          <Said text={toTold(problem)} />
        </p>
      )}
    </div>
  )
}
