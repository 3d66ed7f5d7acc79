// Switches in comments: what they silence, what is misspelt in them, what they are no use for.

import { describe, expect, it } from 'vitest'
import { readSwitches } from '../../../src/lint/switches/directives.ts'
import type { Story, StoryComment } from '../../../src/story/types.ts'

const RULES = ['no-irregular-word', 'no-numeral', 'max-sentence-words', 'no-untaught-mark']

/** A story of paragraphs between blank lines, with its comments. */
function toStory(source: string): Story {
  const blocks = [...source.matchAll(/(?<=^|\n\n|-->\n)(?!<!--)[^\n]+(?:\n[^\n]+)*/g)].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
  }))
  const comments = [...source.matchAll(/<!--\s*([\s\S]*?)\s*-->/g)].map((match): StoryComment => {
    const [start, end] = [match.index, match.index + match[0].length]
    const line = source.slice(source.lastIndexOf('\n', start - 1) + 1, start)
    const valueStart = start + match[0].indexOf(match[1] ?? '', 4)
    const nextBlock = blocks.find((block) => block.start >= end)
    return { start, end, value: match[1] ?? '', valueStart, inline: line.trim() !== '', nextBlock }
  })
  return {
    source,
    comments,
    frontMatter: undefined,
    title: undefined,
    pages: [],
    pictures: [],
    notes: [],
    problems: [],
  }
}

/** A message on each number and each word `won`, in order of place. */
function toMessages(source: string) {
  const text = source.replace(/<!--[\s\S]*?-->/g, (comment) => ' '.repeat(comment.length))
  return [...text.matchAll(/\d+|\bwon\b/gi)].map(({ 0: word, index }) => ({
    ...{ rule: /\d/.test(word) ? 'no-numeral' : 'no-irregular-word', word, start: index, end: index + word.length },
  }))
}

function run(source: string, ran: readonly string[] = RULES) {
  const filtered = readSwitches(toStory(source), RULES).filter(toMessages(source), ran)
  const place = (one: { start: number; end: number }) => source.slice(one.start, one.end)
  return {
    kept: filtered.kept.map(({ word }) => word).join(' '),
    silenced: filtered.silenced,
    unused: filtered.unused.map((one) => `${place(one)} → ${one.message}`),
    problems: filtered.problems.map((one) => `${place(one)} → ${one.message}`),
  }
}

describe('what a switch silences', () => {
  it.each([
    ['the next block', '10\n\n<!-- battledore ignore -->\n20 won\n30\n\n40', '10 40'],
    ['blank lines between', '<!-- battledore ignore -->\n\n\n20 won\n\n30', '30'],
    ['one rule of the next block', '<!-- battledore ignore no-numeral -->\n\n20 won', 'won'],
    ['one word, in any case', '<!-- battledore ignore "won" -->\n\n20 won Won', '20'],
    ['a name only with its capital', '<!-- battledore ignore "Won" -->\n\n20 won Won', '20 won'],
    ['a rule and a word', '<!-- battledore ignore no-numeral “20” -->\n\n20 30 won', '30 won'],
    ['its own line', '10\n20 won <!-- battledore ignore-line -->\n30', '10 30'],
    ['a rule on its own line', '20 won <!-- battledore ignore-line no-irregular-word -->', '20'],
    ['a region', '10\n\n<!-- battledore disable -->\n\n20\n\n30\n\n<!-- battledore enable -->\n\n40', '10 40'],
    ['to the end of the file', '10\n\n<!-- battledore disable no-numeral -->\n\n20 won\n\n30', '10 won'],
    [
      'all but one rule',
      '<!-- battledore disable -->\n\n20 won\n\n<!-- battledore enable no-numeral -->\n\n30 won',
      '30',
    ],
    ['the whole file', '10\n\nwon\n\n<!-- battledore disable-file no-numeral -->', 'won'],
    ['a block of one letter', '<!-- battledore ignore -->\n\n6\n\n20', '20'],
    ['the last word of a block', '<!-- battledore ignore -->\n\nwon 6\n\n20', '20'],
    ['with a colon', '<!-- battledore: ignore -->\n\n20', ''],
    ['two words', "<!-- battledore ignore 'won', ‘20’ -->\n\n20 30 won", '30'],
    ['a line at the end of the file', '10\n<!-- battledore ignore-line --> 20', '10'],
    [
      'the last region that is about it',
      '<!-- battledore disable -->\n\n20 won\n\n<!-- battledore enable "won" -->\n\n30 Won\n\n<!-- battledore disable no-irregular-word -->\n\n40 won',
      'Won',
    ],
    ['with a hyphen', '<!-- battledore-ignore -->\n\n20', ''],
    ['several lines', '<!--\n  battledore ignore\n  no-numeral, no-irregular-word\n  -- the bus\n-->\n\n20 won', ''],
    ['nothing, in a comment for others', '<!-- ignore -->\n\n20\n\n<!-- the battledore -->', '20'],
  ])('%s', (_, source, kept) => {
    expect(run(source)).toMatchObject({ kept, unused: [], problems: [] })
  })

  it.each(['--', '—'])('hands on the reason after %s', (dash) => {
    const { silenced } = run(
      `<!-- battledore ignore no-numeral ${dash} the number of the bus: no-nonsense "10" -->\n\n20`,
    )
    expect(silenced).toMatchObject([{ message: { word: '20' }, reason: 'the number of the bus: no-nonsense "10"' }])
  })
})

