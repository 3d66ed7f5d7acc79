// What a check needs, from the data and the folder: built-in sequences, and the maker's own by their paths in the folder.

import { isPathLike } from '../../config/paths.ts'
import type { Accent } from '../../phonics/types.ts'
import { fail, isError, type Result, succeed, toExpected } from '../../problem/index.ts'
import type { Resources } from '../../resources/types.ts'
import type { Sequence } from '../../sequence/types.ts'
import type { FolderFiles } from './folder-files.ts'
import type { Tools } from './tools.ts'

export function createResources(tools: Tools, files: FolderFiles): Resources {
  const own = new Map<string, Promise<Result<Sequence>>>()
  return {
    phonicsFor: tools.phonicsFor,
    tagger: tools.tagger,
    wordHelp: tools.words,
    sequence(name, accent) {
      if (!isPathLike(name)) return Promise.resolve(findBuiltIn(name, accent, tools))
      const key = `${name}\n${accent ?? ''}`
      const found = own.get(key) ?? loadOwn(name, accent, { tools, files })
      own.set(key, found)
      return found
    },
  }
}

function findBuiltIn(name: string, accent: Accent | undefined, { builtIns }: Tools): Result<Sequence> {
  const found = builtIns.load(name, accent)
  if (found) return succeed(found)
  const nearest = builtIns.findNearest(name)
  return fail({
    code: 'unknown-name',
    message: `There is no sequence \`${name}\``,
    expected: toExpected(nearest),
    ...(nearest === undefined && { note: `There are ${builtIns.list().join(', ')}; a path ends in .yaml.` }),
  })
}

async function loadOwn(
  path: string,
  accent: Accent | undefined,
  { tools, files }: { readonly tools: Tools; readonly files: FolderFiles },
): Promise<Result<Sequence>> {
  const text = await files.text(path)
  if (text === undefined) return fail({ code: 'missing-file', message: `There is no file ${path}`, path })
  if (!text.ok) return text
  const { loadSequence } = await import('../../sequence/load.ts')
  const loaded = loadSequence(text.value, { ...toLoadTools(tools), accent, path })
  const { sequence, problems } = loaded
  return sequence === undefined || problems.some(isError) ? { ok: false, problems } : succeed(sequence)
}

/** As the loader of sequences takes them. */
export const toLoadTools = ({ phonicsFor, builtIns }: Tools) => ({
  phonicsFor,
  resolve: builtIns.load,
  names: builtIns.list,
})
