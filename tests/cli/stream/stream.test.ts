// Stories as JSON lines: one line out for each line in, in order, with nothing piling up.

import { execFileSync, spawn } from 'node:child_process'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { afterEach, describe, expect, it } from 'vitest'
import { readLines } from '../../../src/cli/json-lines.ts'
import { main } from '../../../src/cli/main.ts'
import { toProblemLine } from '../../../src/problem/index.ts'
import { describeWith } from '../../tools.ts'
import { createWorld, type TestWorld } from '../io.ts'
import { PROGRAM } from '../program.ts'

// GNU parallel runs the compiled program; `npm test` compiles before it tests.
const COMPILED = fileURLToPath(new URL('../../../dist/cli.cjs', import.meta.url))

let world: TestWorld | undefined
afterEach(() => world?.remove())

type Out = Record<string, unknown> & { readonly error?: string }

async function stream(
  input: string | readonly string[],
  ...args: readonly string[]
): Promise<{ code: number; lines: readonly Out[]; err: string }> {
  world = createWorld(
    {
      'own.yaml': 'name: own\nextends: series\nsteps:\n  - id: own-1\n',
      'config.yaml': 'names: [Tam]\nstep: pink-2\n',
    },
    {
      stdin: typeof input === 'string' ? input : input.map((line) => `${line}\n`).join(''),
    },
  )
  const code = await main(['stream', ...args], world.io)
  return {
    code,
    lines: toText(world)
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => JSON.parse(line) as Out),
    err: world.err(),
  }
}

/** The stream writes bytes, and a test world keeps each as a letter. */
const toText = (from: TestWorld | undefined): string => Buffer.from(from?.out() ?? '', 'latin1').toString()

const record = (id: unknown, more: Record<string, unknown> = {}): string =>
  JSON.stringify({ id, text: 'Sid sat at night.', step: 'pink-3', ...more })

