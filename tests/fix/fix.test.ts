// Fixing a story: only the words that were decided on change, all else stays byte for byte.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rules } from '../../rules/index.ts'
import { checkStory } from '../../src/check/check-story.ts'
import { isChecked } from '../../src/check/result.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import {
  applyDecisions,
  applyEdits,
  decideByFirst,
  type Finding,
  toDiffPlace,
  toFindings,
  toUnifiedDiff,
} from '../../src/fix/index.ts'
import { toProblemLine } from '../../src/problem/index.ts'
import { readStory, type Word } from '../../src/story/index.ts'

const resources = createResources(createProcessIo(process))

async function find(source: string): Promise<readonly Finding[]> {
  const result = await checkStory({
    path: 'tam.md',
    source,
    storyPath: '/stories/tam.md',
    chain: { folders: [], problems: [] },
    rules,
    resources,
    suggest: true,
    flags: { step: { value: 'pink-5', origin: '--step' }, names: [{ value: 'Meg', origin: 'test' }] },
  })
  if (!isChecked(result)) throw new Error(result.problems.map(toProblemLine).join('\n'))
  return toFindings(result.messages, source, result.lines)
}

const listWords = (source: string): readonly Word[] =>
  readStory(source).pages.flatMap(({ blocks }) =>
    blocks.flatMap(({ sentences }) => sentences.flatMap((one) => one.words)),
  )

/** Sentences of Tansy Lane, some of which cannot be read at pink-5, in odd Markdown. */
const SENTENCES = [
  'Meg had a big boat.',
  'The boats sank.',
  'A rabbit ran.',
  'Meg sat in the garden.',
  'It is a *large* hat.',
  '> A duck is wet.',
  'Meg got a frog &amp; a cat.',
  'The s**hi**p is big.',
  'Meg had a ***b**oat*. Old **Ned**’s *boa*t sank.',
  '**The b**oat is big.',
  '<!-- for the teacher --> The b<b>oa</b>t is wet.',
  '- a rabbit\n- a hen',
  'Old Ned fed the hen.',
  '“Look!” said Meg.',
  '<!-- for the teacher: boat -->',
]
const story = fc
  .record({
    bom: fc.boolean(),
    newline: fc.constantFrom('\n', '\r\n'),
    front: fc.constantFrom('', '---\n# kept\ntitle: A day   # and this\n---\n\n', '---\nnames: [Meg]\n---\n'),
    body: fc.array(fc.constantFrom(...SENTENCES), { minLength: 1, maxLength: 8 }),
    end: fc.constantFrom('', '\n', '\n\n'),
  })
  .map(
    ({ bom, newline, front, body, end }) =>
      (bom ? '\uFEFF' : '') + (front + ['A hen ran.', ...body].join('\n\n') + end).replaceAll('\n', newline),
  )

describe('replacing words', () => {
  it('changes nothing outside the replaced words, and nothing more when it is run again', async () => {
    let changed = 0
    await fc.assert(
      fc.asyncProperty(story, async (source) => {
        const findings = await find(source)
        const decisions = decideByFirst(findings)
        const { text } = await applyDecisions(source, decisions)
        let at = 0
        let moved = 0
        for (const decision of decisions) {
          if (decision.kind !== 'replace') continue
          const { finding, word } = decision
          expect(text.slice(at + moved, finding.start + moved)).toBe(source.slice(at, finding.start))
          expect(text.slice(finding.start + moved, finding.start + moved + word.length)).toBe(word)
          at = finding.end
          moved += word.length - (finding.end - finding.start)
          changed++
        }
        expect(text.slice(at + moved)).toBe(source.slice(at))
        const put = new Map(
          decisions.flatMap((one) => (one.kind === 'replace' ? [[one.finding.message.start, one.word] as const] : [])),
        )
        const read = listWords(source).map((word) => put.get(word.start) ?? word.text)
        expect(listWords(text).map((word) => word.text)).toEqual(read)
        expect(decideByFirst(await find(text))).toEqual([])
      }),
      { numRuns: 60 },
    )
    expect(changed).toBeGreaterThan(50)
  })

  it.each([
    ['The b**oa**t is big.', 'The WORD is big.'],
    ['# The **b**oat', '# The WORD'],
    ['- It is *a **boa**t*, Meg.', '- It is *a WORD*, Meg.'],
    ['It is a ***b**oat*.', 'It is a *WORD*.'],
    ['It is a __b__**oat**.', 'It is a WORD.'],
    ['It is a **b***oa*t.', 'It is a WORD.'],
    ['It is a [**b**oat](x).', 'It is a [WORD](x).'],
    ['The b<b>o<i>a</i></b>t is big.', 'The WORD is big.'],
    ['The bo&shy;at is big.', 'The WORD is big.'],
    ['<!-- one --> <!-- two --> The b**oa**t is big.', '<!-- one --> <!-- two --> The WORD is big.'],
  ])('takes the marks of a word away with it: %s', async (source, wanted) => {
    const { text } = await applyDecisions(source, decideByFirst(await find(source)))
    const [finding] = await find(source)
    expect(text).toBe(wanted.replace('WORD', finding?.suggestions[0] ?? '-'))
  })

  it.each(['**The b**oat is big.', 'The b[oa](x)t is big.', 'The b<b>oat is</b> big.', 'The bo<!-- oa -->at is big.'])(
    'offers no word where its marks would be left or lost: %s',
    async (source) => {
      const [boat] = (await find(source)).filter(({ word }) => word === 'boat')
      expect(boat).toMatchObject({ suggestions: [], isBound: true, isOpen: false })
    },
  )

  it('keeps the case of the word', async () => {
    const findings = (await find('Meg ran. Boats are big.')).filter(({ word }) => word === 'Boats')
    for (const { suggestions } of findings) for (const word of suggestions) expect(word[0]).toBe(word[0]?.toUpperCase())
  })

  it('refuses changes that overlap', () => {
    expect(() =>
      applyEdits('boat', [
        { start: 0, end: 3, text: 'a' },
        { start: 2, end: 4, text: 'b' },
      ]),
    ).toThrow(RangeError)
  })
})

