// The story as a unified plugin: a Markdown tree becomes a tree of sentences and words that any retext plugin can read.

import type { Root as MarkdownRoot } from 'mdast'
import type { Paragraph, Root } from 'nlcst'
import type { Node } from 'unist'
import type { VFile } from 'vfile'
import { storyFromTree } from './foreign-tree.ts'
import { createLines } from './lines.ts'
import { buildStory, createPages, outlinePieces, type PageMaker, parseBlock } from './read.ts'
import { toSpan } from './span.ts'
import type { Block, Story, StoryOptions } from './types.ts'

declare module 'nlcst' {
  interface RootData {
    /** The story that the tree was made from. */
    story?: Story | undefined
  }
}

/**
 * `unified().use(remarkParse).use(remarkFrontmatter).use(storyPlugin, options)`.
 *
 * The tree holds what a child reads and nothing else; each node has its place in the Markdown source, and
 * `tree.data.story` holds the story. A tree of sentences and words stays, and gets the story too.
 */
export function storyPlugin(options: StoryOptions = {}): (tree: Node, file: VFile) => Root {
  return (node, file) => {
    const tree = node as MarkdownRoot | Root
    const source = String(file)
    if (tree.type === 'RootNode') {
      tree.data = { ...tree.data, story: storyFromTree(tree, source) }
      return tree
    }
    const base = source.startsWith('\uFEFF') ? 1 : 0
    const outline = outlinePieces(source, [{ root: tree, base }])
    const lines = createLines(source)
    const paragraphs = new Map<Block, Paragraph>()
    const make: PageMaker['make'] = ({ kind, piece }, page) => {
      const { block, paragraph } = parseBlock(kind, piece, page, lines)
      paragraphs.set(block, paragraph)
      return block
    }
    const story = buildStory(source, outline, options, createPages(make))
    const children = story.pages.flatMap(({ blocks }) => blocks.map((block) => paragraphs.get(block) as Paragraph))
    return { type: 'RootNode', children, data: { story }, ...toSpan(children) }
  }
}
