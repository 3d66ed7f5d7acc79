// The compiled data of the word finder, opened: facts and thesaurus by the lexicon's places, and the words that are
// never proposed.

import { splitSections } from './bytes.ts'
import { type Company, openCompany } from './company.ts'
import { openWordFacts, type WordFactTable } from './facts.ts'
import { createFitness, type Fitness, type FitnessOptions } from './fitness.ts'
import { openStandIns, type StandIns } from './stand-ins.ts'
import { openThesaurus, type Thesaurus } from './thesaurus.ts'

export interface WordData {
  readonly facts: WordFactTable
  readonly thesaurus: Thesaurus
  /** What a teacher can put for a word in most sentences. */
  readonly standIns: StandIns
  /** What goes with which neighbours. */
  readonly company: Company
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
  const [facts, thesaurus, unfit, showing, standIns, company, kinds, names] = splitSections(bytes, 8)
  if (!facts || !thesaurus || !unfit || !showing || !standIns || !company || !kinds || !names)
    throw new RangeError('the word data ends too early')
  const table = openWordFacts(facts, showing, kinds)
  if (size !== undefined && size !== table.size) {
    throw new RangeError(`the word data is of ${table.size} words, the lexicon of ${size}: build the package again`)
  }
  return {
    facts: table,
    thesaurus: openThesaurus(thesaurus),
    standIns: openStandIns(new TextDecoder().decode(standIns)),
    company: openCompany(company),
    names: () => new TextDecoder().decode(names).split('\n'),
    fitness: (options) => createFitness(unfit, options),
  }
}
