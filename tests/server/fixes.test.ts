// Every quick fix that is offered does what it says: the message goes, nothing else breaks, and the child reads on.

import { readdirSync, readFileSync } from 'node:fs'
import { afterAll, describe, expect, it } from 'vitest'
import type { CodeAction } from 'vscode-languageserver'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { type CheckedStory, isChecked } from '../../src/check/result.ts'
import { withSuggestions } from '../../src/check/suggest.ts'
import { createHost } from '../../src/cli/serve/run.ts'
import { addToList } from '../../src/fix/head-list.ts'
import { toActions } from '../../src/server/actions.ts'
import { toOpenStory } from '../../src/server/open-stories.ts'
import { readStory } from '../../src/story/index.ts'
import { createWorld } from '../cli/io.ts'

const world = createWorld()
const host = createHost(world.io)
afterAll(() => world.remove())

const toDocument = (text: string): TextDocument =>
  TextDocument.create(`file://${world.cwd}/story.md`, 'markdown', 1, text)

async function check(text: string): Promise<CheckedStory> {
  const result = await host.check(toOpenStory(toDocument(text), host))
  if (!result || !isChecked(result)) throw new Error(`cannot be checked: ${JSON.stringify(result)}\n${text}`)
  return result
}

async function findActions(text: string, checked: CheckedStory): Promise<CodeAction[]> {
  const document = toDocument(text)
  const prepared = await host.prepare(toOpenStory(document, host))
  if ('problems' in prepared) throw new Error(JSON.stringify(prepared.problems))
  const { sequence, step, reader, context } = prepared
  const help = await host.resources.wordHelp?.()
  if (!help) throw new Error('words are known of')
  const suggester = help.suggesterFor({ sequence, step, reader, unfit: [], fit: [] })
  return toActions(await withSuggestions(checked.messages, context, { suggester }), { document, prepared })
}

const apply = (text: string, action: CodeAction): string => {
  const document = toDocument(text)
  return TextDocument.applyEdits(document, Object.values(action.edit?.changes ?? {}).flat())
}

const toWords = ({ story }: CheckedStory): string[] =>
  readStory(story.source).pages.flatMap(({ blocks }) =>
    blocks.flatMap(({ sentences }) => sentences.flatMap(({ words }) => words.map(({ text }) => text))),
  )

const folder = new URL('../../fixtures/stories/', import.meta.url)
const stories: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    readdirSync(folder)
      .filter((name) => name.endsWith('.md'))
      .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')]),
  ),
  'in quotes, lists and headings':
    '---\nstep: pink-4\n---\n\n# A Night\n\n> Tam sat at night.\n>\n> > The boat.\n\n- night\n\n  boat\n- Zebedee ran to Zebedee\n\n10. light\n\n    night\n\n## Right\nA light.\n',
  'without front matter but a config': 'Tam sat at night with Zebedee.\n',
  'with CRLF': '---\r\nstep: pink-4\r\nnames: [Tam]\r\n---\r\n\r\nTam sat at night.\r\n\r\nSo Meg met Zebedee.\r\n',
  'with a byte order mark': '\uFEFFTam sat at night with Zebedee.\n',
  'with bold letters and an escape':
    '---\nstep: pink-4\nsight words:\n  - the # by heart\n  - said\n---\nThe n**igh**t. A b\\oat &amp; a ship.\n',
  'with words with commas':
    '---\nstep: pink-4\nnames: Tam, Meg\nsight words: "the, said"\n---\nTam saw a boat. So Meg met Zebedee at night.\n',
  'with an empty list':
    '---\nstep: pink-4\nnames:\nsight words: []\n---\nTam saw a boat. So Meg met Zebedee at night.\n',
  'with a list on several lines':
    '---\nsight words: [\n  the,\n  said\n  ]\nnames:\n- Tam\n- Meg\nstep: pink-4\n---\nTam saw a boat. So Meg met Zebedee at night.\n',
}
world.write({ 'battledore.yaml': 'step: pink-4\n' })

