import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { describe, expect, it } from 'vitest'
import { readYamlNode } from '../../src/story/front-matter.ts'
import { readStory, remarkFrontmatter } from '../../src/story/index.ts'

const find = (source: string) =>
  readStory(source).comments.map((it) => ({
    value: it.value,
    inline: it.inline,
    next: it.nextBlock && source.slice(it.nextBlock.start, it.nextBlock.end),
  }))

describe('comments', () => {
  it('know the next block', () => {
    expect(find('<!-- one -->\n\nA hen\n\n<!-- two -->\nA pig\n\n<!-- three -->')).toEqual([
      { value: 'one', inline: false, next: 'A hen' },
      { value: 'two', inline: false, next: 'A pig' },
      { value: 'three', inline: false, next: undefined },
    ])
  })

  it('know whether text shares their line', () => {
    expect(find('A hen <!-- one --> hid\n<!-- two -->\nA pig')).toEqual([
      { value: 'one', inline: true, next: 'A pig' },
      { value: 'two', inline: false, next: 'A pig' },
    ])
    expect(find('- <!-- one -->\n- A hen\n\n<!-- two --> <!-- three -->\n\n<!-- four --> A pig')).toEqual([
      { value: 'one', inline: false, next: 'A hen' },
      { value: 'two', inline: false, next: 'A pig' },
      { value: 'three', inline: false, next: 'A pig' },
      { value: 'four', inline: true, next: 'A pig' },
    ])
  })

  it.each(['1. ', '12) ', '* ', '+ ', '- ', '> ', '> - ', '  ', '\uFEFF'])(
    'share their line with no text behind %j',
    (lead) => {
      expect(find(`${lead}<!-- one -->\n\nA hen`)[0]?.inline).toBe(false)
      expect(find(`${lead}<!-- one --> <!-- two -->  \n\nA hen`).map((it) => it.inline)).toEqual([false, false])
      expect(find(`${lead}<!-- one --> hid\n\nA hen`)[0]?.inline).toBe(true)
    },
  )

  it('share their line with what stands before or behind them, however far', () => {
    const far = ' '.repeat(1000)
    expect(find(`A${far}<!-- one -->${far}\nA`)[0]?.inline).toBe(true)
    expect(find(`A\n${'<!-- x -->'.repeat(300)}\nA`).map((it) => it.inline)).toEqual(
      Array.from({ length: 300 }, () => false),
    )
    expect(find(`A${' hen'.repeat(900)} <!-- one -->\nA`)[0]?.inline).toBe(true)
    expect(find(`A\n<!-- one -->${' hen'.repeat(900)}`)[0]?.inline).toBe(true)
    expect(find('A 6. <!-- one -->')[0]?.inline).toBe(true)
    expect(find('A\r<!-- one -->\rA')[0]?.inline).toBe(false)
  })

  it('skip what a child does not read', () => {
    expect(find('<!-- one -->\n\n> adult <!-- two -->\n\n![x](y)\n\n`code <!-- no -->`\n\nA hen')).toEqual([
      { value: 'one', inline: false, next: 'A hen' },
      { value: 'two', inline: true, next: 'A hen' },
    ])
  })

  it('may run over lines and stand in emphasis, headings and lists', () => {
    expect(find('<!--\n  one\n  two\n-->\n\n# A *<!-- three --> hen*').map((it) => it.value)).toEqual([
      'one\n  two',
      'three',
    ])
  })

  it('give the place of their value', () => {
    const source = '\uFEFFA hen\r\n\r\n<!--  one two -->\r\n'
    const comment = readStory(source).comments[0]
    expect(source.slice(comment?.start, comment?.end)).toBe('<!--  one two -->')
    expect(source.slice(comment?.valueStart).startsWith('one two')).toBe(true)
  })

  it('that are never closed are a problem', () => {
    const story = readStory('A hen\n\n<!-- one\n\nA pig')
    expect(story.problems.map((it) => [it.code, it.place?.start.offset, it.place?.end.offset])).toEqual([
      ['open-comment', 7, 11],
    ])
  })
})

describe('front matter', () => {
  it.each([
    ['LF', '---\ntitle: Tip\nstep: pink-1\n---\n\nA hen'],
    ['CRLF', '---\r\ntitle: Tip\r\nstep: pink-1\r\n---\r\n\r\nA hen'],
    ['a byte order mark', '\uFEFF---\ntitle: Tip\nstep: pink-1\n---\n\nA hen'],
  ])('is found with its place: %s', (_, source) => {
    const { frontMatter, pages } = readStory(source)
    expect(frontMatter?.value.replaceAll('\r', '')).toBe('title: Tip\nstep: pink-1')
    expect(source.slice(frontMatter?.valueStart).startsWith('title')).toBe(true)
    expect(source.slice(frontMatter?.start, frontMatter?.end)).toMatch(/^---\r?\ntitle[\s\S]*---$/)
    expect(pages).toHaveLength(1)
  })

  // Reference: micromark-extension-frontmatter in remark-parse.
  it.each([
    '---\na: b\n---',
    '---\na: b\n---\n\nA hen',
    '---\ra: b\r---\rA hen',
    '---\r\na: b\r\n---\r\nA hen',
    '--- \na\n---\t\nA hen',
    '---\t \r\na\r\n--- \r\nA hen',
    '---\n---',
    '---\n\na\n\n---\n',
    '---\na\nb\n--- c\n---\n\n---\nd\n---',
    '\uFEFF---\na\n---\nA hen',
    '---',
    '----\na\n---',
    ' ---\na\n---',
    'a\n---\nb\n---',
    '---\na\n----',
    '---\na\n ---',
    '---\na\n---b',
    '---a\nb\n---',
  ])('is read as remark-parse reads it: %j', (source) => {
    const first = unified().use(remarkParse).use(remarkFrontmatter).parse(source).children[0]
    const found = readYamlNode(source)
    if (first?.type !== 'yaml') {
      expect(found).toBeUndefined()
      return
    }
    // Its parser drops a byte order mark without counting it.
    const mark = source.startsWith('\uFEFF') ? 1 : 0
    const move = <P extends { offset?: number | undefined }>(point: P) => ({
      ...point,
      offset: (point.offset ?? 0) + mark,
    })
    expect(found?.node.value).toBe(first.value)
    expect(found?.node.position).toEqual({
      start: move(first.position?.start ?? {}),
      end: move(first.position?.end ?? {}),
    })
    expect(found?.end).toBe(found?.node.position?.end.offset)
  })

  it.each([
    '---\na: b\n---\nA',
    '---\ra: b\r---\rA',
    '---\r\na: b\r\n---\r\nA',
    '--- \na: b\n---',
    '\uFEFF---\n\r\na: b\n---',
  ])('tells where its value begins: %j', (source) => {
    const { frontMatter } = readStory(source)
    expect(
      source.slice(frontMatter?.valueStart, (frontMatter?.valueStart ?? 0) + (frontMatter?.value.length ?? 0)),
    ).toBe(frontMatter?.value)
    expect(frontMatter?.value).toContain('a: b')
  })

  it('may be empty or missing', () => {
    expect(readStory('---\n---\nA hen').frontMatter?.value).toBe('')
    expect(readStory('A hen').frontMatter).toBeUndefined()
    expect(readStory('A hen\n\n---\na: b\n---\n').frontMatter).toBeUndefined()
  })
})
