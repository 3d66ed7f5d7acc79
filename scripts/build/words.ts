// Builds the data of the word finder, one file: facts, what could stand for a word, the words that are never proposed, and what children say of
// things and pictures.

import { joinSections } from '../../src/words/bytes.ts'
import { createFitness } from '../../src/words/fitness.ts'
import { openWordData, type WordData } from '../../src/words/word-data.ts'
import { loadChildWords } from './children.ts'
import { loadEveryday, readGrownUp } from './everyday.ts'
import { buildKinds, buildNames } from './kinds.ts'
import { openShowable } from './showable.ts'
import { buildShowing } from './showing.ts'
import { buildStandIns } from './stand-ins.ts'
import { addDerived, buildUnfit, readUnfit } from './unfit.ts'
import { buildWordFacts, findFacts, type WordSources } from './word-facts.ts'
import { loadWordnet } from './wordnet.ts'

const NONE = new Uint8Array()
const NO_STEPS = joinSections([NONE, NONE, NONE, NONE, NONE])

/** Opens WordNet and the word lists. About half a second. */
export function loadWordSources(wordnet = loadWordnet(), unfit = buildUnfit(readUnfit())): WordSources {
  return {
    wordnet,
    showable: openShowable(wordnet),
    children: loadChildWords(loadEveryday(), readGrownUp()),
    fitness: createFitness(unfit),
  }
}

/**
 * @param words the lexicon's words in its own order, lower case.
 * @param toFirstSteps tells from which step a word is readable; without it each word is judged when it is asked for
 */
export function buildWords(words: readonly string[], toFirstSteps = (_: WordData): Uint8Array => NO_STEPS): Uint8Array {
  const wordnet = loadWordnet()
  const unfit = buildUnfit(addDerived(readUnfit(), words, wordnet))
  const sources = loadWordSources(wordnet, unfit)
  const facts = buildWordFacts(words.map((word) => findFacts(word, sources)))
  const sections = [facts, unfit, buildShowing(), buildStandIns(), buildKinds(), buildNames()]
  return joinSections([...sections, toFirstSteps(openWordData(joinSections([...sections, NO_STEPS])))])
}
