// Readers of the folder: who can be chosen, and what one of them knows.

import { DEFAULT_SEQUENCE } from '../../check/check-story.ts'
import { type ConfigChain, type Layer, resolveSettings } from '../../config/index.ts'
import { isPathLike, joinPath, toFolder } from '../../config/paths.ts'
import { fail, type Result, type Sourced, succeed } from '../../problem/index.ts'
import { loadReader, type Reader } from '../../readers/index.ts'
import { READER_CAUTION } from '../../report/caution.ts'
import type { ReaderExtra } from '../../sequence/reader.ts'
import type { ReaderChoice } from './questions/about.ts'
import { type DeskState, folderOf, toolsOf } from './state.ts'

export interface FoundReader {
  readonly name: string
  /** Sequence, step and accent of the reader. */
  readonly layer: Layer
  readonly extra: ReaderExtra
  /** Who is read for, and the caution that goes with it. */
  readonly notice: string
}

/** @param storyPath the story whose settings say which sequence holds where the reader names none */
export async function findReader(
  path: string,
  chain: ConfigChain,
  storyPath: string,
  state: DeskState,
): Promise<Result<FoundReader>> {
  const { sequence: byDefault } = resolveSettings({ chain, storyPath, rules: [], defaultSequence: DEFAULT_SEQUENCE })
  const found = await readReader(path, byDefault.value, state)
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

interface ReadReader {
  readonly reader: Reader
  readonly sequenceName: string
}

async function readReader(
  path: string,
  defaultSequence: string,
  state: DeskState,
  isMember = false,
): Promise<Result<ReadReader>> {
  const text = await state.files.text(path)
  if (text === undefined) return fail({ code: 'missing-file', message: `There is no file ${path}` })
  if (!text.ok) return text
  const { resources } = folderOf(state)
  // The default is named by a config, and counts from there.
  const toName = (name: string): string =>
    name === defaultSequence || !isPathLike(name) ? name : joinPath(toFolder(path), name)
  const members: ReadReader[] = []
  const loaded = await loadReader(text.value, {
    path,
    phonicsFor: toolsOf(state).phonicsFor,
    sequence: (name, accent) => resources.sequence(toName(name), accent),
    defaultSequence,
    on: state.host.today(),
    ...(!isMember && {
      async member(named: string) {
        const member = await readReader(joinPath(toFolder(path), named), defaultSequence, state, true)
        if (!member.ok) return member
        members.push(member.value)
        return succeed(member.value.reader)
      },
    }),
  })
  if (!loaded.ok) return loaded
  return succeed({
    reader: loaded.value,
    sequenceName: members[0]?.sequenceName ?? toName(loaded.value.sequenceName),
  })
}

/** Files that look like readers: a name, and a step, lessons or members. Configs and sequences are none. */
const LOOKS_LIKE_READER = /^(?:step|lessons|members)\s*:/m

export async function listReaders(state: DeskState): Promise<readonly ReaderChoice[]> {
  const paths = (await state.files.list()).filter((path) => /\.ya?ml$/i.test(path))
  const found: ReaderChoice[] = []
  for (const path of paths) {
    const text = await state.files.text(path)
    if (!text?.ok || !LOOKS_LIKE_READER.test(text.value) || !/^name\s*:/m.test(text.value)) continue
    if (/^steps\s*:/m.test(text.value)) continue
    found.push(await toChoice(path, text.value, state))
  }
  return found
}

async function toChoice(path: string, text: string, state: DeskState): Promise<ReaderChoice> {
  const { configs } = folderOf(state)
  const chain = await configs.findFor(joinPath(toFolder(path), 'story.md'))
  const settings = { chain, storyPath: path, rules: [], defaultSequence: DEFAULT_SEQUENCE }
  const read = await readReader(path, resolveSettings(settings).sequence.value, state)
  const isGroup = /^members\s*:/m.test(text)
  const written = /^name\s*:\s*["']?(.*?)["']?\s*$/m.exec(text)?.[1] || path
  if (!read.ok) return { path, name: written, step: null, isGroup, problems: read.problems }
  return { path, name: read.value.reader.name, step: read.value.reader.step, isGroup, problems: [] }
}
