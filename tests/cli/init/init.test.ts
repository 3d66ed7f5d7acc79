// `battledore init`: what it writes works as it stands, and nothing that was there is lost.

import { spawnSync } from 'node:child_process'
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

const worlds: TestWorld[] = []
const world = (...args: Parameters<typeof createWorld>): TestWorld => {
  const made = createWorld(...args)
  worlds.push(made)
  return made
}
afterEach(() => {
  for (const { remove } of worlds.splice(0)) remove()
})

const OWN = ['stories/tam-and-the-hat.md', 'battledore.yaml', 'FIRST-STEPS.txt']
const MADE = [...OWN, 'package.json', '.vscode/tasks.json', '.vscode/settings.json']

describe('for a teacher', () => {
  it('makes a story, settings and a page of first steps, and nothing of npm or editors', async () => {
    const { io, cwd, out, read, err } = world()
    expect(await main(['init'], io)).toBe(0)
    expect(readdirSync(cwd).sort()).toEqual(['.git', 'FIRST-STEPS.txt', 'battledore.yaml', 'stories'])
    for (const path of OWN) expect(out()).toContain(`make       ${path}`)
    for (const path of [...OWN.map(read), out()])
      expect(path).not.toMatch(/\bnpm|npx|\bstaged|baseline|SARIF|front matter|node_modules/i)
    expect(await main(['check', 'stories', '--fail-on', 'warning'], io), out() + err()).toBe(0)
  })

  it('allows no name that nobody gave', async () => {
    const { io, read } = world()
    await main(['init'], io)
    expect(parse(read('battledore.yaml'))).toEqual({ root: true, sequence: 'series', accent: 'general-american' })
  })

  it('takes sequence, step and accent, and looks at them before it writes', async () => {
    const { io, cwd, read, err } = world()
    const asked = ['--sequence', 'england', '--accent', 'southern-british']
    expect(await main(['init', ...asked, '--step', 'pink-4'], io)).toBe(2)
    expect(err()).toContain('has no step `pink-4` (set in --step)')
    expect(readdirSync(cwd)).toEqual(['.git'])
    expect(await main(['init', '--accent', 'southern-british', '--step', 'pink-4'], io)).toBe(0)
    const made = { root: true, sequence: 'series', accent: 'southern-british', step: 'pink-4' }
    expect(parse(read('battledore.yaml'))).toEqual(made)
  })

  // Each with a step of its sequence in which every word of the example is readable.
  it.each([
    ['here', 'battledore.yaml', '.', 'sequence: england\n', 'y1-1'],
    ['here, though a flag says otherwise', 'battledore.yaml', '.', 'sequence: common-core\n', 'g1-2'],
    ['above', 'battledore.yaml', 'new', 'sequence: england\naccent: southern-british\n', 'y1-1'],
    ['above, as a file', 'battledore.yaml', 'new', 'sequence: own/mine.yaml\n', 'mine-1'],
  ])('writes an example for the sequence that the settings name %s', async (_, path, folder, settings, step) => {
    const own =
      'name: mine\nsteps:\n  - id: mine-1\n    teach: [a as in hat]\n    sight words: [Tam, had, hat, sat, on, the, is, sad]\n'
    const { io, read, err, out } = world({ [path]: settings, 'own/mine.yaml': own })
    const flags = step === 'g1-2' ? ['--sequence', 'england'] : []
    expect(await main(['init', folder, ...flags], io), err()).toBe(0)
    const prefix = folder === '.' ? '' : `${folder}/`
    expect(read(`${prefix}stories/tam-and-the-hat.md`)).toMatch(new RegExp(`^step: ${step}$`, 'm'))
    expect(await main(['check', `${prefix}stories`, '--fail-on', 'error'], io), out() + err()).toBe(0)
    if (folder === '.') expect(read(path)).toBe(settings)
  })

  it('says what every command of the first steps does: each of them runs', async () => {
    const { io, cwd, read, err } = world()
    await main(['init'], io)
    const lines = [...read('FIRST-STEPS.txt').matchAll(/^ {7}battledore (.*)$/gm)].map(([, line = '']) =>
      line.split(' '),
    )
    expect(lines.map(([name]) => name)).toEqual(['check', 'sequence', 'words', 'bring'])
    mkdirSync(join(cwd, 'old'))
    for (const argv of lines.filter(([name]) => name !== 'bring')) expect(await main(argv, io), err()).toBe(0)
  })
})

