// The text of a paragraph or heading as a child reads it: emphasis and links opened up, pictures and code left out.

import type { Image, ImageReference, Link, Nodes, Parent, PhrasingContent } from 'mdast'
import { appendAligned } from './align.ts'
import type { FoundEmphasis } from './emphasis.ts'
import { maxDepth } from './guard.ts'
import { appendText, createTextMap, type TextMap, type TextMapBuilder } from './text-map.ts'
import type { Range } from './types.ts'

/** Where the nodes stand: their offsets count from `base`; `quotes` is how many block quotes hold them. */
export interface Place {
  readonly source: string
  readonly base: number
  readonly quotes: number
}

/** What a block's inline nodes hold besides text. */
export interface InlineExtras {
  html(start: number, end: number): void
  picture(node: Image | ImageReference, start: number, end: number): void
  tooDeep(start: number, end: number): void
}

/** A block's text before it is cut into sentences. */
export interface Inlines {
  readonly map: TextMap
  readonly emphasis: readonly FoundEmphasis[]
}

interface InlinesBuilder {
  readonly map: TextMapBuilder
  readonly emphasis: FoundEmphasis[]
}

export function readInlines(nodes: readonly PhrasingContent[], place: Place, extras: InlineExtras): Inlines {
  const found: InlinesBuilder = { map: createTextMap(), emphasis: [] }
  for (const node of nodes) readInline(node, place, extras, found, 0)
  return found
}

function readInline(node: Nodes, place: Place, extras: InlineExtras, found: InlinesBuilder, depth: number): void {
  const { map } = found
  const start = node.position?.start.offset
  const end = node.position?.end.offset
  if (start === undefined || end === undefined) return
  const { source, base, quotes } = place
  const from = base + start
  const to = base + end
  if (node.type === 'text') {
    appendAligned(map, node.value, { source, start: from, end: to, quotes })
  } else if (node.type === 'break') {
    appendText(map, '\n', from, Math.max(2, to - from))
  } else if (node.type === 'html') {
    if (/^<br\b/i.test(node.value)) appendText(map, '\n', from, to - from)
    extras.html(from, to)
  } else if (node.type === 'footnoteReference') {
    // A number for the adult: it does not part the letters around it.
  } else if ('children' in node && !(node.type === 'link' && isBareAddress(node))) {
    if (node.type === 'strong' || node.type === 'emphasis')
      found.emphasis.push({ kind: node.type, start: from, end: to, inside: toInside(node, base, { start, end }) })
    if (depth > maxDepth) extras.tooDeep(from, to)
    else for (const child of node.children) readInline(child, place, extras, found, depth + 1)
  } else {
    if (node.type === 'image' || node.type === 'imageReference') extras.picture(node, from, to)
    appendGap(map, from, to)
  }
}

function toInside({ children }: Parent, base: number, whole: Range): Range {
  const first = children[0]?.position?.start.offset ?? whole.start
  const last = children.at(-1)?.position?.end.offset ?? whole.end
  return { start: base + first, end: base + last }
}

/** What is left out still parts the words on its two sides. */
function appendGap(map: TextMapBuilder, start: number, end: number): void {
  if (map.text.length > 0 && !map.isBlankAtEnd) appendText(map, ' ', start, Math.max(2, end - start))
}

/** `<https://…>`: the text is the address itself. */
function isBareAddress(node: Link): boolean {
  const only = node.children.length === 1 ? node.children[0] : undefined
  return only?.type === 'text' && (only.value === node.url || `mailto:${only.value}` === node.url)
}
