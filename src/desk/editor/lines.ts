// What each line of a story is for the eye: text, title, note, or something that is drawn otherwise than it stands.

import type { Text, Transaction } from '@codemirror/state'

/**
 * `front`: the settings at the top. `break`: the end of a page, with the blank lines around it. `gap`: the blank line between
 * two paragraphs. `switch`: a comment that keeps a word. None of these takes the cursor.
 */
export type LineKind =
  | 'front'
  | 'break'
  | 'gap'
  | 'title'
  | 'heading'
  | 'note'
  | 'picture'
  | 'switch'
  | 'comment'
  | 'text'

export interface Stretch {
  readonly from: number
  readonly to: number
}

/** A stretch on which the cursor does not stop. `prefix`: the signs that make a line a title or a note. */
export interface Hidden extends Stretch {
  readonly kind: 'front' | 'break' | 'gap' | 'switch' | 'prefix'
}

export interface Shape {
  /** One for each line, from the first. */
  readonly kinds: readonly LineKind[]
  /** The settings, folded away; undefined where there are none, or where no line would be left to write on. */
  readonly front: Stretch | undefined
  /** In order of place. */
  readonly breaks: readonly Stretch[]
  /** In order of place. */
  readonly hidden: readonly Hidden[]
}

const RULE = /^ {0,3}(?:(?:- *){3,}|(?:\* *){3,}|(?:_ *){3,})$/
const FENCE = /^---\s*$/

/** Whether the rule of dashes that begins here parts two pages; the check knows of stories that are cut otherwise. */
type IsBreak = (from: number) => boolean

export function toShape(doc: Text, isBreak: IsBreak = () => true): Shape {
  const texts = [...doc.iterLines()]
  const kinds = texts.map((text, at) => toKind(text, texts[at - 1] ?? ''))
  foldFront(texts, kinds)
  const starts = toStarts(texts)
  const rules = kinds.flatMap((kind, at) => (kind === 'break' ? [at] : []))
  for (const at of rules) keepOrWiden(at, { texts, kinds, starts }, isBreak)
  markGaps(texts, kinds)
  return collect(kinds, starts, texts)
}

function toKind(text: string, before: string): LineKind {
  if (RULE.test(text) && (isBlank(before) || /^#|^>|-->\s*$/.test(before))) return 'break'
  if (/^# /.test(text)) return 'title'
  if (/^#{2,6} /.test(text)) return 'heading'
  if (/^\s*>/.test(text)) return 'note'
  if (/^!\[[^\]]*\]\([^)]*\)\s*$/.test(text)) return 'picture'
  if (/^\s*<!--\s*battledore\b.*-->\s*$/.test(text)) return 'switch'
  return /^\s*<!--.*-->\s*$/.test(text) ? 'comment' : 'text'
}

const isBlank = (text: string): boolean => /^[ \t]*$/.test(text)

const toStarts = (texts: readonly string[]): readonly number[] => {
  let at = 0
  return texts.map((text) => {
    const start = at
    at += text.length + 1
    return start
  })
}

/** With the blank line below, so that the text begins right under the head of its first page. */
function foldFront(texts: readonly string[], kinds: LineKind[]): void {
  if (!FENCE.test(texts[0] ?? '')) return
  const end = texts.findIndex((text, at) => at > 0 && FENCE.test(text))
  if (end < 0) return
  const last = isBlank(texts[end + 1] ?? 'x') && end + 2 < texts.length ? end + 1 : end
  const isRoom = last + 1 < texts.length
  for (let at = 0; at <= last; at++) kinds[at] = isRoom ? 'front' : 'text'
}

interface Lines {
  readonly texts: readonly string[]
  readonly kinds: LineKind[]
  readonly starts: readonly number[]
}

/** A rule in the very last line has no line after it to write on: it is shown as it stands. */
function keepOrWiden(at: number, { texts, kinds, starts }: Lines, isBreak: IsBreak): void {
  if (at + 1 >= kinds.length || !isBreak(starts[at] ?? 0)) {
    kinds[at] = 'text'
    return
  }
  const isFree = (line: number): boolean => kinds[line] === 'text' && isBlank(texts[line] ?? 'x')
  const hasTextBefore = kinds[at - 2] !== undefined && kinds[at - 2] !== 'break' && kinds[at - 2] !== 'front'
  if (isFree(at - 1) && hasTextBefore) kinds[at - 1] = 'break'
  if (isFree(at + 1) && at + 2 < kinds.length) kinds[at + 1] = 'break'
}

/** Of several blank lines, every second one can be written on; so the one below the last text is none. */
function markGaps(texts: readonly string[], kinds: LineKind[]): void {
  for (let at = 1; at < kinds.length; at++) {
    const isAfterText = !['front', 'break', 'gap'].includes(kinds[at - 1] ?? 'front')
    const isBeforeText = !['front', 'break'].includes(kinds[at + 1] ?? 'text')
    if (kinds[at] === 'text' && isBlank(texts[at] ?? 'x') && isAfterText && isBeforeText) kinds[at] = 'gap'
  }
}

/** Rules with nothing between them end one page. */
function collect(kinds: readonly LineKind[], starts: readonly number[], texts: readonly string[]): Shape {
  const hidden: { readonly kind: Hidden['kind']; readonly from: number; to: number }[] = []
  kinds.forEach((kind, at) => {
    const from = starts[at] ?? 0
    const text = texts[at] ?? ''
    const prefix =
      kind === 'title' || kind === 'heading' || kind === 'note' ? /^\s*(?:#+|>) ?/.exec(text)?.[0] : undefined
    const last = hidden.at(-1)
    if (prefix !== undefined) hidden.push({ kind: 'prefix', from, to: from + prefix.length - 1 })
    else if (kind === 'switch' || kind === 'gap') hidden.push({ kind, from, to: from + text.length })
    else if (kind !== 'front' && kind !== 'break') return
    else if (last?.kind === kind && last.to + 1 === from) last.to = from + text.length
    else hidden.push({ kind, from, to: from + text.length })
  })
  const front = hidden.find(({ kind }) => kind === 'front')
  return { kinds, front, breaks: hidden.filter(({ kind }) => kind === 'break'), hidden }
}

/**
 * The shape after letters were written or taken away within one line of text, as most keys do: moved, not found anew. Undefined
 * where the line may now be something else, or another line because of it.
 */
export function moveShape(shape: Shape, { startState, newDoc, changes }: Transaction): Shape | undefined {
  const [from, to, end] = findOnlyChange(changes)
  if (from === undefined || to === undefined || end === undefined) return undefined
  const [before, after] = [startState.doc.lineAt(from), newDoc.lineAt(from)]
  if (to > before.to || end > after.to || shape.kinds[before.number - 1] !== 'text') return undefined
  if (![before.text, after.text].every(isPlain)) return undefined
  const by = end - to
  const move = <Own extends Stretch>(one: Own): Own =>
    one.from > from ? { ...one, from: one.from + by, to: one.to + by } : one
  const hidden = shape.hidden.map(move)
  return { ...shape, hidden, breaks: hidden.filter(({ kind }) => kind === 'break') }
}

/** Text, and neither a rule nor what makes one of the line below. */
const isPlain = (text: string): boolean => !isBlank(text) && toKind(text, '') === 'text' && !/^#|^>|-->\s*$/.test(text)

/** Where it begins, where it ended, and where it ends now; nothing where there are several. */
function findOnlyChange(changes: Transaction['changes']): readonly number[] {
  const found: number[] = []
  changes.iterChangedRanges((from, to, _, end) => found.push(from, to, end), true)
  return found.length === 3 ? found : []
}