describe('the sequence that was asked for', () => {
  const TABLE = [
    ['series', 'general-american'],
    ['england', 'southern-british'],
    ['common-core', 'general-american'],
  ] as const

  it.each(TABLE)('%s is in its own accent, and the example can be read at its step', async (name, accent) => {
    const { io, read, err, out } = world()
    expect(await main(['init', '-y', '--sequence', name], io)).toBe(0)
    expect(parse(read('battledore.yaml'))).toEqual({ root: true, sequence: name, accent })
    expect(await main(['check', 'stories', '--fail-on', 'warning'], io), out() + err()).toBe(0)
    const [, words] = /battledore (words .*)/.exec(read('FIRST-STEPS.txt')) ?? []
    expect(await main(words?.split(' ') ?? [], io), err()).toBe(0)
  })

  it.each([
    ['\n\n', 'southern-british'],
    ['\na\n', 'general-american'],
  ])('a person who types %j to it for England gets %s', async (stdin, accent) => {
    const { io, read, out } = world({}, { isTTY: true, stdinIsTTY: true, stdin })
    await main(['init', '--sequence', 'england'], io)
    expect(out()).toContain('American or British? [a/B]')
    expect(parse(read('battledore.yaml'))).toMatchObject({ accent })
  })

  it('an own sequence too, even where it never teaches a word of the example', async () => {
    const own =
      'name: ours\naccent: southern-british\nsteps:\n  - id: one\n    teach: [a as in cat, t as in cat, m as in mat]\n'
    const { io, read, err, out } = world({ 'ours.yaml': own })
    expect(await main(['init', '-y', '--sequence', 'ours.yaml'], io)).toBe(0)
    expect(parse(read('battledore.yaml'))).toMatchObject({ accent: 'southern-british' })
    expect(read('stories/tam-and-the-hat.md')).toContain('step: one\nsight words: [')
    expect(await main(['check', 'stories'], io), out() + err()).toBe(0)
  })
})

