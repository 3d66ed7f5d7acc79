// Pages of pieces → the Markdown of a story. Every letter comes out as it went in; what means something to Markdown is escaped.

import type { BlockContent, PhrasingContent, Root, RootContent } from 'mdast'
import { toMarkdown } from 'mdast-util-to-markdown'
import { stringify } from 'yaml'
import type { BroughtPicture, Piece, Run } from './types.ts'

export interface Head {
  readonly title?: string | undefined
  readonly sequence?: string | undefined
  readonly step?: string | undefined
}

/** @param toPath where a picture will lie, as the story names it */
export function toStory(
  pages: readonly (readonly Piece[])[],
  head: Head,
  toPath: (picture: BroughtPicture) => string,
): string {
  const all = pages.flat()
  const title = all.find(({ kind }) => kind === 'text' || kind === 'heading' || kind === 'title')
  const isTitle = (piece: Piece): boolean =>
    piece === title && (piece.kind === 'title' || (piece.kind === 'heading' && !isLabel(piece.runs)))
  const children: RootContent[] = []
  for (const [at, page] of pages.entries()) {
    if (at > 0) children.push({ type: 'thematicBreak' })
    for (const piece of page) children.push(...toBlock(piece, isTitle(piece), toPath))
  }
  const root: Root = { type: 'root', children }
  const body = toMarkdown(root, { bullet: '-', emphasis: '*', fences: true, rule: '-', resourceLink: true })
  return toHead(head) + body
}

const isLabel = (runs: readonly Run[]): boolean => /^\s*(?:page\s*)?\d*\s*[.:]?\s*$/i.test(toPlain(runs))

export const toPlain = (runs: readonly Run[]): string => runs.map(({ text }) => text).join('')

function toHead(head: Head): string {
  const settings = Object.fromEntries(Object.entries(head).filter(([, value]) => value !== undefined))
  return Object.keys(settings).length === 0 ? '' : `---\n${stringify(settings, { lineWidth: 0 })}---\n\n`
}

function toBlock(piece: Piece, isTitle: boolean, toPath: (picture: BroughtPicture) => string): BlockContent[] {
  switch (piece.kind) {
    case 'break':
    case 'gap':
      return []
    case 'picture':
      return [
        {
          type: 'paragraph',
          children: [{ type: 'image', url: toPath(piece.picture), alt: piece.picture.alt }],
        },
      ]
    case 'aside':
      return [{ type: 'blockquote', children: [{ type: 'paragraph', children: toInlines(piece.runs, false) }] }]
    case 'text':
      return [{ type: 'paragraph', children: toInlines(piece.runs, false) }]
    default:
      // A heading is one line, and bold already.
      return [{ type: 'heading', depth: isTitle ? 1 : 2, children: toInlines(piece.runs, true) }]
  }
}

function toInlines(runs: readonly Run[], isHeading: boolean): PhrasingContent[] {
  // A paragraph that is bold from end to end is the writer's choice of letters, not a mark on some of them.
  const isPlain = isHeading || runs.every(({ bold }) => bold)
  const isUpright = isHeading || runs.every(({ italic }) => italic)
  return runs.flatMap(({ text, bold, italic }) => {
    const [, before = '', inner = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(text) ?? []
    const isBare = inner === '' || ((isPlain || !bold) && (isUpright || !italic))
    if (isBare) return toLines(text, isHeading)
    const lines = toLines(inner, isHeading)
    const slanted: PhrasingContent[] = italic && !isUpright ? [{ type: 'emphasis', children: lines }] : lines
    const strong: PhrasingContent[] = bold && !isPlain ? [{ type: 'strong', children: slanted }] : slanted
    return [...toLines(before, isHeading), ...strong, ...toLines(after, isHeading)]
  })
}

function toLines(text: string, isHeading: boolean): PhrasingContent[] {
  if (text === '') return []
  if (isHeading) return [{ type: 'text', value: text.replace(/\n/g, ' ') }]
  return text.split('\n').flatMap((line, at): PhrasingContent[] => {
    const value: PhrasingContent[] = line === '' ? [] : [{ type: 'text', value: line }]
    return at === 0 ? value : [{ type: 'break' }, ...value]
  })
}
