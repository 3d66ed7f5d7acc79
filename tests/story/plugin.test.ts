import type { Root as MarkdownRoot } from 'mdast'
import type { Nodes, Root } from 'nlcst'
import { ParseEnglish } from 'parse-english'
import remarkParse from 'remark-parse'
import retextEnglish from 'retext-english'
import { unified } from 'unified'
import { VFile } from 'vfile'
import { describe, expect, it } from 'vitest'
import {
  createLines,
  readStory,
  remarkFrontmatter,
  type Story,
  storyFromTree,
  storyPlugin,
} from '../../src/story/index.ts'

const source =
  '\uFEFF---\ntitle: Tip\n---\n\n# Tip top\r\n\r\n##\r\n- A sh**ee**p &amp; a hen\r\n  sat. Mr. Hen ran!\r\n\r\n> adult\r\n'

function run(text: string, options = {}): { tree: Root; story: Story } {
  const processor = unified().use(remarkParse).use(remarkFrontmatter).use(storyPlugin, options)
  const file = new VFile(text)
  const tree: Root = processor.runSync(processor.parse(file), file)
  if (!tree.data?.story) throw new Error('no story')
  return { tree, story: tree.data.story }
}

function collect(node: Nodes, all: Nodes[] = []): Nodes[] {
  all.push(node)
  if ('children' in node) for (const child of node.children) collect(child, all)
  return all
}

const withoutBlocks = (story: Story) => JSON.stringify(story, (key, value) => (key === 'block' ? undefined : value))

