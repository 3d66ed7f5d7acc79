// Settings, sequences and readers from files that only answer later, as a folder in the browser does: the same as from the disk.

import { expect, it } from 'vitest'
import { rules } from '../../rules/index.ts'
import { findReaders } from '../../src/cli/readers.ts'
import { createResources } from '../../src/cli/resources.ts'
import { createConfigFinder, resolveSettings } from '../../src/config/index.ts'
import { decodeUtf8, type TextFiles } from '../../src/files/index.ts'
import { findBuiltInNearest, listBuiltIns, loadBuiltIn, loadPhonics } from '../../src/packaged/data.ts'
import { type Problem, succeed, toProblemLine } from '../../src/problem/index.ts'
import { findReaderFiles } from '../../src/readers/index.ts'
import { createSequenceFinder } from '../../src/resources/sequences.ts'
import { createWorld } from '../cli/io.ts'

const FILES = {
  'battledore.yaml': 'extends: shared/house.yaml\n',
  'shared/house.yaml': 'sequence: ../sequences/ours.yaml\nnames: [Tam]\n',
  'sequences/ours.yaml':
    'name: ours\nsteps:\n  - id: one\n    teach:\n      - a as in cat\n      - c as in cat\n      - t as in cat\n  - id: two\n    teach:\n      - h as in hat\n',
  'sequences/wrong.yaml': 'name: wrong\nsteps:\n  - id: one\n    teach:\n      - a as in dog\n',
  'readers/meg.yaml': 'name: Meg\nsequence: ../sequences/ours.yaml\nstep: two\n',
  'readers/wren.yaml': 'name: Wren\nsequence: ../sequences/wrong.yaml\nstep: one\n',
  'readers/both.yaml': 'name: Both\nmembers: [meg.yaml, tib.yaml]\n',
  'readers/tib.yaml': 'name: Tib\nsequence: ../sequences/ours.yaml\nstep: one\n',
}

/** Answers after a while, never at once. */
function createSlowFiles(files: Readonly<Record<string, string>>): TextFiles {
  const later = (): Promise<void> => new Promise((done) => setTimeout(done, 1))
  return {
    show: (path) => path,
    async read(path) {
      await later()
      const text = files[path]
      return text === undefined ? undefined : decodeUtf8(new TextEncoder().encode(text), path)
    },
    async list(folder) {
      await later()
      const prefix = `${folder}/`
      const names = Object.keys(files).flatMap((path) => (path.startsWith(prefix) ? [path.slice(prefix.length)] : []))
      return names.length > 0 ? succeed(names) : undefined
    },
  }
}

const files = createSlowFiles(FILES)
const createFinder = (report?: (problems: readonly Problem[]) => void) =>
  createSequenceFinder({
    files,
    builtIns: { list: listBuiltIns, load: loadBuiltIn, findNearest: findBuiltInNearest },
    phonicsFor: loadPhonics,
    ...(report && { report }),
  })

it('finds the settings of a folder, with a sequence named by a file that the config builds on', async () => {
  const storyPath = 'stories/hat.md'
  const chain = await createConfigFinder(files.read, rules).findFor(storyPath)
  const settings = resolveSettings({ chain, storyPath, flags: {}, rules, defaultSequence: 'series' })
  expect(chain.problems).toEqual([])
  expect(settings.sequence.value).toBe('sequences/ours.yaml')
  const found = await createFinder()(settings.sequence.value, undefined)
  expect(found.ok && found.value.steps.map(({ id }) => id)).toEqual(['one', 'two'])
})

it('reads a sequence once, and tells its mistakes as the command line does', async () => {
  const world = createWorld(FILES)
  try {
    const find = createFinder()
    expect(find('sequences/ours.yaml', undefined)).toBe(find('sequences/ours.yaml', undefined))
    for (const name of ['sequences/wrong.yaml', 'sequences/nowhere.yaml', 'serise']) {
      const [here, there] = await Promise.all([
        find(name, undefined),
        createResources(world.io).sequence(name, undefined),
      ])
      expect(here.ok).toBe(false)
      expect(here).toEqual(there)
    }
  } finally {
    world.remove()
  }
})

it('reads the readers of a folder as the command line does, groups and mistakes among them', async () => {
  const world = createWorld(FILES)
  try {
    const on = '2026-11-29'
    const tools = { files, sequence: createFinder(), phonicsFor: loadPhonics, defaultSequence: 'series', on }
    const here = await findReaderFiles('readers', tools)
    const there = await findReaders('readers', world.io, createResources(world.io), { on })
    expect(here.readers.map(({ path, reader: { name, step } }) => [path, name, step])).toEqual([
      ['readers/both.yaml', 'Both', 'one'],
      ['readers/meg.yaml', 'Meg', 'two'],
      ['readers/tib.yaml', 'Tib', 'one'],
    ])
    expect(here.problems.map(toProblemLine)).toEqual(there.problems.map(toProblemLine))
    expect(here.problems[0]).toMatchObject({ path: 'sequences/wrong.yaml', place: { start: { line: 5 } } })
    expect(there.readers.map(({ path, sequenceName }) => [path, sequenceName])).toEqual(
      here.readers.map(({ path, sequenceName }) => [path, sequenceName]),
    )
    expect(await findReaderFiles('nowhere', tools)).toMatchObject({ problems: [{ code: 'missing-file' }] })
    expect((await findReaderFiles('readers/meg.yaml', tools)).readers).toHaveLength(1)
  } finally {
    world.remove()
  }
})
