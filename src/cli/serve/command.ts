// `battledore serve`: the language server for code editors.

import { type AddCommand, withExamples } from '../command.ts'

export const addServe: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('serve')
    .description(
      'answer a code editor: mistakes on the letters, sounds of words, fixes, words to write (language server)',
    )
    .option('--stdio', 'over standard input and output (the default, and the only way)')
    // Editors add options of their own, such as their process number.
    .allowUnknownOption()
    .allowExcessArguments()
    .action(async () => {
      const { serve } = await import('./run.ts')
      leave(await serve(io))
    })
  withExamples(command, ['battledore serve --stdio', 'what an editor runs; see docs/editor.md for how each is told to'])
}
