// Walks through the findings of one story with a person, shows what would change, and writes it when it is wanted.

import { resolve } from 'node:path'
import { toStraight } from '../../apostrophe.ts'
import { applyDecisions, type Decision, type Finding, toUnifiedDiff } from '../../fix/index.ts'
import { toCount, toPrintable, wrap } from '../../report/text.ts'
import type { Task } from '../check/task.ts'
import { complain, complainOf, type ExitCode } from '../command.ts'
import { readTextFile } from '../files/read.ts'
import { findWriteObstacle, writeTextFile } from '../files/write.ts'
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
    const asked = await ask(open, session, lines)
    const decisions = asked?.decisions ?? []
    const { source } = session.task
    const text = asked && decisions.length > 0 ? await decideText(decisions, session) : source
    const isWritten = text === source ? false : await showAndWrite(text, session, lines)
    if (isWritten === undefined) return 2
    if (!isWritten && open.length > 0) say('Nothing is changed.')
    if (asked?.stoppedAt)
      printHowToGoOn(asked.stoppedAt, isWritten ? countLines(text) - countLines(source) : 0, session)
    return (isWritten || findings.length === 0) && countDone(decisions, findings) === findings.length ? 0 : 1
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

/** True where the file was written; undefined where it could not be. */
async function showAndWrite(text: string, session: Session, lines: LineReader): Promise<boolean | undefined> {
  const { task, path, place, io } = session
  io.stdout.write(`\n${await toUnifiedDiff(place.name, task.source, text)}\n`)
  io.stdout.write(`Write this to ${toPrintable(path)}? [y/N] `)
  const answer = await lines.next()
  return /^\s*y(es)?\s*$/i.test(answer ?? '') ? write(text, task, path, io) : false
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
