// How letters are named whose sound is taught later or nowhere: by their own example, or by what the child knows of them or of the sound.

import type { Unit } from '../phonics/types.ts'
import { findExample, findSoundExample } from '../sequence/taught.ts'
import type { Reason } from '../verdict/types.ts'
import { toSeen } from './seen.ts'
import type { StoryContext } from './types.ts'
import { toAsIn, toQuoted } from './wording.ts'

export type Taught = Pick<StoryContext, 'sequence' | 'knowledge'>

/** What stands behind `egg has` or `it has`: `gg` that sounds like the `g` in `dig`. */
export function toUntaughtText(word: string, unit: Unit, reason: Reason | undefined, taught: Taught): string {
  const { sequence, knowledge } = taught
  const { key, letters, stand } = toSeen(word, unit, reason)
  const quoted = toQuoted(letters)
  const shown = unit.shown === word.toLowerCase() ? undefined : unit.shown
  const example = findExample(sequence, key, word) ?? shown
  if (example !== undefined) {
    if (stand === 'changed') return `${toQuoted(unit.letters)} for the ${quoted} in ${toQuoted(example)}`
    if (stand === 'dropped') return `${quoted} as in ${toQuoted(example)} without its \`e\``
    return stand === 'silent' ? `a silent ${quoted}, as in ${toQuoted(example)}` : `${quoted}${toAsIn(example)}`
  }
  // Where the word itself is the example that the sequence gives, another spelling of the sound says it better.
  const sound = findSoundExample(sequence, key, word)
  if (sound !== undefined && (letters.length === 1 || knowledge.correspondences.has(sound.key)))
    return `${quoted} that sounds like the ${toQuoted(sound.letters)} in ${toQuoted(sound.example)}`
  const known = findKnownExample(taught, letters, word)
  return known === undefined ? quoted : `${quoted} with another sound than in ${toQuoted(known)}`
}

/** A word by which the child learnt the same letters with another sound: `snow` for the `ow` of `cow`. */
function findKnownExample({ knowledge, sequence }: Taught, letters: string, word: string): string | undefined {
  const start = `${letters.toLowerCase()}=`
  const keys = [...knowledge.correspondences].filter((key) => key.startsWith(start))
  return keys.map((key) => findExample(sequence, key, word)).find((example) => example !== undefined)
}
