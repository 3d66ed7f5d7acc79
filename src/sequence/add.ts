// Adds to a step of a sequence file what is taught there: a few small insertions, every other byte kept, comments among them.

import { stringify } from 'yaml'
import { fail, isError, type Problem, type Result, succeed, toProblem, toProblemText } from '../problem/index.ts'
import { appendToList, applyInsertion, type Insertion } from '../yaml/append.ts'
import { resolveItem, type TaughtItem, toItemKey, type Unlisted } from './item.ts'
import { findStep } from './knowledge.ts'
import { type LoadTools, loadSequence } from './load.ts'
import { toSource } from './source.ts'
import type { Sequence } from './types.ts'
import { toStepUnknown } from './unknown-step.ts'

export interface Addition {
  /** The file as it is then. */
  readonly text: string
  /** One after the other, each in the text that the one before it has left. */
  readonly insertions: readonly Insertion[]
  readonly items: readonly TaughtItem[]
  /** What is doubtful, and was added all the same. */
  readonly doubts: readonly Problem[]
  /** The id of the step. */
  readonly step: string
  readonly sequence: Sequence
}

/**
 * All of it or nothing: the file is read again, and what cannot be read there is not added. Nothing here touches a file.
 * @param what as a teacher writes it: `ai as in rain`, `-ed`, `said`
 * @param step of the file or of what it extends; without it, the last step of the file
 */
export function addToSequence(
  yaml: string,
  what: readonly string[],
  tools: LoadTools,
  step?: string,
): Result<Addition> {
  const before = loadSequence(yaml, tools)
  if (before.sequence === undefined || before.problems.some(isError)) return { ok: false, problems: before.problems }
  const own = listSteps(yaml)
  const id = step === undefined ? own.at(-1) : findStep(before.sequence, step)?.id
  if (id === undefined) return fail(toStepUnknown(step ?? '', before.sequence))
  const resolved = resolveAll(what, before.sequence, tools, 'doubted')
  if (!resolved.ok) return resolved
  const { items, doubts } = resolved.value
  const edit = insertAll(yaml, id, own.indexOf(id), items)
  if (edit === undefined) return fail(toUnfit(id, items, tools.path))
  const after = loadSequence(edit.text, tools)
  // The place would be one of a file that nobody has seen.
  const problems = after.problems.map(({ place: _, ...problem }) => problem)
  if (after.sequence === undefined || problems.some(isError)) return { ok: false, problems }
  const told = new Set(before.problems.map(toProblemText))
  const further = problems.filter((one) => !told.has(toProblemText(one)))
  return succeed({ ...edit, items, doubts: [...doubts, ...further], step: id, sequence: after.sequence })
}

/** The ids of the file's own steps, in its order. */
function listSteps(yaml: string): readonly string[] {
  const { steps } = toSource(yaml).value as { readonly steps: readonly { readonly id: string }[] }
  return steps.map(({ id }) => id)
}

export const listTaught = ({ steps }: Sequence) => steps.flatMap(({ adds }) => adds.correspondences)

/** All items, or all that is wrong with them. @param unlisted what becomes of a word that nobody knows */
export function resolveAll(
  what: readonly string[],
  sequence: Sequence,
  tools: Pick<LoadTools, 'phonicsFor'>,
  unlisted: Unlisted,
): Result<Pick<Addition, 'doubts' | 'items'>> {
  const phonics = tools.phonicsFor(sequence.accent)
  const known = listTaught(sequence)
  const resolved = what.map((written) => resolveItem(written, phonics, known, unlisted))
  const problems = resolved.flatMap((one) => ('problem' in one ? [one.problem] : []))
  if (problems.some(isError)) return { ok: false, problems }
  const right = resolved.flatMap((one) => ('item' in one ? [one] : []))
  return succeed({ items: right.map(({ item }) => item), doubts: right.flatMap(({ doubt }) => doubt ?? []) })
}

/** A text as YAML has to have it: `10` in quotes. */
export const toText = (text: string): string => stringify(text, { lineWidth: 0 }).trim()

const toScalar = ({ written }: TaughtItem): string => toText(written)

function insertAll(
  yaml: string,
  id: string,
  at: number,
  items: readonly TaughtItem[],
): Pick<Addition, 'text' | 'insertions'> | undefined {
  const insertions: Insertion[] = []
  let text = yaml
  const insert = (insertion: Insertion | undefined): boolean => {
    if (insertion === undefined) return false
    insertions.push(insertion)
    text = applyInsertion(text, insertion)
    return true
  }
  // A step of the sequence that the file extends gets an entry of its own, which adds to it.
  if (at < 0) return insert(appendToList(text, ['steps'], toStepLines(id, items))) ? { text, insertions } : undefined
  const isIn = items.every((item) => insert(appendToList(text, ['steps', at, toItemKey(item)], [toScalar(item)])))
  return isIn ? { text, insertions } : undefined
}

/** A step as lines of YAML, without the dash. */
export function toStepLines(id: string, items: readonly TaughtItem[], title?: string): readonly string[] {
  const inFlow = (key: string): readonly string[] => {
    const own = items.filter((item) => toItemKey(item) === key)
    return own.length === 0 ? [] : [`${key}: [${own.map(toScalar).join(', ')}]`]
  }
  const taught = items.filter((item) => toItemKey(item) === 'teach')
  return [
    `id: ${toText(id)}`,
    ...(title === undefined ? [] : [`title: ${toText(title)}`]),
    ...(taught.length === 0 ? [] : ['teach:', ...taught.map((item) => `  - ${toScalar(item)}`)]),
    ...['sight words', 'endings', 'contractions'].flatMap(inFlow),
  ]
}

const toUnfit = (id: string, items: readonly TaughtItem[], path: string | undefined): Problem =>
  toProblem({
    code: 'bad-value',
    ...(path !== undefined && { path }),
    message: `The step \`${id}\` is not built so that something can be added`,
    note: `Add it by hand: ${items.map((item) => `${toItemKey(item)}: ${item.written}`).join(', ')}.`,
  })
