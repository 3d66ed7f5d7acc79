// The compiled data of the word finder, opened: facts by the lexicon's places, what could stand for a word, and the words
// that are never proposed.

import { splitSections } from './bytes.ts'
import { openWordFacts, type WordFactTable } from './facts.ts'
import { type FirstSteps, openFirstSteps } from './first-steps.ts'
import { createFitness, type Fitness, type FitnessOptions } from './fitness.ts'
import { openStandIns, type StandIns } from './stand-ins.ts'

export interface WordData {
  readonly facts: WordFactTable
  /** What a teacher can put for a word in most sentences. */
  readonly standIns: StandIns
  /** When those can be read. */
  readonly firstSteps: FirstSteps
  /** What people and animals in a story can be called, the best known first. */
  readonly names: () => readonly string[]
  /** What may be proposed, with what a project adds and a school clears. */
  fitness(options?: FitnessOptions): Fitness
}

/**
 * @param bytes the file that scripts/build/words.ts makes. It belongs to one lexicon: the places are that lexicon's.
 * @param size how many words the lexicon holds, to tell a file that was made for another one.
 * @throws RangeError where the bytes end too early, or belong to a lexicon of another size.
 */
export function openWordData(bytes: Uint8Array, size?: number): WordData {
  const [facts, unfit, showing, standIns, kinds, names, steps] = splitSections(bytes, 7)
  if (!facts || !unfit || !showing || !standIns || !kinds || !names || !steps)
    throw new RangeError('the word data ends too early')
  const table = openWordFacts(facts, showing, kinds)
  if (size !== undefined && size !== table.size) {
    throw new RangeError(`the word data is of ${table.size} words, the lexicon of ${size}: build the package again`)
  }
  return {
    facts: table,
    standIns: openStandIns(standIns),
    firstSteps: openFirstSteps(steps),
    names: () => new TextDecoder().decode(names).split('\n'),
    fitness: (options) => createFitness(unfit, options),
  }
}
