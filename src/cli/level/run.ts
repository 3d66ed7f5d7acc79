// One run of `level`: each text by itself, in the sequence that its settings name.

import { findSequence } from '../../check/who-reads.ts'
import { type LevelledText, toCsvReport, toJsonLevels, toPrettyLevel, toPrettySum } from '../../report/level.ts'
import { createLevelFinder, createMemory } from '../../shelf/index.ts'
import { createLines } from '../../story/index.ts'
import { countText } from '../../usage/count-text.ts'
import { type ExitCode, toPaint, toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { createResources } from '../resources.ts'
import { createTextRun, toShare } from '../texts.ts'

export interface LevelOptions {
  readonly sequence?: string
  readonly accent?: string
  readonly reader?: string
  readonly config?: string
  readonly share: string
  readonly format: 'pretty' | 'json' | 'csv'
}

export async function runLevel(given: readonly string[], options: LevelOptions, io: Io): Promise<ExitCode> {
  const share = toShare(options.share)
  const reader =
    options.reader === undefined
      ? undefined
      : await (await import('../reader.ts')).readReaderOrExplain(options.reader, io)
  if (options.reader !== undefined && reader === undefined) return 2
  const run = createTextRun(io, options, reader?.layer)
  if (run === undefined) return 2
  const resources = createResources(io)
  const findLevels = createMemory((sequence, sightWords) =>
    createLevelFinder(resources.phonicsFor(sequence.accent), sequence, {
      ...reader?.extra,
      sightWords: [...(reader?.extra.sightWords ?? []), ...sightWords],
    }),
  )
  const view = { width: toWidth(io), paint: await toPaint(io) }
  const found: LevelledText[] = []
  await run.each(given, async (text, fail) => {
    const { path, story, settings, names, sightWords } = text
    const asked = await findSequence(settings, resources)
    if (!asked.ok) {
      for (const problem of asked.problems) fail(problem)
      return
    }
    const levels = findLevels(asked.value, sightWords)
    const count = await countText(story, names, levels.isMixed, resources)
    const own = levels.find(count, names, share)
    const { toPoint } = createLines(story.source)
    const holdingBack = own.holdingBack.map((word) => ({ ...word, ...toPoint(word.start) }))
    const level = { ...own, holdingBack }
    const levelled = { path, sequence: levels.sequence, asked: settings.sequence.value, wanted: share, level }
    found.push(levelled)
    if (options.format === 'pretty') io.stdout.write(toPrettyLevel(levelled, view))
  })
  if (options.format === 'json') io.stdout.write(`${JSON.stringify(toJsonLevels(found, share), null, 2)}\n`)
  else if (options.format === 'csv') io.stdout.write(toCsvReport(found))
  else if (found.length > 1) io.stdout.write(toPrettySum(found, view))
  return run.hasFailed() ? 2 : 0
}
