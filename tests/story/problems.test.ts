// What Markdown reads otherwise than its writer may have meant: told with its place, and no reason not to check a story.

import { describe, expect, it } from 'vitest'
import type { Problem } from '../../src/problem/index.ts'
import { readStory } from '../../src/story/index.ts'
import { expectLinear } from '../growth.ts'
import { pageTexts, wordTexts } from './helpers.ts'

/** Each problem, with the text that it points at. */
const find = (source: string) =>
  readStory(source).problems.map(({ code, place }) => {
    const marked = source.slice(place?.start.offset, place?.end.offset)
    return `${code}: ${marked.replaceAll('\r', '')}`
  })

describe('dashes right below a line of text', () => {
  it.each([
    ['a line', 'Tam sat.\n---\nA pig', ['---']],
    ['two lines', 'Tam sat.\nA hen\n-----  \nA pig', ['-----']],
    ['CRLF and a byte order mark', '\uFEFFTam sat.\r\n ---\r\nA pig', ['---']],
    ['a list', '- Tam sat.\n  ---\n- A pig', ['---']],
    ['the end', 'Tam sat.\n-', ['-']],
    ['a line that starts like a heading', '#tam sat\n--\n', ['--']],
    ['each of two', 'Tam\n---\nMeg\n---\nSid', ['---', '---']],
  ])('make a heading: %s', (_, source, dashes) => {
    expect(find(source)).toEqual(dashes.map((it) => `dashes-below-text: ${it}`))
  })

  it.each([
    ['a blank line', 'Tam sat.\n\n---\n\nA pig'],
    ['a heading', '# Tip\n---\nA pig'],
    ['a wish for a heading', 'Tip\n===\n\nA pig'],
    ['a picture', '![a hen](hen.png)\n---\nA pig'],
    ['a comment', '<!-- a -->\n---\nA pig'],
    ['a comment and text', '<!-- a --> Tam sat.\n---\nA pig'],
    ['an aside', '> Tam sat.\n> ---\n\nA pig'],
    ['front matter', '---\ntitle: Tip\n---\nA pig'],
    ['a dash in a heading', '## Tip -\n\n## Top\n\nA pig ---'],
    ['code', '```\nTam\n---\n```\n\nA pig'],
  ])('are no problem: %s', (_, source) => {
    expect(find(source)).toEqual([])
  })

  it('begin no page, as Markdown has it, but do below a picture', () => {
    expect(pageTexts('A hen\n---\nA pig')).toEqual(['A hen A pig'])
    expect(pageTexts('A hen\n\n![x](y)\n---\nA pig')).toEqual(['A hen', 'A pig'])
  })
})

describe('text in a block of HTML', () => {
  it.each([
    ['a block', 'A hen\n\n<div>\nThe knight won.\n</div>\n\nA pig', ['The knight won.']],
    ['one line', 'A hen\n\n<p align="center">The night won.</p>\n\nA pig', ['The night won.']],
    [
      'between tags',
      'A hen\n\n<div>\n  The <b>night</b>\n  <!-- a --> won\n</div>\n\nA pig',
      ['The <b>night</b>\n  <!-- a --> won'],
    ],
    ['each block', 'A hen\n\n<div>\nOne\n\nA pig\n\n<p>Two</p>\n</div>', ['One', 'Two']],
    ['after a comment', 'A hen\n\n<!-- a --> <p>won</p>\n\nA pig', ['won']],
    ['in other letters', 'A hen\n\n<p>3 &lt; 5 шар</p>\n\nA pig', ['3 &lt; 5 шар']],
    ['beside a bare mark', 'A hen\n\n<p>A < B & C</p>\n\nA pig', ['A < B & C']],
    ['in a list', 'A hen\n\n- <div>won</div>\n\nA pig', ['won']],
    ['after code', 'A hen\n\n<style>b {}</style>won\n\nA pig', ['won']],
  ])('is told once: %s', (_, source, texts) => {
    expect(find(source)).toEqual(texts.map((it) => `text-in-html: ${it}`))
    expect(wordTexts(source)).toEqual(['A', 'hen', 'A', 'pig'])
  })

  it.each([
    ['comments', '<div>\n<!-- adult -->\n</div>'],
    ['tags around text that is read', '<div align="center">\n\nA hen\n\n</div>'],
    ['tags in a line', 'A <b>hen</b> hid<br>up'],
    ['pictures', '<p align="center"><img src="hen.png" alt="a > b, it\'s a hen"></p>'],
    ['breaks and gaps', '<br>\n\n<hr/>\n\n<p>&nbsp;&#160;</p>\n\n<p> … </p>'],
    ['scripts and styles', '<script>\nlet a = "b"\n\nb()\n</script>\n\n<STYLE>b { c: d }</STYLE>'],
    ['what no browser shows', '<!DOCTYPE html>\n\n<?xml version="1.0"?>'],
    ['what is for the adult', '> <div>adult</div>'],
  ])('is not: %s', (_, source) => {
    expect(find(`A pig\n\n${source}\n`)).toEqual([])
  })

  it.each([
    ['open tags', '<div "'],
    ['open comments', '<div>\n<!--\n\n'],
    ['references', '<p>&amp'],
    ['scripts', '<div><script>'],
  ])('is looked for in time that grows no faster than the text: %s', (_, piece) => {
    expectLinear((size) => readStory(`A hen\n\n<div>${piece.repeat(size)}`), 5000)
  })
})

const toSeverity = ({ severity }: Problem): string => severity

describe('a problem', () => {
  it.each([
    ['Tam\n---', 'dashes-below-text', /heading of the text above it.*blank line before it.*`##`/],
    ['A\n\n<p>won</p>', 'text-in-html', /not read or counted.*`>` if it is for the adult/],
    ['A\n\n<!-- open', 'open-comment', /never closed with `-->`/],
    ['> A hen', 'empty', /no text for a child to read/],
    ['A\0', 'binary', /not a text file in UTF-8/],
    ['['.repeat(101), 'too-deep', /more than 100 deep/],
  ])('of %j says what is wrong and what to do', (source, code, message) => {
    const [problem] = readStory(source).problems
    expect(problem?.code).toBe(code)
    expect(problem?.message).toMatch(message)
  })

  it('comes in order of place', () => {
    expect(find('<p>won</p>\n\nTam\n---\n\n<p>two</p>\n\n<!-- open')).toEqual([
      ...['text-in-html: won', 'dashes-below-text: ---', 'text-in-html: two', 'open-comment: <!--'],
    ])
    expect(find('A &amp;\n-\n\n- B\n  --')).toEqual(['dashes-below-text: -', 'dashes-below-text: --'])
  })

  it('of several comments marks the one that is open', () => {
    expect(find('A hen\n\n<!-- a --> <!-- b -->  <!-- open\n\nA pig')).toEqual(['open-comment: <!--'])
    const { problems } = readStory('A hen\n\n<!-- a --> <!-- open')
    expect(problems[0]?.place?.start.offset).toBe(18)
  })

  it('that is a warning is no obstacle', () => {
    expect(readStory('Tam\n---\n\n<p>won</p>').problems.map(toSeverity)).toEqual(['warning', 'warning'])
    expect(readStory('A hen\n\n<!-- open').problems.map(toSeverity)).toEqual(['error'])
    expect(readStory('').problems.map(toSeverity)).toEqual(['error'])
  })
})
