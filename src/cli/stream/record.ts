// One record of a stream: what it asks for, or what is wrong with it.

import { type Problem, toProblem } from '../../problem/index.ts'

/** Given back as it came. */
type JsonId = string | number | boolean | null

export interface StreamRecord {
  readonly id: JsonId
  /** How the line writes an id that is a number with more digits than JavaScript keeps. */
  readonly idText?: string
  readonly text: string
  readonly settings: { readonly sequence?: unknown; readonly step?: unknown; readonly accent?: unknown }
}

export interface BrokenRecord {
  readonly id: JsonId
  readonly idText?: string
  readonly problem: Problem
}

export function readRecord(line: string): StreamRecord | BrokenRecord {
  let value: unknown
  try {
    value = JSON.parse(line)
  } catch {
    return { id: null, problem: toProblem({ code: 'not-json', message: 'The line is not JSON' }) }
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return { id: null, problem: toProblem({ code: 'not-json', message: 'The line is not a JSON object' }) }
  const { id = null, text, sequence, step, accent } = value as Record<string, unknown>
  if (typeof id === 'object' && id !== null)
    return { id: null, problem: toProblem({ code: 'bad-value', message: '`id` is a text or a number' }) }
  const own = { id: id as JsonId, ...toIdText(id, line) }
  if (typeof text !== 'string')
    return { ...own, problem: toProblem({ code: 'missing-key', message: '`text` is missing, or is no text' }) }
  const settings = Object.fromEntries(
    Object.entries({ sequence, step, accent }).filter(([, given]) => given !== undefined && given !== null),
  )
  return { ...own, text, settings }
}

const toIdText = (id: unknown, line: string): { readonly idText?: string } => {
  const idText = typeof id === 'number' && !Number.isSafeInteger(id) ? findNumber(line, 'id') : undefined
  return idText === undefined ? {} : { idText }
}

const NUMBER = /\s*([-+.\deE]+)/y

/** How a line that is a JSON object writes the number under this key; the last one counts, as it does for `JSON.parse`. */
function findNumber(line: string, wanted: string): string | undefined {
  let [depth, text, found]: [number, string, string | undefined] = [0, '', undefined]
  for (let at = 0; at < line.length; at++) {
    const mark = line[at] ?? ''
    if (mark === '"') {
      const end = findStringEnd(line, at)
      if (depth === 1) text = JSON.parse(line.slice(at, end)) as string
      at = end - 1
    } else if ('{['.includes(mark)) depth++
    else if ('}]'.includes(mark)) depth--
    else if (mark === ':' && depth === 1 && text === wanted) {
      NUMBER.lastIndex = at + 1
      found = NUMBER.exec(line)?.[1]
    }
  }
  return found
}

function findStringEnd(line: string, start: number): number {
  let at = start + 1
  while (at < line.length && line[at] !== '"') at += line[at] === '\\' ? 2 : 1
  return at + 1
}
