// Sets up a story folder: shows what it will write, asks on a terminal, writes.

import { spawnSync } from 'node:child_process'
import { dirname, join, relative, resolve } from 'node:path'
import { type Plan, planInit, type Step } from '../../init/plan.ts'
import { HOOK_FOLDER } from '../../init/story-folder.ts'
import { DATA_FOLDER } from '../../packaged/data.ts'
import { toCount, wrap } from '../../report/text.ts'
import { toSlashes } from '../checker.ts'
import { complain, type ExitCode, toWidth } from '../command.ts'
import { toFileMessage, toShownPath } from '../files/file-message.ts'
import { createIgnoreFiles } from '../files/ignore-files.ts'
import { readTextFile } from '../files/read.ts'
import { walk } from '../files/walk.ts'
import { writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'
import { VERSION } from '../version.ts'

export interface InitOptions {
  readonly force?: boolean
  readonly hook?: boolean
  readonly dryRun?: boolean
  readonly yes?: boolean
}

export async function init(given: string, options: InitOptions, io: Io): Promise<ExitCode> {
  const folder = resolve(io.cwd, given)
  try {
    if (io.fs.statSync(folder, { throwIfNoEntry: false })?.isDirectory() === false)
      throw new Error(`${toShownPath(given)} is a file, not a folder.`)
    const plan = planInit(
      {
        read: (path) => readOwn(join(folder, path), io),
        stories: await listStories(folder, io),
        source: findSource(folder, io),
      },
      { force: options.force === true, hook: options.hook === true },
    )
    if (!plan) {
      const path = toSlashes(relative(io.cwd, join(folder, 'package.json')))
      throw new Error(`npm cannot read ${path}, so nothing was written. Mend it, then run this again.`)
    }
    const { steps } = plan
    show(steps, given, io)
    const due = steps.filter(({ text }) => text !== undefined)
    if (options.dryRun) return 0
    if (due.length > 0 && !(await isWanted(due.length, options, io))) {
      io.stdout.write('Nothing was written.\n')
      return 0
    }
    for (const step of due) write(step, folder, io)
    if (options.hook) switchHookOn(folder, io)
    tellNext(plan, given, folder, io)
    return 0
  } catch (error) {
    complain(io, error instanceof Error ? error.message : String(error))
    return 2
  }
}

/** The checkout that this program runs from, for npm. A program that was installed does not know where it came from. */
function findSource(folder: string, io: Io): string | undefined {
  const home = dirname(DATA_FOLDER)
  // A packed package has no lock file.
  if (!io.fs.existsSync(join(home, 'package-lock.json'))) return undefined
  const path = toSlashes(relative(io.fs.existsSync(folder) ? io.fs.realpathSync(folder) : folder, home))
  return path === '' ? undefined : `file:${path}`
}

/** Undefined where there is no such file; throws where it cannot be read, so that nothing is written over it. */
function readOwn(path: string, io: Io): string | undefined {
  if (!io.fs.existsSync(path)) return undefined
  const result = readTextFile(path, io, toSlashes(relative(io.cwd, path)))
  if (result.ok) return result.text
  throw new Error(result.message)
}

async function listStories(folder: string, io: Io): Promise<string[]> {
  if (!io.fs.existsSync(folder)) return []
  const { files } = await walk(folder, io, createIgnoreFiles(io))
  return files.map((file) => toSlashes(relative(folder, file)))
}

function show(steps: readonly Step[], given: string, io: Io): void {
  const width = toWidth(io)
  const wide = Math.max(...steps.map(({ path }) => path.length))
  io.stdout.write(`In ${toShownPath(given)}:\n`)
  for (const { path, does, why } of steps) {
    const lead = `  ${does.padEnd(9)}  ${path.padEnd(wide)}  `
    const [first = '', ...more] = wrap(why, Math.max(20, width - lead.length))
    io.stdout.write(`${lead}${first}\n${more.map((line) => `${' '.repeat(lead.length)}${line}\n`).join('')}`)
  }
}

/** Asks only where a person sits at a terminal. */
async function isWanted(count: number, { yes }: InitOptions, io: Io): Promise<boolean> {
  if (yes || !io.stdinIsTTY || !io.stdout.isTTY) return true
  io.stdout.write(`Write ${toCount(count, 'file')}? [Y/n] `)
  for await (const chunk of io.stdin()) return /^\s*(y(es)?)?\s*$/i.test(new TextDecoder().decode(chunk))
  return false
}

function write({ path, text, isProgram }: Step, folder: string, io: Io): void {
  const file = join(folder, path)
  const shown = toSlashes(relative(io.cwd, file))
  try {
    io.fs.mkdirSync(dirname(file), { recursive: true })
  } catch (error) {
    throw new Error(toFileMessage(shown, error))
  }
  const result = writeTextFile(file, text ?? '', io, shown)
  if (!result.ok) throw new Error(result.message)
  if (isProgram) io.fs.chmodSync(file, 0o755)
}

/** Only in the top folder of a repository, and only where no other hooks would be lost. */
function switchHookOn(folder: string, io: Io): void {
  const before = git(folder, 'config', 'core.hooksPath')
  if (before === HOOK_FOLDER) return
  const obstacle = findObstacle(folder, before, io)
  const done = obstacle === undefined && git(folder, 'config', 'core.hooksPath', HOOK_FOLDER) !== undefined
  const text = done
    ? `Git now checks staged stories before each commit. Others who clone the repository run \`${SWITCH_ON}\` once.`
    : `The hook is not switched on: ${obstacle ?? `run \`${SWITCH_ON}\`.`}`
  io.stdout.write(`${wrap(text, toWidth(io)).join('\n')}\n`)
}

const SWITCH_ON = `git config core.hooksPath ${HOOK_FOLDER}`

function findObstacle(folder: string, before: string | undefined, io: Io): string | undefined {
  const top = git(folder, 'rev-parse', '--show-toplevel')
  if (top === undefined) return `this is no git repository. In one, run \`${SWITCH_ON}\`.`
  if (io.fs.realpathSync(top) !== io.fs.realpathSync(folder)) {
    return `run \`init --hook\` in ${toShownPath(top)}, the top folder of the repository.`
  }
  if (before)
    return `git takes its hooks from ${toShownPath(before)}. Call ${HOOK_FOLDER}/pre-commit from the hook there.`
  if (!hasOwnHooks(git(folder, 'rev-parse', '--git-path', 'hooks'), folder, io)) return undefined
  return `this repository has hooks of its own. Move them to ${HOOK_FOLDER}, then run \`${SWITCH_ON}\`.`
}

