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
  putIn,
  toDiffPlace,
  toFindings,
  toQuestion,
  toUnifiedDiff,
} from '../../src/fix/index.ts'
import { opensWithVowel } from '../../src/fix/put-in.ts'
import { shapeTyped } from '../../src/fix/typed.ts'
import { toProblemLine } from '../../src/problem/index.ts'
import { readStory, type Word } from '../../src/story/index.ts'
import type { WordFacts } from '../../src/words/index.ts'
import { testWords } from '../finder/sources.ts'
import { testLexicon } from '../lexicon-for-tests.ts'

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
  return toFindings(result.messages, result.story, result.lines)
}

function factsOf(word: string): WordFacts | undefined {
  const place = testLexicon().indexOf(word)
  return place < 0 ? undefined : testWords().facts.factsAt(place)
}

const listWords = (source: string): readonly Word[] =>
  readStory(source).pages.flatMap(({ blocks }) =>
    blocks.flatMap(({ sentences }) => sentences.flatMap((one) => one.words)),
  )

/** Sentences of Tansy Lane, some of which cannot be read at pink-5, in odd Markdown. */
const SENTENCES = [
  'Meg had a big hole.',
  'The holes sank.',
  'A rabbit ran.',
  'Meg sat in the garden.',
  'It is a *large* hat.',
  '> A duck is wet.',
  'Meg got a frog &amp; a cat.',
  'The s**hi**p is big.',
  'Meg had a ***h**ole*. Old **Ned**’s *hol*e sank.',
  '**The h**ole is big.',
  '<!-- for the teacher --> The h<b>ol</b>e is wet.',
  '- a rabbit\n- a hen',
  'Old Ned fed the hen.',
  '“Look!” said Meg.',
  '<!-- for the teacher: hole -->',
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
        // What lies between the places is the same in both.
        let rest = text
        let from = 0
        for (const decision of decisions) {
          if (decision.kind !== 'replace' || !decision.finding.slot) continue
          const edit = putIn(decision.finding.slot, source, decision.word)
          const between = source.slice(from, edit.start)
          expect(rest.slice(0, between.length + edit.text.length)).toBe(between + edit.text)
          rest = rest.slice(between.length + edit.text.length)
          from = edit.end
          changed++
        }
        expect(rest).toBe(source.slice(from))
        const put = new Map(
          decisions.flatMap((one) => (one.kind === 'replace' ? [[one.finding.message.start, one.word] as const] : [])),
        )
        const read = listWords(source).map((word) => put.get(word.start) ?? word.text)
        expect(listWords(text).map((word) => word.text.replace(/^an$/, 'a'))).toEqual(
          read.map((word) => word.replace(/^an$/, 'a')),
        )
        expect(decideByFirst(await find(text))).toEqual([])
      }),
      { numRuns: 60 },
    )
    expect(changed).toBeGreaterThan(50)
  })

  it.each([
    ['The h**ol**e is big.', 'The **WORD** is big.'],
    ['# The **h**ole', '# The **WORD**'],
    ['- It is *a **hol**e*, Meg.', '- It is *a **WORD***, Meg.'],
    ['It is a ***h**ole*.', 'It is a ***WORD***.'],
    ['It is a __h__**ole**.', 'It is a **WORD**.'],
    ['It is a **h***ol*e.', 'It is a **WORD**.'],
    ['It is a *h*ole.', 'It is a *WORD*.'],
    ['It is a **hole**.', 'It is a **WORD**.'],
    ['It is a [**h**ole](x).', 'It is a [**WORD**](x).'],
    ['The h<b>o<i>l</i></b>e is big.', 'The WORD is big.'],
    ['The ho&shy;le is big.', 'The WORD is big.'],
    ['<!-- one --> <!-- two --> The h**ol**e is big.', '<!-- one --> <!-- two --> The **WORD** is big.'],
    ['It is an e**nor**mous hat.', 'It is a **WORD** hat.'],
    ['An *enormous* hat.', 'A *WORD* hat.'],
    ['The f**a**ther ran.', 'The d**a**d ran.'],
    ['Meg met her **fa**ther.', 'Meg met her **dad**.'],
  ])('%s: article and emphasis go with the word', async (source, wanted) => {
    const { text } = await applyDecisions(source, decideByFirst(await find(source)))
    const finding = (await find(source)).find(({ suggestions }) => suggestions.length > 0)
    expect(finding).toBeDefined()
    expect(text).toBe(wanted.replace('WORD', finding?.suggestions[0] ?? '-'))
  })

  it.each([
    ['Meg had a very big hat.', 'Meg had a big hat.'],
    ['Meg had a beautiful egg.', 'Meg had an egg.'],
    ['Very big men sat.', 'Big men sat.'],
    ['So he sat.', 'He sat.'],
    ['Suddenly, he sat.', 'He sat.'],
    ['Meg sat, and then he sat.', 'Meg sat, and he sat.'],
    ['Meg sat quietly.', 'Meg sat.'],
    ['Meg sat\nquietly.', 'Meg sat\nquietly.'],
    ['Meg had a **very** big hat.', 'Meg had a **very** big hat.'],
  ])('%s: a word goes with its space, its capital and its article', async (source, wanted) => {
    const all = await find(source)
    const { text } = await applyDecisions(
      source,
      decideByFirst(all.map((finding) => ({ ...finding, suggestions: [] }))),
    )
    expect(text).toBe(wanted)
  })

  it('joins a word that goes and the word behind it that changes', async () => {
    const all = await find('Meg had a very enormous hat. Very enormous men sat.')
    const { text } = await applyDecisions('Meg had a very enormous hat. Very enormous men sat.', decideByFirst(all))
    expect(text).toBe('Meg had a big hat. Big men sat.')
  })

  it.each(['**The h**ole is big.', 'The h[ol](x)e is big.', 'The h<b>ole is</b> big.', 'The ho<!-- ol -->le is big.'])(
    'offers no word where its marks would be left or lost: %s',
    async (source) => {
      const [hole] = (await find(source)).filter(({ word }) => word === 'hole')
      expect(hole).toMatchObject({ suggestions: [], slot: undefined })
    },
  )

  it('keeps the case of the word', async () => {
    const findings = (await find('Meg ran. Holes are big.')).filter(({ word }) => word === 'Holes')
    for (const { suggestions } of findings) for (const word of suggestions) expect(word[0]).toBe(word[0]?.toUpperCase())
  })

  // A library of colours prints every argument that it is handed.
  it('paints each line of a question by itself', async () => {
    const [finding] = await find('Meg had a hole.')
    const all = (...texts: readonly unknown[]): string => texts.join(' ')
    const paint = { strong: all, quiet: all, error: all, warning: all, good: all }
    const question = finding && toQuestion(finding, { width: 40, paint })
    expect(question).toContain('q: stop here')
    expect(question).not.toMatch(/ 0 {3}| 1 {3}a number/)
    expect(question?.match(/q: stop here/g)).toHaveLength(1)
  })

  it('says what would make a word readable that no step does, and nothing more of another', async () => {
    const plain = { strong: String, quiet: String, error: String, warning: String, good: String }
    const ask = async (source: string, word: string): Promise<string> => {
      const finding = (await find(source)).find((one) => one.word === word)
      return finding === undefined ? '' : toQuestion(finding, { width: 80, paint: plain }).replace(/\s+/g, ' ')
    }
    expect(await ask('Meg had a tour.', 'tour')).toContain('add `our as in tour` to a step')
    expect(await ask('Meg had a hole.', 'hole')).not.toContain('to a step')
  })

  it('refuses changes that overlap', () => {
    expect(() =>
      applyEdits('hole', [
        { start: 0, end: 3, text: 'a' },
        { start: 2, end: 4, text: 'b' },
      ]),
    ).toThrow(RangeError)
  })
})

