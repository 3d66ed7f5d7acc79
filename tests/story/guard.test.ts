// What is turned away before the Markdown parser sees it, at the very limits: what stands just inside them is a story.

import { describe, expect, it } from 'vitest'
import { findNewObstacle, findObstacle, maxDepth, maxLength } from '../../src/story/guard.ts'
import { createHeldStory } from '../../src/story/held.ts'
import { readStory } from '../../src/story/index.ts'

const codeOf = (source: string) => findObstacle(source)?.code
const markedIn = (source: string) => {
  const found = findObstacle(source)
  return found && source.slice(found.start, found.end)
}

describe('length', () => {
  const longest = 'a'.repeat(maxLength)

  it('is read up to the limit', () => {
    expect(codeOf(longest)).toBeUndefined()
    expect(findObstacle(`${longest}a`)).toMatchObject({ code: 'too-large', start: maxLength, end: maxLength + 1 })
  })

  it('is told in millions, rounded up to a tenth', () => {
    expect(findObstacle(`${longest}a`)?.message).toBe(
      'This file has 10.5 million characters. The longest that is read has 10.4 million.',
    )
    expect(findObstacle(`${longest}${'a'.repeat(150_000)}`)?.message).toContain('10.7 million')
  })
})

describe('what is no text', () => {
  it.each([
    ['tabs and line ends of every kind', '\t\n\v\f\r'.repeat(9)],
    ['one strange character in twenty', `\u0001${'a'.repeat(19)}`],
    ['a lost letter in a sentence', 'A caf\uFFFD is hot and wet.'],
    ['letters of any script', '\u007F\uFFFC\uFFFE猫שלום'],
  ])('is not %s', (_, source) => {
    expect(findObstacle(source)).toBeUndefined()
  })

  it.each([
    ['a NUL anywhere', `${'a'.repeat(99)}\0b`, 99],
    ['more than one in twenty', `aa\u0001${'a'.repeat(16)}`, 2],
    ['a vertical line of escapes', 'a\u001Bb\u001Fc\u0008d\u000E', 1],
    ['lost letters', 'ab\uFFFDc\uFFFD', 2],
  ])('is %s', (_, source, start) => {
    expect(findObstacle(source)).toMatchObject({ code: 'binary', start, end: start + 1 })
  })
})

