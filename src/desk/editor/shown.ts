// How the file is drawn: settings folded away, a head over each page, notes small. One state field, since heads are blocks.

import { type EditorState, type Range, StateEffect, StateField, type Text, type Transaction } from '@codemirror/state'
import { Decoration, type DecorationSet, EditorView } from '@codemirror/view'
import { findLastIndex } from '../../sorted.ts'
import type { PageCount } from '../core/questions.ts'
import { KeptWidget, toKept } from './kept.ts'
import { type LineKind, moveShape, type Shape, type Stretch, toShape } from './lines.ts'
import { HeadWidget, toHead, toHeads } from './page-heads.ts'
import { PictureWidget, toPictureLine } from './picture.ts'

/** What the check says of the pages of just this text; undefined where it could not be checked. */
export const setPages = StateEffect.define<readonly PageCount[] | undefined>()

/** Whether the file is shown as it is, with nothing folded. */
export const showFile = StateEffect.define<boolean>()

export interface Shown {
  readonly shape: Shape
  /** Moved along with the text until the next check. */
  readonly pages: readonly PageCount[] | undefined
  /** Where rules stand that part no pages, as the last check saw it: moved along too. */
  readonly plainRules: readonly number[]
  readonly isFile: boolean
  readonly decorations: DecorationSet
}

const LINE_CLASSES: Partial<Record<LineKind, string>> = {
  comment: 'line-comment',
  gap: 'line-gap',
  heading: 'line-heading',
  note: 'line-note',
  title: 'line-title',
}

export const shown: StateField<Shown> = StateField.define<Shown>({
  create: (state) => draw(state, { pages: undefined, plainRules: [], isFile: false }),
  update: (value, transaction) => update(value, transaction),
  provide: (field) => [
    EditorView.decorations.from(field, ({ decorations }) => decorations),
    EditorView.atomicRanges.of((view) => {
      const { isFile, shape } = view.state.field(field)
      return isFile ? Decoration.none : toAtoms(view.state.doc, shape)
    }),
  ],
})

type Seen = Pick<Shown, 'pages' | 'plainRules' | 'isFile'>

function update(value: Shown, transaction: Transaction): Shown {
  let { pages, plainRules, isFile } = value
  let isNew = transaction.docChanged
  if (transaction.docChanged) {
    pages = pages?.map((page) => move(page, transaction))
    plainRules = plainRules.map((at) => transaction.changes.mapPos(at))
  }
  for (const effect of transaction.effects) {
    if (effect.is(setPages)) {
      // Most keys change no count, and then nothing is drawn anew.
      if (isSamePages(pages, effect.value)) continue
      pages = effect.value
      plainRules = findPlainRules(transaction.state, pages)
    } else if (effect.is(showFile)) isFile = effect.value
    else continue
    isNew = true
  }
  if (!isNew) return value
  const moved = transaction.effects.length === 0 ? moveShape(value.shape, transaction) : undefined
  if (moved === undefined) return draw(transaction.state, { pages, plainRules, isFile })
  return { pages, plainRules, isFile, shape: moved, decorations: value.decorations.map(transaction.changes) }
}

const isSamePages = (some: Shown['pages'], others: Shown['pages']): boolean =>
  some !== undefined &&
  some.length === others?.length &&
  some.every((page, at) => {
    const other = others[at]
    const isAtPlace = page.start === other?.start && page.end === other.end && page.number === other.number
    return isAtPlace && page.words === other.words && page.notYet === other.notYet
  })

/** A rule in the midst of a page parts nothing; the one at its end is counted to it. */
function findPlainRules({ doc }: EditorState, pages: Shown['pages'] = []): readonly number[] {
  const { breaks } = toShape(doc)
  const isInside = (at: number, to: number): boolean => {
    const page = pages[findLastIndex(pages.length, (index) => (pages[index]?.start ?? at) < at)]
    return page !== undefined && to < page.end
  }
  return breaks.flatMap(({ from, to }) => {
    const rule = /^[ \t]*[-*_]/m.exec(doc.sliceString(from, to))
    const at = from + (rule?.index ?? 0)
    return isInside(at, doc.lineAt(at).to) ? [at] : []
  })
}

const move = (page: PageCount, { changes }: Transaction): PageCount => ({
  ...page,
  start: changes.mapPos(page.start, -1),
  end: changes.mapPos(page.end, 1),
})

function draw(state: EditorState, seen: Seen): Shown {
  const plain = new Set(seen.plainRules)
  const shape = toShape(state.doc, (from) => !plain.has(from))
  return { ...seen, shape, decorations: seen.isFile ? Decoration.none : decorate(state, shape, seen.pages) }
}

function decorate(state: EditorState, shape: Shape, pages: readonly PageCount[] | undefined): DecorationSet {
  const ranges: Range<Decoration>[] = []
  shape.kinds.forEach((kind, at) => {
    const name = LINE_CLASSES[kind]
    if (name === undefined) return
    // A note that says so itself needs no label.
    const isFirst = shape.kinds[at - 1] !== kind && !/^> *for the grown-up/i.test(state.doc.line(at + 1).text)
    ranges.push(Decoration.line({ class: isFirst ? `${name} first` : name }).range(state.doc.line(at + 1).from))
  })
  for (const { kind, from, to } of shape.hidden) {
    if (kind === 'prefix') ranges.push(PREFIX.range(from, to + 1))
    if (kind !== 'switch') continue
    const widget = new KeptWidget(toKept(state.doc.sliceString(from, to)))
    ranges.push(Decoration.replace({ widget, block: true }).range(from, to))
  }
  for (const { from, to } of toPictures(state.doc, shape)) {
    const widget = new PictureWidget(toPictureLine(state.doc.sliceString(from, to)))
    ranges.push(Decoration.replace({ widget }).range(from, to))
  }
  for (const head of toHeads(state.doc, shape, pages)) {
    const widget = new HeadWidget(toHead(head))
    const deco =
      head.over === undefined
        ? Decoration.widget({ widget, block: true, side: -1 }).range(head.at)
        : Decoration.replace({ widget, block: true }).range(head.over.from, head.over.to)
    ranges.push(deco)
  }
  return Decoration.set(ranges, true)
}

/** In the line, not in its place: so there is always something to write behind. */
const toPictures = (doc: Text, { kinds }: Shape): readonly Stretch[] =>
  kinds.flatMap((kind, at) => (kind === 'picture' ? [doc.line(at + 1)] : []))

const PREFIX = Decoration.replace({})

const atom = Decoration.mark({})

/** The editor asks several times for each key. */
const atomsOf = new WeakMap<Shape, DecorationSet>()

function toAtoms(doc: Text, shape: Shape): DecorationSet {
  const known = atomsOf.get(shape) ?? makeAtoms(doc, shape)
  atomsOf.set(shape, known)
  return known
}

function makeAtoms(doc: Text, shape: Shape): DecorationSet {
  const stretches = [...shape.hidden.filter(({ from, to }) => from < to), ...toPictures(doc, shape)]
  return Decoration.set(
    stretches.map(({ from, to }) => atom.range(from, to)),
    true,
  )
}
