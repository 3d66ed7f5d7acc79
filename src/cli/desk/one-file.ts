// Writes the page as one file, with the settings of a folder inside if that is asked for.

import { join, resolve } from 'node:path'
import { DATA_FOLDER } from '../../packaged/data.ts'
import { looksLikeReader } from '../../readers/index.ts'
import { complain, complainOf, type ExitCode } from '../command.ts'
import { toShownPath } from '../files/file-problem.ts'
import { readTextFile } from '../files/read.ts'
import { writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'
import { createStore } from './store.ts'

const PLACE = '<!-- settings -->'

export async function writeOneFile(folder: string, file: string, withSettings: boolean, io: Io): Promise<ExitCode> {
  const page = join(DATA_FOLDER, 'battledore-desk.html')
  if (!io.fs.existsSync(page)) {
    complain(io, 'The page is not part of this installation. Install the whole package, or run `npm run compile`.')
    return 2
  }
  const settings = withSettings ? await readSettings(folder, io) : {}
  if (settings === undefined) return 2
  const html = io.fs.readFileSync(page, 'utf8')
  // Data of the page and no script; `<` is written so that nothing in it can end the block.
  const json = JSON.stringify(settings).replaceAll('<', '\\u003c')
  const block = withSettings ? `<script type="text/plain" data-name="settings">${json}</script>` : ''
  const [before = '', after = ''] = html.split(PLACE)
  const written = writeTextFile(resolve(io.cwd, file), before + block + after, io, file)
  if (!written.ok) {
    complainOf(io, written.problems)
    return 2
  }
  const names = Object.keys(settings)
  const more = names.length > 0 ? `, with ${names.join(', ')} inside` : ''
  io.stdout.write(`${toShownPath(file)} is the desk as one file${more}. It opens with a double click.\n`)
  if (Object.values(settings).some(looksLikeReader))
    io.stdout.write('Files of readers are among it, with the names of children: think before you hand it on.\n')
  return 0
}

/** Undefined where one of them cannot be read, which is told. */
async function readSettings(folder: string, io: Io): Promise<Readonly<Record<string, string>> | undefined> {
  const listed = await createStore(folder, io).list()
  const names = listed.ok ? listed.value.filter(({ sort }) => sort === 'yaml').map(({ name }) => name) : []
  const texts: Record<string, string> = {}
  for (const name of names) {
    const text = readTextFile(join(folder, name), io, name)
    if (!text.ok) {
      complainOf(io, text.problems)
      return undefined
    }
    texts[name] = text.value
  }
  return texts
}