describe.each(Object.entries(stories))('in a story %s', (_, text) => {
  it('each fix takes its message away', async () => {
    const before = await check(text)
    const actions = await findActions(text, before)
    const isAbout = ({ word, reason }: CheckedStory['messages'][number]): boolean =>
      word !== undefined && reason !== undefined
    if (before.messages.some(isAbout)) expect(actions.length).toBeGreaterThan(0)
    for (const action of actions) {
      const [diagnostic] = action.diagnostics ?? []
      const after = await check(apply(text, action))
      const count = ({ messages }: CheckedStory): number =>
        messages.filter(
          ({ rule, message }) => rule === diagnostic?.code && String(diagnostic.message).startsWith(message),
        ).length
      expect(count(after), `${action.title}\n${after.story.source}`).toBeLessThan(count(before))
      const countSlips = ({ messages }: CheckedStory): number =>
        messages.filter(({ rule }) => /switch$|front-matter/.test(rule)).length
      expect(countSlips(after), `${action.title}\n${after.story.source}`).toBeLessThanOrEqual(countSlips(before))
      if (action.title.startsWith('Leave out ')) expect(toWords(after).length).toBe(toWords(before).length - 1)
      else if (!action.title.startsWith('Use '))
        expect(toWords(after), `${action.title}\n${after.story.source}`).toEqual(toWords(before))
    }
  })
})

it('offers only words that the child can read', async () => {
  const text = '---\nstep: pink-6\n---\nTam had a hole.\n'
  const before = await check(text)
  const uses = (await findActions(text, before)).filter(({ title }) => title.startsWith('Use '))
  expect(uses.length).toBeGreaterThan(0)
  for (const use of uses) {
    const after = await check(apply(text, use))
    expect(
      after.messages.filter(({ severity, word }) => severity === 'error' && word !== undefined),
      use.title,
    ).toEqual([])
  }
})

describe('a word with emphasis on a part of it', () => {
  const uses = async (sentence: string): Promise<string[]> => {
    const text = `---\nstep: pink-4\n---\n${sentence}\n`
    const actions = await findActions(text, await check(text))
    return actions.filter(({ title }) => title.startsWith('Use ')).map((action) => apply(text, action))
  }

  it.each(['Tam is **enor**mous.', 'Tam had a **ho**l*e*.', 'Tam had a *hole*.', 'The ***ho**le* is wet.'])(
    '%s: another word leaves no mark behind',
    async (sentence) => {
      const after = await uses(sentence)
      expect(after.length).toBeGreaterThan(0)
      for (const text of after) {
        const { story } = await check(text)
        const blocks = readStory(story.source).pages.flatMap((page) => page.blocks)
        expect(blocks.map((block) => block.text).join(), text).toMatch(
          /^(?:Tam is [a-z]+|Tam had a [a-z]+|The [a-z]+ is wet)\.$/,
        )
      }
    },
  )

  it.each(['Tam sat. **The ni**ght.', 'Tam had a sh[ee](x.png)p.'])(
    '%s: no other word is offered where more than the word would change',
    async (sentence) => {
      expect(await uses(sentence)).toEqual([])
    },
  )
})

describe('a name', () => {
  it.each(["O'Hara's", 'O’Hara', 'D’Arcy', "Zebedee's"])('%s can be allowed', async (written) => {
    const text = `---\nstep: pink-4\n---\nTam sat on ${written} mat.\n`
    const before = await check(text)
    const [action] = (await findActions(text, before)).filter(({ title }) => title.startsWith('Allow the name'))
    expect(action?.title).toBe(`Allow the name “${written.replace(/['’]s$/, '')}” in this story`)
    const after = await check(apply(text, action ?? { title: '' }))
    const [diagnostic] = action?.diagnostics ?? []
    expect(after.messages.filter(({ word, rule }) => word === written && rule === diagnostic?.code)).toEqual([])
  })
})

describe('a word for a list of the front matter', () => {
  it.each([
    ['true', '"true"'],
    ["Ned's", "Ned's"],
    ['no', '"no"'],
    ['a: b', '"a: b"'],
    ['Old Ned', 'Old Ned'],
  ])('%s is written %s', async (word, written) => {
    const edit = await addToList(readStory('Tam sat.\n'), 'names', word)
    expect(edit?.text).toBe(`---\nnames: [${written}]\n---\n\n`)
  })

  it.each([
    ['that cannot be read', 'names: [Tam'],
    ['with a map where a list should be', 'names: {Tam: 1}'],
    ['in braces', '{step: pink-4}'],
    ['with a text over several lines', 'names: >\n  Tam,\n  Ned'],
  ])('is not written into front matter %s', async (_, yaml) => {
    expect(await addToList(readStory(`---\n${yaml}\n---\nTam sat.\n`), 'names', 'Meg')).toBeUndefined()
  })
})
