// The documentation shows what the program really prints, and its links lead somewhere.
// After a change that is meant: npm run docs, and read the difference.

import { cpSync, existsSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, it } from 'vitest'
import { main } from '../src/cli/main.ts'
import { VERBS } from '../src/lint/switches/syntax.ts'
import { createWorld } from './cli/io.ts'
import { listPages, ROOT, readShown, withOutputs } from './console.ts'
import { findExamples } from './rule-pages.ts'
import { check } from './unified/pipeline.ts'

const YAML_BLOCK = /^```yaml\n([\s\S]*?)^```$/gm

/** The command that reads a file of the kind that an example shows, and the file's name; undefined for files of other programs. */
function toReading(yaml: string): { readonly argv: readonly string[]; readonly file: string } | undefined {
  if (/^steps:/m.test(yaml)) return { argv: ['sequence', 'our-class.yaml'], file: 'our-class.yaml' }
  if (/^knows:/m.test(yaml)) return { argv: ['match', '.', '--readers', 'meg.yaml'], file: 'meg.yaml' }
  if (/^(?:rules|unfit words):/m.test(yaml))
    return { argv: ['check', '--print-config', 'a.md'], file: 'battledore.yaml' }
  return undefined
}

const examples = listPages().flatMap((page) => {
  const text = readFileSync(join(ROOT, page), 'utf8')
  return [...text.matchAll(YAML_BLOCK)].flatMap(({ 1: yaml = '', index }) => {
    const reading = toReading(yaml)
    return reading ? [{ place: `${page}:${text.slice(0, index).split('\n').length}`, yaml, ...reading }] : []
  })
})

it('shows at least one sequence in README and two in docs/sequences.md, a config and a reader', () => {
  const places = examples.map(({ place, file }) => `${place.split(':')[0]} ${file}`).sort()
  expect(places).toEqual(
    expect.arrayContaining(['README.md battledore.yaml', 'README.md our-class.yaml', 'docs/readers.md meg.yaml']),
  )
  expect(places.filter((place) => place === 'docs/sequences.md our-class.yaml')).toHaveLength(2)
})

it.each(examples)('the file shown in $place is read without a word', async ({ yaml, argv, file }) => {
  const world = createWorld({ 'a.md': '---\nstep: pink-4\n---\n\nTam sat.\n', [file]: yaml })
  try {
    expect([await main(argv, world.io), world.err()]).toEqual([0, ''])
  } finally {
    world.remove()
  }
})

const switches = findExamples(readFileSync(join(ROOT, 'docs/switches.md'), 'utf8'))

it('docs/switches.md shows every switch at work', () => {
  const shown = switches.map(({ source }) => source).join('\n')
  for (const verb of VERBS) expect(shown).toContain(`<!-- battledore ${verb} `)
})

it.each(switches)('docs/switches.md:$line says what comes out', async ({ source, given, expected }) => {
  const tell = async (text: string): Promise<string> => {
    const { messages, toPlaceText } = await check(text, { step: { value: given['step'] ?? '', origin: 'example' } })
    return messages.map((message) => `${toPlaceText(message)} ${message.message}`).join('\n')
  }
  expect(await tell(source)).toBe(expected)
  // A story that shows silence must have something to silence.
  if (expected === '') expect(await tell(source.replace(/<!--.*-->/g, ''))).not.toBe('')
})

const UPDATE = process.env['UPDATE_DOCS'] !== undefined

/** Pages whose commands write files: they run in a copy of the fixtures. */
const WRITING: ReadonlySet<string> = new Set(['docs/bring.md', 'docs/lessons.md', 'docs/print.md', 'docs/sequences.md'])

async function runAll(page: string, all: readonly (readonly string[])[]): Promise<string[]> {
  const copy = createWorld()
  const isWriting = WRITING.has(page)
  if (isWriting) cpSync(join(ROOT, 'fixtures'), join(copy.cwd, 'fixtures'), { recursive: true })
  const outputs: string[] = []
  for (const argv of all) {
    const world = createWorld({}, { cwd: isWriting ? copy.cwd : ROOT, env: { COLUMNS: '80' } })
    try {
      await main(argv, world.io)
      outputs.push(world.err() + world.out())
    } finally {
      world.remove()
    }
  }
  copy.remove()
  return outputs
}

for (const page of listPages()) {
  it(`${page} shows real output`, async () => {
    const shown = readShown(page)
    const outputs = await runAll(
      page,
      shown.map(({ argv }) => argv),
    )
    if (UPDATE) writeFileSync(join(ROOT, page), withOutputs(page, outputs))
    else for (const [at, { place, output }] of shown.entries()) expect(outputs[at], place).toBe(output)
  })

  it(`${page} links to files that are there`, () => {
    const links = [...readFileSync(join(ROOT, page), 'utf8').matchAll(/\]\((?!https?:|#)([^)#]+)(?:#[^)]*)?\)/g)].map(
      (match) => match[1] ?? '',
    )
    const missing = links.filter((link) => !existsSync(join(ROOT, dirname(page), link)))
    expect(missing).toEqual([])
  })
}

it('README and the help keep the words of repositories out of what a maker meets first', async () => {
  const first = /## For making\n([\s\S]*?)\n## For repositories/.exec(
    readFileSync(join(ROOT, 'README.md'), 'utf8'),
  )?.[1]
  const world = createWorld()
  await main(['--help'], world.io)
  const [help = ''] = world.out().split('For editors and other programs:')
  const shown = world.out().length
  await main(['check', '--help'], world.io)
  const [check = ''] = world.out().slice(shown).split('For repositories and other programs:')
  world.remove()
  for (const text of [first ?? '', help, check]) {
    expect(text.length).toBeGreaterThan(1000)
    expect(text).not.toMatch(/staged|sarif|baseline|worker|front ?matter|junit|\bnpm\b|\bgit\b|repositor/i)
  }
})
