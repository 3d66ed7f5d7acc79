// `--reader`: the settings and the own knowledge of one reader, from its file.

import type { Layer } from '../config/index.ts'
import { fail, type Result, type Sourced, succeed } from '../problem/index.ts'
import { READER_CAUTION } from '../report/caution.ts'
import { toPrintable, wrap } from '../report/text.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import { complainOf, toWidth } from './command.ts'
import type { Io } from './io.ts'
import { findReaders, type ReaderDefaults, toDay } from './readers.ts'
import { createResources } from './resources.ts'

export interface ReaderSettings {
  /** As the file has it. */
  readonly name: string
  /** Sequence, step and accent of the reader. */
  readonly layer: Layer
  readonly extra: ReaderExtra
  /** Who is read for, and the caution that goes with it: one line. */
  readonly notice: string
}

/** @param path one reader file */
export async function readReader(path: string, io: Io, defaults: ReaderDefaults = {}): Promise<Result<ReaderSettings>> {
  const day = toDay(defaults.on, io)
  if (!day.ok) return day
  const { readers, problems } = await findReaders(path, io, createResources(io), { ...defaults, on: day.value })
  const [first, ...others] = readers
  if (problems.length > 0 || first === undefined) return { ok: false, problems }
  if (others.length > 0)
    return fail({
      code: 'bad-value',
      message: `--reader takes one reader file; ${path} holds ${readers.length}`,
      note: 'Use `battledore match` for many.',
    })
  const { name, sequence, step, extra } = first.reader
  const origin = first.path
  const from = <Value>(value: Value): Sourced<Value> => ({ value, origin, path: first.path })
  return succeed({
    layer: {
      sequence: from(first.sequenceName),
      step: from(step),
      accent: from(sequence.accent),
    },
    name,
    extra,
    notice: `Judged for ${toPrintable(name)}, at ${step} (${first.path}). ${READER_CAUTION}`,
  })
}

/** The same with what is wrong, or for whom it is judged, told; undefined where there is something wrong. */
export async function readReaderOrExplain(
  path: string,
  io: Io,
  defaults: ReaderDefaults = {},
): Promise<ReaderSettings | undefined> {
  const reader = await readReader(path, io, defaults)
  if (!reader.ok) {
    complainOf(io, reader.problems)
    return undefined
  }
  io.stderr.write(`${wrap(reader.value.notice, toWidth(io)).join('\n')}\n`)
  return reader.value
}
