// One run of `bring`: reads each text, writes its story and pictures beside it, and goes on to say who can read it.

import { basename, dirname, extname, join, resolve } from 'node:path'
import { type BroughtStory, bringText, type PagesBy } from '../../bring/index.ts'
import { DEFAULT_SEQUENCE } from '../../check/read-text.ts'
import { readFlags } from '../../config/index.ts'
import type { Accent } from '../../phonics/types.ts'
import { type Problem, toProblem, withOrigin } from '../../problem/index.ts'
import { toBroughtLines } from '../../report/bring.ts'
import { findStep } from '../../sequence/knowledge.ts'
import { toStepUnknown } from '../../sequence/unknown-step.ts'
import { toCheckSettings } from '../check/options.ts'
import { runCheck } from '../check/run.ts'
import { complainOf, type ExitCode, toWidth } from '../command.ts'
import { toShownPath } from '../files/file-problem.ts'
import { readBytes, readStdinBytes } from '../files/read.ts'
import { writeNewFiles } from '../files/write-new.ts'
import type { Io } from '../io.ts'
import { runLevel } from '../level/run.ts'
import { createResources } from '../resources.ts'

export interface BringOptions {
  readonly out?: string
  readonly pages: PagesBy
  readonly step?: string
  readonly sequence?: string
  readonly accent?: string
}

/** A text of a book is far smaller; its pictures may not be. */
const MAX_BYTES = 100 * 1024 * 1024

export async function runBring(given: readonly string[], options: BringOptions, io: Io): Promise<ExitCode> {
  const problems = await findStepProblems(options, io)
  if (problems.length > 0) {
    complainOf(io, problems)
    return 2
  }
  const written: string[] = []
  let failed = false
  for (const path of given) {
    const done = await bringOne(path, given.length, options, io)
    if (typeof done === 'string') written.push(done)
    else if (!done) failed = true
  }
  if (written.length > 0) await goOn(written, options, io)
  return failed ? 2 : 0
}

/** The path of the story; true where it went to standard output; false where it failed, which is told. */
async function bringOne(path: string, count: number, options: BringOptions, io: Io): Promise<string | boolean> {
  const shown = path === '-' ? 'The pasted text' : toShownPath(path)
  const fail = (...problems: readonly Problem[]): false => {
    complainOf(io, problems)
    return false
  }
  const target = toTarget(path, count, options, io)
  if (target === undefined) {
    const message = `${toShownPath(options.out ?? '')} is one file for ${count} texts`
    return fail(toProblem({ code: 'bad-value', message, note: 'Give --out a folder.' }))
  }
  const read =
    path === '-' ? await readStdinBytes(io, shown, MAX_BYTES) : readBytes(resolve(io.cwd, path), io, path, MAX_BYTES)
  if (!read.ok) return fail(...read.problems)
  const pictureFolder = `${basename(target, '.md')}-pictures`
  const { pages, step, sequence } = options
  const brought = await bringText({ bytes: read.value, name: path, pages, step, sequence, pictureFolder })
  if ('unreadable' in brought)
    return fail(toProblem({ code: 'unreadable-file', message: `${shown} ${brought.unreadable}` }))
  if (target === '-') {
    io.stdout.write(brought.markdown)
    return true
  }
  const wrong = write(target, brought, io)
  if (wrong !== undefined) return fail({ ...wrong, note: `Nothing of ${shown} was written.` })
  for (const line of toBroughtLines(shown, target, brought, toWidth(io))) io.stdout.write(`${line}\n`)
  return target
}

/** Undefined where several texts would go into one file. */
function toTarget(path: string, count: number, { out }: BringOptions, io: Io): string | undefined {
  const isFolder =
    out !== undefined &&
    out !== '-' &&
    (/[\\/]$/.test(out) || io.fs.statSync(resolve(io.cwd, out), { throwIfNoEntry: false })?.isDirectory() === true)
  if (out !== undefined && !isFolder) return count > 1 ? undefined : out
  if (path === '-') return out === undefined ? '-' : join(out, 'story.md')
  return join(out ?? dirname(path), `${basename(path, extname(path))}.md`)
}

/** What is in the way, if anything; then nothing was written. */
function write(target: string, { markdown, pictures }: BroughtStory, io: Io): Problem | undefined {
  const folder = dirname(target)
  const files = pictures.map(({ path, bytes }) => ({ path: join(folder, path), content: bytes }))
  return writeNewFiles([...files, { path: target, content: markdown }], io)
}

/** From which step on the stories can be read; and, where a step was given, what its children cannot read yet. */
async function goOn(paths: readonly string[], { sequence, accent, step }: BringOptions, io: Io): Promise<void> {
  io.stdout.write('\n')
  if (step === undefined) {
    const asked = { ...(sequence !== undefined && { sequence }), ...(accent !== undefined && { accent }) }
    await runLevel(paths, { ...asked, share: '90', format: 'pretty' }, io)
    return
  }
  const { layer } = readFlags({ sequence, step, accent }, io.cwd)
  const options = { failOn: 'never' }
  await runCheck(paths, toCheckSettings(options, layer), options, io)
}

/** Whether the step is one of the sequence; asked before anything is written. */
async function findStepProblems(
  { sequence = DEFAULT_SEQUENCE, accent, step }: BringOptions,
  io: Io,
): Promise<readonly Problem[]> {
  if (step === undefined) return []
  const found = await createResources(io).sequence(sequence, accent as Accent | undefined)
  if (!found.ok) return found.problems
  return findStep(found.value, step) ? [] : [withOrigin(toStepUnknown(step, found.value), { origin: '--step' })]
}
