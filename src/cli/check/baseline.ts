// A baseline: what an old shelf is allowed to hold for now, counted by file, rule and word rather than by line, so that it
// still fits when a story is moved about. It may shrink; where it grows, the check fails.

import { dirname, relative, resolve, sep } from 'node:path'
import type { CheckedStory } from '../../check/result.ts'
import type { Message } from '../../lint/types.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { readTextFile } from '../files/read.ts'
import { writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'

const FORMAT = 1

/** Counts by rule and then by word; the empty word stands for what is said of a sentence, a page or the story. */
type Counts = Record<string, Record<string, number>>

export interface Baseline {
  /** The story without the messages that the baseline allows. Of a word that is there more often, all are shown. */
  filter(storyPath: string, story: CheckedStory): CheckedStory
  /** How many messages fewer and more than the baseline allows were met so far. */
  change(): { readonly fewer: number; readonly more: number }
}

export function openBaseline(file: string, io: Io): Result<Baseline> {
  const path = resolve(io.cwd, file)
  if (!io.fs.existsSync(path)) {
    const note = '--write-baseline makes it.'
    return fail({ code: 'missing-file', message: `There is no baseline \`${file}\``, note })
  }
  const text = readTextFile(path, io, file)
  if (!text.ok) return text
  const allowed = parse(text.value)
  if (allowed) return succeed(toBaseline(path, allowed))
  const advice = isOwnBaseline(text.value) ? { note: '--write-baseline makes it anew.' } : {}
  return fail({ code: 'not-json', message: `\`${file}\` is not a baseline`, ...advice })
}

function toBaseline(path: string, allowed: Readonly<Record<string, Counts>>): Baseline {
  let [fewer, more] = [0, 0]
  return {
    filter(storyPath, story) {
      const own = allowed[toKey(path, storyPath)] ?? {}
      const counts = count(story.messages)
      const isKept = ({ rule, word }: Message): boolean =>
        at(counts, rule, toWordKey(word)) > at(own, rule, toWordKey(word))
      for (const [rule, words] of Object.entries(counts))
        for (const [word, found] of Object.entries(words)) more += Math.max(0, found - at(own, rule, word))
      for (const [rule, words] of Object.entries(own))
        for (const [word, known] of Object.entries(words)) fewer += Math.max(0, known - at(counts, rule, word))
      return { ...story, messages: story.messages.filter(isKept) }
    },
    change: () => ({ fewer, more }),
  }
}

interface NewBaseline {
  story(storyPath: string, story: CheckedStory): void
  write(): Result<undefined>
}

/** Counted story by story. What is allowed of files that were not checked stays, as long as they are there. */
export function createNewBaseline(file: string, io: Io): NewBaseline {
  const path = resolve(io.cwd, file)
  const found = new Map<string, Counts | undefined>()
  return {
    story: (storyPath, { messages }) =>
      void found.set(toKey(path, storyPath), messages.length > 0 ? count(messages) : undefined),
    write() {
      const text = io.fs.existsSync(path) ? readTextFile(path, io, file) : undefined
      const files = new Map(Object.entries((text?.ok ? parse(text.value) : undefined) ?? {}))
      for (const key of files.keys()) if (!io.fs.existsSync(resolve(dirname(path), key))) files.delete(key)
      for (const [key, counts] of found) {
        if (counts) files.set(key, counts)
        else files.delete(key)
      }
      const value = { baseline: FORMAT, files: toSorted(Object.fromEntries(files)) }
      return writeTextFile(path, `${JSON.stringify(value, null, 2)}\n`, io, file)
    },
  }
}

/** From the folder of the baseline, so that the check may run anywhere. */
const toKey = (path: string, storyPath: string): string => relative(dirname(path), storyPath).replaceAll(sep, '/')

const toWordKey = (word: string | undefined): string => word?.toLowerCase() ?? ''

const at = (counts: Counts, rule: string, word: string): number =>
  Object.hasOwn(counts, rule) && Object.hasOwn(counts[rule] ?? {}, word) ? (counts[rule]?.[word] ?? 0) : 0

function count(messages: readonly Message[]): Counts {
  const counts: Counts = {}
  for (const { rule, word } of messages) {
    const words = counts[rule] ?? {}
    counts[rule] = words
    // Defined rather than set: a story may hold the word `__proto__`.
    Object.defineProperty(words, toWordKey(word), {
      value: at(counts, rule, toWordKey(word)) + 1,
      writable: true,
      enumerable: true,
      configurable: true,
    })
  }
  return counts
}

function parse(text: string): Record<string, Counts> | undefined {
  try {
    const { baseline, files } = JSON.parse(text) as { baseline?: unknown; files?: unknown }
    return baseline === FORMAT && isFiles(files) ? files : undefined
  } catch {
    return undefined
  }
}

/** Whether a text is a baseline or was one, such as one with marks of a merge in it; an empty one may become one. */
export const isOwnBaseline = (text: string): boolean =>
  /^\uFEFF?\s*(?:$|\{\s*"baseline"\s*:)/.test(text) || parse(text) !== undefined

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const isFiles = (value: unknown): value is Record<string, Counts> =>
  isObject(value) &&
  Object.values(value).every(
    (rules) =>
      isObject(rules) &&
      Object.values(rules).every(
        (words) => isObject(words) && Object.values(words).every((found) => typeof found === 'number'),
      ),
  )

function toSorted<Value>(value: Value): Value {
  if (!isObject(value)) return value
  return Object.fromEntries(
    Object.entries(value)
      .sort(([left], [right]) => (left < right ? -1 : 1))
      .map(([key, one]) => [key, toSorted(one)]),
  ) as Value
}
