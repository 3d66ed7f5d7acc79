// `battledore next` and `check --readers`, on a small shelf whose sums can be checked with a pencil.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv } from 'ajv'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { ROOT } from '../../console.ts'
import { createWorld, type TestWorld } from '../io.ts'

const SHELF = {
  'shelf/a.md':
    '---\ntitle: The thin hen\n---\n\nA thin hen sat. This hen is red.\n\n---\n\nThat hen has a nest on the path. Then it sat.\n',
  'shelf/b.md': '---\ntitle: Rain\n---\n\nThe rain ran on and on. The hen sat in the rain.\n',
  'shelf/c.md': '---\ntitle: A cat\n---\n\nA cat sat on a mat.\n',
  'meg.yaml': 'name: Meg\nstep: blue-3\nlessons:\n  - { date: 2026-11-01, taught: [r as in rat], secure: no }\n',
  'sid.yaml': 'name: Sid\nstep: green-1\n',
  'ducks.yaml': 'name: The ducks\nmembers: [meg.yaml, sid.yaml]\n',
}

let world: TestWorld
const start = (): TestWorld => {
  world = createWorld(SHELF)
  return world
}
afterEach(() => world?.remove())

async function nextOf(...argv: string[]) {
  const { io, out, err } = start()
  expect(await main(['next', ...argv, '--format', 'json'], io), err()).toBe(0)
  return JSON.parse(out())
}

it('takes th, which opens a book, before all else; and never a word by heart that letters open', async () => {
  const { next, books } = await nextOf('sid.yaml', 'shelf')
  expect(books.map(({ path }: { path: string }) => path)).toEqual(['shelf/a.md', 'shelf/b.md', 'shelf/c.md'])
  const blue = await nextOf('meg.yaml', 'shelf')
  const [first] = blue.next
  expect(first.kind).toBe('correspondence')
  expect(
    blue.next.filter(({ kind }: { kind: string }) => kind === 'word').map(({ what }: { what: string }) => what),
  ).not.toContain('That')
  expect(next.every(({ what }: { what: string }) => !/^(this|that|then)/i.test(what))).toBe(true)
})

it('says which books come back to what is not secure, and when it was taught', async () => {
  const { notSecure, taught } = await nextOf('meg.yaml', 'shelf')
  expect(taught).toEqual([{ what: 'r as in rat', last: '2026-11-01', secure: false }])
  // red; rain, ran, rain
  expect(notSecure).toEqual([
    {
      what: 'r as in rat',
      books: [
        { path: 'shelf/a.md', times: 1 },
        { path: 'shelf/b.md', times: 3 },
      ],
    },
  ])
})

describe('a plan', () => {
  it('holds words with the new sound, the caution, and sentences that can be read after it', async () => {
    const { plan } = await nextOf('sid.yaml', 'shelf', '--teach', 'ai as in rain')
    expect(plan.what).toBe('ai as in rain')
    expect(plan.examples.length).toBeGreaterThan(3)
    for (const word of [...plan.examples, ...plan.list, ...plan.slips]) expect(word).toMatch(/ai/)
    expect(plan.sentences.map(({ text }: { text: string }) => text)).toContain('The rain ran on and on.')
    expect(plan.book).toMatchObject({ path: 'shelf/b.md', title: 'Rain' })
  })

  it('goes on paper by the command that it names', async () => {
    const { plan } = await nextOf('sid.yaml', 'shelf', '--teach', 'ai as in rain')
    expect(plan.print.slice(0, 3)).toEqual(['print', 'set', 'shelf/b.md'])
    const { io, cwd, out, err } = world
    expect(await main([...plan.print, '--out', 'plan.pdf'], io), err()).toBe(0)
    expect(readFileSync(join(cwd, 'plan.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
    expect(out()).toContain('plan.pdf: ')
  })

  it('reads well as text at 80 columns', async () => {
    const { io, out } = start()
    expect(await main(['next', 'ducks.yaml', 'shelf', '--plan'], io)).toBe(0)
    expect(
      out()
        .split('\n')
        .filter((line) => line.length > 80),
    ).toEqual([])
    expect(out()).toContain('The ducks, at blue-3')
    expect(out()).toContain('assesses no child')
    expect(out()).toContain('Afterwards: battledore taught ducks.yaml ')
  })
})

it('its JSON is as its schema says', async () => {
  const schema = JSON.parse(readFileSync(join(ROOT, 'schemas/next.schema.json'), 'utf8'))
  const validate = new Ajv({ strict: true, allowUnionTypes: true }).compile(schema)
  expect(validate(await nextOf('meg.yaml', 'shelf', '--plan')), JSON.stringify(validate.errors)).toBe(true)
})

describe('check --readers', () => {
  it('shows one book for everybody in one table', async () => {
    const { io, out } = start()
    expect(await main(['check', 'shelf/b.md', '--readers', '.'], io)).toBe(0)
    expect(out()).toContain('Rain (shelf/b.md): 12 words')
    expect(out()).toMatch(/Sid {8}green-1 {3}83 % +rain\n/)
    expect(
      out()
        .split('\n')
        .filter((line) => line.length > 80),
    ).toEqual([])
  })

  it('gives the same figures to programs', async () => {
    const { io, out } = start()
    expect(await main(['check', 'shelf/b.md', '--readers', '.', '--format', 'json'], io)).toBe(0)
    const { books } = JSON.parse(out())
    expect(books[0].readers.map(({ name }: { name: string }) => name)).toEqual(['The ducks', 'Meg', 'Sid'])
    expect(books[0].readers[2]).toMatchObject({ readable: 10, missing: [{ word: 'rain', times: 2 }] })
  })

  it('refuses another format in a line', async () => {
    const { io, err } = start()
    expect(await main(['check', 'shelf', '--readers', '.', '--format', 'sarif'], io)).toBe(2)
    expect(err()).toBe('battledore: With --readers, --format is pretty or json.\n')
  })
})
