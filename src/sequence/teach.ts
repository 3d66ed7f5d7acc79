// Reads the `teach:` lines of a step, and reports what is taught twice.

import type { CorrespondenceKey, Phonics } from '../phonics/types.ts'
import type { Found, Problem } from '../problem/index.ts'
import { resolveCorrespondence } from './correspondence.ts'
import { toSightKey } from './knowledge.ts'
import { findOtherAccent } from './other-accent.ts'
import type { Path, Source } from './source.ts'
import type { StepAdds, TaughtCorrespondence } from './types.ts'
import { ACCENT_NAMES } from './vocabulary.ts'

interface Twin {
  readonly step: string
  readonly line: string
}

/** What has been taught so far, and where: kept while the steps are built in order. */
export interface TaughtSoFar {
  readonly correspondences: Map<CorrespondenceKey, Twin>
  readonly sightWords: Map<string, string>
  readonly endings: Map<string, string>
  readonly contractions: Map<string, string>
}

export function toTaughtSoFar(): TaughtSoFar {
  return { correspondences: new Map(), sightWords: new Map(), endings: new Map(), contractions: new Map() }
}

export interface TeachTools {
  readonly source: Source
  readonly phonics: Phonics
  /** The other accents, in which two lines may differ that are one in this accent. */
  others(): readonly Phonics[]
  readonly isOwnAccent: boolean
  /** The accent was named, in the file or by who asks. */
  readonly isAccentChosen: boolean
  /** The file is written for every accent. */
  readonly isForEveryAccent: boolean
  readonly soFar: TaughtSoFar
}

/**
 * What the lines teach that is new. In an accent other than the file's own, lines that cannot be read there are left
 * out without a word.
 */
export function readTeach(
  lines: readonly string[],
  step: string,
  path: Path,
  { source, phonics, others, isOwnAccent, isAccentChosen, isForEveryAccent, soFar }: TeachTools,
): { readonly taught: readonly TaughtCorrespondence[]; readonly problems: readonly Problem[] } {
  const taught: TaughtCorrespondence[] = []
  const problems: Problem[] = []
  for (const [at, line] of lines.entries()) {
    const report = (found: Found) => {
      if (isOwnAccent) problems.push(source.problemAt([...path, 'teach', at], found))
    }
    const resolved = resolveCorrespondence(line, phonics)
    if ('problem' in resolved) {
      report(resolved.problem)
      continue
    }
    const doubt = isOwnAccent ? findOtherAccent(resolved.taught, phonics, others(), isAccentChosen) : undefined
    if (doubt !== undefined) report(doubt)
    const fresh = resolved.taught.filter(({ key }) => !soFar.correspondences.has(key))
    const twin = fresh.length === 0 ? soFar.correspondences.get(resolved.taught[0]?.key ?? '=') : undefined
    const repeated = twin && toRepeated(line, twin, phonics, others())
    // One doubt of a line is enough.
    const isSilent = repeated?.severity === 'warning' && (isForEveryAccent || !isAccentChosen || doubt !== undefined)
    if (repeated !== undefined && !isSilent) report(repeated)
    for (const one of fresh) soFar.correspondences.set(one.key, { step, line })
    taught.push(...fresh)
  }
  return { taught, problems }
}

/** In one accent two lines may say one sound, which is no mistake in a file for both; but nothing is added by the second. */
function toRepeated(line: string, twin: Twin, { accent }: Phonics, others: readonly Phonics[]): Found {
  const isForBoth = others.some((other) => isOtherwiseIn(other, line, twin.line))
  if (!isForBoth) return { code: 'repeated', message: `\`${line}\` is taught already, at step \`${twin.step}\`` }
  const message = `In ${ACCENT_NAMES[accent]} \`${line}\` has the sound of \`${twin.line}\`, taught already at step \`${twin.step}\``
  return { code: 'repeated', severity: 'warning', message, note: 'This line adds nothing.' }
}

// `er as in fern` and `er as in sister` say one sound in America and two in Britain: a file for both may hold both.
function isOtherwiseIn(phonics: Phonics, line: string, twin: string): boolean {
  const [here, there] = [line, twin].map((written) => {
    const resolved = resolveCorrespondence(written, phonics)
    return 'taught' in resolved ? resolved.taught.map(({ key }) => key).join() : undefined
  })
  return here !== undefined && there !== undefined && here !== there
}

/** Words and endings that an earlier step teaches too. */
export function findRepeats(adds: StepAdds, step: string, path: Path, source: Source, soFar: TaughtSoFar): Problem[] {
  const problems: Problem[] = []
  const look = (items: readonly string[], before: Map<string, string>, key: string) => {
    for (const [at, item] of items.entries()) {
      const earlier = before.get(item)
      if (earlier === undefined) before.set(item, step)
      else {
        const message = `\`${item}\` is taught already, at step \`${earlier}\``
        problems.push(source.problemAt([...path, key, at], { code: 'repeated', message }))
      }
    }
  }
  look(adds.sightWords.map(toSightKey), soFar.sightWords, 'sight words')
  look(adds.endings, soFar.endings, 'endings')
  if (adds.contractions !== 'any') look(adds.contractions.map(toSightKey), soFar.contractions, 'contractions')
  return problems
}

/** Remembers what a step of the extended sequence teaches. */
export function remember(adds: StepAdds, step: string, soFar: TaughtSoFar): void {
  for (const { key, letters, example } of adds.correspondences) {
    soFar.correspondences.set(key, { step, line: `${letters} as in ${example}` })
  }
  for (const word of adds.sightWords) soFar.sightWords.set(toSightKey(word), step)
  for (const ending of adds.endings) soFar.endings.set(ending, step)
  if (adds.contractions !== 'any') for (const word of adds.contractions) soFar.contractions.set(toSightKey(word), step)
}
