// One run of `sequence add`: what is taught goes into a step of a sequence file; its comments stay.

import { resolve } from 'node:path'
import { isSequencePath } from '../../files/index.ts'
import { listBuiltIns, loadBuiltIn, loadPhonics } from '../../packaged/data.ts'
import { fail, type Result } from '../../problem/index.ts'
import { toCount, toList, wrap } from '../../report/text.ts'
import { type Addition, addToSequence } from '../../sequence/add.ts'
import { complainOf, type ExitCode, toWidth } from '../command.ts'
import { readTextFile } from '../files/read.ts'
import { toShown } from '../files/shown.ts'
import { findWriteObstacle, writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'

export interface AddOptions {
  readonly step?: string
}

export async function runAdd(given: string, what: readonly string[], { step }: AddOptions, io: Io): Promise<ExitCode> {
  const path = toShown(given, io)
  const added = change(given, path, what, step, io)
  const written = added.ok ? writeTextFile(resolve(io.cwd, given), added.value.text, io, path) : added
  if (!added.ok || !written.ok) {
    complainOf(io, written.ok ? [] : written.problems)
    return 2
  }
  const { items, doubts, step: id, sequence } = added.value
  complainOf(io, doubts)
  const place = `${toList(items.map(({ written: one }) => one))}, at step ${id} of ${path}.`
  const later = sequence.steps.length - 1 - sequence.steps.findIndex((one) => one.id === id)
  const note = later === 0 ? '' : ` ${toCount(later, 'later step')} ${later === 1 ? 'knows' : 'know'} it too.`
  io.stdout.write(`${wrap(`Added ${place}${note}`, toWidth(io)).join('\n')}\n`)
  return 0
}

function change(
  given: string,
  path: string,
  what: readonly string[],
  step: string | undefined,
  io: Io,
): Result<Addition> {
  if (!isSequencePath(given) && loadBuiltIn(given))
    return fail({
      code: 'bad-value',
      message: `\`${given}\` is built in and stays as it is`,
      note: `A file of your own adds to it with \`extends: ${given}\` (docs/sequences.md).`,
    })
  const full = resolve(io.cwd, given)
  const obstacle = findWriteObstacle(full, io, path)
  const file = obstacle ? fail(obstacle) : readTextFile(full, io, path)
  if (!file.ok) return { ok: false, problems: file.problems }
  const tools = { phonicsFor: loadPhonics, resolve: loadBuiltIn, names: listBuiltIns, path }
  return addToSequence(file.value, what, tools, step)
}
