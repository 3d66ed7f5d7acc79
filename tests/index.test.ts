// The library alone, as a page in a browser would use it: bytes in, words and verdicts out, and no file read by it.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import { expect, it } from 'vitest'
import {
  checkStory,
  createBuiltIns,
  createEngines,
  createPool,
  findWords,
  judge,
  knowledgeAt,
  openWordFiles,
  openWordHelp,
  type Resources,
  rules,
  type Sequence,
} from '../src/index.ts'
import { ROOT } from './console.ts'

const DIST = join(ROOT, 'dist')
const engines = createEngines(() => readFileSync(join(DIST, 'lexicon.bin')))
const builtIns = createBuiltIns({
  list: () => readdirSync(join(DIST, 'sequences')).map((file) => file.replace(/\.json$/, '')),
  read: (name) => readFileSync(join(DIST, 'sequences', `${name}.json`), 'utf8'),
})
const files = {
  words: readFileSync(join(DIST, 'words.bin')),
  lists: inflateSync(readFileSync(join(DIST, 'lists.bin'))),
}
const series = builtIns.load('series') as Sequence
const phonics = engines.phonicsFor(series.accent)

it('finds words at a step, and each can be read there', () => {
  const { data, table } = openWordFiles(files, engines.lexicon().size)
  const sources = { table, facts: data.facts, lexicon: engines.lexicon(), phonics, fitness: undefined }
  const pool = createPool(sources, { sequence: series, step: 'pink-4', builtIn: 'series', extra: undefined })
  const { words } = findWords(pool, { order: 'useful', count: 25 })
  expect(words.length).toBe(25)
  const knowledge = knowledgeAt(series, 'pink-4')
  for (const { word } of words) expect(judge(phonics.read(word), knowledge).readable, word).toBe(true)
})

it('checks a story with suggestions, from texts and bytes alone', async () => {
  const help = openWordHelp({
    files,
    lexicon: engines.lexicon(),
    phonicsFor: engines.phonicsFor,
    isBuiltIn: builtIns.has,
  })
  const resources: Resources = {
    phonicsFor: engines.phonicsFor,
    sequence: () => Promise.resolve({ ok: true, value: series }),
    tagger: () => Promise.reject(new Error('not needed')),
    wordHelp: () => Promise.resolve(help),
  }
  const checked = await checkStory({
    path: 'tam.md',
    storyPath: '/tam.md',
    source: '---\nstep: pink-4\n---\n\nThe father sat.\n',
    chain: { folders: [], problems: [] },
    flags: {},
    rules,
    resources,
    suggest: true,
  })
  if (!('messages' in checked)) throw new Error(JSON.stringify(checked))
  const father = checked.messages.find(({ word }) => word === 'father')
  expect(father?.suggestions.length).toBeGreaterThan(0)
  for (const word of father?.suggestions ?? [])
    expect(judge(phonics.read(word), knowledgeAt(series, 'pink-4')).readable, word).toBe(true)
})
