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
import { fail, isError, type Result, succeed, toExpected } from '../problem/index.ts'
import type { Resources, WordHelp } from '../resources/types.ts'
import type { Sequence } from '../sequence/types.ts'
import { complainOf } from './command.ts'
import { readTextFile } from './files/read.ts'
import { toShown } from './files/shown.ts'
import type { Io } from './io.ts'

/** A name with a slash or a YAML ending is a path; anything else is the name of a built-in sequence. */
export const isSequencePath = (name: string): boolean => /[/\\]|\.(ya?ml|json)$/i.test(name)

export function createResources(io: Io): Resources {
  const own = new Map<string, Promise<Result<Sequence>>>()
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

function findBuiltIn(name: string, accent: Accent | undefined): Result<Sequence> {
  const found = loadBuiltIn(name, accent)
  if (found) return succeed(found)
  const nearest = findBuiltInNearest(name)
  return fail({
    code: 'unknown-name',
    message: `There is no sequence \`${name}\``,
    expected: toExpected(nearest),
    ...(nearest === undefined && { note: `There are ${listBuiltIns().join(', ')}; a path ends in .yaml.` }),
  })
}

/** All mistakes of the file; a sequence that has one is not used. What is only doubtful is told, and used. */
async function loadOwn(name: string, accent: Accent | undefined, io: Io): Promise<Result<Sequence>> {
  const path = toShown(name, io)
  const file = readTextFile(resolve(io.cwd, name), io, path)
  if (!file.ok) return file
  const { loadSequence } = await import('../sequence/load.ts')
  const tools = { phonicsFor: loadPhonics, resolve: loadBuiltIn, names: listBuiltIns, accent, path }
  const { sequence, problems } = loadSequence(file.value, tools)
  if (sequence === undefined || problems.some(isError)) return { ok: false, problems }
  complainOf(io, problems)
  return succeed(sequence)
}
