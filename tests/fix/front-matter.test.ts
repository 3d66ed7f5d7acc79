// Settings changed at the top of generated stories: the key says what was set, all other keys and all other bytes stay.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { parse } from 'yaml'
import { readFrontMatter } from '../../src/config/index.ts'
import { canBeSet } from '../../src/fix/head.ts'
import { addToList, removeFromList } from '../../src/fix/head-list.ts'
import { removeKey, setValue } from '../../src/fix/head-value.ts'
import { applyEdits } from '../../src/fix/index.ts'
import { readStory } from '../../src/story/index.ts'

const read = (source: string) => ({ source, frontMatter: readStory(source).frontMatter })
const settingsOf = async (source: string) =>
  readFrontMatter({ path: 'a.md', text: source }, read(source).frontMatter, [])
/** By the reference parser of YAML 1.2, not by ours. */
const plain = (source: string): Record<string, unknown> => parse(read(source).frontMatter?.value ?? '') ?? {}

const NAMES = ['Tam', 'Old Ned', "Meg O'Hara", 'Sid']
const ways = (key: string, items: readonly string[]): string[] => [
  `${key}: [${items.join(', ')}]`,
  `${key}: [ ${items.map((item) => JSON.stringify(item)).join(' , ')} ]  # ours`,
  `${key}:\n${items.map((item) => `  - ${item}`).join('\n')}`,
  `${key}:\n${items.map((item) => `- '${item.replaceAll("'", "''")}'   # one`).join('\n')}`,
  ...(items.length > 0 ? [`${key}: ${items.join(', ')}`] : []),
]
const lists = fc
  .record({ items: fc.shuffledSubarray(NAMES, { minLength: 1 }), way: fc.nat(4) })
  .map(({ items, way }) => ({ items, lines: ways('names', items)[way] ?? '' }))
const others = fc.subarray(['step: pink-4', 'title: "A: b"', '# a note', 'accent:', 'author: Jo  # who', 'order: 3'])
const stories = fc
  .record({
    list: lists,
    before: others,
    after: fc.constantFrom('', '# the end', 'tags: [a, b]'),
    crlf: fc.boolean(),
    bom: fc.boolean(),
  })
  .map(({ list, before, after, crlf, bom }) => {
    const text = `---\n${[...before, list.lines, ...(after ? [after] : [])].join('\n')}\n---\n\n# Tam\n\nTam sat.\n`
    return { ...list, text: (bom ? '\uFEFF' : '') + (crlf ? text.replaceAll('\n', '\r\n') : text) }
  })

const body = (source: string): string => source.slice(read(source).frontMatter?.end ?? 0)

it('a name that is taken away is gone, and nothing else', async () => {
  await fc.assert(
    fc.asyncProperty(stories, fc.nat(), async ({ text, items }, number) => {
      const item = items[number % items.length] ?? ''
      const edit = await removeFromList(read(text), 'names', item)
      expect(edit, text).toBeTruthy()
      const after = applyEdits(text, edit ? [edit] : [])
      const { names: was, ...rest } = plain(text)
      const { names, ...kept } = plain(after)
      const now = typeof names === 'string' ? names.split(',').map((name) => name.trim()) : (names ?? [])
      expect(was).toBeDefined()
      expect(now, after).toEqual(items.filter((one) => one !== item))
      expect(kept).toEqual(rest)
      expect(body(after)).toBe(body(text))
      expect((await settingsOf(after)).problems).toEqual([])
    }),
    { numRuns: 400 },
  )
})

it('a value that is set is the one that counts, and nothing else is changed', async () => {
  const values = fc.constantFrom(
    'pink-6',
    'A: b',
    '1.10',
    'true',
    '  # no',
    "It's “Tam”",
    '- a',
    '../ours.yaml',
    'Tam & co',
    '[x]',
    '2024-01-02',
    'x "y" #z',
    '007',
  )
  await fc.assert(
    fc.asyncProperty(stories, fc.constantFrom('title', 'step', 'sequence'), values, async ({ text }, key, given) => {
      const value = given.trim()
      const edit = await setValue(read(text), key, value)
      const after = applyEdits(text, edit ? [edit] : [])
      const { [key]: _, ...rest } = plain(text)
      const { [key]: _now, ...kept } = plain(after)
      expect(kept, after).toEqual(rest)
      expect(body(after)).toBe(body(text))
      const { title, layer, problems } = await settingsOf(after)
      expect(problems).toEqual([])
      const set = key === 'title' ? title : key === 'step' ? layer.step : layer.sequence
      expect(set?.value, after).toBe(value)
    }),
    { numRuns: 400 },
  )
})

it('a key that is taken away is gone with its lines, and nothing else', async () => {
  await fc.assert(
    fc.asyncProperty(stories, fc.constantFrom('names', 'title', 'step', 'order', 'accent'), async ({ text }, key) => {
      const edit = await removeKey(read(text), key)
      const after = applyEdits(text, edit ? [edit] : [])
      const { [key]: _, ...rest } = plain(text)
      expect(plain(after), after).toEqual(rest)
      expect(body(after)).toBe(body(text))
      expect(edit === null).toBe(!(key in plain(text)))
    }),
    { numRuns: 400 },
  )
})

it('a story without settings gets them above its text, below a byte order mark', async () => {
  const edit = await setValue(read('\uFEFFTam sat.\r\n'), 'step', 'pink-1')
  expect(applyEdits('\uFEFFTam sat.\r\n', edit ? [edit] : [])).toBe(
    '\uFEFF---\r\nstep: pink-1\r\n---\r\n\r\nTam sat.\r\n',
  )
  expect(await removeKey(read('Tam sat.\n'), 'step')).toBeNull()
})

it('what is no list of keys is left to a person', async () => {
  for (const yaml of ['{step: pink-1}', '- a', 'step: [', 'title: |\n  A\n  B']) {
    const text = `---\n${yaml}\n---\nTam sat.\n`
    expect(await setValue(read(text), 'title', 'B'), yaml).toBeUndefined()
    expect(await canBeSet(read(text))).toBe(yaml.startsWith('title'))
  }
})

it('a key in another spelling is the same setting', async () => {
  const text = '---\nsight_words: [the, said]\n---\nTam sat.\n'
  const removed = await removeFromList(read(text), 'sight words', 'said')
  expect(applyEdits(text, removed ? [removed] : [])).toBe('---\nsight_words: [the]\n---\nTam sat.\n')
  const added = await addToList(read(text), 'sight words', 'was')
  expect(applyEdits(text, added ? [added] : [])).toBe('---\nsight_words: [the, said, was]\n---\nTam sat.\n')
})
