// Finds where each letter of a Markdown text node stands in the source: the parser gives only the node's two ends.

import { decodeString } from 'micromark-util-decode-string'
import { appendText, type TextMapBuilder } from './text-map.ts'

const reference = /&(?:#[xX][\da-fA-F]{1,6}|#\d{1,7}|[\da-zA-Z]{1,31});/y

/** The part of the source that a text node covers, and how many block quotes it stands in. */
export interface Span {
  readonly source: string
  readonly start: number
  readonly end: number
  readonly quotes: number
}

/** Add a text node's value to a map. Line endings become one newline. */
export function appendAligned(map: TextMapBuilder, value: string, span: Span): void {
  const { source, start, end } = span
  // `A &` and `A &amp;` begin alike.
  if (end - start === value.length && !value.includes('\r') && source.startsWith(value, start)) {
    appendText(map, value, start, value.length)
    return
  }
  let at = start
  let done = 0
  while (done < value.length) {
    const step = nextStep(value, done, at, span)
    appendText(map, step.text, step.source, step.width)
    done += step.used
    at = step.source + step.width
  }
}

/** One piece: the text it adds, its place and width in the source, and how much of the value it uses. */
interface Step {
  readonly text: string
  readonly source: number
  readonly width: number
  readonly used: number
}

function nextStep(value: string, done: number, at: number, span: Span): Step {
  const { source } = span
  const letter = value.charAt(done)
  if (letter === '\n' || letter === '\r') return lineStep(value, done, at, span)
  if (source[at] === '&') {
    const text = decodeReference(source, at)
    if (text !== undefined && value.startsWith(text, done)) {
      return { text, source: at, width: reference.lastIndex - at, used: text.length }
    }
  }
  if (source[at] === '\\' && source[at + 1] === letter) {
    return { text: letter, source: at, width: 2, used: 1 }
  }
  const run = literalRun(value, done, at, span)
  if (run > 0) return { text: value.slice(done, done + run), source: at, width: run, used: run }
  return strangeStep(value, done, at, span)
}

function decodeReference(source: string, at: number): string | undefined {
  reference.lastIndex = at
  const found = reference.exec(source)?.[0]
  if (found === undefined) return undefined
  const text = decodeString(found)
  return text === found ? undefined : text
}

/** How many letters from here stand in the source as they are in the value. */
function literalRun(value: string, done: number, at: number, span: Span): number {
  let run = 0
  while (done + run < value.length && at + run < span.end) {
    const letter = span.source[at + run]
    if (letter !== value[done + run] || letter === '\n' || letter === '\r') break
    if (run > 0 && (letter === '&' || letter === '\\')) break
    run++
  }
  return run
}

// > A fox⏎
// > in a box
// ^^ the parser drops this, and any indent; so the newline takes it in
function lineStep(value: string, done: number, at: number, span: Span): Step {
  const { source, end, quotes } = span
  let lineEnd = at
  while (lineEnd < end && isBlank(source[lineEnd])) lineEnd++
  const used = value[done] === '\r' && value[done + 1] === '\n' ? 2 : 1
  let next = lineEnd
  if (source[next] === '\r') next++
  if (source[next] === '\n') next++
  if (next === lineEnd) return strangeStep(value, done, at, span)
  for (let left = quotes; left >= 0; left--) {
    let mark = next
    while (mark < end && isBlank(source[mark])) mark++
    next = mark
    if (left === 0 || source[mark] !== '>') break
    next++
  }
  return { text: '\n', source: lineEnd, width: next - lineEnd, used }
}

/** A plugin before us may have changed the text (curly quotes, say): find the place where both agree again. */
function strangeStep(value: string, done: number, at: number, span: Span): Step {
  const { source, end } = span
  // `“It’s` and `"It's` agree for two letters only.
  for (const alike of [3, 2, 1]) {
    for (let skip = 0; skip <= 8; skip++) {
      for (let used = 1; used <= 3; used++) {
        const ahead = value.slice(done + used, done + used + alike)
        if (ahead === '' || at + skip + ahead.length > end || !source.startsWith(ahead, at + skip)) continue
        return { text: value.slice(done, done + used), source: at, width: skip, used }
      }
    }
  }
  return { text: value.slice(done), source: at, width: Math.max(0, end - at), used: value.length - done }
}

function isBlank(letter: string | undefined): boolean {
  return letter === ' ' || letter === '\t'
}
