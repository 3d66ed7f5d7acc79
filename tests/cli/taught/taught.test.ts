// `battledore taught`: a lesson goes into the file, and every other byte stays.

import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

let world: TestWorld
const start = (files: Readonly<Record<string, string>>, given: { today?: () => string } = {}): TestWorld => {
  world = createWorld(files, given)
  return world
}
afterEach(() => world?.remove())

const MEG = '# Meg is made up.\nname: Meg   # our Meg\r\nstep: pink-4\n'
const DUCKS = 'name: The ducks\nmembers: [meg.yaml, sid.yaml]\n'

describe('one reader', () => {
  it('gets a lesson of today, and keeps every other byte', async () => {
    const { io, read, out, err } = start({ 'meg.yaml': MEG })
    expect(await main(['taught', 'meg.yaml', 'sh as in ship', 'said', '-ed'], io)).toBe(0)
    expect(read('meg.yaml')).toBe(
      `${MEG.trimEnd()}\r\nlessons:\r\n  - date: 2026-11-29\r\n    taught: [sh as in ship, said, -ed]\n`,
    )
    expect(out()).toBe('Meg, 2026-11-29: sh as in ship, said and -ed.\n')
    expect(err()).toBe('')
  })

  it('gets a second lesson below the first, on the day that is named', async () => {
    const { io, read, out } = start({
      'meg.yaml': `${MEG}lessons:\n  - date: 2026-09-14 # autumn\n    step: pink-5\n\n# the end\n`,
    })
    expect(await main(['taught', 'meg.yaml', 'they', '--date', '2026-9-21', '--not-secure'], io)).toBe(0)
    expect(read('meg.yaml')).toContain(
      'step: pink-5\r\n  - date: 2026-09-21\r\n    taught: [they]\r\n    secure: no\n\n# the end\n',
    )
    expect(out()).toContain('Meg, 2026-09-21: met they. It is not counted on')
  })

  it('says what was known before, and a step that goes back', async () => {
    const { io, out } = start({ 'meg.yaml': 'name: Meg\nstep: blue-1\n' })
    expect(await main(['taught', 'meg.yaml', 'the', 'pink-3'], io)).toBe(0)
    expect(out()).toContain('Known before: the.')
    expect(out()).toContain('That is before blue-1,\nwhere Meg was.')
  })

  it('is judged by it from that day on', async () => {
    const { io, out } = start({ 'meg.yaml': 'name: Meg\nstep: blue-3\n', 'a.md': 'The ship.\n' })
    await main(['taught', 'meg.yaml', 'sh as in ship', '--date', '2026-11-20'], io)
    expect(await main(['check', 'a.md', '--reader', 'meg.yaml', '--on', '2026-11-19', '--format', 'line'], io)).toBe(1)
    expect(out()).toContain('`ship` has `sh`')
    const shown = out().length
    await main(['check', 'a.md', '--reader', 'meg.yaml', '--format', 'line'], io)
    expect(out().slice(shown)).not.toContain('`ship`')
  })

  it('is not judged by a lesson of tomorrow', async () => {
    const { io } = start({
      'meg.yaml': 'name: Meg\nstep: pink-4\nlessons: [{ date: 2026-11-30, taught: [sh as in ship] }]\n',
      'a.md': 'A ship.\n',
    })
    expect(await main(['check', 'a.md', '--reader', 'meg.yaml', '--fail-on', 'error'], io)).toBe(1)
  })
})

describe('a group', () => {
  it('moves on with one command, each reader in its own file', async () => {
    const { io, read, out } = start({ 'meg.yaml': MEG, 'sid.yaml': 'name: Sid\nstep: pink-3\n', 'ducks.yaml': DUCKS })
    expect(await main(['taught', 'ducks.yaml', 'pink-5'], io)).toBe(0)
    expect(read('ducks.yaml')).toBe(DUCKS)
    for (const file of ['meg.yaml', 'sid.yaml']) expect(read(file)).toContain('step: pink-5\n')
    expect(out()).toBe('Meg, 2026-11-29: step pink-5.\nSid, 2026-11-29: step pink-5.\n')
  })

  it('writes for all or for none', async () => {
    const files = { 'meg.yaml': MEG, 'sid.yaml': '{ name: Sid, step: pink-3 }\n', 'ducks.yaml': DUCKS }
    const { io, read, err } = start(files)
    expect(await main(['taught', 'ducks.yaml', 'pink-5'], io)).toBe(2)
    for (const [path, text] of Object.entries(files)) expect(read(path)).toBe(text)
    expect(err()).toContain(
      'sid.yaml is not built so that a lesson can be added. Add it by hand below `lessons:`: date: 2026-11-29, step: pink-5.',
    )
  })
})

describe('what is wrong is told in a line each, with exit code 2, and nothing is written', () => {
  it.each<readonly [argv: readonly string[], told: string]>([
    [['meg.yaml', 'sh in cat'], 'does not hold the letters `sh`'],
    [['meg.yaml', 'pnk-5x7'], '`pnk-5x7` cannot be read'],
    [['meg.yaml', 'qwuzzle'], '`qwuzzle` is not in the dictionary'],
    [['meg.yaml', '-edd'], 'Did you mean `-ed`?'],
    [['meg.yaml', 'pink-5', 'blue-1'], 'One lesson reaches one step, not pink-5 and blue-1'],
    [['meg.yaml', 'said', '--date', '2026-02-30'], 'A day is written as 2026-09-14'],
    [['no.yaml', 'said'], '`no.yaml` is not there'],
    [['loop.yaml', 'said'], 'This is a group itself'],
  ])('%j', async (argv, told) => {
    const { io, read, err } = start({ 'meg.yaml': MEG, 'loop.yaml': 'name: L\nmembers: [loop.yaml]\n' })
    expect(await main(['taught', ...argv], io)).toBe(2)
    expect(err()).toContain(told)
    expect(
      err()
        .trimEnd()
        .split('\n')
        .every((line) => line.startsWith('battledore: ')),
    ).toBe(true)
    expect(read('meg.yaml')).toBe(MEG)
  })
})
