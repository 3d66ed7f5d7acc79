// Sets up a story folder: shows what it will write, asks on a terminal, writes.

import { spawnSync } from 'node:child_process'
import { dirname, join, relative, resolve } from 'node:path'
import { type Plan, planInit, type Step, type Surroundings } from '../../init/plan.ts'
import { HOOK_FOLDER } from '../../init/story-folder.ts'
import { DATA_FOLDER } from '../../packaged/data.ts'
import type { Accent } from '../../phonics/types.ts'
import { type Problem, toProblemLine, withOrigin } from '../../problem/index.ts'
import { toCount, wrap } from '../../report/text.ts'
import { findStep } from '../../sequence/knowledge.ts'
import type { Sequence } from '../../sequence/types.ts'
import { toStepUnknown } from '../../sequence/unknown-step.ts'
import { complain, type ExitCode, toWidth } from '../command.ts'
import { toFileProblem, toShownPath } from '../files/file-problem.ts'
import { createIgnoreFiles } from '../files/ignore-files.ts'
import { readTextFile } from '../files/read.ts'
import { toSlashes } from '../files/shown.ts'
import { walk } from '../files/walk.ts'
import { writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'
import { createLineReader } from '../lines-of-input.ts'
import { createResources } from '../resources.ts'
import { VERSION } from '../version.ts'
import { findExample } from './example.ts'
import { settle } from './settled.ts'

export interface InitOptions {
  readonly sequence?: string
  readonly accent?: Accent
  readonly step?: string
  readonly force?: boolean
  readonly editor?: boolean
  readonly commit?: boolean
  readonly dryRun?: boolean
  readonly yes?: boolean
}

export async function init(given: string, flags: InitOptions, io: Io): Promise<ExitCode> {
  const folder = resolve(io.cwd, given)
  try {
    if (io.fs.statSync(folder, { throwIfNoEntry: false })?.isDirectory() === false)
      throw new Error(`${toShownPath(given)} is a file, not a folder.`)
    const options = { ...flags, ...(await settle(folder, flags, io)) }
    const asked = await checkWishes(options, io)
    const around = {
      read: (path: string) => readOwn(join(folder, path), io),
      stories: await listStories(folder, io),
      source: findSource(folder, io),
    }
    const planFor = async (accent: Accent = asked.accent): Promise<Plan> =>
      toPlan(around, folder, { ...options, accent }, io)
    const plan = await planFor()
    show(plan.steps, given, io)
    const due = plan.steps.filter(({ text }) => text !== undefined)
    if (options.dryRun) return 0
    const answer = due.length > 0 ? await ask(due, options, asked.accent, io) : {}
    if (answer === undefined) {
      io.stdout.write('Nothing was written.\n')
      return 0
    }
    for (const step of (await planFor(answer.accent)).steps) if (step.text !== undefined) write(step, folder, io)
    if (options.commit) switchHookOn(folder, io)
    printNextSteps(plan, given, folder, io)
    return 0
  } catch (error) {
    complain(io, error instanceof Error ? error.message : String(error))
    return 2
  }
}

/**
 * The sequence, in the accent that was wished for; else in its own.
 * @throws with a message for the person, where the sequence or the step is not there
 */
async function checkWishes({ sequence, step, accent }: Wished, io: Io): Promise<Sequence> {
  const found = await createResources(io).sequence(sequence, accent)
  if (!found.ok) throw new Error(found.problems.map(toProblemLine).join('\n'))
  if (step !== undefined && !findStep(found.value, step))
    throw new Error(toProblemLine(withOrigin(toStepUnknown(step, found.value), { origin: '--step' })))
  return found.value
}

type Wished = InitOptions & { readonly sequence: string; readonly written: string }

type Settled = Wished & { readonly accent: Accent }

async function toPlan(around: Surroundings, folder: string, options: Settled, io: Io): Promise<Plan> {
  const { written: sequence, accent, step } = options
  const { phonicsFor } = createResources(io)
  const example = findExample(await checkWishes(options, io), phonicsFor(accent))
  const wishes = { sequence, accent, step, example, force: options.force === true, editor: options.editor === true }
  const plan = planInit(around, { ...wishes, commit: options.commit === true })
  if (plan) return plan
  const path = toSlashes(relative(io.cwd, join(folder, 'package.json')))
  throw new Error(`npm cannot read ${path}, so nothing was written. Mend it, then run this again.`)
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
  if (result.ok) return result.value
  throw new Error(toFirstLine(result.problems))
}

const toFirstLine = (problems: readonly Problem[]): string => problems.slice(0, 1).map(toProblemLine).join()

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

/** Asks only where a person sits at a terminal. Undefined where nothing is to be written. */
async function ask(
  due: readonly Step[],
  { yes, accent }: InitOptions,
  usual: Accent,
  io: Io,
): Promise<{ accent?: Accent } | undefined> {
  if (yes || !io.stdinIsTTY || !io.stdout.isTTY) return {}
  const lines = createLineReader(io)
  const answerTo = async (question: string): Promise<string> => {
    io.stdout.write(question)
    return (await lines.next())?.trim().toLowerCase() ?? 'no'
  }
  try {
    if (!/^(y(es)?)?$/.test(await answerTo(`Write ${toCount(due.length, 'file')}? [Y/n] `))) return undefined
    if (accent !== undefined || !due.some(({ path }) => path.endsWith('battledore.yaml'))) return {}
    const letters = usual === 'general-american' ? '[A/b]' : '[a/B]'
    const heard = await answerTo(`Which English do the children hear: American or British? ${letters} `)
    if (heard.startsWith('a')) return { accent: 'general-american' }
    return { accent: heard.startsWith('b') ? 'southern-british' : usual }
  } finally {
    await lines.end()
  }
}

function write({ path, text, isProgram }: Step, folder: string, io: Io): void {
  const file = join(folder, path)
  const shown = toSlashes(relative(io.cwd, file))
  try {
    io.fs.mkdirSync(dirname(file), { recursive: true })
  } catch (error) {
    throw new Error(toProblemLine(toFileProblem(shown, error)))
  }
  const result = writeTextFile(file, text ?? '', io, shown)
  if (!result.ok) throw new Error(toFirstLine(result.problems))
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
    return `run \`init --commit\` in ${toShownPath(top)}, the top folder of the repository.`
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

function printNextSteps(plan: Plan, given: string, folder: string, io: Io): void {
  for (const { path, byHand } of plan.steps) if (byHand) io.stdout.write(`\nAdd to ${path}:\n${byHand}`)
  const start = given === '.' ? '' : `cd ${/^[\w./-]+$/.test(given) ? given : JSON.stringify(given)} && `
  const say = (text: string): void => io.stdout.write(`${wrap(text, toWidth(io)).join('\n')}\n`)
  if (plan.npm) {
    printNpmSteps(plan.npm, start, folder, io)
    return
  }
  say(`\nNext: ${start}battledore check ${plan.folder}`)
  say(`Then open ${plan.example} in an editor of plain text. FIRST-STEPS.txt says more.`)
}

function printNpmSteps(
  { names, isListed, source }: NonNullable<Plan['npm']>,
  start: string,
  folder: string,
  io: Io,
): void {
  const isHere = io.fs.existsSync(join(folder, 'node_modules', '.bin', 'battledore'))
  const pack = `battledore-${VERSION}.tgz`
  const install = isListed ? 'npm install && ' : isHere ? '' : `npm install --save-dev PATH/TO/${pack} && `
  io.stdout.write(`\nNext: ${start}${install}npm run ${names.check}\n`)
  const say = (text: string): void => io.stdout.write(`${wrap(text, toWidth(io)).join('\n')}\n`)
  if (source) say(`package.json takes battledore from this machine: ${source}. docs/editor.md says how others get it.`)
  if (!isListed && !isHere) say(`\`npm pack\` in the folder of Battledore makes ${pack}.`)
}