describe('in an empty folder', () => {
  it('writes all files, shows them first, and what it wrote passes the check', async () => {
    const { io, out, read, err } = world()
    expect(await main(['init', '--editor'], io)).toBe(0)
    for (const path of MADE) {
      expect(out()).toContain(`make       ${path}`)
      expect(read(path)).not.toBe('')
    }
    expect(
      out()
        .split('\n')
        .every((line) => line.length <= 80),
    ).toBe(true)
    expect(await main(['check', 'stories', '--fail-on', 'warning'], io), out() + err()).toBe(0)
  })

  it('adds npm scripts, and the package itself', async () => {
    const { io, cwd, read } = world()
    await main(['init', '--editor'], io)
    const made = JSON.parse(read('package.json'))
    expect(made.scripts).toEqual({
      check: 'battledore check stories',
      'check:watch': 'battledore check stories --watch',
    })
    const { battledore } = made.devDependencies
    expect(battledore).toMatch(/^file:\.\.\//)
    expect(JSON.parse(readFileSync(join(cwd, battledore.slice(5), 'package.json'), 'utf8')).name).toBe('battledore')
  })

  it('makes the folder where it is not there', async () => {
    const { io, read, out } = world()
    expect(await main(['init', 'a shelf', '--editor'], io)).toBe(0)
    expect(read('a shelf/battledore.yaml')).toContain('sequence: series')
    expect(out()).toContain('cd "a shelf" && npm install')
  })

  it('explains every setting that the config has switched off', async () => {
    const { io, read, write, err } = world()
    await main(['init', '--editor'], io)
    const all = read('battledore.yaml').replace(/^# (?=(?!southern|general)[a-z ]+: ?|#? {2,})/gm, '')
    expect(Object.keys(parse(all))).toEqual(
      expect.arrayContaining(['step', 'names', 'sight words', 'readable share', 'ignore', 'rules', 'overrides']),
    )
    write({ 'battledore.yaml': all })
    await main(['check', 'stories', '--fail-on', 'never'], io)
    expect(err()).toBe('')
  })
})

describe('run again', () => {
  it('writes nothing the second time', async () => {
    const { io, read } = world()
    await main(['init', '--editor'], io)
    const before = MADE.map(read)
    const second = world({}, { cwd: io.cwd })
    expect(await main(['init', '--editor'], second.io)).toBe(0)
    expect(MADE.map(read)).toEqual(before)
    expect(second.out()).not.toMatch(/^ {2}(make|change|overwrite) /m)
  })

  it('keeps what a person has changed, and writes it anew only by force', async () => {
    const { io, read, write, out } = world({ 'battledore.yaml': 'sequence: england\n' })
    await main(['init', '--editor'], io)
    expect(read('battledore.yaml')).toBe('sequence: england\n')
    expect(out()).toMatch(/keep {7}battledore\.yaml/)
    write({ 'stories/tam-and-the-hat.md': 'mine' })
    await main(['init', '--editor', '--force'], io)
    expect(read('battledore.yaml')).toContain('sequence: series')
    expect(read('stories/tam-and-the-hat.md')).toContain('Tam had a hat.')
  })

  it('takes the config under its other names for one', async () => {
    const { io } = world({ '.battledore.yaml': 'step: pink-4\n' })
    await main(['init', '--editor'], io)
    expect(existsSync(join(io.cwd, 'battledore.yaml'))).toBe(false)
  })
})

describe('what belongs to others', () => {
  it('never overwrites an npm script, even by force, and keeps indent, line ends and all other keys', async () => {
    const before =
      '{\r\n\t"name": "ours",\r\n\t"scripts": {\r\n\t\t"check": "tsc",\r\n\t\t"b": "c"\r\n\t},\r\n\t"dependencies": { "battledore": "1" }\r\n}\r\n'
    const { io, read, out } = world({ 'package.json': before })
    await main(['init', '--editor', '--force'], io)
    const after = read('package.json')
    expect(JSON.parse(after).scripts).toEqual({
      check: 'tsc',
      b: 'c',
      'check:stories': 'battledore check stories',
      'check:stories:watch': 'battledore check stories --watch',
    })
    expect(JSON.parse(after).devDependencies).toBeUndefined()
    expect(after).toMatch(/^\{\r\n\t"name": "ours",\r\n\t"scripts"/)
    expect(out().replace(/\s+/g, ' ')).toContain('its own `check` stays as it is')
    expect(out()).toContain('Next: npm install && npm run check:stories\n')
    const { tasks } = JSON.parse(read('.vscode/tasks.json'))
    expect(tasks.map(({ args }: { args: string[] }) => args[2])).toEqual(['check:stories', 'check:stories:watch'])
  })

  it('takes a script for its own that somebody has changed, but that still checks stories', async () => {
    const { io, read, out } = world({
      'package.json': '{"scripts":{"check":"battledore check stories --fail-on warning"}}',
    })
    await main(['init', '--editor'], io)
    expect(JSON.parse(read('package.json')).scripts).toEqual({
      check: 'battledore check stories --fail-on warning',
      'check:watch': 'battledore check stories --watch',
    })
    expect(out()).toContain('npm run check\n')
  })

  it.each(['{ "name": ', '[]', '{ "scripts": "tsc" }'])(
    'stops in one line at a package.json that npm cannot read: %s',
    async (text) => {
      const { io, read, out, err } = world({ 'package.json': text })
      expect(await main(['init', '--editor', '--commit'], io)).toBe(2)
      expect(read('package.json')).toBe(text)
      expect(out()).toBe('')
      expect(err()).toBe(
        'battledore: npm cannot read package.json, so nothing was written. Mend it, then run this again.\n',
      )
      expect(readdirSync(io.cwd).sort()).toEqual(['.git', 'package.json'])
    },
  )

  it('leaves the place alone from which a package.json takes us', async () => {
    const { io, read, out } = world({ 'package.json': '{"devDependencies":{"battledore":"file:b.tgz"}}' })
    await main(['init', '--editor'], io)
    expect(JSON.parse(read('package.json')).devDependencies).toEqual({ battledore: 'file:b.tgz' })
    expect(out()).toContain('Next: npm install && npm run check\n')
    expect(out()).not.toContain('from this machine')
  })

  it('leaves tasks and settings with comments alone, even by force, and prints what to add', async () => {
    const tasks = '{ // ours\n  "version": "2.0.0", "tasks": [] }\n'
    const { io, read, out } = world({ '.vscode/tasks.json': tasks, '.vscode/settings.json': '{ /* ours */ }' })
    await main(['init', '--editor', '--force'], io)
    expect(read('.vscode/tasks.json')).toBe(tasks)
    expect(read('.vscode/settings.json')).toBe('{ /* ours */ }')
    expect(out()).toContain('Add to .vscode/tasks.json:')
    expect(out()).toContain('"beginsPattern"')
    expect(out()).toContain('"yaml.schemas"')
  })

  it('adds no example to a folder with stories, and checks that folder', async () => {
    const { io, read } = world({ 'pond.md': '---\nstep: pink-4\n---\nSid sat.\n' })
    await main(['init', '--editor'], io)
    expect(readdirSync(io.cwd)).not.toContain('stories')
    expect(JSON.parse(read('package.json')).scripts.check).toBe('battledore check .')
    await main(['init', '--editor', '--commit'], io)
    expect(read('.githooks/pre-commit')).toContain('check --staged .\n')
  })
})

describe('wrong use', () => {
  it('refuses a file', async () => {
    const { io, err } = world({ a: '' })
    expect(await main(['init', 'a'], io)).toBe(2)
    expect(err()).toBe('battledore: `a` is a file, not a folder.\n')
  })

  it('says in one line what cannot be written, and writes no half file', async () => {
    const { io, err } = world({ '.vscode': 'a file' })
    expect(await main(['init', '--editor'], io)).toBe(2)
    expect(err().trim().split('\n')).toHaveLength(1)
    expect(readdirSync(io.cwd).some((name) => name.endsWith('.tmp'))).toBe(false)
  })
})

describe('asking', () => {
  it('writes nothing with --dry-run', async () => {
    const { io, out } = world()
    expect(await main(['init', '--editor', '--dry-run'], io)).toBe(0)
    expect(out()).toContain('make       battledore.yaml')
    expect(readdirSync(io.cwd)).toEqual(['.git'])
  })

  it('asks on a terminal, and takes no for an answer', async () => {
    const { io, out } = world({}, { isTTY: true, stdinIsTTY: true, stdin: 'n\n' })
    expect(await main(['init', '--editor'], io)).toBe(0)
    expect(out()).toContain('Write 6 files? [Y/n]')
    expect(readdirSync(io.cwd)).toEqual(['.git'])
  })

  it('takes a mere Enter for yes, and does not ask after --yes', async () => {
    const enter = world({}, { isTTY: true, stdinIsTTY: true, stdin: '\n' })
    await main(['init', '--editor'], enter.io)
    expect(readdirSync(enter.io.cwd)).toContain('battledore.yaml')
    expect(enter.read('battledore.yaml')).toContain('accent: general-american')
    const british = world({}, { isTTY: true, stdinIsTTY: true, stdin: '\nb\n' })
    await main(['init'], british.io)
    expect(british.out()).toContain('American or British? [A/b]')
    expect(british.read('battledore.yaml')).toContain('accent: southern-british')
    const yes = world({}, { isTTY: true, stdinIsTTY: true, stdin: 'n\n' })
    await main(['init', '--yes'], yes.io)
    expect(yes.out()).not.toContain('[Y/n]')
    expect(readdirSync(yes.io.cwd)).toContain('battledore.yaml')
  })
})

describe('the hook', () => {
  const git = (cwd: string, ...args: string[]) => spawnSync('git', args, { cwd, encoding: 'utf8' })
  const repository = (files = {}): TestWorld => {
    const made = world(files)
    git(made.cwd, 'init', '-q')
    return made
  }

  it('is written as a program, and switched on', async () => {
    const { io, cwd, read, out } = repository()
    await main(['init', '--editor', '--commit'], io)
    expect(read('.githooks/pre-commit')).toContain('check --staged stories\n')
    expect(read('.githooks/pre-commit')).not.toContain('npx')
    expect(statSync(join(cwd, '.githooks/pre-commit')).mode & 0o111).not.toBe(0)
    expect(git(cwd, 'config', 'core.hooksPath').stdout.trim()).toBe('.githooks')
    expect(out()).toContain('Git now checks staged stories')
  })

  it('does not take the place of hooks that are there', async () => {
    const { io, cwd, out } = repository()
    mkdirSync(join(cwd, '.git/hooks'), { recursive: true })
    createHook(cwd)
    await main(['init', '--editor', '--commit'], io)
    expect(git(cwd, 'config', 'core.hooksPath').stdout).toBe('')
    expect(out()).toContain('hooks of its own')
  })

  it('says so where there is no repository, or where it lies above', async () => {
    const none = world()
    await main(['init', '--editor', '--commit'], none.io)
    expect(none.out()).toContain('no git repository')
    const above = repository()
    await main(['init', 'stories', '--commit'], above.io)
    expect(above.out().replace(/\s+/g, ' ')).toContain('the top folder of the repository')
  })

  function createHook(cwd: string): void {
    const path = join(cwd, '.git/hooks/pre-push')
    spawnSync('sh', ['-c', `echo '#!/bin/sh' > '${path}'`])
    chmodSync(path, 0o755)
  }
})
