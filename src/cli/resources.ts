// Engines, sequences and the tagger from the file system, each loaded when it is first asked for.

import {
  DATA_FOLDER,
  findBuiltInNearest,
  isBuiltIn,
  listBuiltIns,
  loadBuiltIn,
  loadLexicon,
  loadPhonics,
} from '../packaged/data.ts'
import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import { createSequenceFinder } from '../resources/sequences.ts'
import type { Resources, WordHelp } from '../resources/types.ts'
import { complainOf } from './command.ts'
import { createTextFiles } from './files/text-files.ts'
import type { Io } from './io.ts'

export function createResources(io: Io): Resources {
  let tagger: Promise<Tagger> | undefined
  let words: Promise<WordHelp> | undefined
  return {
    phonicsFor: loadPhonics,
    sequence: createSequenceFinder({
      files: createTextFiles(io),
      builtIns: { list: listBuiltIns, load: loadBuiltIn, findNearest: findBuiltInNearest },
      phonicsFor: loadPhonics,
      report: (problems) => complainOf(io, problems),
    }),
    wordHelp: () =>
      (words ??= Promise.all([import('../resources/word-help.ts'), import('../packaged/word-files.ts')]).then(
        ([{ openWordHelp }, { readWordFiles }]) =>
          openWordHelp({
            files: readWordFiles(DATA_FOLDER),
            lexicon: loadLexicon(),
            phonicsFor: loadPhonics,
            isBuiltIn,
          }),
      )),
    tagger: () => (tagger ??= import('../phonics/heteronyms/tagger.ts').then(({ loadTagger }) => loadTagger())),
  }
}