describe('storyPlugin', () => {
  it('gives the same story as readStory', () => {
    expect(withoutBlocks(run(source).story)).toBe(withoutBlocks(readStory(source)))
    const options = { countTitle: false, pages: 'rule' as const }
    expect(withoutBlocks(run(source, options).story)).toBe(withoutBlocks(readStory(source, options)))
  })

  it('makes a tree whose nodes all have a true place', () => {
    const { tree } = run(source)
    const lines = createLines(source)
    const nodes = collect(tree)
    expect(nodes.length).toBeGreaterThan(30)
    for (const node of nodes) {
      const { start, end } = node.position ?? {}
      expect(start && lines.toPoint(start.offset ?? -1)).toEqual({ line: start?.line, column: start?.column })
      expect(end && lines.toPoint(end.offset ?? -1)).toEqual({ line: end?.line, column: end?.column })
    }
    const words = nodes.filter((it) => it.type === 'WordNode')
    const slices = words.map((it) => source.slice(it.position?.start.offset, it.position?.end.offset))
    expect(slices).toEqual(['Tip', 'top', 'A', 'sh**ee**p', 'a', 'hen', 'sat', 'Mr.', 'Hen', 'ran'])
  })

  it('nests the places of its nodes', () => {
    for (const node of collect(run(source).tree)) {
      if (!('children' in node)) continue
      for (const child of node.children) {
        expect(child.position?.start.offset).toBeGreaterThanOrEqual(node.position?.start.offset ?? 0)
        expect(child.position?.end.offset).toBeLessThanOrEqual(node.position?.end.offset ?? 0)
      }
    }
  })

  it('lets a plugin of someone else report at the right place', () => {
    const found: string[] = []
    function shout() {
      return (tree: Root, file: VFile) => {
        for (const node of collect(tree)) {
          if (node.type !== 'WordNode' || !node.position) continue
          const message = file.message('word', { place: node.position })
          found.push(`${message.line}:${message.column}`)
        }
      }
    }
    const processor = unified().use(remarkParse).use(storyPlugin).use(shout)
    const file = new VFile('- A fox\n  in a box')
    processor.runSync(processor.parse(file), file)
    expect(found).toEqual(['1:3', '1:5', '2:3', '2:6', '2:8'])
  })

  // As plugins for typography do it (remark-smartypants and its like): the text of a node is no longer that of the source.
  it('finds the words where a plugin before it has changed the text', () => {
    const curl = (text: string) =>
      text
        .replace(/(^| )"/g, '$1“')
        .replaceAll('"', '”')
        .replaceAll("'", '’')
        .replaceAll('...', '…')
        .replaceAll('--', '—')
        .replaceAll('(c)', '©')
        .replaceAll('½', '1/2')
        // As plugins for emoji do it (remark-emoji and its like).
        .replaceAll(':rabbit:', '🐰')
        .replaceAll(':heart:', '❤️')
        .replaceAll('Quack quack', 'Zzz')
    const change = () => (tree: MarkdownRoot) => {
      for (const block of tree.children)
        if (block.type === 'paragraph')
          for (const node of block.children) if (node.type === 'text') node.value = curl(node.value)
    }
    for (const [text, slices] of [
      ['"Stop!" said Tam. "It\'s hot..." He ran--fast.', ['Stop', 'said', 'Tam', "It's", 'hot', 'He', 'ran', 'fast']],
      ['Sid (c) sat ½ way up', ['Sid', 'sat', '½', 'way', 'up']],
      ['A hen...\n"Yes" &amp; "no"', ['A', 'hen', 'Yes', 'no']],
      ['Tam "sat"', ['Tam', 'sat']],
      ['A hen\n\nQuack quack', ['A', 'hen', 'Quack quack']],
      ['"', []],
      ['A :rabbit: hid', ['A', 'hid']],
      [':heart: Tam sat', ['Tam', 'sat']],
      ['Tam :heart:.\nMeg &amp; I sat', ['Tam', 'Meg', 'I', 'sat']],
      ['1/2 :rabbit: ½ hid', ['1/2', '½', 'hid']],
    ] as const) {
      const file = new VFile(text)
      const processor = unified().use(remarkParse).use(change).use(storyPlugin)
      const tree = processor.runSync(processor.parse(file), file) as Root
      const words = tree.data?.story?.pages.flatMap((page) =>
        page.blocks.flatMap((block) => block.sentences.flatMap((sentence) => sentence.words)),
      )
      expect(words?.map((word) => text.slice(word.start, word.end)) ?? []).toEqual(slices)
    }
  })

  it('leaves out what has no place in the source', () => {
    const add = () => (tree: MarkdownRoot) => {
      const [first] = tree.children
      if (first?.type === 'paragraph') {
        first.children.push({ type: 'text', value: ' and hid.' })
        // A place without offsets is none.
        const [start, end] = [
          { line: 1, column: 1 },
          { line: 1, column: 4 },
        ]
        first.children.push({ type: 'text', value: ' Ann', position: { start: { ...start, offset: 0 }, end } })
        first.children.push({ type: 'text', value: ' Bob', position: { start, end: { ...end, offset: 3 } } })
        first.children.push({ type: 'emphasis', children: [{ type: 'text', value: 'Yes' }] })
      }
      tree.children.push({ type: 'paragraph', children: [{ type: 'text', value: 'No' }] })
    }
    const file = new VFile('Tam sat')
    const processor = unified().use(remarkParse).use(add).use(storyPlugin)
    const tree = processor.runSync(processor.parse(file), file) as Root
    expect(tree.data?.story?.pages.flatMap((page) => page.blocks.map((block) => block.text))).toEqual(['Tam sat'])
  })

  // A plugin may put something of its own where something stood.
  it.each([
    ['without places', [{ type: 'text', value: 'red' }]],
    ['without an end', [{ type: 'text', value: 'red', position: undefined }]],
    ['with nothing', []],
  ] as const)('takes emphasis that holds children %s', (_, children) => {
    const text = 'A *pig* ran'
    const put = () => (tree: MarkdownRoot) => {
      const [first] = tree.children
      const node = first?.type === 'paragraph' ? first.children[1] : undefined
      if (node?.type === 'emphasis') node.children = [...children]
    }
    const file = new VFile(text)
    const processor = unified().use(remarkParse).use(put).use(storyPlugin)
    const { data } = processor.runSync(processor.parse(file), file) as Root
    const [block] = data?.story?.pages[0]?.blocks ?? []
    expect([block?.text, block?.emphasis]).toEqual(['A  ran', []])
  })

  // As remark-gfm makes it of `[^1]: A note.` (https://github.com/syntax-tree/mdast#footnotedefinition).
  it('takes a footnote for the adult', () => {
    const put = () => (tree: MarkdownRoot) => {
      const last = tree.children.pop()
      if (last?.type === 'paragraph' && last.position)
        tree.children.push({
          ...{ type: 'footnoteDefinition', identifier: '1', children: [last], position: last.position },
        })
    }
    const text = 'Tam sat.\n\nA note.'
    const file = new VFile(text)
    const processor = unified().use(remarkParse).use(put).use(storyPlugin)
    const { data } = processor.runSync(processor.parse(file), file) as Root
    expect(data?.story?.pages[0]?.blocks.map((block) => block.text)).toEqual(['Tam sat.'])
    expect(data?.story?.notes).toMatchObject([{ kind: 'footnote', text: 'A note.', page: 1, start: 10, end: 17 }])
  })

  it('takes a picture of another plugin that says nothing', () => {
    const put = () => (tree: MarkdownRoot) => {
      const [first] = tree.children
      const node = first?.type === 'paragraph' ? first.children[0] : undefined
      if (node?.type === 'image') Object.assign(node, { alt: null, title: null })
    }
    const file = new VFile('![hen](hen.png "x") Tam')
    const processor = unified().use(remarkParse).use(put).use(storyPlugin)
    const { data } = processor.runSync(processor.parse(file), file) as Root
    expect(data?.story?.pictures).toMatchObject([{ source: 'hen.png', alt: '', title: undefined }])
  })

  it('tells emphasis whose first or last child has no place from its marks on', () => {
    const text = 'A *big pig* ran'
    const put = () => (tree: MarkdownRoot) => {
      const [first] = tree.children
      const node = first?.type === 'paragraph' ? first.children[1] : undefined
      if (node?.type !== 'emphasis') return
      node.children.unshift({ type: 'text', value: 'x' })
      node.children.push({ type: 'text', value: 'y' })
    }
    const file = new VFile(text)
    const processor = unified().use(remarkParse).use(put).use(storyPlugin)
    const { data } = processor.runSync(processor.parse(file), file) as Root
    expect(data?.story?.pages[0]?.blocks[0]?.emphasis).toEqual([
      { kind: 'emphasis', start: 2, end: 11, textStart: 2, textEnd: 9 },
    ])
  })

  it('takes an empty file', () => {
    expect(run('').tree.children).toEqual([])
    expect(run('').story.problems.map((it) => it.code)).toEqual(['empty'])
  })
})

describe('storyFromTree', () => {
  const text = 'The cat sat. The dog ran.\n\nMr. Hen is 6. She sat.'

  it('reads a stock tree of plain text, and parts the sentences that it merges', () => {
    const stock = new ParseEnglish().parse(text)
    const story = storyFromTree(stock, text)
    const [page] = story.pages
    expect(story.pages).toHaveLength(1)
    expect(page?.blocks.map((it) => it.text)).toEqual(['The cat sat. The dog ran.', 'Mr. Hen is 6. She sat.'])
    expect(page?.blocks.map((it) => it.sentences.length)).toEqual([2, 2])
    const words = page?.blocks.flatMap((it) => it.sentences.flatMap((sentence) => sentence.words)) ?? []
    expect(words.map((it) => text.slice(it.start, it.end))).toEqual(words.map((it) => it.text))
  })

  it('reads joined letters as single ones', () => {
    const printed = 'A ﬁsh ran oﬀ.'
    const words = storyFromTree(new ParseEnglish().parse(printed), printed).pages[0]?.blocks[0]?.sentences[0]?.words
    expect(words?.map((it) => `${it.text} ${printed.slice(it.start, it.end)}`)).toEqual([
      'A A',
      'fish ﬁsh',
      'ran ran',
      'off oﬀ',
    ])
  })

  it('does not change the tree', () => {
    const stock = new ParseEnglish().parse(text)
    const before = JSON.stringify(stock)
    storyFromTree(stock, text)
    expect(JSON.stringify(stock)).toBe(before)
  })

  it('is what the plugin uses in a retext pipeline', () => {
    const processor = unified().use(retextEnglish).use(storyPlugin)
    const file = new VFile(text)
    const tree = processor.runSync(processor.parse(file), file) as Root
    expect(tree.data?.story?.pages[0]?.blocks).toHaveLength(2)
  })

  it('reads what stands in no paragraph, and leaves out what is for no child', () => {
    const source = 'Tam sat. \r\nA `pig` hid.\n\nIt ran.'
    const place = (from: number, to: number) => ({
      start: { line: 1, column: from + 1, offset: from },
      end: { line: 1, column: to + 1, offset: to },
    })
    const word = (from: number, to: number) => ({
      type: 'WordNode' as const,
      children: [{ type: 'TextNode' as const, value: source.slice(from, to), position: place(from, to) }],
    })
    const leaf = (type: 'PunctuationNode' | 'WhiteSpaceNode' | 'SourceNode', from: number, to: number) => ({
      type,
      value: source.slice(from, to),
      position: place(from, to),
    })
    const tree: Root = {
      type: 'RootNode',
      children: [
        {
          type: 'SentenceNode',
          children: [word(0, 3), leaf('WhiteSpaceNode', 3, 4), word(4, 7), leaf('PunctuationNode', 7, 8)],
        },
        leaf('WhiteSpaceNode', 8, 11),
        {
          type: 'SentenceNode',
          children: [
            ...[leaf('WhiteSpaceNode', 8, 11), word(11, 12), leaf('SourceNode', 13, 18), word(19, 22)],
            leaf('PunctuationNode', 22, 23),
          ],
        },
        {
          type: 'ParagraphNode',
          children: [{ type: 'SentenceNode', children: [word(25, 27), leaf('WhiteSpaceNode', 27, 28), word(28, 31)] }],
        },
        { type: 'SentenceNode', children: [word(0, 3)] },
      ],
    }
    const story = storyFromTree(tree, source)
    const blocks = story.pages[0]?.blocks ?? []
    expect(blocks.map((it) => it.text)).toEqual(['Tam sat. \nA hid.', 'It ran', 'Tam'])
    expect(
      blocks[0]?.sentences.flatMap((it) => it.words.map(({ text, start, end }) => `${text} ${start}-${end}`)),
    ).toEqual([...['Tam 0-3', 'sat 4-7', 'A 11-12', 'hid 19-22']])
    expect([blocks[0]?.start, blocks[0]?.end, story.pages[0]?.start, story.problems]).toEqual([0, 23, 0, []])
  })

  it('has no block for what is only for the adult, or for nobody', () => {
    const printed = 'Tam sat.\n\nhttps://tansy.org/hens\n\nMeg ran.'
    const { pages, problems } = storyFromTree(new ParseEnglish().parse(printed), printed)
    expect(pages[0]?.blocks.map((it) => printed.slice(it.start, it.end))).toEqual(['Tam sat.', 'Meg ran.'])
    expect([pages[0]?.start, pages[0]?.end, problems]).toEqual([0, printed.length, []])
    const only = 'www.tansy.org'
    const told = storyFromTree(new ParseEnglish().parse(only), only)
    expect([told.pages, told.problems.map((it) => it.code)]).toEqual([[], ['empty']])
    expect(told.problems[0]?.place).toMatchObject({ start: { offset: 0 }, end: { offset: only.length } })
  })

  it('gives no word a place that ends before it starts, whatever another program wrote', () => {
    const point = (offset: number) => ({ line: 1, column: offset + 1, offset })
    const text = { type: 'TextNode' as const, value: 'hen', position: { start: point(4), end: point(1) } }
    const sentence = { type: 'SentenceNode' as const, children: [{ type: 'WordNode' as const, children: [text] }] }
    const [page] = storyFromTree({ type: 'RootNode', children: [sentence] }, 'A b hen').pages
    expect(page?.blocks[0]?.sentences[0]?.words[0]).toMatchObject({ text: 'hen', start: 4, end: 4 })
  })

  it('takes trees without offsets, without places, and without text', () => {
    const noOffsets = JSON.parse(
      JSON.stringify(new ParseEnglish().parse(text), (key, value) => (key === 'offset' ? undefined : value)),
    )
    expect(storyFromTree(noOffsets, text).pages[0]?.blocks[1]?.sentences[0]?.words[0]?.start).toBe(27)
    const noPlaces = JSON.parse(
      JSON.stringify(new ParseEnglish().parse(text), (key, value) => (key === 'position' ? undefined : value)),
    )
    expect(storyFromTree(noPlaces, text).problems.map((it) => it.code)).toEqual(['empty'])
    expect(storyFromTree({ type: 'RootNode', children: [] }, '').pages).toEqual([])
  })
})
