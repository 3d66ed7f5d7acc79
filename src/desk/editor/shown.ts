// How the file is drawn: settings folded away, a head over each page, notes small. One state field, since heads are blocks.

import {
  type EditorState,
  type Extension,
  type Range,
  StateEffect,
  StateField,
  type Transaction,
} from '@codemirror/state'
import { Decoration, type DecorationSet, EditorView } from '@codemirror/view'
import type { PageCount } from '../core/questions.ts'
import { KeptWidget, toKept } from './kept.ts'
import { type LineKind, type Shape, toShape } from './lines.ts'
import { HeadWidget, toHead, toHeads } from './page-heads.ts'

/** What the check says of the pages of just this text; undefined where it could not be checked. */
export const setPages = StateEffect.define<readonly PageCount[] | undefined>()

/** Whether the file is shown as it is, with nothing folded. */
export const showFile = StateEffect.define<boolean>()

export interface Shown {
  readonly shape: Shape
  /** Moved along with the text until the next check. */
  readonly pages: readonly PageCount[] | undefined
  readonly isFile: boolean
  readonly decorations: DecorationSet
}

const LINE_CLASSES: Partial<Record<LineKind, string>> = {
  comment: 'line-comment',
  gap: 'line-gap',
  heading: 'line-heading',
  note: 'line-note',
  picture: 'line-picture',
  title: 'line-title',
}

export const shown: StateField<Shown> = StateField.define<Shown>({
  create: (state) => draw(state, undefined, false),
  update: (value, transaction) => update(value, transaction),
  provide: (field) => [
    EditorView.decorations.from(field, ({ decorations }) => decorations),
    EditorView.atomicRanges.of((view) =>
      view.state.field(field).isFile ? Decoration.none : toAtoms(view.state.field(field).shape),
    ),
  ],
})

function update(value: Shown, transaction: Transaction): Shown {
  let { pages, isFile } = value
  let isNew = transaction.docChanged
  if (transaction.docChanged) pages = pages?.map((page) => move(page, transaction))
  for (const effect of transaction.effects) {
    if (effect.is(setPages)) pages = effect.value
    else if (effect.is(showFile)) isFile = effect.value
    else continue
    isNew = true
  }
  return isNew ? draw(transaction.state, pages, isFile) : value
}

const move = (page: PageCount, { changes }: Transaction): PageCount => ({
  ...page,
  start: changes.mapPos(page.start, -1),
  end: changes.mapPos(page.end, 1),
})

function draw(state: EditorState, pages: readonly PageCount[] | undefined, isFile: boolean): Shown {
  // A rule in the midst of a page, as the check sees it, parts nothing; the one at its end is counted to it.
  const isBreak = (from: number, to: number): boolean => !pages?.some(({ start, end }) => start < from && to < end)
  const shape = toShape(state.doc, isBreak)
  return { shape, pages, isFile, decorations: isFile ? Decoration.none : decorate(state, shape, pages) }
}

function decorate(state: EditorState, shape: Shape, pages: readonly PageCount[] | undefined): DecorationSet {
  const ranges: Range<Decoration>[] = []
  shape.kinds.forEach((kind, at) => {
    const name = LINE_CLASSES[kind]
    if (name === undefined) return
    const isFirst = shape.kinds[at - 1] !== kind
    ranges.push(Decoration.line({ class: isFirst ? `${name} first` : name }).range(state.doc.line(at + 1).from))
  })
  for (const { kind, from, to } of shape.hidden) {
    if (kind === 'prefix') ranges.push(PREFIX.range(from, to + 1))
    if (kind !== 'switch') continue
    const widget = new KeptWidget(toKept(state.doc.sliceString(from, to)))
    ranges.push(Decoration.replace({ widget, block: true }).range(from, to))
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

const PREFIX = Decoration.replace({})

const atom = Decoration.mark({})

const toAtoms = ({ hidden }: Shape): DecorationSet =>
  Decoration.set(hidden.filter(({ from, to }) => from < to).map(({ from, to }) => atom.range(from, to)))

export const storyShown: Extension = shown
