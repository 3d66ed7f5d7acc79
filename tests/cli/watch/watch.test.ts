// `check --watch` as a real process, read as the editor reads it: by the tasks that `init` writes.

import { renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { watch } from '../../../src/cli/watch/run.ts'
import { createWorld, type TestWorld } from '../io.ts'
import { type Mark, type Matcher, readMarks } from '../problem-matcher.ts'
import { type Running, startProgram } from '../program.ts'

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
  await main(['init', '--editor'], io)
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

describe('a story that cannot be checked', () => {
  const broken = {
    'stories/a.md': 'Tam sat.\n',
    'stories/b.md': '---\nstep: pink-4\nnames: [Tam\n---\nTam sat.\n',
    'stories/c.md': '---\nsequence: own.yaml\nstep: x\n---\nTam sat.\n',
    'stories/d.md': '---\nsequence: own.yaml\nstep: x\n---\nTam sat.\n',
    'stories/e.md': '---\nstep: pink-99\n---\nTam sat.\n',
    'stories/own.yaml': 'name: own\nsteps:\n  - id: x\n    teachs: [a]\n',
  }

  it('is a mark at its place, and a mistake in a sequence is one mark in the sequence', async () => {
    const { io, out, err } = world(broken)
    const { once } = await toMatchers()
    expect(await main(['check', 'stories', '--format', 'line'], io)).toBe(2)
    expect(err()).toBe('')
    const { marks } = readMarks(out(), once)
    expect(marks.map(({ file, line, severity, code }) => [file, line, severity, code])).toEqual([
      ['stories/a.md', 1, 'error', 'not-checked'],
      ['stories/b.md', 3, 'error', 'not-checked'],
      ['stories/own.yaml', 4, 'error', 'not-checked'],
      ['stories/e.md', 2, 'error', 'not-checked'],
    ])
    expect(marks.map(({ message }) => message).join('\n')).not.toMatch(/\.(?:md|yaml):/)
    expect(out().trim().split('\n')).toHaveLength(marks.length)
  })

  it('has the same mark while it is watched, and a mistake in its sequence at its top', async () => {
    const { cwd } = world(broken)
    const { watching } = await toMatchers()
    const out = await start(['stories'], cwd).until((text) => countRuns(text) === 5)
    const { marks } = readMarks(out, watching)
    expect(marks.map(({ file, line }) => [file, line])).toEqual([
      ['stories/a.md', 1],
      ['stories/b.md', 3],
      ['stories/c.md', 1],
      ['stories/d.md', 1],
      ['stories/e.md', 2],
    ])
    expect(marks[2]?.message).toContain('stories/own.yaml:4:')
  })

  it('is told on standard error for people, a mistake in a sequence once', async () => {
    const { io, out, err } = world(broken)
    expect(await main(['check', 'stories'], io)).toBe(2)
    expect(err().match(/^battledore: stories\/own\.yaml:4:/gm)).toHaveLength(1)
    expect(err().trim().split('\n')).toHaveLength(4)
    expect(out()).toContain('5 files could not be checked.')
  })

  it('stands beside a mistake in a config, which is a mark too', async () => {
    const { io, out, err } = world({ 'battledore.yaml': 'nmaes: [Tam]\n', 'a.md': GOOD })
    const { once } = await toMatchers()
    expect(await main(['check', '.', '--format', 'line'], io)).toBe(2)
    expect([err(), readMarks(out(), once).marks.map(({ file, line, code }) => [file, line, code])]).toEqual([
      '',
      [['battledore.yaml', 1, 'config']],
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
    const { io, out } = world({ 'a.md': '---\nstep: pink-6\n---\nTam sat. Tam can jump. Sid sat. Sid ran.\n' })
    const stop = new AbortController()
    const ended = watch(['.'], { format: [], quiet: true }, {}, io, stop.signal)
    while (!out().includes('done: ')) await pause(20)
    stop.abort()
    await ended
    expect(out()).toContain('done: 1 problem')
    expect(out()).toMatch(/Could stand here: .*hop/)
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
