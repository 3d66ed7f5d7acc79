// From decisions to the new text: words are replaced where they stand, names go into the front matter. All else stays,
// byte for byte.

import { readStory } from '../story/index.ts'
import { addToList, type Edit } from './edits.ts'
import type { Finding } from './findings.ts'

export type Decision =
  | { readonly kind: 'replace'; readonly finding: Finding; readonly word: string }
  | { readonly kind: 'name'; readonly name: string }

export interface Decided {
  readonly text: string
  /** Names that could not be listed, since the front matter cannot be read. */
  readonly unlisted: readonly string[]
}

export async function applyDecisions(source: string, decisions: readonly Decision[]): Promise<Decided> {
  const edits = decisions.flatMap((decision): Edit[] =>
    decision.kind === 'replace'
      ? [{ start: decision.finding.start, end: decision.finding.end, text: decision.word }]
      : [],
  )
  let text = applyEdits(source, edits)
  const unlisted: string[] = []
  const names = new Set(decisions.flatMap((decision) => (decision.kind === 'name' ? [decision.name] : [])))
  for (const name of names) {
    const edit = await addToList({ source: text, frontMatter: readStory(text).frontMatter }, 'names', name)
    if (edit) text = applyEdits(text, [edit])
    else unlisted.push(name)
  }
  return { text, unlisted }
}

/** @param edits in any order; none may overlap another */
export function applyEdits(source: string, edits: readonly Edit[]): string {
  let text = ''
  let at = 0
  for (const { start, end, text: added } of [...edits].sort((left, right) => left.start - right.start)) {
    if (start < at) throw new RangeError('two changes overlap')
    text += source.slice(at, start) + added
    at = end
  }
  return text + source.slice(at)
}

/** The first suggestion for every word that has one. */
export const decideByFirst = (findings: readonly Finding[]): readonly Decision[] =>
  findings.flatMap((finding): Decision[] => {
    const [word] = finding.suggestions
    return word === undefined ? [] : [{ kind: 'replace', finding, word }]
  })
