// Text that waits for what stands before it comes back whole and in order, and leaves no file behind.

import * as fs from 'node:fs'
import { tmpdir } from 'node:os'
import { expect, it } from 'vitest'
import { createScratch } from '../../../src/cli/files/scratch.ts'

const texts = Array.from({ length: 400 }, (_, at) => `${at}: é 😀 ${'tin '.repeat(at % 40)}\n`)
const whole = texts.join('')

const takeAll = (scratch: ReturnType<typeof createScratch>): string =>
  Buffer.concat([...scratch.take()].map((piece) => Buffer.from(piece as string))).toString()

const listOwn = (): readonly string[] =>
  fs.readdirSync(tmpdir()).filter((name) => /^battledore-[0-9a-f-]{36}\.tmp$/.test(name))

it.each([1, 1000, 1 << 20])('gives all back in order where %i characters are held', (most) => {
  const before = listOwn()
  const scratch = createScratch({ fs }, most)
  for (const text of texts) scratch.add(text)
  expect(listOwn()).toEqual(before)
  expect(takeAll(scratch)).toBe(whole)
})

it('holds all where there can be no file, and what comes once the disk is full', () => {
  const full = (): never => {
    throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' })
  }
  let writes = 0
  const some: typeof fs.writeSync = ((file: number, bytes: Uint8Array, ...rest: [number, number, number]) =>
    ++writes > 5 ? full() : fs.writeSync(file, bytes, rest[0], Math.min(rest[1], 300), rest[2])) as never
  for (const broken of [
    { ...fs, openSync: full },
    { ...fs, writeSync: some },
  ]) {
    const scratch = createScratch({ fs: broken }, 500)
    for (const text of texts) scratch.add(text)
    expect(takeAll(scratch)).toBe(whole)
  }
  expect(writes).toBe(6)
})
