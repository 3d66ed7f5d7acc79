// "Teach it": what an own sequence would have to teach at the step of the story, so that the word can be read.

import { isSequencePath } from '../../files/index.ts'
import { knowledgeAt } from '../../sequence/index.ts'
import { withReader } from '../../sequence/reader.ts'
import { findExample } from '../../sequence/taught.ts'
import { judge } from '../../verdict/index.ts'
import type { Reason } from '../../verdict/types.ts'
import { toChange } from './changes.ts'
import type { FoundPlace } from './places.ts'
import type { Fix } from './questions/cards.ts'
import { toLoadTools } from './resources.ts'
import { type DeskState, toolsOf } from './state.ts'

/** At most one: the sounds that are missing, else the word itself. None for a built-in sequence. */
export async function findTeaching(place: FoundPlace, state: DeskState): Promise<readonly Fix[]> {
  const { prepared, message, found } = place
  const path = prepared.settings.sequence.value
  if (!isSequencePath(path) || found?.word.form !== 'word' || message.reason === undefined) return []
  const { verdict } = prepared.context.judge(found.word, found.sentence)
  if (verdict.readable || verdict.reasons.some(({ code }) => IS_NO_WORD.has(code))) return []
  const text = await state.files.read(path)
  if (!text?.ok) return []
  const word = found.word.text.toLowerCase()
  const sounds = toSounds(verdict.reasons, word, prepared.sequence)
  for (const what of [sounds, [word]]) {
    const change =
      what.length === 0 ? undefined : await tryTeaching(what, word, { place, yaml: text.value, path }, state)
    if (change) return [{ kind: 'teach', what: what.join(', '), step: prepared.step, change }]
  }
  return []
}

/** Nobody teaches a slip of the keys, or a name, to a class. */
const IS_NO_WORD: ReadonlySet<string> = new Set(['misspelt', 'unknown-word', 'unsure'])

/** As a teacher writes them; none where something else is missing too. */
function toSounds(
  reasons: readonly Reason[],
  word: string,
  sequence: FoundPlace['prepared']['sequence'],
): readonly string[] {
  const lines = reasons.map(({ code, unit }) => {
    if (!code.startsWith('correspondence') || unit === undefined) return undefined
    const letters = unit.key.slice(0, unit.key.indexOf('='))
    return `${letters} as in ${findExample(sequence, unit.key, word) ?? unit.shown ?? word}`
  })
  return lines.includes(undefined) ? [] : [...new Set(lines as string[])]
}

interface Try {
  readonly place: FoundPlace
  readonly yaml: string
  readonly path: string
}

/** The change of the sequence file, where the word can be read with it. */
async function tryTeaching(what: readonly string[], word: string, { place, yaml, path }: Try, state: DeskState) {
  const { sequence, step, reader } = place.prepared
  const { addToSequence } = await import('../../sequence/add.ts')
  const tools = toolsOf(state)
  const added = addToSequence(
    yaml,
    what,
    { ...toLoadTools(tools), accent: place.prepared.settings.accent.value, path },
    step,
  )
  if (!added.ok) return undefined
  const known = knowledgeAt(added.value.sequence, step)
  const knowledge = reader === undefined ? known : withReader(known, reader)
  const { readable } = judge(tools.phonicsFor(sequence.accent).read(word), knowledge)
  return readable ? toChange(path, yaml, added.value.text) : undefined
}
