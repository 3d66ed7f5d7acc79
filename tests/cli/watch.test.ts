// `check --watch` as a real process, read as the editor reads it: by the tasks that `init` writes.

import { renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { watch } from '../../src/cli/run/watch.ts'
import { createWorld, type TestWorld } from './io.ts'
import { type Mark, type Matcher, readMarks } from './problem-matcher.ts'
import { type Running, startProgram } from './program.ts'

const GOOD = '---\nstep: pink-4\n---\nTam sat.\n'
const BAD = '---\nstep: pink-4\n---\nTam sat at night.\n'
const BRACKETS = '---\nstep: pink-4\n---\nTam \\[sat\\] (at night).\n'

const ends: (() => void | Promise<void>)[] = []
afterEach(async () => {
  for (const end of ends.splice(0).reverse()) await end()
})

function world(files: Readonly<Record<string, string>>): TestWorld {
  const made = createWorld(files)
  ends.push(made.remove)
  return made
}

function start(args: readonly string[], cwd: string): Running {
  const running = startProgram(['check', '--watch', '--format', 'line', ...args], cwd)
  ends.push(running.stop)
  return running
}

/** The matchers of the tasks as `init` writes them. */
async function toMatchers(): Promise<{ readonly once: Matcher; readonly watching: Matcher }> {
  const { io, read } = world({})
  await main(['init'], io)
  const { tasks } = JSON.parse(read('.vscode/tasks.json')) as { tasks: { problemMatcher: Matcher }[] }
  const [once, watching] = tasks.map(({ problemMatcher }) => problemMatcher)
  if (!once || !watching) throw new Error('init writes two tasks')
  return { once, watching }
}

/** The same marks from the JSON report, which no pattern has to read. */
async function toTruth(cwd: string): Promise<readonly Mark[]> {
  const { io, out } = createWorld({}, { cwd })
  await main(['check', '.', '--format', 'json', '--fail-on', 'never'], io)
  const { files } = JSON.parse(out()) as {
    files: { path: string; messages: (Omit<Mark, 'file' | 'code'> & { rule: string })[] }[]
  }
  return files.flatMap(({ path, messages }) =>
    messages.map(({ line, column, endLine, endColumn, severity, message, rule }) => ({
      file: path,
      line,
      column,
      endLine,
      endColumn,
      severity,
      message,
      code: rule,
    })),
  )
}

const sort = (marks: readonly Mark[]): string[] =>
  marks.map((mark) => JSON.stringify(Object.entries(mark).sort())).sort()
const countRuns = (out: string): number => out.match(/^done: /gm)?.length ?? 0

describe('the tasks that init writes', () => {
  const files = { 'a b.md': BAD, '[draft] 2.md': BRACKETS, "Ned's 10:4 story.md": BAD, 'good.md': GOOD }

  it('read every message of a check of its own, with its place', async () => {
    const { io, out, cwd } = world(files)
    const { once } = await toMatchers()
    await main(['check', '.', '--format', 'line'], io)
    const truth = await toTruth(cwd)
    expect(truth.some(({ message }) => message.includes('['))).toBe(true)
    expect(sort(readMarks(out(), once).marks)).toEqual(sort(truth))
  })

  it('read every message of a watching check, and drop those that were mended', async () => {
    const { cwd, write } = world(files)
    const { watching } = await toMatchers()
    const running = start([], cwd)
    const first = await running.until((out) => countRuns(out) === 4)
    expect(sort(readMarks(first, watching).marks)).toEqual(sort(await toTruth(cwd)))
    write({ 'a b.md': GOOD, 'good.md': BAD })
    const all = await running.until((out) => countRuns(out) === 6)
    const { marks, isOpen } = readMarks(all, watching)
    expect(isOpen).toBe(false)
    expect(marks.some(({ file }) => file === 'good.md')).toBe(true)
    expect(sort(marks)).toEqual(sort(await toTruth(cwd)))
  })

  it('read a mistake in a config, and take it back once it is mended', async () => {
    const { cwd, write } = world({ 'tam.md': GOOD, 'battledore.yaml': 'nmaes: [Tam]\n' })
    const { watching } = await toMatchers()
    const running = start([], cwd)
    const first = await running.until((out) => countRuns(out) === 2)
    expect(readMarks(first, watching).marks).toMatchObject([
      { file: 'battledore.yaml', line: 1, column: 1, severity: 'error', code: 'config' },
    ])
    write({ 'battledore.yaml': 'names: [Tam]\n' })
    const all = await running.until((out) => countRuns(out) === 4)
    expect(readMarks(all, watching).marks).toEqual([])
  })

  it('read a story that cannot be checked', async () => {
    const { cwd } = world({ 'tam.md': 'Tam sat.\n' })
    const { watching } = await toMatchers()
    const out = await start([], cwd).until((text) => countRuns(text) === 1)
    expect(readMarks(out, watching).marks).toMatchObject([
      { file: 'tam.md', line: 1, severity: 'error', code: 'not-checked' },
    ])
  })
})

describe('what is checked again', () => {
  it('is the story that changed, and no other', async () => {
    const { cwd, write } = world({ 'a.md': GOOD, 'b.md': GOOD })
    const running = start([], cwd)
    const before = (await running.until((out) => countRuns(out) === 2)).length
    write({ 'b.md': BAD })
    const after = await running.until((out) => countRuns(out) > 0, before)
    await pause(300)
    expect(running.out().slice(before)).toBe(after)
    expect(after.match(/^checking .*/gm)).toEqual(['checking b.md'])
  })

  it('is every story when the config changes, comes or goes', async () => {
    const { cwd, write } = world({ 'a.md': BAD, 'b.md': GOOD })
    const running = start([], cwd)
    await running.until((out) => countRuns(out) === 2)
    write({ 'battledore.yaml': 'step: pink-4\nsight words: [night, at]\n' })
    const quiet = await running.until((out) => countRuns(out) === 4)
    expect(quiet.split('\n').slice(-3)[0]).not.toContain('night')
    rmSync(join(cwd, 'battledore.yaml'))
    const again = await running.until((out) => countRuns(out) === 6, 0)
    expect(again.slice(quiet.length)).toContain('`night`')
  })

  it('is every story when its sequence file changes', async () => {
    const sequence = (word: string): string => `name: ours\nsteps:\n  - id: one\n    sight words: [${word}]\n`
    const { cwd, write } = world({
      'a.md': '---\nsequence: ours.yaml\nstep: one\n---\nnight\n',
      'ours.yaml': sequence('day'),
    })
    const running = start(['.'], cwd)
    expect(await running.until((out) => countRuns(out) === 1)).toContain('`night`')
    const before = running.out().length
    write({ 'ours.yaml': sequence('night') })
    expect(await running.until((out) => countRuns(out) === 1, before)).not.toContain('`night`')
  })

  it('follows new, removed and renamed stories, and saves that rename a file into place', async () => {
    const { cwd, write } = world({ 'a.md': BAD })
    const { watching } = await toMatchers()
    const running = start([], cwd)
    await running.until((out) => countRuns(out) === 1)
    write({ 'sub/new.md': BAD })
    await running.until((out) => out.includes('checking sub/new.md\n'))
    renameSync(join(cwd, 'a.md'), join(cwd, 'z.md'))
    await running.until((out) => out.includes('checking z.md\n') && /checking a\.md\ndone: 0 problems/.test(out))
    rmSync(join(cwd, 'sub/new.md'))
    await running.until((out) => /checking sub\/new\.md\ndone: 0 problems/.test(out))
    const before = running.out().length
    writeFileSync(join(cwd, '.z.md.tmp'), GOOD)
    renameSync(join(cwd, '.z.md.tmp'), join(cwd, 'z.md'))
    await running.until((out) => out.includes('checking z.md\ndone: 0 problems'), before)
    expect(readMarks(running.out(), watching).marks).toEqual([])
  })
})

describe('ten quick saves in a second', () => {
  it('end with the result of the last one, and every run is ended before the next begins', async () => {
    const { cwd, write } = world({ 'a.md': GOOD })
    const running = start([], cwd)
    const before = (await running.until((out) => countRuns(out) === 1)).length
    for (let save = 0; save < 10; save++) {
      write({ 'a.md': save === 9 ? BAD.replace('night', 'light') : `${BAD}${'Tam sat. '.repeat(save)}\n` })
      await pause(save % 2 ? 15 : 120)
    }
    await running.until((out) => out.includes('`light`'), before)
    await pause(300)
    const out = running.out().slice(before)
    const steps = out.match(/^(checking|done)/gm) ?? []
    expect(steps.every((step, at) => step === (at % 2 ? 'done' : 'checking'))).toBe(true)
    expect(out.slice(out.lastIndexOf('checking'))).toContain('`light`')
    expect(running.err()).toBe('')
  })
})

describe('in process', () => {
  it('ends when it is told to, and prints for people too', async () => {
    const { io, out } = world({ 'a.md': BAD })
    const stop = new AbortController()
    const ended = watch(['.'], { format: [] }, {}, io, stop.signal)
    while (!out().includes('done: ')) await pause(20)
    stop.abort()
    expect(await ended).toBe(0)
    expect(out()).toMatch(/^checking a\.md\n/)
    expect(out()).toContain('night')
  })

  it('shows errors only, and words that could stand there, where that is asked for', async () => {
    const { io, out } = world({ 'a.md': '---\nstep: pink-6\n---\nTam sat. Tam had a boat. Sid sat. Sid ran.\n' })
    const stop = new AbortController()
    const ended = watch(['.'], { format: [], quiet: true }, {}, io, stop.signal)
    while (!out().includes('done: ')) await pause(20)
    stop.abort()
    await ended
    expect(out()).toContain('done: 1 problem')
    expect(out()).toMatch(/tub|bus/)
  })

  it.each([
    [['check', '-', '--watch'], 'standard input cannot be watched'],
    [['check', '--watch', '--format', 'json'], 'pretty or line, not json'],
    [['check', '--watch', '--staged'], '--staged does not go with --watch.'],
    [['check', '--watch', '--changed-since', 'HEAD'], '--changed-since does not go with --watch.'],
    [['check', '--watch', '--format', 'line', '--output', 'a.txt'], 'one report, and not to a file'],
    [['check', '--watch', 'nowhere'], 'There is no file or folder `nowhere`.'],
  ])('refuses %j in one line', async (args, message) => {
    const { io, err } = world({ 'a.md': GOOD })
    expect(await main(args, io)).toBe(2)
    expect(err()).toContain(message)
    expect(err().trim().split('\n')).toHaveLength(1)
  })
})

const pause = (milliseconds: number): Promise<void> => new Promise((done) => setTimeout(done, milliseconds))
