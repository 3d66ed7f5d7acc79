// Walks through the findings of one story, shows what would change, and writes it when it is wanted.

import { relative, resolve, sep } from 'node:path'
import { rules } from '../../../rules/index.ts'
import { checkStory } from '../../check/check-story.ts'
import { type FreshStory, isChecked } from '../../check/result.ts'
import { readFlags } from '../../config/index.ts'
import {
  applyDecisions,
  type Decision,
  type DiffPlace,
  decideByFirst,
  type Finding,
  parseAnswer,
  toDiffPlace,
  toFindings,
  toQuestion,
  toUnifiedDiff,
} from '../../fix/index.ts'
import type { Paint } from '../../report/paint.ts'
import { toCount, toList, toPrintable, wrap } from '../../report/text.ts'
import { toCaseOf } from '../../words/index.ts'
import { createTaskMaker, type Task } from '../check/task.ts'
import { complain, complainOf, type ExitCode, toWidth } from '../command.ts'
import { readTextFile } from '../files/read.ts'
import { findWriteObstacle, writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'
import { createLineReader, type LineReader } from '../lines-of-input.ts'
import { createResources } from '../resources.ts'

export interface FixOptions {
  readonly step?: string
  readonly sequence?: string
  readonly accent?: string
  readonly config?: string
  readonly dryRun?: boolean
}

export async function fix(given: string, options: FixOptions, paint: Paint, io: Io): Promise<ExitCode> {
  if (!options.dryRun && !(io.stdinIsTTY && io.stdout.isTTY)) {
    complain(
      io,
      'fix asks about each word, so it needs a terminal. Without one, give --dry-run: it prints what it would change.',
    )
    return 2
  }
  const checked = await check(given, options, io)
  if (typeof checked === 'number') return checked
  const { task, story, isWord } = checked
  const findings = toFindings(story.messages, task.source, story.lines, isWord)
  const session: Session = { task, path: given, findings, view: { width: toWidth(io), paint }, io }
  return options.dryRun ? showDryRun(session) : walkThrough(session)
}

interface Session {
  readonly task: Task
  /** As given. */
  readonly path: string
  readonly findings: readonly Finding[]
  readonly view: { readonly width: number; readonly paint: Paint }
  readonly io: Io
}

async function check(
  given: string,
  options: FixOptions,
  io: Io,
): Promise<{ task: Task; story: FreshStory; isWord: (word: string) => boolean } | ExitCode> {
  const flags = readFlags({ sequence: options.sequence, step: options.step, accent: options.accent }, io.cwd)
  complainOf(io, flags.problems)
  if (flags.problems.length > 0) return 2
  const tasks = createTaskMaker(io, options.config === undefined ? {} : { config: options.config })
  const task = await tasks.make({ path: given, file: resolve(io.cwd, given) })
  if (task === undefined) return 0
  const resources = createResources(io)
  const result =
    'problems' in task ? task : await checkStory({ ...task, flags: flags.layer, rules, resources, suggest: 'careful' })
  if ('problems' in task || !isChecked(result)) {
    if ('problems' in result) complainOf(io, result.problems)
    return 2
  }
  const help = result.messages.length > 0 ? await resources.wordHelp?.() : undefined
  const isWord = (word: string): boolean => help?.factsOf(word)?.main !== undefined
  return tasks.hasConfigErrors() ? 2 : { task, story: result, isWord }
}

async function showDryRun(session: Session): Promise<ExitCode> {
  const { task, path, findings, io } = session
  const decisions = decideByFirst(findings)
  const { text } = await applyDecisions(task.source, decisions)
  const { name, folder } = findDiffPlace(path, io)
  io.stdout.write(await toUnifiedDiff(name, task.source, text))
  if (folder !== '.' && text !== task.source)
    io.stderr.write(`This diff holds in the folder ${folder}: patch -p1 -d ${folder}\n`)
  return decisions.length < findings.length ? 1 : 0
}

/** A file outside the current folder is named from the nearest folder that holds both. */
const findDiffPlace = (path: string, { cwd }: Io): DiffPlace =>
  toDiffPlace(relative(cwd, resolve(cwd, path)).replaceAll(sep, '/'))

async function walkThrough(session: Session): Promise<ExitCode> {
  const { path, findings, view, io } = session
  const open = findings.filter(({ isOpen }) => isOpen)
  const obstacle = open.length > 0 ? findWriteObstacle(resolve(io.cwd, path), io, path) : undefined
  if (obstacle !== undefined) {
    complainOf(io, [obstacle])
    return 2
  }
  const tell = (text: string): void => io.stdout.write(`${wrap(text, view.width).join('\n')}\n`)
  tell(
    open.length === 0
      ? `${toPrintable(path)}: there is nothing to decide on.`
      : `${toPrintable(path)}: ${toCount(open.length, 'place')} to decide on. Nothing is written before you say so.`,
  )
  const lines = createLineReader(io)
  try {
    const decisions = await ask(open, session, lines)
    tellHelpless(findings, open, tell)
    if (decisions === undefined || decisions.length === 0) {
      if (open.length > 0) tell('Nothing is changed.')
      return findings.length > 0 ? 1 : 0
    }
    const isWritten = await showAndWrite(decisions, session, lines)
    if (isWritten === undefined) return 2
    return isWritten && countDone(decisions, findings) === findings.length ? 0 : 1
  } finally {
    await lines.end()
  }
}

/** Words for which nothing can be put in are named, so that nobody takes the story for mended. */
function tellHelpless(findings: readonly Finding[], open: readonly Finding[], tell: (text: string) => void): void {
  const helpless = findings.filter((finding) => !open.includes(finding))
  const isAsked = (word: string): boolean => open.some((finding) => finding.word.toLowerCase() === word.toLowerCase())
  // A word that is asked about elsewhere has its line with it: what is said is not true of all its places.
  const toWords = (some: readonly Finding[]): string =>
    toList([
      ...new Set(some.map(({ word, line }) => `\`${word.toLowerCase()}\`${isAsked(word) ? ` on line ${line}` : ''}`)),
    ])
  const [bound, without] = [helpless.filter(({ isBound }) => isBound), helpless.filter(({ isBound }) => !isBound)]
  if (without.length > 0) tell(`No word was found that could stand for ${toWords(without)}: write those places anew.`)
  if (bound.length > 0)
    tell(
      `No word can be put in for ${toWords(bound)}: emphasis reaches beyond the word, or a link, a comment or HTML stands in it. Take those marks away and run fix again, or write those places anew.`,
    )
}

function countDone(decisions: readonly Decision[], findings: readonly Finding[]): number {
  const names = new Set(decisions.flatMap((decision) => (decision.kind === 'name' ? [decision.name] : [])))
  const replaced = new Set(decisions.flatMap((decision) => (decision.kind === 'replace' ? [decision.finding] : [])))
  return findings.filter((finding) => replaced.has(finding) || (finding.name !== undefined && names.has(finding.name)))
    .length
}

/** Undefined where the input ended before the last answer. */
async function ask(
  open: readonly Finding[],
  session: Session,
  lines: LineReader,
): Promise<readonly Decision[] | undefined> {
  const decisions: Decision[] = []
  /** What was said of a word for the whole story. */
  const everywhere = new Map<string, string | undefined>()
  for (const [at, finding] of open.entries()) {
    const key = finding.word.toLowerCase()
    if (decisions.some((decision) => decision.kind === 'name' && decision.name === finding.name)) continue
    if (everywhere.has(key)) {
      const word = everywhere.get(key)
      if (word !== undefined && finding.suggestions.length > 0)
        decisions.push({ kind: 'replace', finding, word: toCaseOf(finding.word, word) })
      continue
    }
    const answer = await askOne(finding, `${at + 1} of ${open.length}, line ${finding.line}`, session, lines)
    if (answer === undefined) return undefined
    if (answer.kind === 'quit') break
    if (answer.kind === 'name' && finding.name !== undefined) decisions.push({ kind: 'name', name: finding.name })
    if (answer.kind === 'replace') decisions.push({ kind: 'replace', finding, word: answer.word })
    if ('everywhere' in answer && answer.everywhere)
      everywhere.set(key, answer.kind === 'replace' ? answer.word.toLowerCase() : undefined)
  }
  return decisions
}

async function askOne(finding: Finding, place: string, { view, io }: Session, lines: LineReader) {
  io.stdout.write(`\n${view.paint.strong(place)}\n${toQuestion(finding, view)}\n`)
  for (;;) {
    io.stdout.write('> ')
    const line = await lines.next()
    if (line === undefined) return undefined
    const answer = parseAnswer(line, finding)
    if (answer) return answer
    io.stdout.write('  That is none of the choices.\n')
  }
}

/** True where the file was written; undefined where it could not be. */
async function showAndWrite(
  decisions: readonly Decision[],
  { task, path, io }: Session,
  lines: LineReader,
): Promise<boolean | undefined> {
  const { text, unlisted } = await applyDecisions(task.source, decisions)
  for (const name of unlisted)
    complain(io, `${toPrintable(name)} could not be listed under \`names\`: mend the front matter first.`)
  io.stdout.write(`\n${await toUnifiedDiff(findDiffPlace(path, io).name, task.source, text)}\n`)
  if (text === task.source) return false
  io.stdout.write(`Write this to ${toPrintable(path)}? [y/N] `)
  const answer = await lines.next()
  if (!/^\s*y(es)?\s*$/i.test(answer ?? '')) {
    io.stdout.write('Nothing is changed.\n')
    return false
  }
  return write(text, task, path, io)
}

/** Not over what somebody else has written in the meantime, nor where the file has gone. */
function write(text: string, task: Task, path: string, io: Io): true | undefined {
  const file = resolve(io.cwd, path)
  const now = readTextFile(file, io, path)
  if (!now.ok) {
    const note = 'This has changed in the meantime. Nothing is written.'
    complainOf(
      io,
      now.problems.map((problem) => ({ ...problem, note })),
    )
    return undefined
  }
  if (now.value !== task.source) {
    complain(io, `${toPrintable(path)} has changed in the meantime. Nothing is written: run fix again.`)
    return undefined
  }
  const result = writeTextFile(file, text, io, path)
  if (result.ok) io.stdout.write(`${toPrintable(path)} is written.\n`)
  else complainOf(io, result.problems)
  return result.ok || undefined
}
