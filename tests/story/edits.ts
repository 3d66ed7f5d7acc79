// Edits by chance: what somebody types, cuts and pastes, with all that reaches across a Markdown source among it.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { ROOT } from '../console.ts'
import { markdown } from './generated.ts'

export interface Edit {
  /** From 0 to 1, of the length of the text. */
  readonly at: number
  /** Whether it is at the start of the line that stands there. */
  readonly isAtLine?: boolean
  /** How many letters go. */
  readonly cut: number
  readonly put: string
}

export function applyEdit(source: string, { at, isAtLine, cut, put }: Edit): string {
  const there = Math.floor(at * (source.length + 1))
  const from = isAtLine ? source.lastIndexOf('\n', there - 1) + 1 : there
  return source.slice(0, from) + put + source.slice(from + cut)
}

const typed = fc.constantFrom(...'aestT .,!?-\'"’*_#>&;\\<[]()1 \n'.split(''))

/** What is pasted, or reaches further than its own line. */
const pasted = fc.constantFrom(
  ...['\n\n', '\n\n\n', '\r\n', '\r', '\t', '    ', '  \n', '\uFEFF', '\u00AD'],
  ...['---', '\n\n---\n\n', '\n---\n', '\n##\n', '\n\n## Two\n\n', '# Title\n\n', '- ', '1. ', '> ', '***'],
  ...[
    '```',
    '\n\n```\n\n',
    '~~~',
    '\n\n[red]: x.png "red"\n\n',
    '[^1]',
    '\n\n[^1]: A note.\n\n',
    '![pig][red]',
    '![hen](hen.png)',
  ],
  ...[
    '<!-- ',
    ' -->',
    '<!-- note -->',
    '\n\n<!--\n\n',
    '<div>',
    '</div>',
    '<script>',
    '<br>',
    '<pre>\n\n',
    '<?',
    '<b>',
  ],
  ...['---\nstep: pink-4\n---\n\n', '---\ntitle: Hens\n', '\nnames: [Zub]\n', 'pages: rule\n'],
  ...[
    'Text: Ann Bell',
    '\n\nWritten by Ann Bell.\n\nPictures by Tom Hill.\n',
    '* License: [CC-BY]\n* Text: Ann\n',
    '© 2024 Ann Bell',
  ],
  ...[
    'The cat sat. ',
    'Tam',
    ' Zub ',
    'der und das ist nicht ein ',
    'שלום ',
    'Did he read it? ',
    'They will read. ',
    '& ',
    '&amp;',
  ],
)

/** What makes a difference to rules: switches, names, words that are told once, words with two spoken forms. */
const told = fc.constantFrom(
  ...[
    '<!-- battledore ignore -->\n\n',
    ' <!-- battledore ignore-line "zub" -->',
    '\n\n<!-- battledore disable no-unknown-word -->\n\n',
    '\n\n<!-- battledore enable -->\n\n',
    '<!-- battledore disable-file no-untaught-mark -->\n',
    '<!-- battledroe ignore -->',
    ' the zub sat. ',
    ' Then Zub and Old Ned sat. ',
    ' a Flig ran to flig. ',
    ' my freind had a raed. ',
    ' I live in the live wind and wind the lead. ',
    ' She read it. ',
    ' One night in May. ',
    ' The zarpoz is 6. ',
    '; it ran! ',
  ],
)

const edit: fc.Arbitrary<Edit> = fc.record({
  at: fc.oneof(fc.double({ min: 0, max: 0.9999, noNaN: true }), fc.constantFrom(0, 0.9999)),
  isAtLine: fc.boolean(),
  cut: fc.oneof(
    { weight: 6, arbitrary: fc.constant(0) },
    fc.integer({ min: 0, max: 4 }),
    fc.integer({ min: 0, max: 200 }),
  ),
  put: fc.oneof({ weight: 3, arbitrary: typed }, { weight: 3, arbitrary: pasted }, told, fc.constant('')),
})

const stories = readdirSync(join(ROOT, 'fixtures', 'stories'))
  .filter((name) => name.endsWith('.md'))
  .map((name) => readFileSync(join(ROOT, 'fixtures', 'stories', name), 'utf8'))

export interface Session {
  /** Each is made of the one before by one edit. */
  readonly versions: readonly string[]
}

/** A story, and edits one after another. Long ones are cut into several runs for the parser. */
export const session: fc.Arbitrary<Session> = fc
  .record({
    source: fc.oneof(
      fc.constantFrom(...stories),
      markdown,
      fc
        .array(fc.oneof(fc.constantFrom(...stories), markdown), { minLength: 2, maxLength: 4 })
        .map((all) => all.join('\n\n')),
    ),
    edits: fc.array(edit, { minLength: 1, maxLength: 20 }),
  })
  .map(({ source, edits }) => {
    const versions = [source]
    for (const one of edits) versions.push(applyEdit(versions.at(-1) ?? '', one))
    return { versions }
  })

/** What reaches across blank lines, or changes what a line before or after it is. */
const traps = [
  ...['```', '~~~', '<!--', '-->', '<!-- note -->', '<script>', '</script>', '<div>', '<?', '?>', '<pre>', '</pre>'],
  ...[
    '[red]: x.png "red"',
    '![pig][red]',
    'A [pig][red] sat.',
    '[^1]: A note.',
    '---',
    '---\nstep: pink-4',
    '***',
    '##',
    '# Hens',
  ],
  ...[
    '    ',
    '  ',
    '\t',
    '- ',
    '- a',
    '1. a',
    '> ',
    '> a',
    '',
    'Text: Ann Bell',
    'Written by Ann Bell.',
    'Credits',
    '## Credits',
  ],
  ...['Tam *sat', 'on* it.', 'Tam &amp; Meg', '\r', '\uFEFF', 'names: [Tam]', 'pages: rule', '6 hens'],
]

/** Blocks of each kind, between which traps are set. */
const plainStory = [
  ...[
    '# Hens',
    'Tam sat on a hen.',
    '- a *red* hen\n\n- a pig',
    'The **hen** ran.',
    'Tam ran.',
    '> For you.',
    'Meg had 6 pigs.',
  ],
  ...['6 pigs ran.', '---', 'It was wet.', '* a\n* b', 'The end of it.'],
]

/** A few traps set and taken out again, line by line, so that one meets the other. */
export const trapSession: fc.Arbitrary<Session> = fc
  .tuple(
    fc.array(fc.constantFrom(...plainStory), { minLength: 3, maxLength: 12 }),
    fc.array(fc.constantFrom(...traps), { minLength: 1, maxLength: 3 }),
    fc.array(
      fc.tuple(
        fc.double({ min: 0, max: 0.9999, noNaN: true }),
        fc.nat(),
        fc.constantFrom('', '\n', '\n\n'),
        fc.boolean(),
      ),
      {
        minLength: 2,
        maxLength: 14,
      },
    ),
  )
  .map(([blocks, chosen, steps]) => {
    const source = `${blocks.join('\n\n')}\n`
    const versions = [source]
    for (const [at, pick, end, isOut] of steps) {
      const text = versions.at(-1) ?? ''
      const trap = chosen[pick % chosen.length] + end
      const found = text.indexOf(trap, Math.floor(at * text.length))
      const isCut = isOut && found >= 0 && trap !== ''
      const edit = { at: at * at < 0.01 ? 0 : at, isAtLine: true, cut: 0, put: trap }
      versions.push(isCut ? text.slice(0, found) + text.slice(found + trap.length) : applyEdit(text, edit))
    }
    return { versions }
  })
