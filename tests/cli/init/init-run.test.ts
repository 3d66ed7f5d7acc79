// What `init` writes, run for real: the commands of the tasks word by word, and a commit that the hook judges.

import { spawn, spawnSync } from 'node:child_process'
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { ROOT } from '../../console.ts'
import { createWorld, type TestWorld } from '../io.ts'
import { type Matcher, readMarks } from '../problem-matcher.ts'
import { PROGRAM } from '../program.ts'

interface Task {
  readonly command: string
  readonly args: readonly string[]
  readonly problemMatcher: Matcher
}

const BAD = '---\nstep: pink-4\n---\n\nTam sat at night.\n'

const worlds: TestWorld[] = []
afterEach(() => {
  for (const { remove } of worlds.splice(0)) remove()
})

/** A story folder as `init` makes it, with the program where npm puts it. */
async function setUp(
  ...options: readonly string[]
): Promise<{ readonly world: TestWorld; readonly tasks: readonly Task[] }> {
  const program = [process.execPath, ...PROGRAM].map((part) => `'${part}'`).join(' ')
  const world = createWorld({ 'node_modules/.bin/battledore': `#!/bin/sh\nexec ${program} "$@"\n` })
  worlds.push(world)
  chmodSync(join(world.cwd, 'node_modules/.bin/battledore'), 0o755)
  spawnSync('git', ['init', '-q'], { cwd: world.cwd })
  expect(await main(['init', '--editor', ...options], world.io)).toBe(0)
  const { tasks } = JSON.parse(world.read('.vscode/tasks.json')) as { tasks: Task[] }
  return { world, tasks }
}

describe('the tasks, run as VS Code runs them', () => {
  it('check all stories, and every finding is read', async () => {
    const { world, tasks } = await setUp()
    world.write({ "stories/at Ned's.md": BAD })
    const [task] = tasks
    const { stdout } = spawnSync(task?.command ?? '', task?.args ?? [], { cwd: world.cwd, encoding: 'utf8' })
    const { marks } = readMarks(stdout, task?.problemMatcher as Matcher)
    expect(marks).toMatchObject([
      { file: "stories/at Ned's.md", line: 5, column: 12, endColumn: 17, code: 'no-untaught-correspondence' },
    ])
  })

  it('go on checking, and the runs are begun and ended', async () => {
    const { world, tasks } = await setUp()
    world.write({ 'stories/a.md': BAD })
    const [, task] = tasks
    const child = spawn(task?.command ?? '', task?.args ?? [], { cwd: world.cwd, detached: true })
    let out = ''
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString()
    })
    try {
      await expect.poll(() => out.match(/^done: /gm)?.length, { timeout: 30_000 }).toBe(2)
      const { marks, isOpen } = readMarks(out, task?.problemMatcher as Matcher)
      expect(isOpen).toBe(false)
      expect(marks.map(({ file }) => file)).toEqual(['stories/a.md'])
    } finally {
      // npm, the shell and the program: the whole group that was started here.
      if (child.pid !== undefined) process.kill(-child.pid)
    }
  })
})

