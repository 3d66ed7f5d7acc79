// Engines, sequences and the tagger from the file system, each loaded when it is first asked for.

import { resolve } from 'node:path'
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
import type { Accent } from '../phonics/types.ts'
import type { MissingSequence, Resources, WordHelp } from '../resources/types.ts'
import type { Sequence } from '../sequence/types.ts'
import { readTextFile } from './files/read.ts'
import type { Io } from './io.ts'

/** A name with a slash or a YAML ending is a path; anything else is the name of a built-in sequence. */
export const isSequencePath = (name: string): boolean => /[/\\]|\.(ya?ml|json)$/i.test(name)

export function createResources(io: Io): Resources {
  const own = new Map<string, Promise<Sequence | MissingSequence>>()
  let tagger: Promise<Tagger> | undefined
  let words: Promise<WordHelp> | undefined
  return {
    phonicsFor: loadPhonics,
    sequence(name, accent) {
      if (!isSequencePath(name)) return Promise.resolve(findBuiltIn(name, accent))
      const key = `${name}\n${accent ?? ''}`
      let found = own.get(key)
      if (!found) own.set(key, (found = loadOwn(name, accent, io)))
      return found
    },
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

function findBuiltIn(name: string, accent: Accent | undefined): Sequence | MissingSequence {
  const found = loadBuiltIn(name, accent)
  if (found) return found
  const nearest = findBuiltInNearest(name)
  const hint = nearest
    ? `Did you mean \`${nearest}\`?`
    : `There are ${listBuiltIns().join(', ')}; a path ends in .yaml.`
  return { problems: [`There is no sequence \`${name}\`. ${hint}`] }
}

/** Every mistake of the file with its line and column; errors only, since what is merely odd can still be used. */
async function loadOwn(path: string, accent: Accent | undefined, io: Io): Promise<Sequence | MissingSequence> {
  const file = readTextFile(resolve(io.cwd, path), io, path)
  if (!file.ok) return { problems: [file.message] }
  const { loadSequence } = await import('../sequence/load.ts')
  const tools = { phonicsFor: loadPhonics, resolve: loadBuiltIn, names: listBuiltIns, accent }
  const { sequence, problems } = loadSequence(file.text, tools)
  if (sequence && problems.length === 0) return sequence
  return { problems: problems.map((problem) => toSequenceProblemLine(path, problem)) }
}

export function toSequenceProblemLine(
  path: string,
  problem: { line: number; column: number; message: string; suggestion?: string },
): string {
  const hint = problem.suggestion === undefined ? '' : ` Did you mean \`${problem.suggestion}\`?`
  const end = /[.?!]$/.test(problem.message) ? '' : '.'
  return `${path}:${problem.line}:${problem.column}: ${problem.message}${end}${hint}`
}
