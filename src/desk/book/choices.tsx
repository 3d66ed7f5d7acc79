// Paper, letters and size, as they hold for the book on the screen and for the print.

import { usePage } from '../page.ts'
import { Field } from '../panels/parts.tsx'
import type { State } from '../state.ts'

type BookWish = State['bookWish']['value']

const PAPERS = [
  ['a4', 'A4'],
  ['letter', 'US Letter'],
] as const
const SIZES = [
  ['small', 'small'],
  ['usual', 'as the step has it'],
  ['large', 'large'],
] as const
const FOLDS = [
  ['staple', 'booklet to staple'],
  ['one-sheet', 'one sheet, folded'],
] as const

interface ChoiceProps {
  readonly label: string
  readonly value: string
  readonly choices: readonly (readonly [value: string, name: string])[]
  onChoose(value: string): void
}

export function Choose({ label, value, choices, onChoose }: ChoiceProps) {
  return (
    <Field label={label}>
      <select value={value} onChange={(event) => onChoose(event.currentTarget.value)}>
        {choices.map(([one, name]) => (
          <option key={one} value={one}>
            {name}
          </option>
        ))}
      </select>
    </Field>
  )
}

/** @param withFold for the book on the screen; a print says by its kind how it is folded */
export function PageChoices({ withFold = true }: { readonly withFold?: boolean }) {
  const { state } = usePage()
  const wish = state.bookWish.value
  const letters = state.opened.value?.letters ?? [wish.letters]
  const set = <Key extends keyof BookWish>(key: Key, value: string): void => {
    state.bookWish.value = { ...wish, [key]: value }
  }
  return (
    <div class="choices">
      {withFold && <Choose label="Book" value={wish.fold} choices={FOLDS} onChoose={(value) => set('fold', value)} />}
      <Choose label="Paper" value={wish.paper} choices={PAPERS} onChoose={(value) => set('paper', value)} />
      <Choose
        label="Letters"
        value={wish.letters}
        choices={letters.map((name) => [name, toTitle(name)])}
        onChoose={(value) => set('letters', value)}
      />
      <Choose label="Size" value={wish.size} choices={SIZES} onChoose={(value) => set('size', value)} />
    </div>
  )
}

const toTitle = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1)
