// Readers of the folder: who can be chosen, and what one of them knows.

import { DEFAULT_SEQUENCE } from '../../check/check-story.ts'
import { type Result, type Sourced, succeed } from '../../problem/index.ts'
import { looksLikeReader, type ReadReader, readReaderFile } from '../../readers/index.ts'
import { READER_CAUTION } from '../../report/caution.ts'
import type { FoundReader } from './open-story.ts'
import type { ReaderChoice } from './questions/about.ts'
import { type DeskState, folderOf, toolsOf } from './state.ts'

export async function findReader(path: string, state: DeskState): Promise<Result<FoundReader>> {
  const found = await readReader(path, state)
  if (!found.ok) return found
  const { reader, sequenceName } = found.value
  const from = <Value>(value: Value): Sourced<Value> => ({ value, origin: path, path })
  return succeed({
    name: reader.name,
    layer: { sequence: from(sequenceName), step: from(reader.step), accent: from(reader.sequence.accent) },
    extra: reader.extra,
    notice: `Judged for ${reader.name}, at ${reader.step} (${path}). ${READER_CAUTION}`,
  })
}

/** As `battledore check --reader` reads it: a file that names no sequence has the one that holds where nobody says. */
function readReader(path: string, state: DeskState): Promise<Result<ReadReader>> {
  return readReaderFile(path, {
    files: state.files,
    phonicsFor: toolsOf(state).phonicsFor,
    sequence: folderOf(state).resources.sequence,
    defaultSequence: DEFAULT_SEQUENCE,
    on: state.host.today(),
  })
}

export async function listReaders(state: DeskState): Promise<readonly ReaderChoice[]> {
  const found: ReaderChoice[] = []
  for (const path of await state.files.all()) {
    const text = /\.ya?ml$/i.test(path) ? await state.files.read(path) : undefined
    if (text?.ok && looksLikeReader(text.value)) found.push(await toChoice(path, text.value, state))
  }
  return found
}

async function toChoice(path: string, text: string, state: DeskState): Promise<ReaderChoice> {
  const read = await readReader(path, state)
  const isGroup = /^members\s*:/m.test(text)
  const written = /^name\s*:\s*["']?(.*?)["']?\s*$/m.exec(text)?.[1] || path
  if (!read.ok) return { path, name: written, step: null, isGroup, problems: read.problems }
  return { path, name: read.value.reader.name, step: read.value.reader.step, isGroup, problems: [] }
}
