// Opens further files where the browser shows a page no folder.

import { toFault } from '../actions.ts'
import type { Folder } from '../folder/types.ts'
import { usePage } from '../page.ts'
import { Field } from './parts.tsx'

/** A folder of single files takes more of them. */
interface Taking extends Folder {
  add(name: string, bytes: Uint8Array): Promise<void>
}

const isTaking = (folder: Folder): folder is Taking => 'add' in folder

export function MoreFiles() {
  const page = usePage()
  const { folder } = page.tools
  if (!isTaking(folder)) return null
  const take = async (files: FileList | null): Promise<void> => {
    for (const file of files ?? []) await folder.add(file.name, new Uint8Array(await file.arrayBuffer()))
  }
  return (
    <div class="more-files">
      <p>
        Nothing is stored by itself here. <b>Save</b> hands the story over as a download; keep it where you find it
        again.
      </p>
      <Field label="Open more files" hint="Stories, pictures, and files of settings, sequences and readers.">
        <input
          type="file"
          multiple
          accept=".md,.markdown,.yaml,.yml,.png,.jpg,.jpeg,.svg"
          onChange={(event) => void take(event.currentTarget.files).catch(toFault(page))}
        />
      </Field>
    </div>
  )
}