describe('a word that is typed', () => {
  it.each([
    ['Friends', 'pal', 'Pals'],
    ["friend's", 'pal', "pal's"],
    ['friends', 'pals', 'pals'],
    ['children', 'kid', 'kids'],
    ['ran', 'sped', 'sped'],
    ['FRIEND', 'pal', 'PAL'],
    ['friend', 'Tam', 'Tam'],
    ['glass', 'cup', 'cup'],
  ])('for %s: %s is put in as %s', (written, typed, expected) => {
    expect(shapeTyped(written, typed, factsOf)).toBe(expected)
  })

  it.each([
    ['unit', false],
    ['under', true],
    ['hour', true],
    ['one', false],
    ['egg', true],
    ['hen', false],
    ['uninvited guest', true],
  ])('an stands before %s: %s', (word, expected) => {
    expect(opensWithVowel(word)).toBe(expected)
  })
})

describe('allowing names', () => {
  it.each([
    ['A hen.\r\n', '---\r\nnames: [Zub]\r\n---\r\n\r\nA hen.\r\n'],
    ['---\nstep: pink-2 # why\n---\nA hen.', '---\nstep: pink-2 # why\nnames: [Zub]\n---\nA hen.'],
    ['\uFEFF---\nnames:\n  - Tam # a boy\n---\nA hen.', '\uFEFF---\nnames:\n  - Tam # a boy\n  - Zub\n---\nA hen.'],
  ])('puts a name into the front matter of %j', async (source, wanted) => {
    const { text, unlisted } = await applyDecisions(source, [
      { kind: 'name', word: 'Zub' },
      { kind: 'name', word: 'Zub' },
    ])
    expect(text).toBe(wanted)
    expect(unlisted).toEqual([])
  })

  it('says where a name could not be listed', async () => {
    const { unlisted } = await applyDecisions('---\nnames: [Tam\n---\nA hen.', [{ kind: 'name', word: 'Zub' }])
    expect(unlisted).toEqual([{ word: 'Zub', key: 'names' }])
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

  it.each(['my hole.md', 'a "hole".md', 'back\\slash.md', 'tab\tand\nline.md', '\u0001\u007f.md', 'nid d’œuf é.md'])(
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
