// For whom the story is read: a reader file of the folder, or anyone at the step.

import type { ReaderChoice } from '../core/questions.ts'
import { usePage } from '../page.ts'
import { Field, Problems } from './parts.tsx'

export function Readers({ readers }: { readonly readers: readonly ReaderChoice[] }) {
  const page = usePage()
  const session = page.state.session.value
  if (session === undefined || readers.length === 0) return null
  const wrong = readers.flatMap(({ problems }) => problems)
  return (
    <>
      <Field label="Read it for" hint="Readers are files of this folder. Their names stay there.">
        <select
          value={session.reader.value ?? ''}
          onChange={(event) => {
            session.reader.value = event.currentTarget.value || undefined
            session.recheck()
          }}
        >
          <option value="">anyone at this step</option>
          {readers.map(({ path, name, step, isGroup, problems }) => (
            <option key={path} value={path} disabled={problems.length > 0}>
              {`${name}${isGroup ? ', a group' : ''}${step === null ? '' : `, at ${step}`}`}
            </option>
          ))}
        </select>
      </Field>
      <Problems problems={wrong} />
    </>
  )
}
