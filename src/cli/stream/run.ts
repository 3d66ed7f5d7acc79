// Checks stories one after the other as they come in, with no more in memory than one of them and what is known of words.

import { rules } from '../../../rules/index.ts'
import { checkStory, DEFAULT_SEQUENCE, type PreparedStory, prepareStory } from '../../check/check-story.ts'
import type { CheckedStory, UncheckedStory } from '../../check/result.ts'
import { type ConfigChain, type Layer, readFlags, resolveSettings } from '../../config/index.ts'
import { isSequencePath, MAX_BYTES } from '../../files/index.ts'
import { loadLexicon } from '../../packaged/data.ts'
import { createPhonics, createSpelling } from '../../phonics/index.ts'
import type { Accent, Phonics } from '../../phonics/types.ts'
import { fail } from '../../problem/index.ts'
import { createJsonBytes, type JsonBytes } from '../../report/json-bytes.ts'
import { type CountedStory, writeStreamError, writeStreamResult, writeStreamTotals } from '../../report/stream.ts'
import type { Resources } from '../../resources/types.ts'
import { createTaskMaker, toStoryPath } from '../check/task.ts'
import { complainOf, type ExitCode } from '../command.ts'
import { toCrash } from '../files/file-problem.ts'

import type { Io } from '../io.ts'
import { type Line, readLines } from '../json-lines.ts'
import { createResources } from '../resources.ts'
import { findFlagMistakes } from './flags.ts'
import { type BrokenRecord, readRecord, type StreamRecord } from './record.ts'

export interface StreamOptions {
  readonly sequence?: string
  readonly step?: string
  readonly accent?: string
  readonly config?: string
  readonly suggest?: boolean
  readonly totals?: boolean
}

/** JSON can take six bytes for one: `\u0000`. */
const LONGEST_LINE = MAX_BYTES * 6

/** Bytes that are written at a time, as a pipe holds them. */
const BATCH = 1 << 16

/** After so many different words the engines are let go with all they remember: some 20 KB for a word that is guessed. */
const MOST_WORDS = 10_000

export async function runStream(options: StreamOptions, io: Io): Promise<ExitCode> {
  const flags = readFlags({ sequence: options.sequence, step: options.step, accent: options.accent }, io.cwd)
  complainOf(io, flags.problems)
  const chain = flags.problems.length === 0 ? await findChain(options, io) : undefined
  if (!chain) return 2
  const engines = createEngines()
  const storyPath = toStoryPath('story.md', io)
  const settings = resolveSettings({ chain, storyPath, flags: flags.layer, rules, defaultSequence: DEFAULT_SEQUENCE })
  const own = createResources(io)
  const mistakes = await findFlagMistakes(settings, flags.layer, own)
  complainOf(io, mistakes)
  if (mistakes.length > 0) return 2
  const resources = toSafeResources(own, engines, settings.sequence.value)
  const check = createRecordCheck(
    {
      ...{ chain, flags: flags.layer, resources, storyPath, io },
      suggest: options.suggest === true,
      isTotals: options.totals === true,
    },
    engines,
  )
  const out = createJsonBytes()
  for await (const lines of readLines(io.stdin(), LONGEST_LINE)) {
    for (const line of lines) {
      await check(line, out)
      if (out.size >= BATCH) await flush(out, io)
    }
    // Whoever sends one record and waits has the answer.
    await flush(out, io)
  }
  return 0
}

async function flush(out: JsonBytes, io: Io): Promise<void> {
  if (out.size > 0) io.stdout.write(out.take())
  await io.stdout.drained?.()
}

async function findChain({ config }: StreamOptions, io: Io): Promise<ConfigChain | undefined> {
  if (config === undefined) return { folders: [], problems: [] }
  const tasks = createTaskMaker(io, { config })
  const chain = await tasks.findChain(toStoryPath('story.md', io))
  return tasks.hasConfigErrors() ? undefined : chain
}

interface Place {
  readonly chain: ConfigChain
  readonly flags: Layer
  readonly resources: Resources
  readonly suggest: boolean
  /** Whether nobody asks for messages: then no rule is run. */
  readonly isTotals: boolean
  readonly storyPath: string
  readonly io: Io
}

type Checked = CheckedStory | PreparedStory | Pick<UncheckedStory, 'problems'>

/** Writes what it finds as a line. */
type RecordCheck = (line: Line, out: JsonBytes) => Promise<void>

function createRecordCheck(
  { chain, flags, resources, suggest, isTotals, storyPath, io }: Place,
  engines: Engines,
): RecordCheck {
  return async (line, out) => {
    if (!line.ok) return writeStreamError('null', line.problems, out)
    const record = readRecord(line.value)
    const id = record.idText ?? JSON.stringify(record.id)
    const result = await checkRecord(record)
    if ('problems' in result) writeStreamError(id, result.problems, out)
    else if ('context' in result) writeStreamTotals(id, toCounted(result), out)
    else writeStreamResult(id, result, out)
  }

  function checkRecord(record: StreamRecord | BrokenRecord): Promise<Checked> | Checked {
    if ('problem' in record) return { problems: [record.problem] }
    const own = readFlags(record.settings, io.cwd, (key) => key)
    engines.forget()
    if (own.problems.length > 0) return { problems: own.problems }
    return check(record.text, { ...flags, ...fromRecord(own.layer) })
  }

  async function check(source: string, all: Layer): Promise<Checked> {
    try {
      const input = { path: 'the text', source, storyPath, chain, flags: all, rules, resources, suggest }
      return await (isTotals ? prepareStory(input) : checkStory(input))
    } catch (error) {
      return { problems: [toCrash(error, 'The text could not be checked')] }
    }
  }
}

const toCounted = ({ sequence, step, context }: PreparedStory): CountedStory => ({
  ...{ sequence: sequence.name, step, accent: context.accent },
  figures: context.figures(),
})

/** Messages say where a value was set. */
const fromRecord = (layer: Layer): Layer =>
  Object.fromEntries(Object.entries(layer).map(([key, value]) => [key, { ...value, origin: 'the record' }]))

interface Engines {
  find(accent: Accent): Phonics
  /** Called between stories. */
  forget(): void
}

/** Engines remember each word they have met, which is well for a shelf and too much for a library. */
function createEngines(): Engines {
  const engines = new Map<Accent, Phonics>()
  const met = new Set<string>()
  return {
    find(accent) {
      const engine =
        engines.get(accent) ?? withWordsMet(createPhonics(loadLexicon(), accent, createSpelling(loadLexicon())), met)
      engines.set(accent, engine)
      return engine
    },
    forget() {
      if (met.size < MOST_WORDS) return
      met.clear()
      engines.clear()
    },
  }
}

const withWordsMet = (phonics: Phonics, met: Set<string>): Phonics => ({
  accent: phonics.accent,
  heteronyms: phonics.heteronyms,
  isListed: phonics.isListed,
  get slips() {
    return phonics.slips
  },
  read(word) {
    met.add(word)
    return phonics.read(word)
  },
})

const ONLY_BUILT_IN = 'A text may name only a built-in sequence; --sequence can be a file'

/** A story of a stranger may not make the program read files: a sequence by path is for the command line and the config. */
const toSafeResources = (resources: Resources, engines: Engines, allowed: string): Resources => ({
  ...resources,
  phonicsFor: engines.find,
  sequence: (name, accent) =>
    isSequencePath(name) && name !== allowed
      ? Promise.resolve(fail({ code: 'bad-value', message: ONLY_BUILT_IN }))
      : resources.sequence(name, accent),
})
