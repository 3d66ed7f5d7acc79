// What is asked about one word, and what an answer means.

import type { Paint } from '../report/paint.ts'
import { toPrintable, wrap } from '../report/text.ts'
import type { Finding } from './findings.ts'
import { isTypedWord } from './typed.ts'

export type Answer =
  | { readonly kind: 'replace'; readonly word: string; readonly everywhere: boolean }
  /** A word of the person's own, still to be judged. */
  | { readonly kind: 'typed'; readonly word: string }
  | { readonly kind: 'leave'; readonly everywhere: boolean }
  | { readonly kind: 'keep' }
  | { readonly kind: 'heart' | 'name' | 'out' | 'quit' | 'undo' }

const LETTERS = { h: 'heart', q: 'quit', u: 'undo' } as const

/** Undefined where it is none of what was offered. `=a` is the word `a`, where a letter alone means something to do. */
export function parseAnswer(text: string, { suggestions, name, slot, out }: Finding): Answer | undefined {
  const plain = text.trim().replace(/\s+/g, ' ')
  const answer = plain.toLowerCase()
  if (answer === '' || answer === 'l') return { kind: 'leave', everywhere: false }
  if (answer === 'la') return { kind: 'leave', everywhere: true }
  if (answer === 'n') return name === undefined ? undefined : { kind: 'name' }
  if (answer === 'o' && out !== undefined) return { kind: 'out' }
  if (answer === 'k') return { kind: 'keep' }
  if (answer === 'h' || answer === 'q' || answer === 'u') return { kind: LETTERS[answer] }
  const [, number, all] = /^(\d)(a?)$/.exec(answer) ?? []
  const word = suggestions[Number(number ?? 0) - 1]
  if (word !== undefined) return { kind: 'replace', word, everywhere: all === 'a' }
  const [, typed = plain.length > 1 ? plain : ''] = /^=\s*(.+)$/.exec(plain) ?? []
  return slot && isTypedWord(typed) ? { kind: 'typed', word: typed } : undefined
}

/** The line with the word marked, what is wrong, and what can be done. */
export function toQuestion(finding: Finding, view: { readonly width: number; readonly paint: Paint }): string {
  const { width, paint } = view
  const { message, suggestions, name, slot, out } = finding
  // Of a word that some step makes readable, the message says which; of another, the note says what would.
  const help = message.readableAt === null ? (message.ruleNote ?? message.note) : undefined
  const wrapped = (text: string): string[] => wrap(toPrintable(text), width - 2).map((line) => `  ${line}`)
  const toDo = [
    ...(suggestions.length > 0 ? ['a number: this word instead (1a: everywhere in this story)'] : []),
    ...(slot ? [suggestions.length > 0 ? 'or type a word of your own' : 'type a word of your own'] : []),
    ...(out === undefined ? [] : ['o: leave the word out']),
    ...(name === undefined ? [] : [`n: ${name} is a name`]),
    'h: known by heart',
    'k: keep it, with a reason',
    'Enter: leave it (la: everywhere)',
    'u: undo the last',
    'q: stop here',
  ].join(' · ')
  return [
    ...toMarkedLine(finding, width),
    ...wrapped(message.message),
    ...(help === undefined ? [] : wrapped(help)),
    '',
    ...(suggestions.length > 0 ? wrapped(suggestions.map((word, at) => `${at + 1} ${word}`).join('   ')) : []),
    ...(slot ? [] : wrapped(BOUND)),
    ...wrapped(toDo).map((line) => paint.quiet(line)),
  ].join('\n')
}

const BOUND =
  'No word can be put in here: emphasis reaches beyond the word, or a link, a comment or HTML stands in it. Take those marks away and run fix again, or write the place anew.'

/** A long line is cut so that the word is in sight. */
function toMarkedLine({ lineText, column, start, end }: Finding, width: number): string[] {
  const room = width - 4
  const from = column + (end - start) > room ? Math.max(0, column - Math.floor(room / 2)) : 0
  const shown = toPrintable(lineText.slice(from, from + room).replaceAll('\t', ' '))
  const lead = toPrintable(lineText.slice(from, column).replaceAll('\t', ' ')).replace(/./gu, ' ')
  return [`  ${shown}`, `  ${lead}${'^'.repeat(Math.max(1, end - start))}`]
}
