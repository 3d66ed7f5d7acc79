// Compiles a sequence file for every accent; the build does so for the built-in ones.

import type { Accent, Phonics } from '../phonics/types.ts'
import type { Problem } from '../problem/index.ts'
import { type CompiledSequence, sequenceToJson } from './compiled.ts'
import { type LoadTools, loadSequence } from './load.ts'
import type { Sequence } from './types.ts'
import { ACCENTS } from './vocabulary.ts'

/** What loading needs, without an accent: all are compiled. */
export interface CompileTools {
  phonicsFor(accent: Accent): Phonics
  /** Of the file, as shown to people. */
  readonly path?: string
  resolve?(name: string, accent: Accent | undefined): string | Sequence | undefined
}

/** The compiled sequence, undefined where the file is too broken; problems are those of the file's own accent. */
export function compileSequence(
  yaml: string,
  tools: CompileTools,
): { readonly compiled: CompiledSequence | undefined; readonly problems: readonly Problem[] } {
  const load = (accent?: Accent) => loadSequence(yaml, { ...tools, accent, isForEveryAccent: true } satisfies LoadTools)
  const { sequence, problems } = load()
  if (sequence === undefined) return { compiled: undefined, problems }
  const others = ACCENTS.filter((accent) => accent !== sequence.accent).flatMap((accent) => load(accent).sequence ?? [])
  return { compiled: sequenceToJson(sequence, ...others), problems }
}
