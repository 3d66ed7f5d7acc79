// A unified diff of two texts that are mostly alike, as `patch` and git read it.

import { toHeadName } from './diff-name.ts'

/** Lines before and after a change that are shown with it. */
const CONTEXT = 3

interface Change {
  /** Places of lines, from 0; the ends do not belong to it. */
  readonly oldFrom: number
  readonly oldTo: number
  readonly newFrom: number
  readonly newTo: number
}

/**
 * Empty where the texts are the same. The name stands in its head, with a/ and b/ before it as git has it.
 * @param name with slashes, as `toDiffPlace` gives it
 */
export function toUnifiedDiff(name: string, before: string, after: string): string {
  if (before === after) return ''
  const [old, now] = [toLines(before), toLines(after)]
  const hunks = toHunks(findChanges(old, now))
  const head = `--- ${toHeadName(`a/${name}`)}\n+++ ${toHeadName(`b/${name}`)}\n`
  return head + hunks.map((changes) => toHunk(changes, old, now)).join('')
}

/** Lines with their ends; a last line without one is told in the diff. */
const toLines = (text: string): string[] => text.match(/[^\n]*\n|[^\n]+$/g) ?? []

/**
 * Walks both texts at once. Where they differ, the nearest line at which they agree again is looked for: right for texts in
 * which single lines are changed or added, which is all that is done to a story.
 */
function findChanges(old: readonly string[], now: readonly string[]): readonly Change[] {
  const changes: Change[] = []
  let from = 0
  let to = 0
  while (from < old.length || to < now.length) {
    if (from < old.length && old[from] === now[to]) {
      from++
      to++
      continue
    }
    const [skipOld, skipNew] = findAgreement(old, now, from, to)
    changes.push({ oldFrom: from, oldTo: from + skipOld, newFrom: to, newTo: to + skipNew })
    from += skipOld
    to += skipNew
  }
  return changes
}

/** How many lines to pass over on each side, as few as can be. */
function findAgreement(
  old: readonly string[],
  now: readonly string[],
  from: number,
  to: number,
): readonly [number, number] {
  const [restOld, restNew] = [old.length - from, now.length - to]
  for (let sum = 1; sum < restOld + restNew; sum++) {
    for (let skipOld = Math.max(0, sum - restNew); skipOld <= Math.min(sum, restOld); skipOld++) {
      const line = old[from + skipOld]
      if (line !== undefined && line === now[to + sum - skipOld]) return [skipOld, sum - skipOld]
    }
  }
  return [restOld, restNew]
}

/** Changes whose surroundings touch stand in one hunk. */
function toHunks(changes: readonly Change[]): readonly (readonly Change[])[] {
  const hunks: Change[][] = []
  for (const change of changes) {
    const last = hunks.at(-1)?.at(-1)
    if (last && change.oldFrom - last.oldTo <= 2 * CONTEXT) hunks.at(-1)?.push(change)
    else hunks.push([change])
  }
  return hunks
}

function toHunk(changes: readonly Change[], old: readonly string[], now: readonly string[]): string {
  const [first, last] = [changes[0], changes.at(-1)]
  if (!first || !last) return ''
  const lead = Math.min(CONTEXT, first.oldFrom)
  const trail = Math.min(CONTEXT, old.length - last.oldTo)
  const body: string[] = []
  let at = first.oldFrom - lead
  for (const { oldFrom, oldTo, newFrom, newTo } of changes) {
    body.push(...old.slice(at, oldFrom).map((line) => toRow(' ', line)))
    body.push(
      ...old.slice(oldFrom, oldTo).map((line) => toRow('-', line)),
      ...now.slice(newFrom, newTo).map((line) => toRow('+', line)),
    )
    at = oldTo
  }
  body.push(...old.slice(at, last.oldTo + trail).map((line) => toRow(' ', line)))
  const head = `@@ -${toRange(first.oldFrom - lead, last.oldTo + trail)} +${toRange(first.newFrom - lead, last.newTo + trail)} @@\n`
  return head + body.join('')
}

/** An empty range names the line before it. */
const toRange = (from: number, to: number): string =>
  to === from ? `${from},0` : to - from === 1 ? `${from + 1}` : `${from + 1},${to - from}`

const toRow = (mark: ' ' | '-' | '+', line: string): string =>
  line.endsWith('\n') ? mark + line : `${mark}${line}\n\\ No newline at end of file\n`
