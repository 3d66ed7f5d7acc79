// The schemas that editors read: fresh, and of one mind with the program on what may be written.

import { readdirSync, readFileSync } from 'node:fs'
import { Ajv, type ValidateFunction } from 'ajv'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { rules } from '../rules/index.ts'
import { toSchemaFiles } from '../scripts/build/schemas.ts'
import { readConfigFile } from '../src/config/config-file.ts'
import { readFrontMatter } from '../src/config/index.ts'
import { toConfigFile } from '../src/init/story-folder.ts'
import { readStory } from '../src/story/index.ts'

const files = toSchemaFiles()
const folder = new URL('../schemas/', import.meta.url)
const ajv = new Ajv({ strict: true, allowUnionTypes: true })
const validators = new Map<string, ValidateFunction>()
const check = (name: string, yaml: string): boolean => {
  const validate = validators.get(name) ?? ajv.compile(JSON.parse(files[`${name}.schema.json`] ?? ''))
  validators.set(name, validate)
  return validate(parse(yaml) ?? {})
}

it.each(Object.keys(files))('%s is what `npm run schemas` writes', (name) => {
  expect(readFileSync(new URL(name, folder), 'utf8')).toBe(files[name])
})

const EXAMPLE = { step: 'pink-4', sightWords: [] }

describe('the schema and the program say the same', () => {
  const configs: readonly (readonly [yaml: string, isRight: boolean])[] = [
    ['sequence: england\nstep: year-1\n', true],
    ['names: [Tam, Old Ned]\nsight words: the, said\n', true],
    ['readable share: 90%\npages: 2\ncount title: false\n', true],
    ['readable share: 0.9\naccent: southern-british\nroot: true\nignore: drafts/\nextends: ../base.yaml\n', true],
    ['rules:\n  max-page-words: off\n  no-unknown-word: warning\n', true],
    ['rules:\n  max-sentence-words:\n    severity: error\n    words: 7\n', true],
    ['overrides:\n  - files: ["a/"]\n    step: pink-2\n', true],
    ['step:\nnames:\n', true],
    [
      toConfigFile({
        sequence: 'series',
        accent: 'general-american',
        step: undefined,
        example: EXAMPLE,
        isLinked: true,
      }),
      true,
    ],
    [
      toConfigFile({
        sequence: 'england',
        accent: 'southern-british',
        step: 'y1-1',
        example: EXAMPLE,
        isLinked: false,
      }),
      true,
    ],
    ['nmaes: [Tam]\n', false],
    ['accent: scottish\n', false],
    ['readable share: 90 parts\n', false],
    ['count title: perhaps\n', false],
    ['pages: 7\n', false],
    ['rules:\n  no-such-rule: off\n', false],
    ['rules:\n  max-page-words: on\n', false],
    ['rules:\n  max-sentence-words:\n    wrods: 7\n', false],
    ['overrides:\n  - step: pink-2\n', false],
    ['names: 3\n', false],
  ]

  it.each(configs)('of a config %j: %j', async (text, isRight) => {
    const { problems } = await readConfigFile({ path: 'battledore.yaml', text }, rules)
    expect([problems.length === 0, check('config', text)], problems.map(({ message }) => message).join()).toEqual([
      isRight,
      isRight,
    ])
  })

  const frontMatters: readonly (readonly [yaml: string, isRight: boolean])[] = [
    ['title: Tam\nstep: pink-4\norder: 2\nintroduces: [the]\npractises: ai, ay', true],
    ['author: somebody else\nlayout: post\nnames: [Tam]', true],
    ['order: second', false],
    ['accent: scottish', false],
    ['rules:\n  max-page-words: on', false],
  ]

  it.each(frontMatters)('of front matter %j: %j', async (yaml, isRight) => {
    const text = `---\n${yaml}\n---\nTam sat.\n`
    const { problems } = await readFrontMatter({ path: 'tam.md', text }, readStory(text).frontMatter, rules)
    expect([problems.length === 0, check('front-matter', yaml)]).toEqual([isRight, isRight])
  })
})

it('every built-in sequence fits the schema', () => {
  const builtIn = new URL('../src/sequence/built-in/', import.meta.url)
  const names = readdirSync(builtIn).filter((name) => name.endsWith('.yaml'))
  expect(names.length).toBeGreaterThan(2)
  for (const name of names)
    expect(check('sequence', readFileSync(new URL(name, builtIn), 'utf8')), `${name}: ${ajv.errorsText()}`).toBe(true)
})

it.each([
  ['name: Group 2\nstep: pink-2\nknows:\n  sight words: [said]\n', true],
  ['name: Group 2\nmembers: [meg.yaml, sid.yaml]\n', true],
  ['name: Meg\nlessons:\n  - { date: 2026-09-14, taught: [sh as in ship], secure: no }\n', true],
  ['name: Meg\nlessons: [{ date: September }]\n', false],
  ['name: Group 2\nstep: pink-2\nknow:\n  sight words: [said]\n', false],
])('a reader %j: %j', (yaml, isRight) => {
  expect(check('reader', yaml)).toBe(isRight)
})

it('every key says what it is for', () => {
  for (const name of ['config', 'front-matter', 'reader', 'sequence']) {
    const { properties } = JSON.parse(files[`${name}.schema.json`] ?? '') as {
      properties: Record<string, { description?: string }>
    }
    for (const [key, { description }] of Object.entries(properties)) {
      if (!(name === 'sequence' && key === 'steps')) expect(description, `${name}: ${key}`).toMatch(/\w{3,}.*\.$/)
    }
  }
})
