// What a check needs, from the data and the folder: built-in sequences, and the maker's own by their paths in the folder.

import { createSequenceFinder } from '../../resources/sequences.ts'
import type { Resources } from '../../resources/types.ts'
import type { FolderFiles } from './folder-files.ts'
import type { Tools } from './tools.ts'

export const createResources = ({ phonicsFor, builtIns, tagger, words }: Tools, files: FolderFiles): Resources => ({
  phonicsFor,
  tagger,
  wordHelp: words,
  sequence: createSequenceFinder({ files, builtIns, phonicsFor }),
})

/** As the loader of sequences takes them. */
export const toLoadTools = ({ phonicsFor, builtIns }: Tools) => ({
  phonicsFor,
  resolve: builtIns.load,
  names: builtIns.list,
})
