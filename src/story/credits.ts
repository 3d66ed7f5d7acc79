// Recognises the block of credits at the end of a book: it is for the adult, and a child is not asked to read it.

import { type CreditSign, joinSigns, toCreditSign } from './credit-lines.ts'
import type { Piece, TextPiece } from './outline.ts'

// * License: [CC-BY]
// * Text: …
//   ^^^^ what the lines of such a list are called
const keys = new Set([
  'adaptation',
  'adapted by',
  'artist',
  'author',
  'authors',
  'by',
  'contributors',
  'copyright',
  'cover',
  'design',
  'designer',
  'drawings',
  'edited by',
  'editor',
  'font',
  'illustrated by',
  'illustration',
  'illustrations',
  'illustrator',
  'illustrators',
  'isbn',
  'language',
  'layout',
  'level',
  'licence',
  'license',
  'original',
  'photographer',
  'photographs',
  'photos',
  'pictures',
  'pictures by',
  'publisher',
  'published by',
  'retold by',
  'source',
  'story',
  'story by',
  'text',
  'translated by',
  'translation',
  'translator',
  'words',
  'words by',
  'writer',
  'written by',
])
const sureKeys = new Set(['copyright', 'isbn', 'licence', 'license'])

/** Credits have fewer pieces than this. */
const longest = 60

const keyLine = /^\s*([A-Za-z][A-Za-z ]{0,24}?)\s*:\s*\S/
const creditHeading =
  /^(?:credits?|acknowledge?ments?|about (?:this|the) (?:story|stories|(?:book|author|artist|illustrator)s?))$/
/**
 * The index of the piece at which the credits start; `pieces.length` where there are none.
 *
 * Looked for only after the last page break or heading that has anything behind it, and only with story text before it. Credits are: a heading
 * that says so; or a run of `Key: value` lines of which one names a licence, a copyright or an ISBN, or two name other
 * things of this kind (`Text:`, `Illustration:`); or closing lines such as `Written by …`, `By Ann Bell` or `© …`. All that follows
 * them belongs to them. A list whose keys are not known (`Tam: yes`) is story.
 */
export function findCredits(pieces: readonly Piece[]): number {
  // `***` behind the last line closes the book.
  const inner = pieces.slice(0, withBreaksBefore(pieces, pieces.length))
  const breakAt = inner.findLastIndex((it) => it.kind === 'rule' || (it.kind === 'heading' && it.isTop))
  const tail = breakAt + 1
  const lead = pieces[breakAt]
  let start = pieces.length
  if (lead?.kind === 'heading' && creditHeading.test(lead.map.text.trim().toLowerCase())) start = breakAt
  for (let index = Math.max(tail, pieces.length - longest); index < start; index++) {
    const first = pieces[index]
    if (first?.kind === 'text' && (isCreditList(pieces, index) || isCreditClose(pieces, index))) start = index
  }
  if (start === pieces.length || !pieces.slice(0, start).some((it) => it.kind === 'text')) return pieces.length
  return withBreaksBefore(pieces, start)
}

/** A page break that only sets the credits apart goes with them. */
function withBreaksBefore(pieces: readonly Piece[], start: number): number {
  let at = start
  for (;;) {
    const before = pieces[at - 1]
    const isBreak = before?.kind === 'rule' || (before?.kind === 'heading' && before.map.text.trim() === '')
    if (!isBreak) return at
    at--
  }
}

function isCreditList(pieces: readonly Piece[], from: number): boolean {
  let known = 0
  let sure = 0
  for (const piece of pieces.slice(from)) {
    if (piece.kind !== 'text') break
    const found = toLines(piece).map((line) => keyLine.exec(line)?.[1]?.toLowerCase())
    if (found.includes(undefined)) break
    for (const key of found as readonly string[]) {
      if (sureKeys.has(key)) sure++
      if (keys.has(key)) known++
    }
  }
  return sure >= 1 || known >= 2
}

function isCreditClose(pieces: readonly Piece[], from: number): boolean {
  const signs: CreditSign[] = []
  for (const piece of pieces.slice(from)) {
    if (piece.kind !== 'text') continue
    const sign = toCreditSign(piece.map.text)
    if (sign === 'none') return false
    signs.push(sign)
  }
  return joinSigns(signs) === 'sure'
}

function toLines(piece: TextPiece): string[] {
  return piece.map.text.split('\n').filter((line) => line.trim() !== '')
}
