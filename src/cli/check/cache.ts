// Results kept from one run to the next. A result is used again only for the same text under the same settings, read by
// the same program with the same lexicon; a cache that is broken, foreign or cut short counts as none.

import { createHash } from 'node:crypto'
import { dirname, join, resolve } from 'node:path'
import { fromRecord, toRecord } from '../../check/record.ts'
import type { CheckedStory } from '../../check/result.ts'
import { isSequencePath } from '../../files/index.ts'
import { type Result, succeed } from '../../problem/index.ts'
import { writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'
import type { RunSettings } from './judge.ts'
import { createTexts, type PackedRecord, packRecord, type Texts, unpackRecord } from './pack.ts'
import type { Task } from './task.ts'

export { toFingerprint } from './fingerprint.ts'

export interface ResultCache {
  find(task: Task): CheckedStory | undefined
  keep(task: Task, story: CheckedStory): void
  save(): Result<undefined>
}

interface Entry {
  readonly key: string
  /** Whether words were looked for that could stand there instead; a report that shows none can do with them. */
  readonly suggest: boolean
  /** The digest of the sequence file that the story named. */
  readonly sequence?: string
  readonly record: PackedRecord
}

interface Kept {
  /** What messages say, each text once. */
  readonly texts: readonly string[]
  /** How many texts there were when the last unused ones were dropped. */
  readonly used: number
  readonly entries: readonly (readonly [storyPath: string, entry: Entry])[]
}

const FORMAT = 'battledore cache 3'

/** How a cache of any version begins. */
const BEGINNING = '{"format":"battledore cache '

const toDigest = (...parts: readonly string[]): string => {
  const hash = createHash('sha256')
  // With the length before each part, so that two lists never run together.
  for (const part of parts) hash.update(`${part.length}:`).update(part)
  return hash.digest('base64url')
}

/** Beside other tools' caches where there are packages, else in the folder itself. */
export function toCacheFile({ cwd, fs }: Io): string {
  return fs.existsSync(join(cwd, 'node_modules'))
    ? join('node_modules', '.cache', 'battledore.json')
    : '.battledore-cache.json'
}

/** `program` names the program and its data; see fingerprint.ts. */
export function openCache(file: string, program: string, runSettings: RunSettings, io: Io): ResultCache {
  const path = resolve(io.cwd, file)
  const before = readKept(path, program, io)
  const entries = new Map(before.entries)
  const texts = createTexts(before.texts)
  const { suggest = false, findEarlierWords, ...plain } = runSettings
  const settings = toDigest(program, io.cwd, JSON.stringify(plain))
  const sequences = new Map<string, string>()
  let isChanged = false

  const toKey = ({ storyPath, source, chain }: Task): string =>
    toDigest(
      settings,
      storyPath,
      source,
      ...(findEarlierWords?.(storyPath) ?? []),
      ...chain.folders.flatMap(({ folder, files }) => [
        folder,
        ...files.flatMap((one) => [one.source.path, one.source.text]),
      ]),
    )
  const digestSequence = (asked: string): string | undefined => {
    if (!isSequencePath(asked)) return undefined
    const known = sequences.get(asked) ?? toDigest(readOrEmpty(resolve(io.cwd, asked), io))
    sequences.set(asked, known)
    return known
  }

  return {
    find(task) {
      const entry = entries.get(task.storyPath)
      if (
        !entry ||
        (suggest && !entry.suggest) ||
        entry.key !== toKey(task) ||
        entry.sequence !== digestSequence(entry.record.sequence.asked)
      )
        return undefined
      const story = fromRecord(unpackRecord(entry.record, texts.list), task.path, task.source)
      return entry.suggest && !suggest ? withoutSuggestions(story) : story
    },
    keep(task, story) {
      const sequence = digestSequence(story.sequence.asked)
      entries.set(task.storyPath, {
        key: toKey(task),
        suggest,
        record: packRecord(toRecord(story), texts),
        ...(sequence === undefined ? {} : { sequence }),
      })
      isChanged = true
    },
    save() {
      if (!isChanged) return succeed(undefined)
      const body = JSON.stringify(
        toKept(
          [...entries].filter(([storyPath]) => io.fs.existsSync(storyPath)),
          texts,
          before.used,
        ),
      )
      makeFolder(dirname(path), io)
      return writeTextFile(
        path,
        `${JSON.stringify({ format: FORMAT, program, digest: toDigest(body) })}\n${body}\n`,
        io,
        file,
      )
    },
  }
}

/** As if nobody had looked for words that could stand there; what a rule itself expects is about no word. */
const withoutSuggestions = (story: CheckedStory): CheckedStory => ({
  ...story,
  messages: story.messages.map((message) => {
    const isOfWord = message.word !== undefined && message.reason !== undefined
    const plain = isOfWord ? { note: message.ruleNote ?? message.note, suggestions: [] } : {}
    return { ...message, ...plain, ruleNote: undefined, canGo: false }
  }),
})

/** What goes wrong is told when the file itself cannot be written. Node's own `recursive` never ends in some odd places, such as /proc. */
function makeFolder(path: string, io: Io): void {
  if (io.fs.existsSync(path)) return
  makeFolder(dirname(path), io)
  try {
    io.fs.mkdirSync(path)
  } catch {}
}

/** Texts that no story uses any more are dropped when they may be more than half. */
function toKept(entries: Kept['entries'], texts: Texts, used: number): Kept {
  if (texts.list.length <= used * 2 + 1000) return { texts: texts.list, used: used || texts.list.length, entries }
  const fresh = createTexts()
  const packed = entries.map(([storyPath, entry]) => {
    const record = packRecord(unpackRecord(entry.record, texts.list), fresh)
    return [storyPath, { ...entry, record }] as const
  })
  return { texts: fresh.list, used: fresh.list.length, entries: packed }
}

const NOTHING: Kept = { texts: [], used: 0, entries: [] }

/** Whether a file begins as a cache does, as far as it goes: an empty one may be written over, any other text may not. */
export function isOwnCache(path: string, io: Io): boolean {
  try {
    const file = io.fs.openSync(path, 'r')
    try {
      const head = Buffer.alloc(BEGINNING.length)
      return BEGINNING.startsWith(head.subarray(0, io.fs.readSync(file, head)).toString())
    } finally {
      io.fs.closeSync(file)
    }
  } catch {
    return false
  }
}

function readKept(path: string, program: string, io: Io): Kept {
  try {
    // A device may never end.
    if (!io.fs.statSync(path).isFile()) return NOTHING
    const [head = '', body = ''] = io.fs.readFileSync(path, 'utf8').split('\n', 2)
    const { format, program: by, digest } = JSON.parse(head) as Record<string, unknown>
    if (format !== FORMAT || by !== program || digest !== toDigest(body)) return NOTHING
    return JSON.parse(body) as Kept
  } catch {
    return NOTHING
  }
}

function readOrEmpty(path: string, io: Io): string {
  try {
    return io.fs.readFileSync(path, 'utf8')
  } catch {
    return ''
  }
}
