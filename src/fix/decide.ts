// From decisions to the new text: words are replaced where they stand, names and words known by heart go into the front
// matter, a kept word gets a switch with its reason. All else stays, byte for byte.

import { readStory } from '../story/index.ts'
import type { Edit } from './edit.ts'
import type { Finding } from './findings.ts'
import { addToList } from './head-list.ts'
import { putIn, takeOut } from './put-in.ts'
import { switchOff } from './switch-off.ts'

export type Decision =
  | { readonly kind: 'replace'; readonly finding: Finding; readonly word: string }
  | { readonly kind: 'out'; readonly finding: Finding }
  | { readonly kind: 'keep'; readonly finding: Finding; readonly reason: string }
  | { readonly kind: 'name' | 'heart'; readonly word: string }

export interface Decided {
  readonly text: string
  /** Words that could not be listed, since the front matter cannot be read, and under which key. */
  readonly unlisted: readonly { readonly word: string; readonly key: ListKey }[]
}

type ListKey = 'names' | 'sight words'
const KEYS = { name: 'names', heart: 'sight words' } as const

export async function applyDecisions(source: string, decisions: readonly Decision[]): Promise<Decided> {
  const edits = joinNeighbours(decisions).flatMap((decision): readonly Edit[] => toEdits(decision, source))
  let text = applyEdits(source, edits)
  const unlisted: { word: string; key: ListKey }[] = []
  const listed = new Set<string>()
  for (const decision of decisions) {
    if (decision.kind !== 'name' && decision.kind !== 'heart') continue
    const key = KEYS[decision.kind]
    const name = `${key} ${decision.word}`
    if (listed.has(name)) continue
    listed.add(name)
    const edit = await addToList({ source: text, frontMatter: readStory(text).frontMatter }, key, decision.word)
    if (edit) text = applyEdits(text, [edit])
    else unlisted.push({ word: decision.word, key })
  }
  return { text, unlisted }
}

type Placed = Extract<Decision, { kind: 'replace' | 'out' }>

const isPlaced = (decision: Decision): decision is Placed => decision.kind === 'replace' || decision.kind === 'out'

/** A word that goes out and the word behind it, which changes too, are one place: its capital and its article go on to the second. */
function joinNeighbours(decisions: readonly Decision[]): readonly Decision[] {
  const placed = decisions.filter(isPlaced).sort((one, other) => one.finding.start - other.finding.start)
  const joined: Placed[] = []
  for (const decision of placed) {
    const before = joined.at(-1)
    const [left, right] = [before?.finding.slot, decision.finding.slot]
    const isNext = before?.kind === 'out' && left !== undefined && left.next?.start === right?.start
    if (!isNext || right === undefined) {
      joined.push(decision)
      continue
    }
    const slot = { ...right, start: left.start, article: left.article, word: left.word }
    const finding = { ...decision.finding, start: left.start, slot }
    joined[joined.length - 1] =
      decision.kind === 'out'
        ? { kind: 'out', finding }
        : { kind: 'replace', finding, word: opened(left.word, decision.word) }
  }
  return [...joined, ...decisions.filter((decision) => !isPlaced(decision))]
}

/** With a capital where the word that went out had one. */
const opened = (out: string, word: string): string =>
  out === out.toLowerCase() ? word : word.slice(0, 1).toUpperCase() + word.slice(1)

function toEdits(decision: Decision, source: string): readonly Edit[] {
  if (decision.kind === 'replace') {
    const { slot } = decision.finding
    return slot ? [putIn(slot, source, decision.word)] : []
  }
  if (decision.kind === 'out') {
    const edit = decision.finding.slot && takeOut(decision.finding.slot, source)
    return edit ? [edit] : []
  }
  if (decision.kind !== 'keep') return []
  const { message, start, word } = decision.finding
  const edit = switchOff(readStory(source), start, message.rule, word, decision.reason)
  return edit ? [edit] : []
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

/** The first suggestion for every word that has one, and those taken out that a sentence does without. */
export const decideByFirst = (findings: readonly Finding[]): readonly Decision[] =>
  findings.flatMap((finding): Decision[] => {
    // Whether it is a name only the maker knows.
    if (finding.message.rule === 'no-unlisted-name') return []
    const [word] = finding.suggestions
    if (word !== undefined) return [{ kind: 'replace', finding, word }]
    return finding.out === undefined ? [] : [{ kind: 'out', finding }]
  })
