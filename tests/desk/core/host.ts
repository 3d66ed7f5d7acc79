// The desk's inside for tests in Node: the data that the package ships, and a folder of files in memory.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { answer } from '../../../src/desk/core/answer.ts'
import type { Answer, DeskData, DeskFiles, Kind, Question } from '../../../src/desk/core/questions.ts'
import { createState, type DeskState } from '../../../src/desk/core/state.ts'
import { ROOT } from '../../console.ts'

const DIST = join(ROOT, 'dist')
const part = (name: string) => ({ bytes: new Uint8Array(readFileSync(join(DIST, name))) })

export const testData = (): DeskData => ({
  lexicon: part('lexicon.bin'),
  words: part('words.bin'),
  lists: part('lists.bin'),
  sequences: Object.fromEntries(
    readdirSync(join(DIST, 'sequences')).map((name) => [name.replace('.json', ''), part(`sequences/${name}`)]),
  ),
  fonts: Object.fromEntries(
    readdirSync(join(DIST, 'fonts'))
      .filter((name) => /\.(ttf|woff)$/.test(name))
      .map((name) => [name, part(`fonts/${name}`)]),
  ),
  pictures: part('pictures.json'),
})

export const filesInMemory = (files: Readonly<Record<string, string | Uint8Array>>): DeskFiles => ({
  list: async () => ({ list: Object.keys(files) }),
  async read(path) {
    const file = files[path]
    return typeof file === 'string' ? new TextEncoder().encode(file) : file
  },
})

export interface TestDesk {
  readonly state: DeskState
  ask<K extends Kind>(question: Question<K>): Promise<Answer<K>>
}

/** Opened already. */
export async function openDesk(files: DeskFiles, today = '2026-11-29'): Promise<TestDesk> {
  const fetch = () => Promise.reject(new Error('a test fetches nothing'))
  const state = createState({ files, fetch, today: () => today })
  await answer({ kind: 'open', data: testData() }, state)
  return { state, ask: (question) => answer(question, state) }
}

const FIXTURES = join(ROOT, 'fixtures')

/** The stories, settings, sequences and readers of fixtures/, by their path in it. */
export const readFixtures = (): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(FIXTURES, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(?:md|yaml)$/.test(name))
      .map((name) => [name, readFileSync(join(FIXTURES, name), 'utf8')]),
  )
