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
    ['any for a list', 'name: x\nsteps: [{id: a, shapes: any, contractions: any, marks: any}]'],
    ['any for a limit', 'name: x\nsteps: [{id: a, limits: {letters: any, words on a page: 1}}]'],
    [
      'yes, no, true and false',
      'name: x\nsteps: [{id: a, numerals: "no"}, {id: b, numerals: "yes"}, {id: c, numerals: true}]',
    ],
    [
      'every word for capitals',
      'name: x\nsteps: [{id: a, capitals: none}, {id: b, capitals: first letter}, {id: c, capitals: all}]',
    ],
    ['every setting', 'name: x\nsettings: {endings: sounded, reduced vowels: flag}\nsteps: [{id: a}]'],
    ['every other setting', 'name: x\nsettings: {endings: taught, reduced vowels: accept}\nsteps: [{id: a}]'],
    ['what extends another', 'name: x\nextends: series\nlook-alikes: [bd]\nsteps: [{id: a, after: pink-1, title: A}]'],
  ])('takes %s', (_, yaml) => {
    validate(parse(yaml))
    expect(validate.errors).toBeNull()
  })

  it.each([
    ['an unknown key', 'name: x\ncolour: red\nsteps: [{id: a}]'],
    ['no steps', 'name: x'],
    ['an unknown accent', 'name: x\naccent: american\nsteps: [{id: a}]'],
    ['an id with a space', 'name: x\nsteps: [{id: a b}]'],
    ['a limit below 1', 'name: x\nsteps: [{id: a, limits: {letters: 0}}]'],
    ['an empty name', 'name: " "\nsteps: [{id: a}]'],
    ['no step in the list', 'name: x\nsteps: []'],
    ['a limit that is no whole number', 'name: x\nsteps: [{id: a, limits: {letters: 2.5}}]'],
    ['a limit in words', 'name: x\nsteps: [{id: a, limits: {letters: three}}]'],
    ['a limit that does not exist', 'name: x\nsteps: [{id: a, limits: {lines: 3}}]'],
    ['a setting that does not exist', 'name: x\nsettings: {vowels: flag}\nsteps: [{id: a}]'],
    ['endings neither taught nor sounded', 'name: x\nsettings: {endings: named}\nsteps: [{id: a}]'],
    ['capitals by another word', 'name: x\nsteps: [{id: a, capitals: first}]'],
    ['numerals by a figure', 'name: x\nsteps: [{id: a, numerals: 1}]'],
    ['a word for a list', 'name: x\nsteps: [{id: a, teach: ai as in rain}]'],
    ['a word for a list or any', 'name: x\nsteps: [{id: a, shapes: CVC}]'],
  ])('refuses %s', (_, yaml) => {
    expect(validate(parse(yaml))).toBe(false)
  })

  it('describes every key, and those of limits and settings, in a sentence', () => {
    const undescribed = [...listDescriptions(schema as Form)].filter(([, text]) => !/^[A-Z].{15,}[.`]$/.test(text))
    expect(undescribed).toEqual([])
    expect([...listDescriptions(schema as Form)].length).toBeGreaterThan(25)
  })

  it('says in words what each choice is about', () => {
    const { properties } = schema as Form
    const step = properties?.['steps']?.items?.properties
    expect(step?.['endings']?.description).toContain('-s -es -ed -ing -er -est')
    expect(step?.['ending changes']?.description).toContain('`double`, `drop e`, `ie to y` or `y to i`')
    expect(properties?.['accent']?.enum).toEqual(['general-american', 'southern-british'])
  })
})

interface Form {
  readonly description?: string
  readonly enum?: readonly string[]
  readonly properties?: Readonly<Record<string, Form>>
  readonly items?: Form
}

/** Each key of a form and of the forms below it, with its description. */
function* listDescriptions({ properties = {}, items }: Form): Iterable<readonly [key: string, text: string]> {
  if (items) yield* listDescriptions(items)
  for (const [key, form] of Object.entries(properties)) {
    yield [key, form.description ?? '']
    yield* listDescriptions(form)
  }
}
