// The program: arguments in, exit code out. Touches nothing but the `io` it is handed.

import { type Argument, Command, CommanderError } from 'commander'
import { addBring } from './bring/command.ts'
import { addCheck } from './check/command.ts'
import { type AddCommand, type CommandContext, complain, type ExitCode, toWidth } from './command.ts'
import { addDesk } from './desk/command.ts'
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

const FIRST = 'For making:'

/** What a maker meets comes first, in the order of the work. */
const COMMANDS: readonly (readonly [group: string, commands: Readonly<Record<string, AddCommand>>])[] = [
  [
    FIRST,
    {
      check: addCheck,
      fix: addFix,
      explain: addExplain,
      words: addWords,
      print: addPrint,
      level: addLevel,
      bring: addBring,
      taught: addTaught,
      next: addNext,
      match: addMatch,
      shelf: addShelf,
      sequence: addSequence,
      init: addInit,
      desk: addDesk,
    },
  ],
  ['For editors and other programs:', { serve: addServe, stream: addStream }],
]

/** The name and what it takes; the options are told by the help of the command. */
const toTerm = (command: Command): string => [command.name(), ...command.registeredArguments.map(toArgument)].join(' ')

const toArgument = (argument: Argument): string => {
  const name = `${argument.name()}${argument.variadic ? '...' : ''}`
  return argument.required ? `<${name}>` : `[${name}]`
}

/** @param argv the arguments after the program's own name */
export async function main(argv: readonly string[], io: Io): Promise<ExitCode> {
  let code: ExitCode = 0
  const context: CommandContext = {
    io,
    leave: (next) => {
      if (next > code) code = next
    },
  }
  const program = createProgram(context, argv[0])
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

/** @param first the first argument: where it names a command, that one alone is set up, since the options of all take time */
function createProgram(context: CommandContext, first: string | undefined): Command {
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
      getOutHelpWidth: () => toWidth(io),
      getErrHelpWidth: () => 80,
    })
    .configureHelp({ minWidthToWrap: 16, subcommandTerm: toTerm })
  const named = COMMANDS.flatMap(([, commands]) => Object.entries(commands)).find(([name]) => name === first)
  if (named) {
    named[1](program, context)
    return program
  }
  for (const [group, commands] of COMMANDS) {
    program.commandsGroup(group)
    for (const add of Object.values(commands)) add(program, context)
    if (group === FIRST) program.helpCommand('help [command]', 'show the help of a command')
  }
  return program
}
