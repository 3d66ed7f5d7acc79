// Sequences of the folder: files that look like one, found by their lines.

import type { Choice } from './questions/about.ts'
import { type DeskState, toolsOf } from './state.ts'

/** A list of steps, or what another sequence is built on with a name. Configs have neither. */
const isSequence = (text: string): boolean => /^steps\s*:/m.test(text)

/** The title that the file gives, or its name, read without opening it: one with mistakes is listed too. */
function toTitle(text: string, path: string): string {
  const written = (key: string) => new RegExp(`^${key}\\s*:\\s*(?:"(.*?)"|'(.*?)'|(.*?))\\s*$`, 'm').exec(text)
  const [, ...found] = written('title') ?? written('name') ?? []
  return found.find((one) => one) ?? path
}

/** Built-in ones by name, then those of the folder by path. */
export async function listSequences(state: DeskState): Promise<readonly Choice[]> {
  const { builtIns } = toolsOf(state)
  const inside = builtIns.list().map((name) => ({ value: name, title: builtIns.load(name)?.title ?? name }))
  const own: Choice[] = []
  for (const path of await state.files.all()) {
    const text = /\.ya?ml$/i.test(path) ? await state.files.read(path) : undefined
    if (text?.ok && isSequence(text.value)) own.push({ value: path, title: toTitle(text.value, path), path })
  }
  return [...inside, ...own]
}
