// Reading strictly, telling clearly, writing whole or not at all.

import * as fs from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { readStdin, readTextFile } from '../../../src/cli/files/read.ts'
import { createTextFiles } from '../../../src/cli/files/text-files.ts'
import { findWriteObstacle, writeTextFile } from '../../../src/cli/files/write.ts'
import { decodeUtf8, MAX_BYTES } from '../../../src/files/index.ts'
import { type Problem, type Result, toProblemLine } from '../../../src/problem/index.ts'
import type { TestWorld } from '../io.ts'
import { createWorld } from '../io.ts'

const worlds: TestWorld[] = []
afterEach(() => {
  for (const world of worlds.splice(0)) world.remove()
})

function world(...given: Parameters<typeof createWorld>): TestWorld {
  const made = createWorld(...given)
  worlds.push(made)
  return made
}

const toBytes = (...bytes: number[]) => new Uint8Array(bytes)

const toLine = (problem: Problem | undefined): string => (problem ? toProblemLine(problem) : 'fine')
const told = (result: Result<unknown>): string => (result.ok ? 'fine' : result.problems.map(toProblemLine).join())

describe('reading', () => {
  it.each(['', 'A hen.\r\n', '\uFEFFA hen.\n', 'nid d’œuf 🦆 \u00AD', 'e\u0301'])('gives %j as it stands', (text) => {
    expect(decodeUtf8(new TextEncoder().encode(text), 'a.md')).toEqual({ ok: true, value: text })
  })

  it.each([
    ['Latin 1', toBytes(65, 10, 0xe9, 10), '`a.md` is not UTF-8: see line 2. Save it as UTF-8 and try again.'],
    ['a cut-off letter', toBytes(65, 0xc3), '`a.md` is not UTF-8: see line 1. Save it as UTF-8 and try again.'],
    ['UTF-16', toBytes(0xff, 0xfe, 65, 0), '`a.md` is saved as UTF-16. Save it as UTF-8 and try again.'],
    ['a picture', toBytes(0x89, 0x50, 0x4e, 0x47, 0, 0), '`a.md` is not a text: it holds bytes that no text has.'],
    ['too much', new Uint8Array(MAX_BYTES * 2).fill(65), '`a.md` is too large: 20 MB, and the most is 10 MB.'],
  ])('tells of %s', (_, bytes, message) => {
    expect(told(decodeUtf8(bytes, 'a.md'))).toBe(message)
  })

  it('tells of files that cannot be read', () => {
    const { io, cwd } = world({ 'x/a.md': 'A hen.' })
    fs.symlinkSync('loop', join(cwd, 'loop'))
    fs.truncateSync(join(cwd, 'x/a.md'), MAX_BYTES + 1)
    const messageOf = (name: string) => {
      const result = readTextFile(join(cwd, name), io, name)
      return told(result)
    }
    expect(messageOf('x')).toBe('`x` is a folder, not a file.')
    expect(messageOf('gone.md')).toBe('`gone.md` is not there.')
    expect(messageOf('loop')).toBe('`loop` is a link that leads back to itself.')
    expect(messageOf('x/a.md')).toBe('`x/a.md` is too large: 11 MB, and the most is 10 MB.')
    expect(messageOf('x/a.md/b')).toBe('`x/a.md/b` is not there: a part of its path is a file, not a folder.')
    expect(told(readTextFile('/dev/null', io))).toBe('`/dev/null` is not a file of text.')
  })

  it('tells of a missing permission', () => {
    const refuse = () => {
      throw Object.assign(new Error('no'), { code: 'EACCES' })
    }
    const { io, cwd } = world({ 'a.md': '' }, { fs: { ...fs, readFileSync: refuse as never } })
    expect(told(readTextFile(join(cwd, 'a.md'), io, 'a.md'))).toBe('`a.md` may not be opened: permission is missing.')
  })

  it('reads standard input, cut anywhere, and stops where it is too much', async () => {
    const bytes = new TextEncoder().encode('Dé 🦆')
    const { io } = world()
    const byteByByte = async function* () {
      for (const byte of bytes) yield toBytes(byte)
    }
    expect(await readStdin({ ...io, stdin: byteByByte })).toEqual({ ok: true, value: 'Dé 🦆' })
    let given = 0
    const endless = async function* () {
      for (;;) {
        given++
        yield new Uint8Array(1024 * 1024).fill(65)
      }
    }
    expect(await readStdin({ ...io, stdin: endless })).toMatchObject({ ok: false })
    expect(given).toBe(11)
  })

  it('gives config files to the finder', async () => {
    const { io, cwd } = world({ 'a.yaml': 'step: x', 'b.yaml': toBytes(0xff) })
    const read = createTextFiles(io).read
    expect(await read(join(cwd, 'a.yaml'))).toEqual({ ok: true, value: 'step: x' })
    expect(await read(join(cwd, 'c.yaml'))).toBeUndefined()
    expect(await read(join(cwd, 'b.yaml'))).toMatchObject({ ok: false, problems: [{ code: 'binary' }] })
  })

  it('lists a folder by names, and tells a file from it', async () => {
    const { io } = world({ 'readers/zub.yaml': '', 'readers/old/meg.yaml': '', 'hen.md': '' })
    const { list } = createTextFiles(io)
    const listed = await list('readers')
    expect(listed).toMatchObject({ ok: true })
    expect(listed?.ok && [...listed.value].sort()).toEqual(['old', 'zub.yaml'])
    expect(await list('hen.md')).toBeUndefined()
    expect(await list('nowhere')).toBeUndefined()
  })
})

