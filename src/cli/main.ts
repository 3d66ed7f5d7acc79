// The program: arguments in, exit code out. Touches nothing but the `io` it is handed.

import { Command, CommanderError } from 'commander'
import { addBring } from './bring/command.ts'
import { addCheck } from './check/command.ts'
import { type CommandContext, complain, type ExitCode } from './command.ts'
import { addExplain } from './explain/command.ts'
import { addFix } from './fix/command.ts'
import { addInit } from './init/command.ts'
import type { Io } from './io.ts'
import { addLevel } from './level/command.ts'
import { addMatch } from './match/command.ts'
import { addNext } from './next/command.ts'
import { addPrint } from './print/command.ts'
import { addSequence } from './sequence/command.ts'
import { addServe } from './serve/command.ts'
import { addShelf } from './shelf/command.ts'
import { addStream } from './stream/command.ts'
import { addTaught } from './taught/command.ts'
import { VERSION } from './version.ts'
import { addWords } from './words/command.ts'

const COMMANDS = [
  addCheck,
  addExplain,
  addSequence,
  addInit,
  addServe,
  addLevel,
  addMatch,
  addShelf,
  addWords,
  addPrint,
  addFix,
  addStream,
  addBring,
  addTaught,
  addNext,
] as const

/** @param argv the arguments after the program's own name */
export async function main(argv: readonly string[], io: Io): Promise<ExitCode> {
  let code: ExitCode = 0
  const context: CommandContext = {
    io,
    leave: (next) => {
      if (next > code) code = next
    },
  }
  const program = createProgram(context)
  try {
    await program.parseAsync([...argv], { from: 'user' })
    return code
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2
    complain(io, error instanceof Error ? error.message : String(error))
    if (io.env['BATTLEDORE_DEBUG'] && error instanceof Error) io.stderr.write(`${error.stack}\n`)
    return 2
  }
}

export function createProgram(context: CommandContext): Command {
  const { io } = context
  const program = new Command('battledore')
    .description(
      'Checks that a child at a given step can read every word of a story, and says on which letters not, and why.',
    )
    .version(VERSION, '--version', 'print the version')
    .helpOption('-h, --help', 'show help')
    .showHelpAfterError('(battledore --help, or battledore COMMAND --help, shows what there is)')
    // So that an option behind `sequence new` is its own, and not one of `sequence`.
    .enablePositionalOptions()
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.stdout.write(text),
      writeErr: (text) => io.stderr.write(text.replace(/^error: /, 'battledore: ')),
      getOutHelpWidth: () => Math.min(io.stdout.columns ?? 80, 100),
      getErrHelpWidth: () => 80,
    })
  for (const add of COMMANDS) add(program, context)
  return program
}
