// From config files, front matter and flags to values with their origin.

import { describe, expect, it } from 'vitest'
import {
  createConfigFinder,
  findIgnoring,
  readFlags,
  readFrontMatter,
  resolveSettings,
  toRuleSettings,
  toSettingRows,
} from '../../src/config/index.ts'
import { fail, succeed, toProblemLine } from '../../src/problem/index.ts'
import { rules } from './rules.ts'

type Files = Readonly<Record<string, string>>

function toFinder(files: Files, options = {}) {
  const reads: string[] = []
  const read = async (path: string) => {
    reads.push(path)
    const text = files[path]
    return text === undefined ? undefined : succeed(text)
  }
  const show = (path: string) => path.replace(/^\/lane\//, '')
  return { ...createConfigFinder(read, rules, { show, ...options }), reads }
}

async function resolve(files: Files, storyPath: string, frontMatter = '', flags = {}) {
  const chain = await toFinder(files).findFor(storyPath)
  const matter = { start: 0, end: 0, value: frontMatter, valueStart: 4 }
  const source = { path: storyPath, text: `---\n${frontMatter}---\n` }
  const story = await readFrontMatter(source, matter, rules)
  const { layer } = readFlags(flags, '/lane')
  const settings = resolveSettings({
    ...{ chain, storyPath, frontMatter: story.layer, flags: layer, rules, defaultSequence: 'three-series' },
  })
  return { settings, problems: chain.problems.map(toProblemLine) }
}

describe('the cascade', () => {
  const files = {
    '/lane/battledore.yaml': 'step: pink-1\nnames: [Tam]\nsequence: own.yaml\nrules:\n  max-sentence-words: {max: 6}\n',
    '/lane/ducks/.battledore.yaml':
      'step: blue-1\nnames: [Meg]\nrules:\n  max-sentence-words: error\noverrides:\n  - files: "old/*.md"\n    step: green-1\n',
  }

  it('starts from defaults', async () => {
    const { settings } = await resolve({}, '/lane/hen.md')
    expect(settings.sequence).toEqual({ value: 'three-series', origin: 'default' })
    expect(settings.step).toEqual({ value: undefined, origin: 'default' })
    expect(settings.readableShare.value).toBe(0.9)
    expect(settings.rules['no-numeral']?.severity).toEqual({ value: 'error', origin: 'default' })
  })

  it('lets the nearer folder win, key by key', async () => {
    const { settings } = await resolve(files, '/lane/ducks/a.md')
    expect(settings.step).toMatchObject({ value: 'blue-1', origin: 'ducks/.battledore.yaml:1:7' })
    expect(settings.sequence).toMatchObject({ value: '/lane/own.yaml', origin: 'battledore.yaml:3:11' })
    const rule = settings.rules['max-sentence-words']
    expect(rule?.severity).toMatchObject({ value: 'error', origin: 'ducks/.battledore.yaml:4:23' })
    expect(rule?.options.max).toMatchObject({ value: 6, origin: 'battledore.yaml:5:29' })
    expect(rule?.options.except).toEqual({ value: [], origin: 'default' })
  })

  it('adds up names, and lets overrides, front matter and flags win in that order', async () => {
    const old = await resolve(files, '/lane/ducks/old/a.md', 'names: [Old Ned, Tam]\n')
    expect(old.settings.step).toMatchObject({ value: 'green-1', origin: 'ducks/.battledore.yaml:7:11' })
    expect(old.settings.names.map(({ value, origin }) => `${value} ${origin}`)).toEqual([
      'Tam battledore.yaml:2:9',
      'Meg ducks/.battledore.yaml:2:9',
      'Old Ned top of the story, line 2',
    ])
    const own = await resolve(files, '/lane/ducks/old/a.md', 'step: pink-3\n')
    expect(own.settings.step).toMatchObject({ value: 'pink-3', origin: 'top of the story, line 2' })
    const flagged = await resolve(files, '/lane/ducks/old/a.md', 'step: pink-3\n', {
      step: 'blue-2',
      sequence: 'x/s.yaml',
    })
    expect(flagged.settings.step).toEqual({ value: 'blue-2', origin: '--step' })
    expect(flagged.settings.sequence).toEqual({ value: '/lane/x/s.yaml', origin: '--sequence' })
  })

  it('stops at root: true and reads each folder once', async () => {
    const rooted = { ...files, '/lane/ducks/battledore.yaml': 'root: true\n', '/lane/ducks/.battledore.yaml': '' }
    const finder = toFinder(rooted)
    const [chain] = await Promise.all([finder.findFor('/lane/ducks/a.md'), finder.findFor('/lane/ducks/b.md')])
    expect(chain.folders.map(({ folder }) => folder)).toEqual(['/lane/ducks'])
    expect(finder.reads).toHaveLength(new Set(finder.reads).size)
    expect(chain.problems.map(toProblemLine)).toEqual([
      'ducks/.battledore.yaml:1:1: warning: This folder has two config files: `ducks/battledore.yaml` is used, this one is not',
    ])
  })

  it('builds on extended files, whose patterns count from the folder that extends them', async () => {
    const { settings, problems } = await resolve(
      {
        '/lane/a/battledore.yaml': 'extends: ../base/shared.yaml\npages: 2\n',
        '/lane/base/shared.yaml':
          'pages: 3\nsequence: ./own.yaml\noverrides: [{files: "{old,odd}/**", step: pink-9}]\n',
      },
      '/lane/a/odd/x.md',
    )
    expect(problems).toEqual([])
    expect(settings.pages.value).toBe(2)
    expect(settings.sequence.value).toBe('/lane/base/own.yaml')
    expect(settings.step).toMatchObject({ value: 'pink-9', origin: 'base/shared.yaml:3:43' })
  })

  it.each([
    ['extends: b.yaml\n', 'battledore.yaml:1:10: error: `extends` names a file that is not there: `b.yaml`'],
    ['extends: battledore.yaml\n', 'battledore.yaml:1:10: error: `extends` leads back to itself: `battledore.yaml`'],
    ['\uFEFFsetp: x\n', 'battledore.yaml:1:1: error: `setp` is not a setting. Did you mean `step`?'],
    [
      'overrides: [{step: a}]\n',
      'battledore.yaml:1:13: error: this override needs `files`: the patterns of the stories it is for',
    ],
    ['{"step": "pink-1", "pages": 9}', /^battledore.yaml:1:29: error: `pages` must be auto, rule .* not `9`$/],
    ['{"step": "pink-1"', /^battledore.yaml:1:\d+: error: This file cannot be read: /],
  ])('%j → a clear line', async (text, line) => {
    const { problems } = await resolve({ '/lane/battledore.yaml': text }, '/lane/a.md')
    expect(problems).toEqual([typeof line === 'string' ? line : expect.stringMatching(line)])
  })

  it('tells an unreadable config in one line', async () => {
    const unreadable = fail({ code: 'binary', message: 'This file is not text' })
    const finder = createConfigFinder(async () => unreadable, rules)
    const { problems } = await finder.findFor('a.md')
    expect(problems.map(toProblemLine)).toEqual(['battledore.yaml:1:1: error: This file is not text'])
  })

  it('uses one named config instead of those of folders', async () => {
    const finder = toFinder(
      { ...files, '/lane/set/c.yaml': 'step: pink-7\noverrides: [{files: "*.md", pages: 1}]\n' },
      { only: '/lane/set/c.yaml' },
    )
    const chain = await finder.findFor('/lane/ducks/a.md')
    const settings = resolveSettings({ chain, storyPath: '/lane/ducks/a.md', rules, defaultSequence: 's' })
    expect(settings.step.value).toBe('pink-7')
    expect(settings.names).toEqual([])
  })

  it('leaves out what a config ignores, and takes in what a later pattern takes back', async () => {
    const text = 'ignore: ["drafts/", "*.old.md", "!drafts/", "notes/*"]\n'
    const chain = await toFinder({ '/lane/battledore.yaml': text }).findFor('/lane/x/a.md')
    expect(findIgnoring(chain, '/lane/x/a.old.md')).toMatchObject({ value: '*.old.md', origin: 'battledore.yaml:1:21' })
    expect(findIgnoring(chain, '/lane/drafts/a.md')).toBeUndefined()
    expect(findIgnoring(chain, '/lane/notes/a.md')?.value).toBe('notes/*')
    expect(findIgnoring(chain, '/elsewhere/a.old.md')).toBeUndefined()
  })

  it('shows every value with its origin, and hands the rules on', async () => {
    const { settings } = await resolve(files, '/lane/hen.md', 'count-title: false\n')
    const rows = toSettingRows(settings).map(
      ({ key, value, origin }) => `${key} = ${JSON.stringify(value)} (${origin})`,
    )
    expect(rows).toEqual([
      'sequence = "/lane/own.yaml" (battledore.yaml:3:11)',
      'step = "pink-1" (battledore.yaml:1:7)',
      'accent = null (default)',
      'pages = "auto" (default)',
      'count title = false (top of the story, line 2)',
      'count headings = true (default)',
      'reduced vowels = null (default)',
      'readable share = 0.9 (default)',
      'paper = "a4" (default)',
      'names = "Tam" (battledore.yaml:2:9)',
      'rules › max-sentence-words = "warning" (default)',
      'rules › max-sentence-words › max = 6 (battledore.yaml:5:29)',
      'rules › max-sentence-words › except = [] (default)',
      'rules › no-numeral = "error" (default)',
    ])
    expect(toRuleSettings(settings)).toEqual({
      'no-numeral': { severity: 'error', options: {} },
      'max-sentence-words': { severity: 'warning', options: { max: 6, except: [] } },
    })
  })
})

describe('readFlags', () => {
  it('checks values as in files', () => {
    const { layer, problems } = readFlags(
      { pages: '2', accent: 'amercan', 'readable share': '80%', names: 'Tam, Meg' },
      '/lane',
    )
    expect(layer.pages).toEqual({ value: 2, origin: '--pages' })
    expect(layer.readableShare?.value).toBeCloseTo(0.8)
    expect(layer.names).toEqual([
      { value: 'Tam', origin: '--names' },
      { value: 'Meg', origin: '--names' },
    ])
    expect(problems).toEqual([
      {
        code: 'bad-value',
        severity: 'error',
        message: '--accent must be general-american or southern-british, not `amercan`',
        expected: [],
        setBy: { origin: '--accent' },
      },
    ])
  })
})