describe('nesting', () => {
  const nested = (count: number, open: string, close = ''): string => open.repeat(count) + 'a' + close.repeat(count)

  it.each([
    ['brackets', '[', ''],
    ['closed brackets', '[', ']'],
    ['links', '[a](', ''],
    ['closed links', '[a](', ')'],
    ['quotes', '>', ''],
    ['quotes with gaps', '> \t', ''],
    ['lists', '- ', ''],
    ['lists of other kinds', '* + ', ''],
    ['numbered lists', '1. ', ''],
    ['numbered lists with brackets', '123) ', ''],
    ['emphasis of two kinds', '*a _b ', ''],
  ])('of %s goes as deep as the limit', (_, open, close) => {
    const marks = open === '* + ' || open === '*a _b ' ? 2 : 1
    expect(codeOf(`A hen\n${nested(maxDepth / marks, open, close)}\n`)).toBeUndefined()
    expect(codeOf(`A hen\n${nested(maxDepth / marks + 1, open, close)}\n`)).toBe('too-deep')
  })

  it.each([
    ['*', 100],
    ['_', 500],
  ])('of emphasis in one run goes to %s of %i', (mark, most) => {
    expect(codeOf(`a ${mark.repeat(most)}a${mark.repeat(most)}`)).toBeUndefined()
    expect(codeOf(`a ${mark.repeat(most + 1)}a`)).toBe('too-deep')
    // A line of nothing else is a rule.
    expect(codeOf(mark.repeat(most + 1))).toBeUndefined()
    expect(codeOf(` ${mark} ${mark.repeat(most + 1)} \r\n`)).toBeUndefined()
  })

  it('of an indent is as deep as its lists may be', () => {
    expect(codeOf(`- a\n${' '.repeat(199)}- b`)).toBeUndefined()
    expect(codeOf(`- a\n${' '.repeat(200)}- b`)).toBe('too-deep')
    expect(codeOf(`- a\n${' '.repeat(300)}b`)).toBeUndefined()
  })

  it('ends with its line, its paragraph or where it is closed', () => {
    const half = '['.repeat(60)
    expect(codeOf(`${half}\n${half}`)).toBe('too-deep')
    expect(codeOf(`${half}\r${half}`)).toBe('too-deep')
    expect(codeOf(`${half}\n\n${half}`)).toBeUndefined()
    expect(codeOf(`${half}\n \t\n${half}`)).toBeUndefined()
    expect(codeOf(`${half}\n***\n${half}`)).toBeUndefined()
    expect(codeOf(`${half}${']'.repeat(60)}\n${half}`)).toBeUndefined()
    expect(codeOf(`${half}${']'.repeat(10)}\n${half}`)).toBe('too-deep')
    expect(codeOf(`${']'.repeat(50)}${'['.repeat(101)}`)).toBe('too-deep')
    expect(codeOf(`${')'.repeat(50)}${'[a]('.repeat(101)}`)).toBe('too-deep')
    const quotes = '> '.repeat(60)
    expect(codeOf(`${quotes}\n${quotes}`)).toBeUndefined()
  })

  it.each([
    // A rule stands alone on its line.
    ['a line that only ends in a mark of rules', `${'['.repeat(101)}*`],
    ['a line that only begins with one', `* ${'['.repeat(101)}`],
    ['a line of marks of two kinds', `*${'_'.repeat(501)}`],
    // https://spec.commonmark.org/0.31.2/#blank-line: nothing but spaces and tabs.
    ['a line of a blank that is no space', `${'['.repeat(60)}\n\u00A0\n${'['.repeat(60)}`],
    // A sign of a list at the end of its line is an item, empty as it is; one with a letter behind it is none.
    ['signs of lists to the end', `${'- * '.repeat(50)}-`],
    ['signs of lists behind a line end of the other kind', `${'- * '.repeat(50)}-\r\na`],
    ['signs of lists with tabs', `${'-\t*\t'.repeat(50)}+`],
    ['numbers of nine digits', '123456789. '.repeat(101)],
  ])('is not ended by %s', (_, source) => {
    expect(codeOf(source)).toBe('too-deep')
  })

  it.each([
    ['signs that a letter touches', `${'- * '.repeat(50)}-a`],
    ['numbers of ten digits', '1234567890. '.repeat(101)],
    ['signs in the text', `a ${'- * '.repeat(51)}`],
    ['a rule in an indent', `\t ${'-\t'.repeat(101)}`],
    ['lines that each open some', `${'> '.repeat(60)}\r\n\r\n${'> '.repeat(60)}`],
  ])('is not made by %s', (_, source) => {
    expect(codeOf(source)).toBeUndefined()
  })

  it('does not count what is escaped, or stands alone, or closes', () => {
    expect(codeOf('\\['.repeat(150))).toBeUndefined()
    expect(codeOf(`${'['.repeat(100)}\\[`)).toBeUndefined()
    expect(codeOf('[a] '.repeat(150))).toBeUndefined()
    expect(codeOf('[a](b) '.repeat(150))).toBeUndefined()
    expect(codeOf('a * b '.repeat(150))).toBeUndefined()
    expect(codeOf('*a* '.repeat(150))).toBeUndefined()
    expect(codeOf('a*b'.repeat(150))).toBeUndefined()
    expect(codeOf('_a _b c_ d_ '.repeat(150))).toBeUndefined()
    expect(codeOf('*a '.repeat(101))).toBe('too-deep')
    expect(codeOf(`${'*a '.repeat(100)}b*`)).toBeUndefined()
    expect(codeOf(`a* ${'*a '.repeat(101)}`)).toBe('too-deep')
  })

  it('is marked from the start of its line to the last of its letters', () => {
    const deep = '['.repeat(101)
    expect(markedIn(`A hen\r\n\r\n${deep} a  \r\nA pig`)).toBe(`${deep} a`)
    expect(markedIn(`A hen\n${'>'.repeat(101)}`)).toBe('>'.repeat(101))
    expect(findObstacle(deep)?.message).toContain('more than 100 deep')
  })

  it('that is let through is read to its bottom', () => {
    const { notes, problems } = readStory(`A hen\n\n${'> '.repeat(maxDepth)}a pig`)
    expect([notes.map(({ text }) => text), problems]).toEqual([['a pig'], []])
    const list = readStory(`${'- '.repeat(maxDepth / 2)}a pig`)
    expect([list.pages[0]?.blocks[0]?.text, list.problems]).toEqual(['a pig', []])
    expect(readStory(`${'*a _b '.repeat(50)}`).problems).toEqual([])
  })

  it('is turned away as well while a story is held', () => {
    const held = createHeldStory()
    expect(held.read('A hen sat.').problems).toEqual([])
    expect(held.read('['.repeat(101)).problems.map(({ code }) => code)).toEqual(['too-deep'])
    expect(held.read('A hen ran.').pages).toHaveLength(1)
  })
})

