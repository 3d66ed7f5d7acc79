// An .odt file (OpenDocument 1.3, part 3) → pieces.

import { parseXml, XmlElement, type XmlNode, XmlText } from '@rgrove/parse-xml'
import { type Archive, toText } from './archive.ts'
import { type Collector, createCollector } from './collect.ts'
import { type OdtStyles, readOdtStyles } from './odt-styles.ts'
import { toInnerPicture, toNamedPicture } from './picture.ts'
import type { Brought, Run, Unreadable } from './types.ts'

interface Walk {
  readonly files: Archive
  readonly styles: OdtStyles
  readonly to: Collector
}

interface Look extends Pick<Run, 'bold' | 'italic'> {
  readonly isAside: boolean
}

/** Neither read out nor part of the story: what was deleted, remarks, fields of the program. */
const UNREAD = new Set(
  'office:annotation office:annotation-end office:forms text:tracked-changes text:sequence-decls text:variable-decls text:user-field-decls text:note-citation text:page-number text:page-count svg:title svg:desc text:soft-page-break text:ruby-text'.split(
    ' ',
  ),
)

export function readOdt(files: Archive): Brought | Unreadable {
  if (files['content.xml'] === undefined) return { unreadable: 'is broken: its text is missing.' }
  if (/<manifest:encryption-data[\s>]/.test(toText(files['META-INF/manifest.xml']))) {
    return { unreadable: 'is protected by a password. Open it in your writing program and save it without one.' }
  }
  try {
    const content = parseXml(toText(files['content.xml']))
    const page = files['styles.xml'] ? parseXml(toText(files['styles.xml'])) : undefined
    const to = createCollector()
    const walk = { files, styles: readOdtStyles([page?.root ?? undefined, content.root ?? undefined]), to }
    const body = content.root && find(content.root, 'office:text')
    for (const child of body?.children ?? []) visit(child, { bold: false, italic: false, isAside: false }, walk)
    to.end()
    if (page?.root && hasHeader(page.root)) to.note('header')
    return { pieces: to.pieces, notes: to.notes(), title: undefined }
  } catch {
    return { unreadable: 'is broken: its text cannot be read. Open it in your writing program and save it anew.' }
  }
}

function visit(node: XmlNode, look: Look, walk: Walk): void {
  // White space counts as in HTML; what must stay has elements of its own.
  if (node instanceof XmlText) walk.to.add(node.text.replace(/\s+/g, ' '), look)
  else if (node instanceof XmlElement && !UNREAD.has(node.name)) (VISITS[node.name] ?? visitChildren)(node, look, walk)
}

type Visit = (node: XmlElement, look: Look, walk: Walk) => void

const visitDrawing: Visit = (node, look, walk) => {
  walk.to.note('drawing')
  visitBoxes(node, look, walk)
}

const VISITS: Readonly<Record<string, Visit>> = {
  'draw:custom-shape': visitDrawing,
  'draw:frame': visitFrame,
  'draw:g': visitDrawing,
  'draw:object': visitDrawing,
  'draw:plugin': visitDrawing,
  'table:table': (node, look, walk) => {
    walk.to.note('table')
    visitChildren(node, look, walk)
  },
  'text:h': visitParagraph,
  'text:line-break': (_, look, { to }) => to.add('\n', look),
  'text:note': visitNote,
  'text:p': visitParagraph,
  'text:s': (_, look, { to }) => to.add(' ', look),
  'text:span': (node, look, walk) => {
    const style = node.attributes['text:style-name'] ?? ''
    visitChildren(node, { ...look, ...walk.styles.look(style, look) }, walk)
  },
  'text:tab': (_, look, { to }) => to.add(' ', look),
}

function visitChildren(node: XmlElement, look: Look, walk: Walk): void {
  for (const child of node.children) visit(child, look, walk)
}

function visitParagraph(node: XmlElement, look: Look, walk: Walk): void {
  const { to, styles } = walk
  const style = node.attributes['text:style-name'] ?? ''
  to.end()
  if (styles.breaks(style, 'before')) to.addBreak()
  visitChildren(node, { ...look, ...styles.look(style, look) }, walk)
  const kind = styles.kind(style)
  if (look.isAside) to.end('aside')
  else to.end(node.name === 'text:h' && kind === 'text' ? 'heading' : kind, true)
  if (styles.breaks(style, 'after')) to.addBreak()
}

/** The note's own text stands after the paragraph, since a paragraph cannot stand in another. */
function visitNote(node: XmlElement, look: Look, { files, styles, to }: Walk): void {
  to.note('footnote')
  const inner = createCollector()
  const body = find(node, 'text:note-body')
  if (body) visitChildren(body, { ...look, isAside: true }, { files, styles, to: inner })
  inner.end('aside')
  for (const piece of inner.pieces) to.addAfter(piece)
}

/** A picture, or a box of text that floats beside the paragraph it hangs on. */
function visitFrame(node: XmlElement, look: Look, walk: Walk): void {
  const image = node.children.find((child) => child instanceof XmlElement && child.name === 'draw:image')
  if (!(image instanceof XmlElement)) {
    if (node.children.some((child) => child instanceof XmlElement && child.name === 'draw:object'))
      walk.to.note('drawing')
    visitBoxes(node, look, walk)
    return
  }
  const path = image.attributes['xlink:href'] ?? ''
  const alt = find(node, 'svg:title')?.text || find(node, 'svg:desc')?.text || ''
  const bytes = walk.files[path.replace(/^\.\//, '')]
  const picture = bytes ? toInnerPicture(bytes, alt) : toNamedPicture(path, alt)
  if (typeof picture === 'string') walk.to.note(picture)
  else walk.to.addPicture(picture)
}

function visitBoxes({ children }: XmlElement, look: Look, { files, styles, to }: Walk): void {
  const inner = createCollector()
  for (const child of children) visit(child, look, { files, styles, to: inner })
  inner.end(look.isAside ? 'aside' : 'text')
  for (const piece of inner.pieces) if (piece.kind !== 'gap') to.addAfter(piece)
  for (const { code } of inner.notes()) to.note(code)
}

function find(node: XmlElement, name: string): XmlElement | undefined {
  for (const child of node.children) {
    if (!(child instanceof XmlElement)) continue
    const found = child.name === name ? child : find(child, name)
    if (found) return found
  }
  return undefined
}

const hasHeader = (root: XmlElement): boolean =>
  ['style:header', 'style:footer', 'style:header-first', 'style:footer-first'].some(
    (name) => (find(root, name)?.text.trim() ?? '') !== '',
  )