describe('battledore stream', () => {
  it('says of each record what the JSON report says of the same text in a file', async () => {
    const text = '---\nstep: pink-3\ntitle: Night\n---\n\n# Tam\n\nTam sat at night. 😀\n\n---\n\nA ship.\n'
    const { code, lines } = await stream([JSON.stringify({ id: 'x', text })])
    expect(code).toBe(0)
    const shelf = createWorld({ 'a.md': text })
    await main(['check', 'a.md', '--format', 'json', '--no-suggest'], shelf.io)
    const { path: _, ...file } = JSON.parse(shelf.out()).files[0]
    expect(lines).toEqual([{ id: 'x', ...file }])
    shelf.remove()
  })

  it('keeps the order, gives ids back as they came, and goes on after a broken record', async () => {
    const { code, lines } = await stream([
      record(1),
      '{"id": 2',
      '[3]',
      'null',
      record('four'),
      '{"id":5,"text":6}',
      '{"text":7}',
      record({ a: 8 }),
      record(9, { step: 'pink-99' }),
      record(10, { accent: 'mine' }),
      record(11, { sequence: 'no-such' }),
      record(12, { text: '' }),
      '',
      '  ',
      record(null),
      record(14, { text: '\ud800 sat \u0000' }),
      record(15),
    ])
    expect(code).toBe(0)
    expect(lines.map(({ id }) => id)).toEqual([1, null, null, null, 'four', 5, null, null, 9, 10, 11, 12, null, 14, 15])
    expect(lines.map(({ error }) => error !== undefined)).toEqual([
      false,
      true,
      true,
      true,
      false,
      true,
      true,
      true,
      true,
      true,
      true,
      true,
      false,
      true,
      false,
    ])
    for (const { error, problems } of lines)
      if (error !== undefined)
        expect([error.includes((problems as { message: string }[])[0]?.message ?? '-'), error.includes('\n')]).toEqual([
          true,
          false,
        ])
    expect(lines[8]?.error).toContain('(set in the record)')
    expect(lines[0]).toEqual({ ...lines[14], id: 1 })
  })

  it('with --totals gives the same without pages and messages, and the same of what it cannot check', async () => {
    const records = [
      record(1),
      record(2, {
        text: '---\nstep: pink-3\nnmae: x\nnames: [Ludo]\n---\n\nThe ship, it sat. Ludo!\n\n---\n\nIt read.',
      }),
      record(3, { text: '' }),
      '{',
      record(4, { step: 'pink-99' }),
      record(5, { text: 'It is read. <!-- battledore-disable -->I read it at night.', accent: 'general-american' }),
      '{"id":9007199254740993,"text":"Sid sat at night.","step":"pink-3"}',
    ]
    const { lines: whole } = await stream(records)
    const { lines: totals } = await stream(records, '--totals')
    expect(totals).toEqual(whole.map(({ pages: _, messages: __, ...rest }) => rest))
    expect(totals[0]).toMatchObject({ step: 'pink-3', totals: { words: 4, different: { words: 4 } } })
    expect(toText(world)).toContain('{"id":9007199254740993,')
    expect(await stream(records, '--totals', '--suggest')).toMatchObject({ code: 2, lines: [] })
  })

  it('gives the digits of a long number back', async () => {
    const ids = ['9007199254740993', '-12345678901234567890', '0.10000000000000000055', '1E400', '1'.repeat(2000)]
    const odd = [
      ...ids.map((id) => `{"id":${id},"text":"Sid sat.","step":"pink-3"}`),
      '{"text":"Say \\"id\\":1, {\\\\","more":{"id":2},"list":[{"id":3}],"id":1,"\\u0069d" : 9007199254740993 ,"x":"id"}',
      '{"text":5,"id":9007199254740993}',
    ]
    await stream(odd)
    const out = toText(world).trim().split('\n')
    const told = out.map((line) => /^\{"id":([^,]*),"/.exec(line)?.[1])
    expect(told).toEqual([...ids, '9007199254740993', '9007199254740993'])
    expect(out.map((line) => 'error' in JSON.parse(line))).toEqual([false, false, false, false, false, true, true])
  })

  it('takes step, sequence and accent from the record, then the flags, then the story, then the config', async () => {
    const inText = (more: object) => JSON.stringify({ text: '---\nstep: pink-4\n---\nSid sat.\n', ...more })
    const records = [inText({ step: 'pink-6' }), inText({}), JSON.stringify({ text: 'Sid sat.' })]
    const steps = async (...args: readonly string[]) => (await stream(records, ...args)).lines.map(({ step }) => step)
    expect(await steps('--step', 'pink-5', '--config', 'config.yaml')).toEqual(['pink-6', 'pink-5', 'pink-5'])
    expect(await steps('--config', 'config.yaml')).toEqual(['pink-6', 'pink-4', 'pink-2'])
    const { lines } = await stream([record(1, { step: 'y1-1', sequence: 'england', accent: 'general-american' })])
    expect(lines[0]).toMatchObject({ step: 'y1-1', sequence: 'england', accent: 'general-american' })
  })

  it('reads a sequence file for the command line, and for no record', async () => {
    const records = [
      JSON.stringify({ id: 1, text: 'Sid sat.', step: 'own-1' }),
      record(2, { sequence: 'other.yaml' }),
      JSON.stringify({ id: 3, text: '---\nsequence: /etc/x.yaml\nstep: x\n---\nSid sat.\n', step: 'own-1' }),
    ]
    const { lines } = await stream(records, '--sequence', 'own.yaml')
    expect(lines[0]?.error).toBeUndefined()
    expect(lines[1]?.error).toContain('A text may name only a built-in sequence')
    const { lines: plain } = await stream([records[2] ?? ''])
    expect(plain[0]?.error).toContain('A text may name only a built-in sequence')
  })

  it.each([
    [['--sequence', 'nofile.yaml'], /^battledore: `[^\n]*nofile\.yaml` is not there \(set in --sequence\)\.\n$/],
    [
      ['--sequence', 'sereis', '--step', 'pink-3'],
      'There is no sequence `sereis` (set in --sequence). Did you mean `series`?',
    ],
    [['--step', 'pink-33'], 'The sequence `series` has no step `pink-33` (set in --step). Did you mean `pink-3`?'],
    [
      ['--sequence', 'england', '--step', 'pink-3'],
      /^battledore: The sequence `england` has no step `pink-3` \(set in --step\)\. [^\n]+\n$/,
    ],
  ])('ends at once where %j can hold for no record', async (args, message) => {
    const { code, lines, err } = await stream([record(1)], ...args)
    expect([code, lines]).toEqual([2, []])
    if (typeof message === 'string') expect(err).toBe(`battledore: ${message}\n`)
    else expect(err).toMatch(message)
  })

  it('reads on where a record may name the sequence of the step', async () => {
    const { code, lines } = await stream([JSON.stringify({ text: 'Sid sat.', sequence: 'england' })], '--step', 'y1-1')
    expect([code, lines[0]?.error]).toEqual([0, undefined])
  })

  it('says in one line what is wrong with the flags', async () => {
    const { code, lines, err } = await stream([record(1)], '--accent', 'mine')
    expect([code, lines]).toEqual([2, []])
    expect(err.trim().split('\n').length).toBeLessThanOrEqual(2)
  })
})

describe('readLines', () => {
  const toBytes = async function* (...parts: readonly (string | Uint8Array)[]) {
    for (const part of parts) yield typeof part === 'string' ? new TextEncoder().encode(part) : part
  }
  const read = async (...parts: readonly (string | Uint8Array)[]): Promise<unknown[]> => {
    const lines: unknown[] = []
    for await (const some of readLines(toBytes(...parts), 10))
      for (const line of some) lines.push(line.ok ? line.value : line.problems.map(toProblemLine).join())
    return lines
  }

  it('joins what is cut anywhere, in the middle of a letter too', async () => {
    const bytes = new TextEncoder().encode('äöü\n😀x\r\nz')
    for (let cut = 0; cut <= bytes.length; cut++)
      expect(await read(bytes.subarray(0, cut), bytes.subarray(cut))).toEqual(['äöü', '😀x', 'z'])
  })

  it('passes over lines that are too long or no UTF-8, and goes on', async () => {
    expect(await read('a'.repeat(8), 'a'.repeat(8), '\nb\n', new Uint8Array([0xff, 0x0a]), '\n\nc')).toEqual([
      'The line is longer than 0 MB.',
      'b',
      'The line is not UTF-8.',
      'c',
    ])
  })
})

describe('a record at a time', () => {
  it('answers each before the next is sent', async () => {
    const child = spawn(process.execPath, [...PROGRAM, 'stream'], { stdio: ['pipe', 'pipe', 'inherit'] })
    const answers = createInterface({ input: child.stdout })[Symbol.asyncIterator]()
    for (let id = 0; id < 3; id++) {
      child.stdin.write(`${record(id)}\n{"id":"half`)
      expect(JSON.parse((await answers.next()).value ?? '')).toMatchObject({ id })
      child.stdin.write(`${id}"}\n`)
      expect(JSON.parse((await answers.next()).value ?? '')).toMatchObject({ id: `half${id}` })
    }
    child.stdin.end()
    expect(await answers.next()).toMatchObject({ done: true })
  })
})

describe('back-pressure', () => {
  it('stops reading while nobody takes the results, and loses none', async () => {
    const child = spawn(process.execPath, [...PROGRAM, 'stream'], { stdio: ['pipe', 'pipe', 'inherit'] })
    child.stdout.pause()
    const line = Buffer.from(`${record(1, { text: 'Sid sat at night. '.repeat(200) })}\n`)
    let [sent, isFull] = [0, false]
    // Pipes hold 64 KB each way and Node some more; a program that reads on takes all 20 MB.
    for (; sent < 5000 && !isFull; sent++) {
      if (child.stdin.write(line)) continue
      isFull = await Promise.race([
        new Promise<boolean>((done) => child.stdin.once('drain', () => done(false))),
        new Promise<boolean>((done) => setTimeout(() => done(true), 3000)),
      ])
    }
    expect(isFull, 'the program took all there was').toBe(true)
    expect(sent * line.length).toBeLessThan(2_000_000)
    child.stdin.end()
    let count = 0
    for await (const chunk of child.stdout) for (const byte of chunk as Buffer) if (byte === 0x0a) count++
    expect(count).toBe(sent)
  })
})

describeWith('parallel', 'GNU parallel', () => {
  it('spreads a stream over processes and gives the same lines in the same order', () => {
    const input = Array.from({ length: 40 }, (_, id) =>
      id % 9 === 4 ? '{"id": broken' : record(id, { text: `Sid sat ${id % 2 ? 'at night' : 'on a hat'}.` }),
    ).join('\n')
    const run = (command: string, ...args: readonly string[]): string =>
      execFileSync(command, args, { input }).toString()
    const alone = run(process.execPath, COMPILED, 'stream')
    expect(alone.trim().split('\n')).toHaveLength(40)
    expect(
      run(
        'parallel',
        '--will-cite',
        '--pipe',
        '--keep-order',
        '-j',
        '2',
        '-N',
        '10',
        // It hands this to a shell: a folder may have a space in its name.
        `"${process.execPath}" "${COMPILED}" stream`,
      ),
    ).toBe(alone)
  })
})
