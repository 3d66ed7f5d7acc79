// Reads the `teach:` lines of a step, and reports what is taught twice.

import type { CorrespondenceKey, Phonics } from '../phonics/types.ts'
import { resolveCorrespondence } from './correspondence.ts'
import { toSightKey } from './knowledge.ts'
import type { Path, SequenceProblem, Source } from './source.ts'
import type { StepAdds, TaughtCorrespondence } from './types.ts'

/** What has been taught so far, and at which step: kept while the steps are built in order. */
export interface TaughtSoFar {
  readonly correspondences: Map<CorrespondenceKey, string>
  readonly sightWords: Map<string, string>
  readonly endings: Map<string, string>
}

export function toTaughtSoFar(): TaughtSoFar {
  return { correspondences: new Map(), sightWords: new Map(), endings: new Map() }
}

/** What the lines teach that is new. In an accent other than the file's own, lines that cannot be read there are left out. */
export function readTeach(
  lines: readonly string[],
  step: string,
  path: Path,
  tools: { readonly source: Source; readonly phonics: Phonics; readonly isOwnAccent: boolean; readonly soFar: TaughtSoFar },
): { readonly taught: readonly TaughtCorrespondence[]; readonly problems: readonly SequenceProblem[] } {
  const { source, phonics, isOwnAccent, soFar } = tools
  const taught: TaughtCorrespondence[] = []
  const problems: SequenceProblem[] = []
  for (const [at, line] of lines.entries()) {
    const report = (message: string, suggestion?: string) => {
      if (isOwnAccent) problems.push(source.problemAt([...path, 'teach', at], message, { suggestion }))
    }
    const resolved = resolveCorrespondence(line, phonics)
    if ('problem' in resolved) {
      report(resolved.problem, resolved.suggestion)
      continue
    }
    const fresh = resolved.taught.filter(({ key }) => !soFar.correspondences.has(key))
    const twin = resolved.taught[0]
    if (fresh.length === 0 && twin !== undefined) {
      report(`\`${line}\` is taught already, at step \`${soFar.correspondences.get(twin.key)}\``)
    }
    for (const one of fresh) soFar.correspondences.set(one.key, step)
    taught.push(...fresh)
  }
  return { taught, problems }
}

/** Words and endings that an earlier step teaches too. */
export function findRepeats(adds: StepAdds, step: string, path: Path, source: Source, soFar: TaughtSoFar): SequenceProblem[] {
  const problems: SequenceProblem[] = []
  const look = (items: readonly string[], before: Map<string, string>, key: string) => {
    for (const [at, item] of items.entries()) {
      const earlier = before.get(item)
      if (earlier === undefined) before.set(item, step)
      else problems.push(source.problemAt([...path, key, at], `\`${item}\` is taught already, at step \`${earlier}\``))
    }
  }
  look(adds.sightWords.map(toSightKey), soFar.sightWords, 'sight words')
  look(adds.endings, soFar.endings, 'endings')
  return problems
}

/** Remembers what a step of the extended sequence teaches. */
export function remember(adds: StepAdds, step: string, soFar: TaughtSoFar): void {
  for (const { key } of adds.correspondences) soFar.correspondences.set(key, step)
  for (const word of adds.sightWords) soFar.sightWords.set(toSightKey(word), step)
  for (const ending of adds.endings) soFar.endings.set(ending, step)
}
