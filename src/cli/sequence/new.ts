// One run of `sequence new`: the steps come from a list or are asked one by one; the file is read again before it is written.

import { basename, extname, resolve } from 'node:path'
import { DEFAULT_SEQUENCE } from '../../check/read-text.ts'
import { loadBuiltIn, loadPhonics } from '../../packaged/data.ts'
import type { Accent } from '../../phonics/types.ts'
import { fail, isError, type Problem, type Result, succeed, toProblem, toProblemText } from '../../problem/index.ts'
import { toCount, wrap } from '../../report/text.ts'
import { type DraftStep, type DraftTools, judgeLine, type SequenceDraft, toSequenceYaml } from '../../sequence/draft.ts'
import { loadSequence } from '../../sequence/load.ts'
import { complainOf, type ExitCode, toWidth } from '../command.ts'
import { toShownPath } from '../files/file-problem.ts'
import { readStdinBytes, readTextFile } from '../files/read.ts'
import { toShown } from '../files/shown.ts'
import { writeNewFiles } from '../files/write-new.ts'
import type { Io } from '../io.ts'
import { askSteps } from './ask.ts'

export interface NewOptions {
  readonly from?: string
  readonly title?: string
  readonly accent?: Accent
}

export async function runNew(given: string, options: NewOptions, io: Io): Promise<ExitCode> {
  const made = await make(given, options, io)
  if (!made.ok) {
    complainOf(io, made.problems)
    return 2
  }
  if (made.value === undefined) {
    io.stdout.write('Nothing was written.\n')
    return 0
  }
  const { path, draft, doubts } = made.value
  const wrong = write(path, draft, io)
  if (wrong.length > 0) {
    complainOf(io, wrong)
    return 2
  }
  complainOf(io, doubts)
  const say = (text: string): void => io.stdout.write(`${wrap(text, toWidth(io)).join('\n')}\n`)
  say(`${path} is written: ${toCount(draft.steps.length, 'step')}.`)
  say(`To see it: battledore sequence ${path}. To check a story by it: battledore check STORY --sequence ${path}.`)
  return 0
}

interface Made {
  readonly path: string
  readonly draft: SequenceDraft
  /** What is doubtful, and was written all the same. */
  readonly doubts: readonly Problem[]
}

async function make(given: string, options: NewOptions, io: Io): Promise<Result<Made | undefined>> {
  const path = toTarget(given, io)
  if (!path.ok) return path
  const name = toName(path.value)
  const draft = { name, title: options.title ?? name, accent: options.accent ?? 'general-american', steps: [] } as const
  if (options.from !== undefined) {
    const list = await readList(options.from, draft, io)
    if (!list.ok) return list
    const { steps, doubts } = list.value
    return succeed({ path: path.value, draft: { ...draft, steps }, doubts })
  }
  if (!io.stdinIsTTY || !io.stdout.isTTY)
    return fail({
      code: 'bad-value',
      message: 'Nobody can be asked here',
      note: 'Give the steps in a list: --from list.txt, a line a step, with commas between what it teaches.',
    })
  const asked = await askSteps(draft, options, toTools(draft.accent), io)
  // What was doubtful was told when it was said.
  return succeed(asked && { path: path.value, draft: asked, doubts: [] })
}

/** The path with its ending, where no file is yet. */
function toTarget(given: string, io: Io): Result<string> {
  const ending = extname(given)
  const path = toShown(ending === '' ? `${given}.yaml` : given, io)
  if (!/^(\.ya?ml)?$/i.test(ending)) {
    const expected = [`${given.slice(0, -ending.length)}.yaml`]
    return fail({ code: 'bad-value', message: `A sequence file ends in .yaml, not as ${toShownPath(given)}`, expected })
  }
  if (io.fs.existsSync(resolve(io.cwd, path)))
    return fail({
      code: 'foreign-file',
      message: `${toShownPath(path)} is there already and stays as it is`,
      note: 'Take another name, or add to it with `battledore sequence add`.',
    })
  return succeed(path)
}

const toName = (path: string): string => basename(path, extname(path)).trim().replace(/\s+/g, '-')

/** Examples of the sequence that most people know, for who writes letters alone. */
const toTools = (accent: Accent): DraftTools => ({
  phonicsFor: loadPhonics,
  examples: loadBuiltIn(DEFAULT_SEQUENCE, accent)?.steps.flatMap(({ adds }) => adds.correspondences) ?? [],
})

const MAX_BYTES = 1024 * 1024

interface List {
  readonly steps: readonly DraftStep[]
  readonly doubts: readonly Problem[]
}

/** All mistakes of a list, each with its line; a list that has one is not used. */
async function readList(from: string, draft: SequenceDraft, io: Io): Promise<Result<List>> {
  const path = from === '-' ? 'the list' : toShown(from, io)
  const text = from === '-' ? await readStdin(path, io) : readTextFile(resolve(io.cwd, from), io, path)
  if (!text.ok) return text
  const tools = toTools(draft.accent)
  const steps: DraftStep[] = []
  const problems: Problem[] = []
  for (const [at, line] of text.value.split(/\r\n|\n|\r/).entries()) {
    if (/^\s*(#|$)/.test(line)) continue
    const judged = judgeLine(line, `step-${steps.length + 1}`, { ...draft, steps }, tools)
    const isEmpty = judged.step.items.length === 0 && judged.problems.length === 0
    const found = isEmpty ? [toEmpty(line)] : judged.problems
    problems.push(...found.map((one) => ({ ...one, message: `${path}, line ${at + 1}: ${one.message}` })))
    // A step with a mistake is remembered all the same, so that what it teaches is known to the next lines.
    if (judged.step.items.length > 0) steps.push(judged.step)
  }
  if (problems.some(isError)) return { ok: false, problems }
  if (steps.length > 0) return succeed({ steps, doubts: problems })
  return fail({
    code: 'bad-value',
    message: `${path} has no step`,
    note: 'Write a line a step: a as in cat, m as in mat.',
  })
}

async function readStdin(shown: string, io: Io): Promise<Result<string>> {
  const read = await readStdinBytes(io, shown, MAX_BYTES)
  return read.ok ? succeed(new TextDecoder().decode(read.value)) : read
}

const toEmpty = (line: string): Problem =>
  toProblem({ code: 'bad-value', message: `\`${line.trim()}\` teaches nothing`, note: 'Leave the line out.' })

/** What is in the way; then nothing was written. */
function write(path: string, draft: SequenceDraft, io: Io): readonly Problem[] {
  const yaml = toSequenceYaml(draft)
  const { problems } = loadSequence(yaml, { phonicsFor: loadPhonics, path })
  if (problems.some(isError)) return problems.map((one) => ({ ...one, message: toProblemText(one) }))
  const wrong = writeNewFiles([{ path, content: yaml }], io)
  return wrong ? [wrong] : []
}
