// What commands share: how they are declared, where they write, and the exit codes.

import type { Command } from 'commander'
import { type Problem, toProblemLine } from '../problem/index.ts'
import { createPaint, hasColour, type Paint } from '../report/paint.ts'
import { toPrintable, wrap } from '../report/text.ts'
import type { Io } from './io.ts'

/** 0 nothing at or above the chosen severity, 1 findings, 2 wrong use or unreadable input. */
export type ExitCode = 0 | 1 | 2

export interface CommandContext {
  readonly io: Io
  /** Told at the end; the greatest wins. */
  leave(code: ExitCode): void
}

export type AddCommand = (program: Command, context: CommandContext) => void

/** Columns to lay text out in: those of the terminal, at most 100, else 80. */
export function toWidth(io: Io): number {
  const own = Number(io.env['COLUMNS'])
  const columns = io.stdout.columns ?? (Number.isInteger(own) && own > 0 ? own : 80)
  return Math.max(40, Math.min(columns, 100))
}

export const toPaint = (io: Io): Promise<Paint> => createPaint(hasColour(io.stdout.isTTY, io.env))

/** One clear line on stderr for what went wrong. */
export function complain(io: Io, message: string): void {
  io.stderr.write(`battledore: ${message}\n`)
}

/** The same for problems, each in a line of its own. */
export function complainOf(io: Io, problems: readonly Problem[]): void {
  for (const problem of problems) complain(io, toPrintable(toProblemLine(problem)))
}

/** Examples under the help of a command. What is to be typed is never broken. */
export const withExamples = (
  command: Command,
  ...examples: readonly (readonly [line: string, what: string])[]
): Command =>
  command.addHelpText('after', ({ command: asked }) => {
    const width = asked.configureOutput().getOutHelpWidth?.() ?? 80
    const lines = examples.flatMap(([line, what]) => [
      `  ${line}`,
      ...wrap(what, width - 6).map((one) => `      ${one}`),
    ])
    return `\nExamples:\n${lines.join('\n')}`
  })