describe('allowing names', () => {
  it.each([
    ['A hen.\r\n', '---\r\nnames: [Zub]\r\n---\r\n\r\nA hen.\r\n'],
    ['---\nstep: pink-2 # why\n---\nA hen.', '---\nstep: pink-2 # why\nnames: [Zub]\n---\nA hen.'],
    ['\uFEFF---\nnames:\n  - Tam # a boy\n---\nA hen.', '\uFEFF---\nnames:\n  - Tam # a boy\n  - Zub\n---\nA hen.'],
  ])('puts a name into the front matter of %j', async (source, wanted) => {
    const { text, unlisted } = await applyDecisions(source, [
      { kind: 'name', name: 'Zub' },
      { kind: 'name', name: 'Zub' },
    ])
    expect(text).toBe(wanted)
    expect(unlisted).toEqual([])
  })

  it('says where a name could not be listed', async () => {
    const { unlisted } = await applyDecisions('---\nnames: [Tam\n---\nA hen.', [{ kind: 'name', name: 'Zub' }])
    expect(unlisted).toEqual(['Zub'])
  })
})

const hasPatch = spawnSync('patch', ['--version'], { encoding: 'utf8' }).stdout?.startsWith('GNU patch') ?? false

describe('the diff, against the program patch', () => {
  const line = fc.constantFrom('a hen', 'a cat', 'the dog\r', '', 'Meg sat.')
  const text = fc
    .tuple(fc.array(line, { maxLength: 14 }), fc.boolean())
    .map(([lines, isEnded]) => lines.join('\n') + (isEnded && lines.length > 0 ? '\n' : ''))

  it('turns the one text into the other', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'battledore-diff-'))
    try {
      await fc.assert(
        fc.asyncProperty(text, text, async (before, after) => {
          const diff = await toUnifiedDiff('tam.md', before, after)
          if (before === after) {
            expect(diff).toBe('')
            return
          }
          const file = join(folder, 'tam.md')
          writeFileSync(file, before)
          const run = spawnSync('git', ['apply', '--unidiff-zero', '--whitespace=nowarn', '-'], {
            cwd: folder,
            input: diff,
            encoding: 'utf8',
          })
          // git deletes no file for an empty new text, and makes none from an empty old one: those two have heads of their own.
          if (before !== '' && after !== '') {
            expect(run.stderr).toBe('')
            expect(readFileSync(file, 'utf8')).toBe(after)
          }
        }),
        { numRuns: 80 },
      )
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })

  it.each(['my boat.md', 'a "boat".md', 'back\\slash.md', 'tab\tand\nline.md', '\u0001\u007f.md', 'nid d’œuf é.md'])(
    'names %j so that patch and git find it',
    async (name) => {
      const folder = mkdtempSync(join(tmpdir(), 'battledore-diff-'))
      try {
        const file = join(folder, name)
        const diff = await toUnifiedDiff(name, 'A hen.\n', 'A den.\n')
        for (const [program, ...args] of [['git', 'apply', '-'], ...(hasPatch ? [['patch', '-p1']] : [])] as const) {
          writeFileSync(file, 'A hen.\n')
          const run = spawnSync(program, args, { cwd: folder, input: diff, encoding: 'utf8' })
          expect(run.status, run.stdout + run.stderr).toBe(0)
          expect(readFileSync(file, 'utf8')).toBe('A den.\n')
        }
      } finally {
        rmSync(folder, { recursive: true, force: true })
      }
    },
  )

  it.each([
    ['tam.md', 'tam.md', '.'],
    ['b/tam.md', 'b/tam.md', '.'],
    ['../tam.md', 'tam.md', '..'],
    ['../../b/..c.md', 'b/..c.md', '../..'],
    ['D:/b/tam.md', 'D:/b/tam.md', '.'],
  ])('gives %s a name without `..`', (path, name, folder) => {
    expect(toDiffPlace(path)).toEqual({ name, folder })
  })

  it('shows three lines around a change', async () => {
    const before = ['1', '2', '3', '4', '5', '6', '7', '8', '9'].join('\n')
    expect(await toUnifiedDiff('x/tam.md', before, before.replace('5', 'five'))).toBe(
      '--- a/x/tam.md\n+++ b/x/tam.md\n@@ -2,7 +2,7 @@\n 2\n 3\n 4\n-5\n+five\n 6\n 7\n 8\n',
    )
  })
})