describe('writing', () => {
  it('writes a new file and over an old one, and leaves nothing else', () => {
    const { io, cwd, read } = world({ 'old.md': 'A hen.' })
    expect(writeTextFile(join(cwd, 'new.md'), 'Dé 🦆\r\n', io)).toMatchObject({ ok: true })
    expect(writeTextFile(join(cwd, 'old.md'), 'A pen.', io)).toMatchObject({ ok: true })
    expect([read('new.md'), read('old.md')]).toEqual(['Dé 🦆\r\n', 'A pen.'])
    expect(fs.readdirSync(cwd).toSorted()).toEqual(['.git', 'new.md', 'old.md'])
  })

  it('keeps the permissions and writes through a link', () => {
    const { io, cwd, read } = world({ 'real/a.md': 'A hen.' })
    fs.chmodSync(join(cwd, 'real/a.md'), 0o666)
    fs.symlinkSync('real/a.md', join(cwd, 'link.md'))
    fs.symlinkSync('real/later.md', join(cwd, 'later.md'))
    expect(writeTextFile(join(cwd, 'link.md'), 'A pen.', io)).toMatchObject({ ok: true })
    expect(writeTextFile(join(cwd, 'later.md'), 'A den.', io)).toMatchObject({ ok: true })
    expect([read('real/a.md'), read('real/later.md')]).toEqual(['A pen.', 'A den.'])
    expect(fs.lstatSync(join(cwd, 'link.md')).isSymbolicLink()).toBe(true)
    expect(fs.statSync(join(cwd, 'real/a.md')).mode & 0o777).toBe(0o666)
  })

  it.each([
    ['writeFileSync', 'ENOSPC', 'could not be written: the disk is full'],
    ['fsyncSync', 'EIO', 'could not be read or written (EIO)'],
    ['renameSync', 'EBUSY', 'is in use by another program'],
    ['openSync', 'EROFS', 'could not be written: the disk can only be read'],
  ] as const)('leaves the old file when %s fails', (name, code, what) => {
    const refuse = () => {
      throw Object.assign(new Error(code), { code })
    }
    const { io, cwd, read } = world({ 'a.md': 'A hen.' }, { fs: { ...fs, [name]: refuse } })
    expect(told(writeTextFile(join(cwd, 'a.md'), 'A pen.', io, 'a.md'))).toBe(`\`a.md\` ${what}.`)
    expect(read('a.md')).toBe('A hen.')
    expect(fs.readdirSync(cwd).toSorted()).toEqual(['.git', 'a.md'])
  })

  it('leaves a write-protected file as it is, even where the folder would let it be replaced', () => {
    const { io, cwd, read } = world({ 'a.md': 'A hen.' })
    fs.chmodSync(join(cwd, 'a.md'), 0o444)
    const message = '`a.md` is write-protected: allow changes to it first.'
    expect(toLine(findWriteObstacle(join(cwd, 'a.md'), io, 'a.md'))).toBe(message)
    expect(told(writeTextFile(join(cwd, 'a.md'), 'A pen.', io, 'a.md'))).toBe(message)
    expect(read('a.md')).toBe('A hen.')
  })

  it.each([
    ['r+', 'EACCES', '`a.md` may not be written: permission is missing.'],
    ['wx', 'EACCES', '`a.md` may not be written: permission to write in its folder is missing.'],
    ['r+', 'EROFS', '`a.md` could not be written: the disk can only be read.'],
  ])('tells beforehand that a file cannot be written: %s %s', (flag, code, message) => {
    const openSync = (path: string, flags: string, mode?: number) => {
      if (flags === flag) throw Object.assign(new Error(code), { code, path })
      return fs.openSync(path, flags, mode)
    }
    const { io, cwd } = world({ 'a.md': 'A hen.' }, { fs: { ...fs, openSync: openSync as never } })
    expect(toLine(findWriteObstacle(join(cwd, 'a.md'), io, 'a.md'))).toBe(message)
    expect(told(writeTextFile(join(cwd, 'a.md'), 'A pen.', io, 'a.md'))).toBe(message)
  })

  it('finds no obstacle where there is none, and leaves nothing behind', () => {
    const { io, cwd, read } = world({ 'a.md': 'A hen.' })
    expect(findWriteObstacle(join(cwd, 'a.md'), io)).toBeUndefined()
    expect(findWriteObstacle(join(cwd, 'new.md'), io)).toBeUndefined()
    expect(findWriteObstacle('/dev/null', io)).toBeUndefined()
    expect([read('a.md'), ...fs.readdirSync(cwd).toSorted()]).toEqual(['A hen.', '.git', 'a.md'])
  })

  it('does not take a folder for a file', () => {
    const { io, cwd } = world({ 'x/a.md': '' })
    expect(told(writeTextFile(join(cwd, 'x'), '', io, 'x'))).toBe('`x` is a folder, not a file.')
    expect(told(writeTextFile(join(cwd, 'y/b.md'), '', io, 'y/b.md'))).toBe('`y/b.md` is not there.')
  })
})
