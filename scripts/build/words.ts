// Builds the data of the word finder, one file: facts, thesaurus, the words that are never proposed, and what children say of
// things and pictures.

import { joinSections } from '../../src/words/bytes.ts'
import { createFitness } from '../../src/words/fitness.ts'
import { loadChildWords } from './children.ts'
import { buildCompany, buildStandIns } from './company.ts'
import { loadEveryday, readGrownUp } from './everyday.ts'
import { buildKinds, buildNames } from './kinds.ts'
import { openShowable } from './showable.ts'
import { buildShowing } from './showing.ts'
import { buildThesaurus } from './thesaurus.ts'
import { addDerived, buildUnfit, readUnfit } from './unfit.ts'
import { buildWordFacts, findFacts, type WordSources } from './word-facts.ts'
import { loadWordnet } from './wordnet.ts'

/** Opens WordNet and the word lists. About half a second. */
export function loadWordSources(wordnet = loadWordnet(), unfit = buildUnfit(readUnfit())): WordSources {
  return {
    wordnet,
    showable: openShowable(wordnet),
    children: loadChildWords(loadEveryday(), readGrownUp()),
    fitness: createFitness(unfit),
  }
}

/** @param words the lexicon's words in its own order, lower case. */
export function buildWords(words: readonly string[]): Uint8Array {
  const wordnet = loadWordnet()
  const unfit = buildUnfit(addDerived(readUnfit(), words, wordnet))
  const sources = loadWordSources(wordnet, unfit)
  const found = words.map((word) => ({ word, ...findFacts(word, sources) }))
  const facts = buildWordFacts(found.map(({ facts }) => facts))
  const thesaurus = buildThesaurus(found, wordnet)
  return joinSections([
    facts,
    thesaurus,
    unfit,
    buildShowing(),
    buildStandIns(),
    buildCompany(words),
    buildKinds(),
    buildNames(),
  ])
}
