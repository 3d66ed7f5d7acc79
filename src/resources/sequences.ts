// Sequences by name or by path: the built-in ones, and a teacher's own, whose text comes from wherever the files lie.

import { isSequencePath, type TextFiles, toMissing } from '../files/index.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import { fail, isError, type Problem, type Result, succeed, toExpected } from '../problem/index.ts'
import type { Sequence } from '../sequence/types.ts'
import type { BuiltIns } from './built-ins.ts'
import type { Resources } from './types.ts'

export interface SequenceTools {
  readonly files: Pick<TextFiles, 'read' | 'show'>
  readonly builtIns: Pick<BuiltIns, 'list' | 'load' | 'findNearest'>
  phonicsFor(accent: Accent): Phonics
  /** Hears of what is only doubtful in a sequence that is used, once for each. */
  report?(problems: readonly Problem[]): void
}

/** Each file is read once; whoever sees it change makes a new finder. */
export function createSequenceFinder(tools: SequenceTools): Resources['sequence'] {
  const own = new Map<string, Promise<Result<Sequence>>>()
  return (name, accent) => {
    if (!isSequencePath(name)) return Promise.resolve(findBuiltIn(name, accent, tools))
    const key = `${name}\n${accent ?? ''}`
    const known = own.get(key) ?? loadOwn(name, accent, tools)
    own.set(key, known)
    return known
  }
}

function findBuiltIn(name: string, accent: Accent | undefined, { builtIns }: SequenceTools): Result<Sequence> {
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

/** All mistakes of the file; a sequence that has one is not used. */
async function loadOwn(name: string, accent: Accent | undefined, tools: SequenceTools): Promise<Result<Sequence>> {
  const { files, builtIns, phonicsFor, report } = tools
  const path = files.show(name)
  const file = await files.read(name)
  if (file === undefined) return fail(toMissing(path))
  if (!file.ok) return file
  const { loadSequence } = await import('../sequence/load.ts')
  const own = { phonicsFor, resolve: builtIns.load, names: builtIns.list, accent, path }
  const { sequence, problems } = loadSequence(file.value, own)
  if (sequence === undefined || problems.some(isError)) return { ok: false, problems }
  if (problems.length > 0) report?.(problems)
  return succeed(sequence)
}
