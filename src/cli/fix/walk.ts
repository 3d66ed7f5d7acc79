// Walks through the findings of one story with a person, shows what would change, and writes it when it is wanted.

import { resolve } from 'node:path'
import { toStraight } from '../../apostrophe.ts'
import { applyDecisions, type Decision, type Finding, toUnifiedDiff } from '../../fix/index.ts'
import { type Result, succeed } from '../../problem/index.ts'
import { toCount, toPrintable, wrap } from '../../report/text.ts'
import type { Task } from '../check/task.ts'
import { complain, complainOf, type ExitCode } from '../command.ts'
import { readTextFile } from '../files/read.ts'
import { findWriteObstacle, writeTextFile } from '../files/write.ts'
import { writeNewFiles } from '../files/write-new.ts'
import type { Io } from '../io.ts'
import { createLineReader, type LineReader } from '../lines-of-input.ts'
import { ask } from './ask.ts'
import type { Session } from './session.ts'

export async function walkThrough(session: Session, open: readonly Finding[]): Promise<ExitCode> {
  const { path, findings, view, io } = session
  const obstacle = open.length > 0 ? findWriteObstacle(resolve(io.cwd, path), io, path) : undefined
  if (obstacle !== undefined) {
    complainOf(io, [obstacle])
    return 2
  }
  const say = (text: string): void => io.stdout.write(`${wrap(text, view.width).join('\n')}\n`)
  say(
    open.length === 0
      ? `${toPrintable(path)}: there is nothing to decide on.`
      : `${toPrintable(path)}: ${toCount(open.length, 'place')} to decide on. Nothing is written before you say so.`,
  )
  const lines = createLineReader(io)
  try {
    const { decisions, stoppedAt, isCutOff } = await ask(open, session, lines)
    const { source } = session.task
    const text = decisions.length > 0 ? await decideText(decisions, session) : source
    const end = text === source ? 'unwanted' : isCutOff ? 'unasked' : await showAndWrite(text, session, lines)
    const kept = end === 'unasked' ? keepBeside(text, session) : undefined
    if (end === 'failed' || kept?.ok === false) return 2
    if (kept) say(toKeptText(toCount(decisions.length, 'decision'), kept.value, path))
    else if (end === 'unwanted' && open.length > 0) say('Nothing is changed.')
    const isTaken = end === 'written' || kept !== undefined
    if (stoppedAt) printHowToGoOn(stoppedAt, isTaken ? countLines(text) - countLines(source) : 0, session)
    const isDone = end === 'written' || findings.length === 0
    return isDone && countDone(decisions, findings) === findings.length ? 0 : 1
  } finally {
    await lines.end()
  }
}

const countLines = (text: string): number => text.split('\n').length

/** @param added how many lines were added, all of them before the place: behind it nothing is decided yet */
function printHowToGoOn({ line }: Finding, added: number, { path, judgedBy, io }: Session): void {
  const words = ['battledore', 'fix', path, ...judgedBy, '--from', String(line + added)]
  io.stdout.write(`To go on from here later: ${toPrintable(words.map(toShellWord).join(' '))}\n`)
}

/** In quotes where a shell would take it for several words, or for something else. */
const toShellWord = (word: string): string =>
  /^[\p{L}\p{N}_./\\:=@%+,-]+$/u.test(word) ? word : `"${word.replace(/["$`]/g, '\\$&')}"`

function countDone(decisions: readonly Decision[], findings: readonly Finding[]): number {
  const listed = new Set(decisions.flatMap((one) => ('word' in one && !('finding' in one) ? [one.word] : [])))
  const places = new Set(decisions.flatMap((one) => ('finding' in one ? [one.finding] : [])))
  return findings.filter(
    (finding) =>
      places.has(finding) ||
      (finding.name !== undefined && listed.has(finding.name)) ||
      listed.has(toStraight(finding.word.toLowerCase())),
  ).length
}

async function decideText(decisions: readonly Decision[], { task, io }: Session): Promise<string> {
  const { text, unlisted } = await applyDecisions(task.source, decisions)
  for (const { word, key } of unlisted)
    complain(io, `${toPrintable(word)} could not be listed under \`${key}\`: mend the lines at its top first.`)
  return text
}

/** What became of the changed text. `unasked`: the input ended before the answer. */
type End = 'written' | 'unwanted' | 'unasked' | 'failed'

async function showAndWrite(text: string, session: Session, lines: LineReader): Promise<End> {
  const { task, path, place, io } = session
  io.stdout.write(`\n${await toUnifiedDiff(place.name, task.source, text)}\n`)
  io.stdout.write(`Write this to ${toPrintable(path)}? [y/N] `)
  const answer = await lines.next()
  if (answer === undefined) return 'unasked'
  return /^\s*y(es)?\s*$/i.test(answer) ? write(text, task, path, io) : 'unwanted'
}

/** Where nobody can be asked any more, the story stays, and what was decided is not lost: it lies beside it, in a new file. */
function keepBeside(text: string, { path, io }: Session): Result<string> {
  for (let count = 1; ; count++) {
    const name = count === 1 ? `${path}.new` : `${path}.new-${count}`
    const problem = writeNewFiles([{ path: name, content: text }], io)
    if (problem === undefined) return succeed(name)
    if (problem.code === 'foreign-file') continue
    complainOf(io, [problem])
    return { ok: false, problems: [problem] }
  }
}

const toKeptText = (decisions: string, kept: string, path: string): string =>
  `\nThe input ended, so ${toPrintable(path)} is as it was. The story with your ${decisions} lies in ${toPrintable(kept)}: ` +
  `look at it, and put it in place of ${toPrintable(path)} if it is right.`

/** Not over what somebody else has written in the meantime, nor where the file has gone. */
function write(text: string, task: Task, path: string, io: Io): End {
  const file = resolve(io.cwd, path)
  const now = readTextFile(file, io, path)
  if (!now.ok) {
    const note = 'This has changed in the meantime. Nothing is written.'
    complainOf(
      io,
      now.problems.map((problem) => ({ ...problem, note })),
    )
    return 'failed'
  }
  if (now.value !== task.source) {
    complain(io, `${toPrintable(path)} has changed in the meantime. Nothing is written: run fix again.`)
    return 'failed'
  }
  const result = writeTextFile(file, text, io, path)
  if (result.ok) io.stdout.write(`${toPrintable(path)} is written.\n`)
  else complainOf(io, result.problems)
  return result.ok ? 'written' : 'failed'
}