describe('the hook', () => {
  const gitIn = (cwd: string, env: NodeJS.ProcessEnv, ...args: readonly string[]) =>
    spawnSync('git', ['-c', 'user.name=Meg', '-c', 'user.email=meg@example.org', ...args], {
      ...{ cwd, env },
      encoding: 'utf8',
    })
  const git = (cwd: string, ...args: readonly string[]) => gitIn(cwd, process.env, ...args)

  it('refuses a story that the child cannot read, and lets a good one through', async () => {
    const { world } = await setUp('--commit')
    git(world.cwd, 'add', 'stories', 'battledore.yaml')
    expect(git(world.cwd, 'commit', '-qm', 'the example').status).toBe(0)
    world.write({ 'stories/bad.md': BAD })
    git(world.cwd, 'add', 'stories')
    const { status, stdout, stderr } = git(world.cwd, 'commit', '-qm', 'a hard one')
    expect(status).not.toBe(0)
    expect(stdout + stderr).toContain('`night`')
    expect(git(world.cwd, 'log', '--oneline').stdout.trim().split('\n')).toHaveLength(1)
  })

  it('looks at the folder of the npm script and nowhere else', async () => {
    const { world } = await setUp('--commit')
    world.write({ 'docs/plan.md': 'Buy paint.\n' })
    git(world.cwd, 'add', 'docs')
    const { status, stderr } = git(world.cwd, 'commit', '-qm', 'a plan')
    expect(stderr).toBe('')
    expect(status).toBe(0)
  })

  it('says in one line what to do where the program is missing, and asks no registry', async () => {
    const { world } = await setUp('--commit')
    rmSync(join(world.cwd, 'node_modules'), { recursive: true })
    git(world.cwd, 'add', 'stories')
    // What would ask a registry says so instead.
    const asked = join(world.cwd, 'asked')
    for (const name of ['npm', 'npx']) {
      world.write({ [`bin/${name}`]: `#!/bin/sh\necho ${name} >>'${asked}'\n` })
      chmodSync(join(world.cwd, 'bin', name), 0o755)
    }
    const env = { ...process.env, PATH: `${join(world.cwd, 'bin')}:${process.env['PATH']}` }
    const { status, stdout, stderr } = gitIn(world.cwd, env, 'commit', '-qm', 'the example')
    expect(existsSync(asked)).toBe(false)
    expect(status).toBe(1)
    expect(stdout).toBe('')
    expect(stderr).toMatch(/^The stories were not checked: battledore is not installed here\..*\n$/)
  })

  it('takes the program of the machine where the folder has none', async () => {
    const { world } = await setUp('--commit')
    git(world.cwd, 'add', 'stories')
    renameSync(join(world.cwd, 'node_modules/.bin'), join(world.cwd, 'bin'))
    const env = { ...process.env, PATH: `${join(world.cwd, 'bin')}:${process.env.PATH}` }
    const { status, stderr } = spawnSync('.githooks/pre-commit', { cwd: world.cwd, env, encoding: 'utf8' })
    expect(stderr).toBe('')
    expect(status).toBe(0)
  })
})

describe('what it says comes next', () => {
  it('brings the program from its checkout without a network, and checks the example', () => {
    const world = createWorld({ 'shelf/.keep': '' })
    worlds.push(world)
    const program = makeCheckout(join(world.cwd, 'a checkout'))
    const cwd = join(world.cwd, 'shelf')
    const made = spawnSync(process.execPath, [program, 'init', '--editor'], { cwd, encoding: 'utf8' })
    const [, next = ''] = /^Next: (.*)$/m.exec(made.stdout) ?? []
    expect(next).toBe('npm install && npm run check')
    expect(JSON.parse(world.read('shelf/package.json')).devDependencies).toEqual({
      battledore: 'file:../a checkout',
    })
    const env = { ...process.env, npm_config_offline: 'true', npm_config_audit: 'false' }
    const { status, stdout, stderr } = spawnSync('sh', ['-c', next], { cwd, env, encoding: 'utf8' })
    expect(stderr).toBe('')
    expect(stdout).toContain('1 story')
    expect(status).toBe(0)
  })

  it('names the packed file where the program was installed', () => {
    const world = createWorld({ 'shelf/.keep': '' })
    worlds.push(world)
    const program = makeCheckout(join(world.cwd, 'lib/node_modules/battledore'))
    rmSync(join(world.cwd, 'lib/node_modules/battledore/package-lock.json'))
    const cwd = join(world.cwd, 'shelf')
    const { stdout } = spawnSync(process.execPath, [program, 'init', '--editor'], { cwd, encoding: 'utf8' })
    expect(stdout).toMatch(
      /^Next: npm install --save-dev PATH\/TO\/battledore-[\d.]+\.tgz && npm run check\n`npm pack` in/m,
    )
    expect(JSON.parse(world.read('shelf/package.json')).devDependencies).toBeUndefined()
  })

  /** As after `npm ci && npm run compile`, but for the packages, which the program itself does without. */
  function makeCheckout(folder: string): string {
    mkdirSync(folder, { recursive: true })
    const { name, version, bin } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'))
    writeFileSync(join(folder, 'package.json'), JSON.stringify({ name, version, bin }))
    writeFileSync(join(folder, 'package-lock.json'), '{}')
    cpSync(join(ROOT, 'dist'), join(folder, 'dist'), { recursive: true })
    return join(folder, 'dist/cli.cjs')
  }
})
