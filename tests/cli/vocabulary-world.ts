// Stories and readers of Tansy Lane for the tests of `shelf`, `match` and `level`.

import { readFileSync } from 'node:fs'
import { Ajv, type ValidateFunction } from 'ajv'
import { main } from '../../src/cli/main.ts'
import { createWorld, type TestWorld } from './io.ts'

const BOOKS = {
  'books/battledore.yaml': 'names: [Tam, Meg, Sid, Zub]\n',
  'books/hat.md':
    '---\ntitle: The hat\nstep: pink-6\norder: 1\npractises: [e]\nintroduces: [the]\n---\n\nTam had a hat.\n\n---\n\nThe hat is red. Meg met Tam.\n',
  'books/fish.md':
    '---\ntitle: The fish\nstep: green-1\norder: 2\npractises: [sh]\n---\n\nThe fish is wet. Meg said: "The fish is in a dish!"\n',
  'books/boat.md':
    '---\ntitle: =SUM(A1), "the boat"\nstep: green-8\norder: 3\n---\n\nTam made a boat. It sails in the rain.\n',
}

const READERS = {
  'class/meg.yaml': 'name: Meg\nstep: pink-6\nknows:\n  sight words: [said]\n',
  'class/sid.yaml': 'name: Sid\nstep: green-1\n',
}

export interface Ran {
  readonly code: number
  readonly out: string
  readonly err: string
}

export function createVocabularyWorld(
  files: Readonly<Record<string, string>> = {},
  columns?: number,
): TestWorld & { run(...args: readonly string[]): Promise<Ran> } {
  const world = createWorld(
    { ...BOOKS, ...READERS, ...files },
    columns === undefined ? {} : { columns, isTTY: true, env: { NO_COLOR: '1' } },
  )
  return {
    ...world,
    async run(...args) {
      const before = [world.out().length, world.err().length]
      const code = await main(args, world.io)
      return { code, out: world.out().slice(before[0]), err: world.err().slice(before[1]) }
    },
  }
}

/** A schema of the package, strict on fields that it does not describe. */
export function compileSchema(name: string): ValidateFunction {
  const text = readFileSync(new URL(`../../schemas/${name}.schema.json`, import.meta.url), 'utf8')
  const schema = JSON.parse(text, (_, value: unknown) =>
    typeof value === 'object' && value !== null && 'properties' in value && 'required' in value
      ? { ...value, additionalProperties: false }
      : value,
  ) as object
  return new Ajv({ strict: true, allowUnionTypes: true, strictRequired: false }).compile(schema)
}

/** RFC 4180, read as its grammar says. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = []
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/gy
  let row: string[] = []
  while (cell.lastIndex < text.length) {
    const found = cell.exec(text)
    if (found === null) throw new Error(`no CSV after ${rows.length} rows`)
    row.push(found[1]?.replaceAll('""', '"') ?? found[2] ?? '')
    if (found[3] === ',') continue
    rows.push(row)
    row = []
  }
  return rows
}
