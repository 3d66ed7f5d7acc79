// Loads a reader from YAML: reads it, checks it, and says what is wrong where.

import type { Accent, CorrespondenceKey, Phonics } from '../phonics/types.ts'
import { inOrder, type Problem, type Result, succeed, withOrigin } from '../problem/index.ts'
import { resolveCorrespondence } from '../sequence/correspondence.ts'
import { findStep, knowledgeAt, toSightKey } from '../sequence/knowledge.ts'
import { type ReaderExtra, withReader } from '../sequence/reader.ts'
import { parseBy } from '../sequence/schema-problems.ts'
import { type Path, type Source, toSource } from '../sequence/source.ts'
import type { Knowledge, Sequence } from '../sequence/types.ts'
import { toStepUnknown } from '../sequence/unknown-step.ts'
import { type ReaderFile, readerSchema } from './schema.ts'
import type { Reader } from './types.ts'

/** What loading needs from outside; nothing here touches a file. */
export interface ReaderTools {
  phonicsFor(accent: Accent): Phonics
  /** A built-in name, or a path as the reader file writes it; else why it cannot be had. */
  sequence(name: string, accent: Accent | undefined): Promise<Result<Sequence>>
  /** The sequence of a file that names none. */
  readonly defaultSequence: string
  /** Of the file, as shown to people. */
  readonly path?: string
}

/** Never throws on what a person wrote. Problems are in order of place. */
export async function loadReader(yaml: string, tools: ReaderTools): Promise<Result<Reader>> {
  const source = toSource(yaml, tools.path)
  const stop = (...problems: readonly Problem[]): Result<Reader> => ({ ok: false, problems: inOrder(problems) })
  if (source.problems.length > 0) return stop(...source.problems)
  if (typeof source.value !== 'object' || source.value === null || Array.isArray(source.value)) {
    const message = 'Write a reader as `name: …` and `step: …`, each on its own line'
    return stop(source.problemAt([], { code: 'bad-value', message }))
  }
  const { value: file, problems } = parseBy(readerSchema, source)
  if (file === undefined || problems.length > 0) return stop(...problems)
  const sequenceName = file.sequence ?? tools.defaultSequence
  const asked = await tools.sequence(sequenceName, file.accent)
  if (!asked.ok) return stop(...asked.problems.map((problem) => toHere(problem, source)))
  const sequence = asked.value
  const step = findStep(sequence, file.step)
  if (step === undefined) return stop(source.problemAt(['step'], toStepUnknown(file.step, sequence)))
  const taught = knowledgeAt(sequence, step.id)
  const own = readOwn(file, taught, tools.phonicsFor(sequence.accent), source)
  if (own.problems.length > 0) return stop(...own.problems)
  const { extra } = own
  const knowledge = withReader(taught, extra)
  return succeed({ name: file.name.trim(), sequence, sequenceName, step: step.id, extra, knowledge })
}

/** A mistake of the sequence stands in its own file; without a place there, where this file names it. */
function toHere(problem: Problem, source: Source): Problem {
  const { path, place } = source.problemAt(['sequence'], problem)
  return withOrigin(problem, { origin: 'the reader', ...(path !== undefined && { path }), ...(place && { at: place }) })
}

function readOwn(
  file: ReaderFile,
  taught: Knowledge,
  phonics: Phonics,
  source: Source,
): { readonly extra: ReaderExtra; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const readKeys = (part: 'knows' | 'not yet'): readonly CorrespondenceKey[] =>
    (file[part]?.correspondences ?? []).flatMap((written, at) => {
      const path: Path = [part, 'correspondences', at]
      const found = resolveCorrespondence(written, phonics)
      if ('problem' in found) {
        problems.push(source.problemAt(path, found.problem))
        return []
      }
      const keys = found.taught.map(({ key }) => key)
      if (part === 'not yet' && !keys.some((key) => taught.correspondences.has(key))) {
        const message = `Step \`${file.step}\` does not teach \`${written}\`, so there is nothing to take away`
        problems.push(source.problemAt(path, { code: 'bad-value', message }))
      }
      return keys
    })
  const notYet = file['not yet']?.['sight words'] ?? []
  for (const [at, word] of notYet.entries()) {
    if (taught.sightWords.has(toSightKey(word))) continue
    const message = `\`${word}\` is no sight word at step \`${file.step}\`, so there is nothing to take away`
    problems.push(source.problemAt(['not yet', 'sight words', at], { code: 'bad-value', message }))
  }
  const extra: ReaderExtra = {
    sightWords: file.knows?.['sight words'] ?? [],
    sightWordsNotYet: notYet,
    correspondences: readKeys('knows'),
    correspondencesNotYet: readKeys('not yet'),
  }
  return { extra, problems }
}
