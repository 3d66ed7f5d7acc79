// What is coloured and how; the words say the same without it.

export interface Paint {
  strong(text: string): string
  quiet(text: string): string
  error(text: string): string
  warning(text: string): string
  good(text: string): string
}

const plain = (text: string): string => text

export const PLAIN: Paint = { strong: plain, quiet: plain, error: plain, warning: plain, good: plain }

/** Chalk is loaded only where there is colour: most runs are in hooks and editors. */
export async function createPaint(hasColour: boolean): Promise<Paint> {
  if (!hasColour) return PLAIN
  const { Chalk } = await import('chalk')
  const chalk = new Chalk({ level: 1 })
  return { strong: chalk.bold, quiet: chalk.dim, error: chalk.red, warning: chalk.yellow, good: chalk.green }
}

/** Colour only on a terminal; NO_COLOR switches it off, FORCE_COLOR on (chalk leaves NO_COLOR to its callers). */
export function hasColour(isTerminal: boolean, env: Readonly<Record<string, string | undefined>>): boolean {
  if (env['NO_COLOR'] !== undefined && env['NO_COLOR'] !== '') return false
  if (env['FORCE_COLOR'] !== undefined && env['FORCE_COLOR'] !== '0') return true
  return isTerminal && env['TERM'] !== 'dumb'
}