function hasOwnHooks(path: string | undefined, folder: string, io: Io): boolean {
  const hooks = resolve(folder, path ?? '.git/hooks')
  return io.fs.existsSync(hooks) && io.fs.readdirSync(hooks).some((name) => !name.endsWith('.sample'))
}

/** What git prints; undefined where it fails or is missing. */
function git(folder: string, ...args: readonly string[]): string | undefined {
  const { status, stdout } = spawnSync('git', args, { cwd: folder, encoding: 'utf8' })
  return status === 0 ? stdout.trim() : undefined
}

function tellNext({ steps, names, isListed, source }: Plan, given: string, folder: string, io: Io): void {
  for (const { path, byHand } of steps) if (byHand) io.stdout.write(`\nAdd to ${path}:\n${byHand}`)
  const start = given === '.' ? '' : `cd ${/^[\w./-]+$/.test(given) ? given : JSON.stringify(given)} && `
  const isHere = io.fs.existsSync(join(folder, 'node_modules', '.bin', 'battledore'))
  const pack = `battledore-${VERSION}.tgz`
  const install = isListed ? 'npm install && ' : isHere ? '' : `npm install --save-dev PATH/TO/${pack} && `
  io.stdout.write(`\nNext: ${start}${install}npm run ${names.check}\n`)
  const say = (text: string): void => io.stdout.write(`${wrap(text, toWidth(io)).join('\n')}\n`)
  if (source) say(`package.json takes battledore from this machine: ${source}. docs/editor.md says how others get it.`)
  if (!isListed && !isHere) say(`\`npm pack\` in the folder of Battledore makes ${pack}.`)
}