describe('a misspelt switch', () => {
  it.each([
    ['<!-- battledore ignroe -->', 'ignroe → `ignroe` is not something a switch can do. Did you mean `ignore`?'],
    [
      '<!-- battledore disable-next-line -->',
      'disable-next-line → `disable-next-line` is not something a switch can do. Did you mean `ignore`?',
    ],
    [
      '<!-- battledore please -->',
      'please → `please` is not something a switch can do. It can be ignore, ignore-line, disable, enable or disable-file.',
    ],
    [
      '<!-- battledore -->',
      'battledore → This switch does not say what to do: ignore, ignore-line, disable, enable or disable-file.',
    ],
    ['<!-- batledore ignore -->', 'batledore → `batledore` switches nothing. Did you mean `battledore`?'],
    [
      '<!-- battledore ignore no-numerals -->',
      'no-numerals → There is no rule `no-numerals`. Did you mean `no-numeral`?',
    ],
    [
      '<!-- battledore ignore no-iregular -->',
      'no-iregular → There is no rule `no-iregular`. Did you mean `no-irregular-word`?',
    ],
    [
      '<!-- battledore ignore no-swans -->',
      'no-swans → There is no rule `no-swans`. `battledore check --print-config STORY` shows all rules.',
    ],
    [
      '<!-- battledore ignore min-words -->',
      'min-words → There is no rule `min-words`. `battledore check --print-config STORY` shows all rules.',
    ],
    ['<!-- battledore ignore won -->', 'won → There is no rule `won`. Put a word in quotes: "won".'],
  ])('%s is told at its place and silences nothing', (comment, problem) => {
    expect(run(`${comment}\n\n20 won`)).toMatchObject({ kept: '20 won', problems: [problem], unused: [] })
  })

  // As ESLint, Prettier, markdownlint and others call it.
  it.each([
    ['disable-line', 'ignore-line'],
    ['disable-next', 'ignore'],
    ['disable-next-line', 'ignore'],
    ['enable-file', 'enable'],
    ['ignore-end', 'enable'],
    ['ignore-file', 'disable-file'],
    ['ignore-next', 'ignore'],
    ['ignore-next-line', 'ignore'],
    ['ignore-start', 'disable'],
    ['off', 'disable'],
    ['on', 'enable'],
    ['skip', 'ignore'],
  ])('in the words of another linter is told with ours: %s', (theirs, ours) => {
    const { problems } = run(`<!-- battledore ${theirs} -->\n\n20`)
    expect(problems).toEqual([`${theirs} → \`${theirs}\` is not something a switch can do. Did you mean \`${ours}\`?`])
  })

  it.each([
    // Not ours, or a word of the comment.
    '<!-- "battledore" ignore -->',
    '<!-- swans ignore -->',
    '<!-- batledore swims -->',
    '<!-- -->',
  ])('%s is no switch', (comment) => {
    expect(run(`${comment}\n\n20`)).toMatchObject({ kept: '20', problems: [], unused: [] })
  })

  it('still silences what is spelt well beside it', () => {
    const { kept, problems } = run('<!-- battledore ignore no-numeral no-iregular-word -->\n\n20 won')
    expect({ kept, problems }).toMatchObject({ kept: 'won', problems: [expect.stringMatching(/^no-iregular-word/)] })
  })
})

describe('an unused switch', () => {
  it.each([
    ['<!-- battledore ignore -->\n\nA hen.', ['<!-- battledore ignore --> → This switch silences nothing.']],
    ['20\n\n<!-- battledore ignore -->', ['<!-- battledore ignore --> → This switch silences nothing.']],
    [
      '<!-- battledore ignore-line -->\n20',
      [
        '<!-- battledore ignore-line --> → This switch silences nothing. It stands on a line of its own: `ignore` is for the next block.',
      ],
    ],
    [
      '<!-- battledore ignore no-numeral no-irregular-word -->\n\n20',
      ['no-irregular-word → This switch silences nothing for `no-irregular-word`.'],
    ],
    ['<!-- battledore ignore "won" "hen" -->\n\nwon', ['"hen" → This switch silences nothing for `hen`.']],
    [
      '<!-- battledore enable -->\n\n20',
      ['<!-- battledore enable --> → Nothing is disabled here that this switch could enable.'],
    ],
    ['<!-- battledore disable -->\n\n20\n\n<!-- battledore enable no-numeral -->\n\nA hen.', []],
  ])('%j', (source, unused) => {
    expect(run(source).unused).toEqual(unused)
  })

  it('is not told of a rule that did not run', () => {
    const source =
      '<!-- battledore ignore no-numeral max-sentence-words -->\n\nA hen.\n\n<!-- battledore ignore no-numeral -->'
    expect(run(source, ['no-irregular-word']).unused).toEqual([])
    expect(run(source, ['max-sentence-words']).unused).toEqual([
      'max-sentence-words → This switch silences nothing for `max-sentence-words`.',
    ])
    expect(run('<!-- battledore ignore -->\n\nA hen.', []).unused).toEqual([])
  })
})
