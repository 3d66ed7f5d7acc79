// Changes what a sequence file teaches: one small edit, and the file read again before anybody is handed it.

import { fail, isError, type Problem, type Result, succeed, toProblemText } from '../problem/index.ts'
import { appendToList } from '../yaml/append.ts'
import { addKeyBelow, type Replacement, removeItem, replaceScalar } from '../yaml/change.ts'
import { addToSequence, listTaught, resolveAll, toStepLines } from './add.ts'
import { ITEM_KEYS, resolveItem, toItemKey } from './item.ts'
import { type LoadedSequence, type LoadTools, loadSequence } from './load.ts'
import { toSource } from './source.ts'
import type { Sequence } from './types.ts'

/** `what` as a teacher writes it: `ai as in rain`, `-ed`, `said`. */
export type SequenceChange =
  | { readonly kind: 'add'; readonly step: string; readonly what: string }
  | { readonly kind: 'remove'; readonly step: string; readonly what: string }
  | { readonly kind: 'change'; readonly step: string; readonly what: string; readonly to: string }
  | { readonly kind: 'add step'; readonly title: string; readonly what: readonly string[] }
  | { readonly kind: 'title'; readonly step: string; readonly title: string }

/** @returns the text of the file as it is then; nothing here touches a file */
export function changeSequence(yaml: string, change: SequenceChange, tools: LoadTools): Result<string> {
  if (change.kind === 'add') {
    const added = addToSequence(yaml, splitWritten(change.what), tools, change.step)
    return added.ok ? succeed(added.value.text) : added
  }
  const before = loadSequence(yaml, tools)
  const { sequence } = before
  if (sequence === undefined) return { ok: false, problems: before.problems }
  const edit = toEdit(yaml, change, sequence, tools)
  if (!edit.ok) return edit
  const text = yaml.slice(0, edit.value.start) + edit.value.text + yaml.slice(edit.value.end)
  const wrong = findNew(before, loadSequence(text, tools))
  return wrong.length > 0 ? { ok: false, problems: wrong } : succeed(text)
}

/** `ai as in rain, ay as in day, said` */
const splitWritten = (text: string): readonly string[] =>
  text
    .split(/[,;\n]/)
    .map((one) => one.trim().replace(/\s+/g, ' '))
    .filter((one) => one !== '')

/** Errors that the change brought; their places would be those of a file that nobody has seen. */
function findNew(before: LoadedSequence, after: LoadedSequence): readonly Problem[] {
  const told = new Set(before.problems.map(toProblemText))
  return after.problems
    .filter((problem) => isError(problem) && !told.has(toProblemText(problem)))
    .map(({ place: _, ...problem }) => problem)
}

type Tried = Result<Replacement>

function toEdit(
  yaml: string,
  change: Exclude<SequenceChange, { readonly kind: 'add' }>,
  sequence: Sequence,
  tools: LoadTools,
): Tried {
  switch (change.kind) {
    case 'remove':
      return remove(yaml, change)
    case 'change':
      return replace(yaml, change, sequence, tools)
    case 'title':
      return retitle(yaml, change)
    default:
      return addStep(yaml, change, sequence, tools)
  }
}

const BY_HAND = {
  code: 'bad-value',
  message: 'This step is not built so that it can be changed from here',
  note: 'Change it in its file.',
} as const

const orByHand = (edit: Replacement | undefined): Tried => (edit ? succeed(edit) : fail(BY_HAND))

type OwnStep = { readonly id: string } & Readonly<Record<string, unknown>>

/** The file's own steps as they are written. */
export function listOwnSteps(yaml: string): readonly OwnStep[] {
  const value = toSource(yaml).value as { readonly steps?: unknown } | null
  return Array.isArray(value?.steps) ? value.steps : []
}

export function listWritten(step: OwnStep | undefined, key: (typeof ITEM_KEYS)[number]): readonly string[] {
  const items = step?.[key]
  return Array.isArray(items) ? items.map(String) : []
}

function findItem(yaml: string, step: string, what: string) {
  const steps = listOwnSteps(yaml)
  const at = steps.findIndex(({ id }) => id === step)
  for (const key of ITEM_KEYS) {
    const number = listWritten(steps[at], key).findIndex((one) => one.trim() === what.trim())
    if (number >= 0) return { path: ['steps', at, key] as const, number }
  }
  return undefined
}

const toNowhere = (what: string, step: string) =>
  fail({ code: 'unknown-name', message: `The step \`${step}\` of this file does not teach \`${what}\`` })

function remove(yaml: string, { step, what }: { readonly step: string; readonly what: string }): Tried {
  const found = findItem(yaml, step, what)
  return found ? orByHand(removeItem(yaml, found.path, found.number)) : toNowhere(what, step)
}

function replace(
  yaml: string,
  { step, what, to }: { readonly step: string; readonly what: string; readonly to: string },
  sequence: Sequence,
  tools: LoadTools,
): Tried {
  const found = findItem(yaml, step, what)
  if (!found) return toNowhere(what, step)
  const resolved = resolveItem(to, tools.phonicsFor(sequence.accent), listTaught(sequence))
  if ('problem' in resolved) return fail(resolved.problem)
  if (toItemKey(resolved.item) !== found.path[2])
    return fail({
      code: 'bad-value',
      message: `\`${to}\` is of another kind than \`${what}\`: take that away, and add this`,
    })
  return orByHand(replaceScalar(yaml, [...found.path, found.number], resolved.item.written))
}

function retitle(yaml: string, { step, title }: { readonly step: string; readonly title: string }): Tried {
  const steps = listOwnSteps(yaml)
  const at = steps.findIndex(({ id }) => id === step)
  if (at < 0) return toNowhere(title, step)
  const text = title.trim()
  if (text === '') return fail({ code: 'bad-value', message: 'Give the step a title of a few words' })
  const has = steps[at]?.title !== undefined
  return orByHand(
    has ? replaceScalar(yaml, ['steps', at, 'title'], text) : addKeyBelow(yaml, ['steps', at], 'id', 'title', text),
  )
}

function addStep(
  yaml: string,
  { title, what }: { readonly title: string; readonly what: readonly string[] },
  sequence: Sequence,
  tools: LoadTools,
): Tried {
  const resolved = resolveAll(what.flatMap(splitWritten), sequence, tools, 'refused')
  if (!resolved.ok) return resolved
  const { items } = resolved.value
  if (items.length === 0)
    return fail({ code: 'bad-value', message: 'Say what the step teaches, such as `sh as in ship` or `said`' })
  const lines = toStepLines(toNextId(sequence), items, title.trim() || undefined)
  const insertion = appendToList(yaml, ['steps'], lines)
  return orByHand(insertion && { start: insertion.at, end: insertion.at, text: insertion.text })
}

/** One more than the last: `step-4` after `step-3`, `b2` after `b1`; `two-2` after `two`. */
function toNextId({ steps }: Sequence): string {
  const ids = new Set(steps.map(({ id }) => id.toLowerCase()))
  const last = steps.at(-1)?.id ?? ''
  const number = /\d+$/.exec(last)?.[0]
  const stem = number === undefined ? `${last}-` : last.slice(0, -number.length)
  let next = Number(number ?? 1) + 1
  while (ids.has(`${stem}${next}`.toLowerCase())) next++
  return `${stem}${next}`
}
