// What an accent is: sounds for the units of a word, and which of them are taught as one.

import type { RawUnit } from '../raw.ts'

export interface AccentRules {
  /** The IPA of each unit of a word. `word` and `stem` are lower case; `stem` is the word without its ending. */
  toSounds(units: readonly RawUnit[], word: string, stem: string): readonly string[]
  /** The sounds of a second way to say the word that is as common in the accent, where there is one. */
  toOtherSounds?(units: readonly RawUnit[], word: string, stem: string): readonly string[] | undefined
  /** The sound under which a unit is taught. */
  toTaught(units: readonly RawUnit[], at: number, sound: string): string
  /** Whether a short vowel and an r after it are two sounds, each with its letters. */
  readonly partsR: boolean
}
