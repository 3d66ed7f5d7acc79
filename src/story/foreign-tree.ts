// Reads a story from a tree of sentences and words that another pipeline made.

import type { Nodes, Root } from 'nlcst'
import { withoutAddresses } from './addresses.ts'
import { toBlock } from './block.ts'
import { parseEnglish } from './english.ts'
import { withSingleLetters } from './ligatures.ts'
import { createLines, type Lines } from './lines.ts'
import { toStoryProblems } from './problems.ts'
import { appendText, createTextMap, type TextMap, type TextMapBuilder, toSourceEnd, toSourceStart } from './text-map.ts'
import type { Block, Story } from './types.ts'

/**
 * The story of an nlcst tree, as one page without a title or comments; each paragraph is a block.
 *
 * The tree tells which text there is and where it stands. Its sentences are found anew, since the parser as others use
 * it merges them (`The cat sat. The dog ran.`). Text without a place in the source is left out.
 */
export function storyFromTree(root: Root, source: string): Story {
  const lines = createLines(source)
  const blocks: Block[] = []
  for (const printed of toParagraphMaps(root, lines)) {
    const map = withoutAddresses(withSingleLetters(printed))
    const range = { start: toSourceStart(map, 0), end: toSourceEnd(map, map.text.length) }
    if (map.text.trim() !== '') blocks.push(toBlock('paragraph', map, parseEnglish(map), range, 1))
  }
  const [first] = blocks
  const pages = first ? [{ number: 1, start: first.start, end: (blocks.at(-1) as Block).end, blocks }] : []
  const message = 'There is no text for a child to read here.'
  const problems = toStoryProblems(first ? [] : [{ code: 'empty', message, start: 0, end: source.length }], source)
  return { source, frontMatter: undefined, title: undefined, pages, pictures: [], notes: [], comments: [], problems }
}

function toParagraphMaps(root: Root, lines: Lines): TextMap[] {
  const maps: TextMap[] = []
  let loose: TextMapBuilder | undefined
  for (const child of root.children) {
    if (child.type === 'ParagraphNode') {
      loose = undefined
      const map = createTextMap()
      addLeaves(child, map, lines)
      maps.push(map)
    } else if (child.type !== 'WhiteSpaceNode') {
      if (!loose) {
        loose = createTextMap()
        maps.push(loose)
      }
      addLeaves(child, loose, lines)
    }
  }
  return maps
}

function addLeaves(node: Nodes, map: TextMapBuilder, lines: Lines): void {
  if ('children' in node) {
    for (const child of node.children) addLeaves(child, map, lines)
    return
  }
  if (!node.position) return
  const { start, end } = node.position
  const from = start.offset ?? lines.toOffset(start.line, start.column)
  const to = end.offset ?? lines.toOffset(end.line, end.column)
  // Code and the like: not for the child, but it parts the words on its two sides.
  const text = node.type === 'SourceNode' ? ' ' : node.value.replace(/\r\n?/g, '\n')
  appendText(map, text, from, Math.max(0, to - from))
}
