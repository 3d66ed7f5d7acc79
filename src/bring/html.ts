// A page of HTML → pieces, by the tree that a browser would build.

import type { Element, Nodes } from 'hast'
import rehypeParse from 'rehype-parse'
import { unified } from 'unified'
import { type Collector, createCollector } from './collect.ts'
import { toNamedPicture } from './picture.ts'
import type { Brought } from './types.ts'

const BLOCKS = new Set(
  'address article aside blockquote body caption center dd details dialog div dl dt fieldset figcaption figure footer form header legend li main nav ol p pre section summary table tbody td tfoot th thead tr ul'.split(
    ' ',
  ),
)
const UNREAD = new Set(
  'head link meta noscript rp rt script style template title datalist select textarea input'.split(' '),
)
const DRAWINGS = new Set('svg canvas video audio iframe object embed math applet'.split(' '))
const BOLD = new Set(['b', 'strong', 'th'])
const ITALIC = new Set(['i', 'em', 'cite', 'dfn', 'var'])

interface Look {
  readonly bold: boolean
  readonly italic: boolean
  readonly isVerbatim: boolean
  readonly isAside: boolean
}

const PLAIN: Look = { bold: false, italic: false, isVerbatim: false, isAside: false }

export function readHtml(html: string): Brought {
  const tree = unified().use(rehypeParse, { fragment: false }).parse(html)
  const collector = createCollector()
  visit(tree, PLAIN, collector)
  collector.end()
  return { pieces: collector.pieces, notes: collector.notes(), title: findTitle(tree) }
}

function visit(node: Nodes, look: Look, to: Collector): void {
  if (node.type === 'text') to.add(look.isVerbatim ? node.value : node.value.replace(/\s*\n\s*/g, ' '), look)
  else if (node.type === 'root') for (const child of node.children) visit(child, look, to)
  else if (node.type === 'element') visitElement(node, look, to)
}

function visitElement(node: Element, look: Look, to: Collector): void {
  const name = node.tagName
  if (UNREAD.has(name) || isHidden(node) || isFootnoteMark(node)) return
  if (DRAWINGS.has(name)) to.note('drawing')
  else if (name === 'br') visitLineBreak(node, look, to)
  else if (name === 'hr') to.addBreak()
  else if (name === 'img') visitPicture(node, to)
  else if (/^h[1-6]$/.test(name) || BLOCKS.has(name)) visitBlock(node, look, to)
  else visitChildren(node, toLook(node, look), to)
}

function visitBlock(node: Element, look: Look, to: Collector): void {
  const name = node.tagName
  const level = /^h[1-6]$/.test(name)
  const isAside = look.isAside || isFootnote(node)
  if (isFootnote(node)) to.note('footnote')
  if (name === 'table') to.note('table')
  to.end(toKind(look.isAside))
  if (breaks(node, 'before')) to.addBreak()
  const inner = toLook(node, { ...look, isAside })
  visitChildren(node, name === 'pre' ? { ...inner, isVerbatim: true } : inner, to)
  to.end(level ? 'heading' : toKind(isAside), name === 'p')
  if (breaks(node, 'after')) to.addBreak()
}

const toKind = (isAside: boolean) => (isAside ? 'aside' : 'text')

function visitChildren(node: Element, look: Look, to: Collector): void {
  for (const child of node.children) visit(child, look, to)
}

function visitLineBreak(node: Element, look: Look, to: Collector): void {
  if (breaks(node, 'before') || breaks(node, 'after')) to.addBreak()
  else to.add('\n', look)
}

function visitPicture({ properties }: Element, to: Collector): void {
  const picture = toNamedPicture(String(properties['src'] ?? ''), String(properties['alt'] ?? ''))
  if (typeof picture === 'string') to.note(picture)
  else to.addPicture(picture)
}

function toLook(node: Element, look: Look): Look {
  const style = toStyle(node)
  const weight = /(?:^|;)\s*font-weight\s*:\s*(\w+)/i.exec(style)?.[1]
  const slant = /(?:^|;)\s*font-style\s*:\s*(\w+)/i.exec(style)?.[1]
  return {
    ...look,
    bold: weight === undefined ? look.bold || BOLD.has(node.tagName) : /bold|[6-9]00/i.test(weight),
    italic: slant === undefined ? look.italic || ITALIC.has(node.tagName) : /italic|oblique/i.test(slant),
  }
}

const toStyle = ({ properties }: Element): string => String(properties['style'] ?? '')

function breaks(node: Element, side: 'before' | 'after'): boolean {
  const pattern = new RegExp(`(?:^|[;\\s])(?:page-)?break-${side}\\s*:\\s*(?:always|page|left|right|recto|verso)`, 'i')
  return pattern.test(toStyle(node))
}

const isHidden = (node: Element): boolean =>
  node.properties['hidden'] !== undefined || /display\s*:\s*none|visibility\s*:\s*hidden/i.test(toStyle(node))

/** As the reader of .docx files writes them: `<li id="footnote-1">`, and `<a id="footnote-ref-1">` in the text. */
const isFootnote = ({ tagName, properties }: Element): boolean =>
  tagName === 'li' && /^(?:foot|end)note-\d+$/.test(String(properties['id'] ?? ''))

const isFootnoteMark = ({ tagName, properties }: Element): boolean =>
  tagName === 'a' &&
  (/^(?:foot|end)note-ref-\d+$/.test(String(properties['id'] ?? '')) ||
    /^#(?:foot|end)note-ref-\d+$/.test(String(properties['href'] ?? '')))

function findTitle(node: Nodes): string | undefined {
  if (node.type === 'element' && node.tagName === 'title') {
    const text = node.children.map((child) => (child.type === 'text' ? child.value : '')).join('')
    return text.replace(/\s+/g, ' ').trim() || undefined
  }
  if (!('children' in node)) return undefined
  for (const child of node.children) {
    if (child.type === 'element' && !['html', 'head', 'title'].includes(child.tagName)) continue
    const found = findTitle(child)
    if (found !== undefined) return found
  }
  return undefined
}
