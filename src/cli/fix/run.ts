// Goes through the findings of one story: shows the diff of the first offers, or asks a person.

import { applyDecisions, decideByFirst, type Finding, toUnifiedDiff } from '../../fix/index.ts'
import type { Paint } from '../../report/paint.ts'
import { toPrintable } from '../../report/text.ts'
import { complain, type ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import { type FixOptions, openSession, type Session } from './session.ts'

export type { FixOptions } from './session.ts'

export async function fix(given: string, options: FixOptions, paint: Paint, io: Io): Promise<ExitCode> {
  if (!options.dryRun && !(io.stdinIsTTY && io.stdout.isTTY)) {
    complain(
      io,
      'fix asks about each word, so it needs a terminal. Without one, give --dry-run: it prints what it would change.',
    )
    return 2
  }
  const from = options.from ?? '1'
  if (!/^[1-9]\d*$/.test(from)) {
    complain(io, `--from is the number of a line, such as 12; it is ${toPrintable(JSON.stringify(from))}.`)
    return 2
  }
  const session = await openSession(given, options, paint, io)
  if (typeof session === 'number') return session
  const open = session.findings.filter(({ line }) => line >= Number(from))
  if (options.dryRun) return showDryRun(session, open)
  // Whoever asks for a diff alone does not wait for what asks.
  const { walkThrough } = await import('./walk.ts')
  return walkThrough(session, open)
}

async function showDryRun({ task, place, findings, io }: Session, open: readonly Finding[]): Promise<ExitCode> {
  const decisions = decideByFirst(open)
  const { text } = await applyDecisions(task.source, decisions)
  io.stdout.write(await toUnifiedDiff(place.name, task.source, text))
  if (place.folder !== '.' && text !== task.source)
    io.stderr.write(`This diff holds in the folder ${place.folder}: patch -p1 -d ${place.folder}\n`)
  return decisions.length < findings.length ? 1 : 0
}
