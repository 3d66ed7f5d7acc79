// Reader files from the disk, as of the day that is asked for.

import { DEFAULT_SEQUENCE } from '../check/check-story.ts'
import type { Accent } from '../phonics/types.ts'
import { fail, type Result, succeed } from '../problem/index.ts'
import {
  type FoundReaders,
  findReaderFiles,
  type ReaderFileTools,
  type ReadReader,
  readReaderFile as readFile,
} from '../readers/index.ts'
import type { Resources } from '../resources/types.ts'
import { toSlashes } from './files/shown.ts'
import { createTextFiles } from './files/text-files.ts'
import type { Io } from './io.ts'

export type { FoundReaders, ReadReader }

/** What holds where a reader's file does not say, an accent that holds whatever it says, and the day that is asked for. */
export interface ReaderDefaults {
  readonly defaultSequence?: string
  readonly accent?: Accent | undefined
  /** As `2026-09-14`: later lessons do not count. Default: today. */
  readonly on?: string | undefined
}

/** @param path a file, or a folder whose .yaml files are read */
export const findReaders = (
  path: string,
  io: Io,
  resources: Resources,
  defaults: ReaderDefaults = {},
): Promise<FoundReaders> => findReaderFiles(toSlashes(path), toTools(io, resources, defaults))

/** @param text takes the place of what the file holds */
export const readReaderFile = (
  path: string,
  io: Io,
  resources: Resources,
  { text, ...defaults }: ReaderDefaults & { readonly text?: string } = {},
): Promise<Result<ReadReader>> => readFile(toSlashes(path), toTools(io, resources, defaults), { text })

function toTools(
  io: Io,
  { phonicsFor, sequence }: Resources,
  { defaultSequence = DEFAULT_SEQUENCE, accent, on }: ReaderDefaults,
): ReaderFileTools {
  return { files: createTextFiles(io), phonicsFor, sequence, defaultSequence, accent, on: on ?? io.today() }
}

/** A day as a person writes it, `2026-09-14`; today where none is given. */
export function toDay(given: string | undefined, io: Io): Result<string> {
  if (given === undefined) return succeed(io.today())
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(given.trim()) ?? []
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)))
  if (year !== undefined && date.getUTCMonth() === Number(month) - 1) return succeed(date.toISOString().slice(0, 10))
  return fail({ code: 'bad-value', message: `A day is written as 2026-09-14, year, month, day; this is \`${given}\`` })
}
