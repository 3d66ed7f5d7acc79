// The JSON Schema for editors is made from the schema that checks the files, and says the same.

import { toJsonSchema } from '@valibot/to-json-schema'
import { Ajv } from 'ajv'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { sequenceSchema } from '../../src/sequence/schema.ts'
import { readBuiltIn } from './engine.ts'

const schema = toJsonSchema(sequenceSchema)
const { $schema: _, ...form } = schema
const validate = new Ajv({ strict: false }).compile(form as object)

describe('the JSON Schema of sequences', () => {
  it.each(['series', 'england', 'common-core'] as const)('takes %s', (name) => {
    validate(parse(readBuiltIn(name)))
    expect(validate.errors).toBeNull()
  })

  it.each([
    ['an unknown key', 'name: x\ncolour: red\nsteps: [{id: a}]'],
    ['no steps', 'name: x'],
    ['an unknown accent', 'name: x\naccent: american\nsteps: [{id: a}]'],
    ['an id with a space', 'name: x\nsteps: [{id: a b}]'],
    ['a limit below 1', 'name: x\nsteps: [{id: a, limits: {letters: 0}}]'],
    ['an empty name', 'name: " "\nsteps: [{id: a}]'],
  ])('refuses %s', (_, yaml) => {
    expect(validate(parse(yaml))).toBe(false)
  })

  it('describes every key', () => {
    const { properties = {} } = schema
    const { items } = properties.steps as { items: { properties: Record<string, { description?: string }> } }
    const keys = { ...properties, ...items.properties } as Record<string, { description?: string }>
    const bare = Object.entries(keys).filter(([, { description }]) => description === undefined)
    expect(bare.map(([key]) => key)).toEqual([])
  })
})
