// What the program prints for other programs, held against the schemas that the package ships.

import { readFileSync } from 'node:fs'
import { Ajv, type ValidateFunction } from 'ajv'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { MESSAGE_REASONS } from '../../src/lint/reasons.ts'
import { REASON_CODES } from '../../src/verdict/faults.ts'
import { createWorld, type TestWorld } from '../cli/io.ts'

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }

const readSchema = (name: string): Json =>
  JSON.parse(readFileSync(new URL(`../../schemas/${name}.schema.json`, import.meta.url), 'utf8')) as Json

/** The schema, with every object closed: a field that is printed and not described is a mistake here, though not for a reader. */
function close(schema: Json): Json {
  if (Array.isArray(schema)) return schema.map(close)
  if (typeof schema !== 'object' || schema === null) return schema
  const closed = Object.fromEntries(
    Object.entries(schema as Record<string, Json>).map(([key, value]) => [key, close(value)]),
  )
  return 'properties' in closed ? { ...closed, additionalProperties: false } : closed
}

const compile = (name: string): ValidateFunction =>
  new Ajv({ strict: true, allowUnionTypes: true, strictRequired: false }).compile(close(readSchema(name)) as object)

function expectValid(validate: ValidateFunction, value: unknown): void {
  validate(value)
  expect(validate.errors ?? []).toEqual([])
}

let world: TestWorld
beforeAll(() => {
  world = createWorld(
    {
      'a.md':
        '---\nstep: pink-2\nnmae: x\n---\n\n# Night\n\nThe 3 hens read 😀 constructor. Zzyzx!\n\n---\n\nRunning <!-- battledore-disable --> cats.\n\n---\n\nIt read.\n',
      'b.md': 'no step\n',
      'c.md': new Uint8Array([0]),
      'd.md': '---\nstep: green-2\n---\n\nIt sat.\n',
    },
    {
      stdin:
        '{"id":1,"text":"A night.","step":"pink-3"}\n{"id":null,"text":"It sat.","step":"pink-4"}\n{\n{"id":"x"}\n',
    },
  )
})
afterAll(() => world.remove())

async function print(...args: readonly string[]): Promise<string> {
  const before = world.out().length
  await main(args, world.io)
  return world.out().slice(before)
}

const toLines = (text: string): readonly unknown[] =>
  text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as unknown)

describe('schemas of what is printed', () => {
  it('check --format json', async () => {
    const validate = compile('check')
    const report = JSON.parse(await print('check', '.', '--format', 'json'))
    expectValid(validate, report)
    expect([report.files.length, report.failures.length, report.files[0].messages.length > 4]).toEqual([2, 2, true])
    expectValid(validate, JSON.parse(await print('check', 'b.md', '--format', 'json')))
    expect(validate({ ...report, files: [{ ...report.files[0], step: 3 }] })).toBe(false)
    expect(validate({ ...report, schema: 1 })).toBe(false)
  })

  it('explain --format ndjson', async () => {
    const validate = compile('explain')
    const words = ['night', 'running', 'cake', 'read', "can't", 'zzyzx', '---', 'Émile', 'one-eyed']
    const lines = [
      ...toLines(await print('explain', ...words.filter((word) => !word.startsWith('-')), '--format', 'ndjson')),
      ...toLines(await print('explain', ...words.slice(0, 6), '--step', 'pink-2', '--format', 'ndjson')),
    ]
    expect(lines.length).toBe(14)
    for (const line of lines) expectValid(validate, line)
    expect(validate({ word: 'night', source: 'rumour', readings: [], readableAt: null })).toBe(false)
  })

  it.each(['series', 'england', 'common-core'])('sequence %s --format json', async (name) => {
    const validate = compile('steps')
    const report = JSON.parse(await print('sequence', name, '--format', 'json'))
    expectValid(validate, report)
    expect(report.steps.length).toBeGreaterThan(5)
    expect(validate({ ...report, steps: [{ id: 'x' }] })).toBe(false)
  })

  it('stream', async () => {
    const validate = compile('stream')
    const lines = toLines(await print('stream'))
    expect(lines.length).toBe(4)
    for (const line of lines) expectValid(validate, line)
    expect(validate({ id: 1 })).toBe(false)
  })
})

describe('the codes for a reason are those of the code’s own union', () => {
  const listed = (name: string): readonly unknown[] => {
    const found: unknown[] = []
    const walk = (schema: Json, key: string): void => {
      if (typeof schema !== 'object' || schema === null) return
      const codes = (schema as Record<string, Json>)['enum']
      if ((key === 'reason' || key === 'code') && Array.isArray(codes) && codes.includes('irregular'))
        found.push(...codes)
      for (const [inner, value] of Object.entries(schema)) walk(value, inner)
    }
    walk(readSchema(name), '')
    return found.filter((code) => code !== null).sort()
  }

  it.each(['check', 'stream'])('in %s', (name) => {
    expect(listed(name)).toEqual([...MESSAGE_REASONS].sort())
  })

  it('in explain', () => {
    expect(listed('explain')).toEqual([...REASON_CODES].sort())
  })
})
