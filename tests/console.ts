// Commands shown in the documentation, with the output that stands under them.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT: string = fileURLToPath(new URL('..', import.meta.url))

export interface Shown {
  /** Path of the page and line of the command. */
  readonly place: string
  readonly argv: readonly string[]
  readonly output: string
}

/** README.md and the pages in docs/. */
export function listPages(): string[] {
  return [
    'README.md',
    ...readdirSync(join(ROOT, 'docs'))
      .filter((name) => name.endsWith('.md'))
      .sort()
      .map((name) => `docs/${name}`),
  ]
}

const BLOCK = /^```console\n\$ battledore (.*)\n([\s\S]*?)^```$/gm

/** Blocks of `console` with one `$ battledore …` line and what it prints. */
export function readShown(page: string): Shown[] {
  const text = readFileSync(join(ROOT, page), 'utf8')
  return [...text.matchAll(BLOCK)].map((match) => ({
    place: `${page}:${text.slice(0, match.index).split('\n').length + 1}`,
    argv: toArguments(match[1] ?? ''),
    output: match[2] ?? '',
  }))
}

/** Words of a command line; quotes hold words together. */
function toArguments(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|'([^']*)'|(\S+)/g)].map((match) => match[1] ?? match[2] ?? match[3] ?? '')
}

/** The page with every block's output replaced. */
export function withOutputs(page: string, outputs: readonly string[]): string {
  let at = 0
  return readFileSync(join(ROOT, page), 'utf8').replace(
    BLOCK,
    (_, command: string) => `\`\`\`console\n$ battledore ${command}\n${outputs[at++] ?? ''}\`\`\``,
  )
}
