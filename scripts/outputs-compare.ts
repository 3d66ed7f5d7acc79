// `npx tsx scripts/outputs-compare.ts OLD NEW`: in which fields the messages of two builds differ, and in which words. OLD and NEW are
// folders that `outputs.ts --keep` wrote; what `stream` said is compared, since it holds all that a message has.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

type Fields = Readonly<Record<string, unknown>>
interface Line extends Fields {
  readonly id: string
  readonly messages?: readonly Fields[]
}

/** So many examples of each kind. */
const SHOWN = 10

const [old = '', now = ''] = process.argv.slice(2)
if (now === '') throw new Error('npx tsx scripts/outputs-compare.ts OLD NEW')

const differences = new Map<string, Map<string, number>>()
function note(kind: string, example: string): void {
  const examples = differences.get(kind) ?? new Map<string, number>()
  examples.set(example, (examples.get(example) ?? 0) + 1)
  differences.set(kind, examples)
}

/** The names of the fields that differ, as one text; empty where none does. */
const findDiffering = (one: Fields, other: Fields): string =>
  [...new Set([...Object.keys(one), ...Object.keys(other)])]
    .filter((name) => name !== 'messages' && JSON.stringify(one[name]) !== JSON.stringify(other[name]))
    .join(', ')

const readLines = (path: string): readonly Line[] =>
  readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('{"id":'))
    .map((line) => JSON.parse(line) as Line)

const toKey = ({ rule, offset, endOffset }: Fields): string => `${rule} ${offset} ${endOffset}`

let [stories, messages, same] = [0, 0, 0]

function compare(one: Line, other: Line | undefined, run: string): void {
  stories++
  if (other?.id !== one.id) {
    note('a story that is not there', `${run} ${one.id}`)
    return
  }
  const fields = findDiffering(one, other)
  if (fields !== '') note(`of the story: ${fields}`, `${run} ${one.id}`)
  const left = new Map(other.messages?.map((message) => [toKey(message), message]))
  for (const message of one.messages ?? []) {
    messages++
    const match = left.get(toKey(message))
    left.delete(toKey(message))
    const differing = match && findDiffering(message, match)
    if (differing === '') same++
    else note(differing ?? 'a message that is gone', String(message['word'] ?? message['message']))
  }
  for (const message of left.values()) note('a message that has come', String(message['word'] ?? message['message']))
}

const runs = readdirSync(old).filter((name) => /stream(?:_offers)?$/.test(name))
for (const run of runs) {
  const others = readLines(join(now, run))
  for (const [at, line] of readLines(join(old, run)).entries()) compare(line, others[at], run)
}
process.stdout.write(`${runs.length} runs, ${stories} stories, ${messages} messages, ${same} of them the same\n`)
for (const [kind, examples] of differences) {
  const sorted = [...examples].sort(([, one], [, other]) => other - one)
  const count = sorted.reduce((sum, [, times]) => sum + times, 0)
  const shown = sorted.slice(0, SHOWN).map(([example, times]) => `${example} (${times})`)
  process.stdout.write(`${kind}: ${count}; ${shown.join(', ')}${sorted.length > SHOWN ? ' …' : ''}\n`)
}
