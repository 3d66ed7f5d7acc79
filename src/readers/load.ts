// Loads a reader from YAML: reads it, checks it, and says what is wrong where.

import * as v from 'valibot'
import { findNearest } from '../nearest.ts'
import type { Accent, CorrespondenceKey, Phonics } from '../phonics/types.ts'
import { resolveCorrespondence } from '../sequence/correspondence.ts'
import { findStep, knowledgeAt, toSightKey } from '../sequence/knowledge.ts'
import { type ReaderExtra, withReader } from '../sequence/reader.ts'
import { toSchemaProblem } from '../sequence/schema-problems.ts'
import { type Path, type Source, toSource } from '../sequence/source.ts'
import type { Knowledge, Sequence } from '../sequence/types.ts'
import { type ReaderFile, readerSchema, toReaderKeysAt } from './schema.ts'
import type { LoadedReader, ReaderProblem } from './types.ts'

/** What loading needs from outside; nothing here touches a file. */
export interface ReaderTools {
  phonicsFor(accent: Accent): Phonics
  /** A built-in name, or a path as the reader file writes it; else why it cannot be had. */
  sequence(name: string, accent: Accent | undefined): Promise<Sequence | { readonly problems: readonly string[] }>
  /** The sequence of a file that names none. */
  readonly defaultSequence: string
}

/** Never throws on what a person wrote. */
export async function loadReader(yaml: string, tools: ReaderTools): Promise<LoadedReader> {
  const source = toSource(yaml)
  const fail = (problems: readonly ReaderProblem[]): LoadedReader => ({ reader: undefined, problems })
  if (source.problems.length > 0) return fail(source.problems)
  if (typeof source.value !== 'object' || source.value === null || Array.isArray(source.value)) {
    return fail([source.problemAt([], 'Write a reader as `name: …` and `step: …`, each on its own line')])
  }
  const read = v.safeParse(readerSchema, source.value)
  if (!read.success) return fail(inOrder(read.issues.map((issue) => toSchemaProblem(issue, source, toReaderKeysAt))))
  const file = read.output
  const sequenceName = file.sequence ?? tools.defaultSequence
  const sequence = await tools.sequence(sequenceName, file.accent)
  if ('problems' in sequence) return fail(sequence.problems.map((problem) => source.problemAt(['sequence'], problem)))
  const step = findStep(sequence, file.step)
  if (step === undefined) return fail([toUnknownStep(file.step, sequence, source)])
  const taught = knowledgeAt(sequence, step.id)
  const { extra, problems } = readOwn(file, taught, tools.phonicsFor(sequence.accent), source)
  if (problems.length > 0) return fail(inOrder(problems))
  const reader = {
    name: file.name.trim(),
    sequence,
    sequenceName,
    step: step.id,
    extra,
    knowledge: withReader(taught, extra),
  }
  return { reader, problems: [] }
}

function toUnknownStep(written: string, sequence: Sequence, source: Source): ReaderProblem {
  const ids = sequence.steps.map(({ id }) => id)
  const suggestion = findNearest(written, ids)
  const hint = suggestion === undefined ? `. Its steps are ${ids.join(', ')}` : ''
  return source.problemAt(['step'], `The sequence \`${sequence.name}\` has no step \`${written}\`${hint}`, {
    suggestion,
  })
}

function readOwn(
  file: ReaderFile,
  taught: Knowledge,
  phonics: Phonics,
  source: Source,
): { readonly extra: ReaderExtra; readonly problems: readonly ReaderProblem[] } {
  const problems: ReaderProblem[] = []
  const readKeys = (part: 'knows' | 'not yet'): readonly CorrespondenceKey[] =>
    (file[part]?.correspondences ?? []).flatMap((written, at) => {
      const path: Path = [part, 'correspondences', at]
      const found = resolveCorrespondence(written, phonics)
      if ('problem' in found) {
        problems.push(source.problemAt(path, found.problem, { suggestion: found.suggestion }))
        return []
      }
      const keys = found.taught.map(({ key }) => key)
      if (part === 'not yet' && !keys.some((key) => taught.correspondences.has(key))) {
        problems.push(
          source.problemAt(
            path,
            `Step \`${file.step}\` does not teach \`${written}\`, so there is nothing to take away`,
          ),
        )
      }
      return keys
    })
  const notYet = file['not yet']?.['sight words'] ?? []
  for (const [at, word] of notYet.entries()) {
    if (taught.sightWords.has(toSightKey(word))) continue
    const message = `\`${word}\` is no sight word at step \`${file.step}\`, so there is nothing to take away`
    problems.push(source.problemAt(['not yet', 'sight words', at], message))
  }
  const extra: ReaderExtra = {
    sightWords: file.knows?.['sight words'] ?? [],
    sightWordsNotYet: notYet,
    correspondences: readKeys('knows'),
    correspondencesNotYet: readKeys('not yet'),
  }
  return { extra, problems }
}

function inOrder(problems: readonly ReaderProblem[]): readonly ReaderProblem[] {
  return [...problems].sort((one, other) => one.line - other.line || one.column - other.column)
}
