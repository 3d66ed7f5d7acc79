// What is asked about one word, and what an answer means.

import type { Paint } from '../report/paint.ts'
import { toPrintable, wrap } from '../report/text.ts'
import type { Finding } from './findings.ts'

export type Answer =
  | { readonly kind: 'replace'; readonly word: string; readonly everywhere: boolean }
  | { readonly kind: 'name' }
  | { readonly kind: 'leave'; readonly everywhere: boolean }
  | { readonly kind: 'quit' }

/** Undefined where it is none of what was offered. */
export function parseAnswer(text: string, { suggestions, name }: Finding): Answer | undefined {
  const answer = text.trim().toLowerCase()
  if (answer === '' || answer === 'l') return { kind: 'leave', everywhere: false }
  if (answer === 'la') return { kind: 'leave', everywhere: true }
  if (answer === 'q') return { kind: 'quit' }
  if (answer === 'n') return name === undefined ? undefined : { kind: 'name' }
  const [, number, all] = /^(\d)(a?)$/.exec(answer) ?? []
  const word = suggestions[Number(number ?? 0) - 1]
  return word === undefined ? undefined : { kind: 'replace', word, everywhere: all === 'a' }
}

/** The line with the word marked, what is wrong, and what can be done. */
export function toQuestion(finding: Finding, view: { readonly width: number; readonly paint: Paint }): string {
  const { width, paint } = view
  const { message, suggestions, name } = finding
  const wrapped = (text: string): string[] => wrap(toPrintable(text), width - 2).map((line) => `  ${line}`)
  const choices = [
    ...(suggestions.length > 0 ? [`${suggestions.map((word, at) => `${at + 1} ${word}`).join('   ')}`] : []),
    [
      ...(suggestions.length > 0 ? ['a number: this word instead (1a: everywhere in this story)'] : []),
      ...(name === undefined ? [] : [`n: ${name} is a name`]),
      'Enter: leave it (la: everywhere)',
      'q: stop here',
    ].join(' · '),
  ]
  return [
    ...toMarkedLine(finding, width),
    ...wrapped(message.message),
    '',
    ...choices.flatMap(wrapped).map((line, at) => (at === 0 && suggestions.length > 0 ? line : paint.quiet(line))),
  ].join('\n')
}

/** A long line is cut so that the word is in sight. */
function toMarkedLine({ lineText, column, start, end }: Finding, width: number): string[] {
  const room = width - 4
  const from = column + (end - start) > room ? Math.max(0, column - Math.floor(room / 2)) : 0
  const shown = toPrintable(lineText.slice(from, from + room).replaceAll('\t', ' '))
  const lead = toPrintable(lineText.slice(from, column).replaceAll('\t', ' ')).replace(/./gu, ' ')
  return [`  ${shown}`, `  ${lead}${'^'.repeat(Math.max(1, end - start))}`]
}
