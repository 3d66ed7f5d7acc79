// The dialogue of `fix` at a terminal, with typed answers, and what it writes.

import { spawnSync } from 'node:child_process'
import { chmodSync, existsSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { ROOT } from '../../console.ts'
import { createWorld, type TestWorld } from '../io.ts'

const STORY =
  '---\r\n# kept\r\nstep: pink-5   # where Tansy Lane reads\r\n---\r\nMeg had a big hole. Tam and Tully sat in the hole.\r\n\r\nThe garden is wet.'
const worlds: TestWorld[] = []
afterEach(() => {
  for (const world of worlds.splice(0)) world.remove()
})

function atTerminal(answers: string, source = STORY): TestWorld {
  const world = createWorld(
    { 'tam.md': source },
    { stdin: answers, isTTY: true, columns: 80, stdinIsTTY: true, env: { NO_COLOR: '1' } },
  )
  worlds.push(world)
  return world
}

const run = (world: TestWorld, ...more: string[]) => main(['fix', 'tam.md', ...more], world.io)
const firstChoice = (world: TestWorld): string => /^ {2}1 (\S+)/m.exec(world.out())?.[1] ?? ''

describe('at a terminal', () => {
  it('asks about one word after the other, shows the change and writes it', async () => {
    const world = atTerminal('1\nq\ny\n')
    expect(await run(world)).toBe(1)
    const out = world.out()
    expect(out).toMatch(/1 of \d, line 5/)
    expect(out).toContain('Meg had a big hole.')
    expect(out).toMatch(/\^{4}\n/)
    const word = firstChoice(world)
    expect(word).toMatch(/^[a-z]+$/)
    expect(world.read('tam.md')).toBe(STORY.replace('hole', word))
    expect(out.indexOf(`+Meg had a big ${word}.`)).toBeLessThan(out.indexOf('Write this to tam.md?'))
  })

  it('replaces a word everywhere, and allows a name once for all its places', async () => {
    const world = atTerminal('1a\nn\nq\ny\n', STORY.replace('wet.', 'wet. Meg and Tully ran.'))
    await run(world)
    const text = world.read('tam.md')
    expect(text).not.toContain('hole')
    expect(text.match(/Tully/g)).toHaveLength(3)
    expect(text).toContain('names: [Tully]\r\n')
    expect(world.out().match(/Tully is a name/g)).toHaveLength(1)
  })

  it.each([
    ['no answer', '1\nq\nn\n'],
    ['the end of the input at once', ''],
    ['the end of the input after a place that was left', 'l\n'],
    ['stopping at once', 'q\n'],
  ])('writes nothing after %s', async (_, answers) => {
    const world = atTerminal(answers)
    expect(await run(world)).toBe(1)
    expect(world.read('tam.md')).toBe(STORY)
    expect(world.out()).toContain('Nothing is changed.')
  })

  it.each([
    ['at a place', '1\n'],
    ['at the question whether to write', '1\nq\n'],
  ])('keeps what was decided beside the story where the input ends %s', async (_, answers) => {
    const world = atTerminal(answers)
    world.write({ 'tam.md.new': 'Another text.' })
    expect(await run(world)).toBe(1)
    expect([world.read('tam.md'), world.read('tam.md.new')]).toEqual([STORY, 'Another text.'])
    expect(world.read('tam.md.new-2')).toBe(STORY.replace('hole', firstChoice(world)))
    const out = world.out().replace(/\s+/g, ' ')
    expect(out).toContain('The story with your 1 decision lies in tam.md.new-2')
    expect(out).toContain('To go on from here later: battledore fix tam.md --from 5')
  })

  it('says so where what was decided cannot be kept', async () => {
    const world = atTerminal('1\n')
    const openSync: typeof world.io.fs.openSync = (path, ...more) => {
      if (String(path).endsWith('.new')) throw Object.assign(new Error('full'), { code: 'ENOSPC' })
      return world.io.fs.openSync(path, ...more)
    }
    expect(await main(['fix', 'tam.md'], { ...world.io, fs: { ...world.io.fs, openSync } })).toBe(2)
    expect(world.err()).toContain('tam.md.new')
    expect(world.read('tam.md')).toBe(STORY)
  })

  it('leaves a word everywhere', async () => {
    const world = atTerminal('la\nq\n')
    await run(world)
    expect(world.out().match(/`hole` has/g)).toHaveLength(1)
  })

  it('asks again after an answer that was not offered', async () => {
    const world = atTerminal('99\nx\nq\n')
    await run(world)
    expect(world.out().match(/That is none of the choices/g)).toHaveLength(2)
  })

  it('does not write over what another program has written meanwhile', async () => {
    const world = atTerminal('')
    const answers = ['1\n', 'q\n', 'y\n']
    const io = {
      ...world.io,
      stdin: async function* () {
        for (const answer of answers) {
          if (answer === 'y\n') world.write({ 'tam.md': 'Another text.' })
          yield new TextEncoder().encode(answer)
        }
      },
    }
    expect(await main(['fix', 'tam.md'], io)).toBe(2)
    expect(world.read('tam.md')).toBe('Another text.')
    expect(world.err()).toContain('has changed in the meantime')
  })

  it('does not make a file anew that has gone meanwhile', async () => {
    const world = atTerminal('')
    const io = {
      ...world.io,
      stdin: async function* () {
        yield new TextEncoder().encode('1\nq\n')
        rmSync(join(world.cwd, 'tam.md'))
        yield new TextEncoder().encode('y\n')
      },
    }
    expect(await main(['fix', 'tam.md'], io)).toBe(2)
    expect(existsSync(join(world.cwd, 'tam.md'))).toBe(false)
    expect(world.err()).toBe(
      'battledore: `tam.md` is not there. This has changed in the meantime. Nothing is written.\n',
    )
  })

  it('asks nothing where the file is write-protected', async () => {
    const world = atTerminal('1\nq\ny\n')
    chmodSync(join(world.cwd, 'tam.md'), 0o444)
    expect(await run(world)).toBe(2)
    expect(world.err()).toBe('battledore: `tam.md` is write-protected: allow changes to it first.\n')
    expect([world.out(), world.read('tam.md')]).toEqual(['', STORY])
  })

  it('shows every place, with offers or not, and says why a place takes no word', async () => {
    const world = atTerminal('1a\n\ny\n', '---\nstep: green-2\n---\nThe h**ol**e is big. A hole is big. **The h**ole.')
    await run(world)
    const word = firstChoice(world)
    expect(world.read('tam.md')).toBe(
      `---\nstep: green-2\n---\nThe **${word}** is big. A ${word} is big. **The h**ole.`,
    )
    expect(world.out().replace(/\s+/g, ' ')).toContain('No word can be put in here: emphasis reaches beyond the word')
  })

  it('judges a typed word at once, and puts in what can be read with case, article and ending', async () => {
    const world = atTerminal('boundary\npan\npal\ny\n', '---\nstep: blue-2\n---\nAn alligator sat. Meg had friends.')
    await run(world)
    const out = world.out().replace(/\s+/g, ' ')
    expect(out).toContain('`boundary`')
    expect(out).toContain('Try another word, or type it again to put it in all the same.')
    expect(out).toContain('`pan` is put in.')
    expect(out).toContain('`pals` is put in.')
    expect(world.read('tam.md')).toBe('---\nstep: blue-2\n---\nA pan sat. Meg had pals.')
  })

  it('takes a word that cannot be read when it is typed again', async () => {
    const world = atTerminal('boundary\nboundary\ny\n', '---\nstep: pink-6\n---\nA garden is wet.')
    await run(world)
    expect(world.read('tam.md')).toContain('A boundary is wet.')
  })

  it('undoes the last answer, and says when there is none', async () => {
    const world = atTerminal('u\n1\nu\n\nq\ny\n')
    await run(world)
    expect(world.out()).toContain('There is nothing to undo.')
    expect(world.read('tam.md')).toBe(STORY)
    expect(world.out()).toContain('Nothing is changed.')
  })

  it('keeps a word with its reason, which has to be given, and lists one known by heart', async () => {
    const story = '---\nstep: pink-6\n---\nThe garden is wet.\n\nA lake is wet. The lake is big.\n'
    const world = atTerminal('k\n\nk\nher -- own word\nh\ny\n', story)
    expect(await run(world)).toBe(0)
    expect(world.out()).toContain('Without a reason the word is not kept.')
    const text = world.read('tam.md')
    expect(text).toMatch(/<!-- battledore ignore \S+ "garden" -- her - own word -->\nThe garden is wet\./)
    expect(text).toContain('sight words: [lake]\n---')
    await run(world, '--dry-run')
    expect(await main(['check', 'tam.md', '--quiet'], world.io)).toBe(0)
  })

  it('says how to go on later, and goes on there', async () => {
    const story = '---\nstep: pink-6\n---\nThe garden is wet.\n\nThe lake is wet.\n'
    const world = atTerminal('k\nwhy not\nq\ny\n', story)
    expect(await run(world)).toBe(1)
    expect(world.out()).toContain('To go on from here later: battledore fix tam.md --from 7')
    const later = atTerminal('q\n', world.read('tam.md'))
    await run(later, '--from', '7')
    expect(later.out()).toContain('1 of 1, line 7')
    expect(await run(later, '--from', 'x')).toBe(2)
    expect(later.err()).toBe('battledore: --from is the number of a line, such as 12; it is "x".\n')
  })

  it('says how to go on as it was asked: for the same reader, at the same step', async () => {
    const world = atTerminal('q\n', 'The garden is wet. A lake is big.')
    world.write({ 'our group.yaml': 'name: Meg\nstep: pink-6\n' })
    await run(world, '--reader', 'our group.yaml', '--accent', 'southern-british')
    expect(world.out()).toContain(
      'battledore fix tam.md --accent southern-british --reader "our group.yaml" --from 1\n',
    )
  })

  it('judges for a reader', async () => {
    const world = atTerminal('q\n', 'The garden is wet. A lake is big.')
    world.write({ 'meg.yaml': 'name: Meg\nstep: pink-6\nknows:\n  sight words: [garden]\n' })
    await run(world, '--reader', 'meg.yaml')
    expect(world.err()).toContain('Judged for Meg, at pink-6')
    expect(world.out()).toContain('A lake is big.')
    expect(world.out()).not.toContain('`garden`')
  })

  it('offers an invented name that only begins sentences', async () => {
    const world = atTerminal('n\ny\n', '---\nstep: green-2\n---\nZorba sat. Zorba ran.')
    expect(await run(world)).toBe(0)
    expect(world.out()).toContain('n: Zorba is a name')
    expect(world.read('tam.md')).toBe('---\nstep: green-2\nnames: [Zorba]\n---\nZorba sat. Zorba ran.')
  })

  it('takes no word of the dictionary for a name because it begins a sentence', async () => {
    const world = atTerminal('', '---\nstep: pink-2\n---\nFrom it.')
    await run(world)
    expect(world.out()).not.toContain('is a name')
  })

  it('says when there is nothing to decide on', async () => {
    const world = atTerminal('', '---\nstep: pink-5\n---\nA fat cat sat.')
    await run(world)
    expect(world.out()).toContain('there is nothing to decide on')
    expect(world.read('tam.md')).toBe('---\nstep: pink-5\n---\nA fat cat sat.')
  })
})

describe('without a terminal', () => {
  it('refuses in one line', async () => {
    const world = createWorld({ 'tam.md': STORY })
    worlds.push(world)
    expect(await run(world)).toBe(2)
    expect(world.err().trim().split('\n')).toHaveLength(1)
    expect(world.err()).toContain('--dry-run')
    expect(world.read('tam.md')).toBe(STORY)
  })

  it('prints a diff with the first suggestions, and writes nothing', async () => {
    const world = createWorld({ 'tam.md': STORY })
    worlds.push(world)
    await run(world, '--dry-run')
    expect(world.out()).toMatch(/^--- a\/tam\.md\n\+\+\+ b\/tam\.md\n@@ /)
    expect(world.out()).toMatch(/^-Meg had a big hole\./m)
    expect(world.read('tam.md')).toBe(STORY)
  })

  it('names a file outside the folder from the folder that holds both, and says which', async () => {
    const world = createWorld({ 'tam.md': STORY, 'in/hen.md': '' })
    worlds.push(world)
    await main(['fix', '../tam.md', '--dry-run'], { ...world.io, cwd: join(world.cwd, 'in') })
    expect(world.out()).toMatch(/^--- a\/tam\.md\n\+\+\+ b\/tam\.md\n@@ /)
    expect(world.err()).toBe('This diff holds in the folder ..: patch -p1 -d ..\n')
  })

  it('names a file by its path from the current folder, however it was given', async () => {
    const world = createWorld({ 'tam.md': STORY })
    worlds.push(world)
    await main(['fix', join(world.cwd, 'tam.md'), '--dry-run'], world.io)
    expect(world.out()).toMatch(/^--- a\/tam\.md\n/)
    expect(world.err()).toBe('')
  })

  it('tells of a file that is not there', async () => {
    const world = createWorld({})
    worlds.push(world)
    expect(await run(world, '--dry-run')).toBe(2)
    expect(world.err()).toContain('tam.md')
  })
})

// A terminal of its own, as the program `script` of util-linux makes it; where there is none, the tests above stand alone.
const hasScript = spawnSync('script', ['--version'], { encoding: 'utf8' }).stdout?.includes('util-linux') ?? false

function typeAtTerminal(input: string, world: TestWorld) {
  const program = join(ROOT, 'dist', 'cli.cjs')
  const options = { cwd: world.cwd, input, encoding: 'utf8', timeout: 30_000 } as const
  return spawnSync('script', ['-qec', `node '${program}' fix tam.md`, '/dev/null'], options)
}

it.runIf(hasScript)('walks through a story on a real terminal', () => {
  const world = createWorld({ 'tam.md': STORY })
  worlds.push(world)
  const run = typeAtTerminal('1\nq\ny\n', world)
  expect(run.stdout).toContain('Write this to tam.md?')
  expect(world.read('tam.md')).toMatch(/Meg had a big (?!hole)[a-z]+\. Tam and Tully sat in the hole\./)
  expect(world.read('tam.md').replace(/big [a-z]+\./, 'big hole.')).toBe(STORY)
})

it.runIf(hasScript)('keeps what was decided beside the story after Ctrl D on a real terminal', () => {
  const world = createWorld({ 'tam.md': STORY })
  worlds.push(world)
  expect(typeAtTerminal('1\n\x04', world).stdout.replace(/\s+/g, ' ')).toContain('lies in tam.md.new:')
  expect(world.read('tam.md')).toBe(STORY)
  expect(world.read('tam.md.new').replace(/big [a-z]+\./, 'big hole.')).toBe(STORY)
})