// What was let through is not looked at again: of the whole, only what stands between the blank lines around an edit can have become worse.
describe('the next version of a source that was let through', () => {
  const deep = '['.repeat(maxDepth + 1)
  const half = '['.repeat(60)
  /** An edit at `|`, where `put` comes. */
  const next = (marked: string, put: string, strange = 0) => {
    const start = marked.indexOf('|')
    const before = marked.replace('|', '')
    const source = marked.replace('|', put)
    const found = findNewObstacle({ source: before, strange }, source, {
      start,
      oldEnd: start,
      newEnd: start + put.length,
    })
    return 'code' in found ? source.slice(found.start, found.end) : found
  }

  it.each([
    ['before it', `${deep}\n\nTam |sat.`],
    ['behind it', `Tam |sat.\n\n${deep}`],
    ['on both sides', `${deep}\n\n|Tam sat.\nA hen.\n\n${deep}`],
    ['with line ends of the other kind', `${deep}\r\n\r\nTam sat.\r\nA |hen.\r\n\r\n${deep}`],
    ['with both kinds', `${deep}\n\nA hen.\r\n\r\nTam |sat.\n\n${deep}`],
    ['with both kinds, the other way', `${deep}\r\n\r\nA hen.\n\nTam |sat.\r\n\r\n${deep}`],
  ])('is not read %s', (_, marked) => {
    expect(next(marked, 'x')).toEqual({ source: marked.replace('|', 'x'), strange: 0 })
  })

  it.each([
    ['in the first line', '|', deep, deep],
    ['in the only line', 'A |hen', ` ${deep}`, `A  ${deep}hen`],
    ['in the line before', `${half}\nTam |sat.`, half, `Tam ${half}sat.`],
    ['in the line behind', `A hen.\n\n|Tam sat.\n${half}`, half, half],
    ['where two texts are joined', `A hen.\n\n${half}\n|\n${half}\n\nTam sat.`, 'b', half],
    ['behind another text', `A hen.\n\nTam |sat.\n\nIt hid.`, deep, `Tam ${deep}sat.`],
    ['at the very end', 'A hen.\n\n|', deep, deep],
    ['between two line ends', 'A hen.\n|\nTam sat.', deep, deep],
  ])('is read %s', (_, marked, put, expected) => {
    expect(next(marked, put)).toBe(expected)
  })

  it('is read from the line on in which a letter went', () => {
    const source = `A hen.\n\n${'- * '.repeat(maxDepth / 2)}-`
    const at = source.length
    const found = findNewObstacle({ source: `${source}a`, strange: 0 }, source, {
      start: at,
      oldEnd: at + 1,
      newEnd: at,
    })
    expect(found).toMatchObject({ code: 'too-deep', start: 8, end: at })
  })

  it('has as many strange characters as there were, and those that came', () => {
    // Counted where the text differs and nowhere else: nine are said to stand in the rest.
    expect(next(`${'a'.repeat(999)}|`, '\u0001\u0002', 9)).toMatchObject({ strange: 11 })
    const gone = findNewObstacle({ source: `a\u0001\u0002${'b'.repeat(99)}`, strange: 2 }, `a${'b'.repeat(99)}`, {
      ...{ start: 1, oldEnd: 3, newEnd: 1 },
    })
    expect(gone).toMatchObject({ strange: 0 })
  })

  it.each([
    ['a NUL', 'Tam |sat.', '\0', 'binary'],
    ['too many strange characters', 'Tam |sat.', '\u0001', 'binary'],
    ['too much', `${'a'.repeat(maxLength)}|`, 'a', 'too-large'],
  ])('is turned away with %s', (_, marked, put, code) => {
    const start = marked.indexOf('|')
    const change = { start, oldEnd: start, newEnd: start + put.length }
    const before = { source: marked.replace('|', ''), strange: 0 }
    expect(findNewObstacle(before, marked.replace('|', put), change)).toMatchObject({ code })
  })
})
