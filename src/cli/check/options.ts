// The options of `check` as values that have been looked at.

import type { Layer } from '../../config/index.ts'
import type { Severity } from '../../lint/types.ts'
import { findNearest } from '../../nearest.ts'
import type { ReaderExtra } from '../../sequence/reader.ts'
import type { WordSet } from '../../usage/count.ts'

/** As commander hands them over. */
export interface CheckOptions {
  readonly sequence?: string
  readonly step?: string
  readonly accent?: string
  readonly config?: string
  readonly format?: readonly string[]
  readonly output?: string
  readonly stdinFilename?: string
  readonly printConfig?: string
  readonly failOn: string
  readonly maxWarnings?: string
  readonly quiet?: boolean
  readonly suggest?: boolean
  readonly staged?: boolean
  readonly changedSince?: string
  readonly cache?: boolean
  readonly cacheFile?: string
  readonly baseline?: string
  readonly writeBaseline?: boolean
  readonly workers?: string
  readonly watch?: boolean
  readonly reader?: string
  /** A folder of reader files, or one. */
  readonly readers?: string
  /** The day for which readers are judged. */
  readonly on?: string
  readonly shelf?: string
}

export const FORMATS = ['pretty', 'line', 'json', 'github', 'sarif', 'junit', 'html'] as const
export type Format = (typeof FORMATS)[number]

/** Those that show what could stand there instead. */
export const WITH_SUGGESTIONS: ReadonlySet<Format> = new Set<Format>(['pretty', 'json', 'sarif', 'html'])

/** A report that is wanted; without a file it goes to standard output. */
export interface Wanted {
  readonly format: Format
  readonly file?: string
}

export interface CheckSettings {
  /** What the reader of `--reader` knows beyond or short of the step. */
  readonly reader?: ReaderExtra
  /** The words of earlier books, where `--shelf` names a shelf. */
  readonly findEarlierWords?: (storyPath: string) => WordSet
  readonly flags: Layer
  readonly wanted: readonly Wanted[]
  readonly failOn: Exclude<Severity, 'off'> | 'never'
  readonly maxWarnings: number | undefined
  readonly workers: number | undefined
}

/** Throws an error with a message for the person who gave a wrong value. */
export function toCheckSettings(options: CheckOptions, flags: Layer): CheckSettings {
  if (options.writeBaseline && options.changedSince !== undefined)
    throw new Error('--write-baseline needs all messages, so it does not go with --changed-since.')
  return {
    flags,
    wanted: toWanted(options),
    failOn: toFailOn(options.failOn),
    maxWarnings: toNumber(options.maxWarnings, '--max-warnings'),
    workers: toNumber(options.workers, '--workers'),
  }
}

/** `--format sarif=report.sarif` writes that report to the file; `--output` is the file of the one that names none. */
function toWanted({ format = ['pretty'], output }: CheckOptions): Wanted[] {
  const wanted = format.map((given) => {
    const [name = '', ...file] = given.split('=')
    const known = FORMATS.find((one) => one === name)
    if (!known) throw new Error(toUnknownFormat(name))
    return file.length === 0 ? { format: known } : { format: known, file: file.join('=') }
  })
  const open = wanted.filter(({ file }) => file === undefined)
  if (open.length > 1) throw new Error(`Of several formats, all but one need a file: --format ${open[1]?.format}=FILE.`)
  if (wanted.some(({ file }) => file === '')) throw new Error('--format NAME=FILE needs the name of a file after `=`.')
  if (output === undefined) return wanted
  if (open.length === 0) throw new Error('--output is not needed: each --format names its file.')
  return wanted.map((one) => (one.file === undefined ? { ...one, file: output } : one))
}

function toUnknownFormat(name: string): string {
  const nearest = findNearest(name, FORMATS)
  return `There is no format \`${name}\`. ${nearest ? `Did you mean \`${nearest}\`?` : `There are ${FORMATS.join(', ')}.`}`
}

function toFailOn(given: string): CheckSettings['failOn'] {
  if (given === 'error' || given === 'warning' || given === 'never') return given
  throw new Error(`--fail-on is error, warning or never; this is \`${given}\`.`)
}

function toNumber(given: string | undefined, name: string): number | undefined {
  if (given === undefined) return undefined
  if (/^\d{1,9}$/.test(given)) return Number(given)
  throw new Error(`${name} is a whole number; this is \`${given}\`.`)
}

const BASELINE_FILE = 'battledore-baseline.json'

export const toBaselineFile = ({ baseline }: CheckOptions): string => baseline ?? BASELINE_FILE
