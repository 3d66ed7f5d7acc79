import { describe, expect, it } from 'vitest'
import { readStory } from '../../src/story/index.ts'

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

  it('may be empty or missing', () => {
    expect(readStory('---\n---\nA hen').frontMatter?.value).toBe('')
    expect(readStory('A hen').frontMatter).toBeUndefined()
    expect(readStory('A hen\n\n---\na: b\n---\n').frontMatter).toBeUndefined()
  })
})
