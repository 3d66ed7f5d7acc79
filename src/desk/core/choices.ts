// What the bank can be asked for: the spellings taught up to the step of the story, its vowels, the kinds of words.

import { KINDS } from '../../finder/index.ts'
import { succeed } from '../../problem/index.ts'
import { toStepIndex } from '../../sequence/index.ts'
import { openPool } from './bank.ts'
import type { StoryText, Tried } from './questions/shared.ts'
import type { Choices, Pattern } from './questions/words.ts'
import type { DeskState } from './state.ts'
import { openStory, toPrepared } from './stories.ts'

export async function listChoices(story: StoryText, state: DeskState): Promise<Tried<Choices>> {
  const prepared = toPrepared(await openStory(story, state))
  if (!prepared.ok) return prepared
  const { sequence, step } = prepared.value
  const pool = await openPool(prepared.value, state)
  const vowelKeys = new Set<string>(pool.sounds.units.filter(({ vowel }) => vowel).map(({ key }) => key))
  const seen = new Set<string>()
  const taught = sequence.steps.slice(0, toStepIndex(sequence, step) + 1).flatMap(({ id, adds }) =>
    adds.correspondences.flatMap(({ letters, example, key }) => {
      if (seen.has(key) || !pool.knowledge.correspondences.has(key)) return []
      seen.add(key)
      const value = `${letters} as in ${example}`
      return [{ value, letters: letters.replace('_', '-'), example, step: id, key }]
    }),
  )
  const toPattern = ({ key: _, ...pattern }: (typeof taught)[number]): Pattern => pattern
  return succeed({
    patterns: taught.map(toPattern),
    vowels: taught.filter(({ key }) => vowelKeys.has(key)).map(toPattern),
    kinds: KINDS,
  })
}
