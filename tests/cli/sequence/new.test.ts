// `battledore sequence new` and `sequence add`: a file that is valid, from answers or a list; what is added keeps the rest.

import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

let world: TestWorld
afterEach(() => world?.remove())

const LIST = `# Tansy Lane, autumn
First letters: a as in cat, m as in mat, t as in mat

i as in sit, n as in nap, the
sh as in ship, -ed, no, can't
`

async function run(
  args: readonly string[],
  files: Readonly<Record<string, string>> = {},
  given: Parameters<typeof createWorld>[1] = {},
) {
  world = createWorld(files, given)
  const code = await main(args, world.io)
  return { code, out: world.out(), err: world.err() }
}

describe('sequence new, from a list', () => {
  it('writes a file that `sequence` reads without a word, and that limits nothing', async () => {
    const { code, err } = await run(
      ['sequence', 'new', 'own.yaml', '--from', 'list.txt', '--title', 'Own: 1', '--accent', 'southern-british'],
      { 'list.txt': LIST, 'a.md': '---\nsequence: own.yaml\nstep: step-3\n---\n\n“Mat” MIT, 1 Sam?\n' },
    )
    expect([code, err]).toEqual([0, ''])
    expect(world.read('own.yaml').split('\n').slice(2)).toEqual([
      ...['name: own', 'title: "Own: 1"', 'accent: southern-british', 'steps:'],
      ...['  - id: step-1', '    title: First letters', '    teach:'],
      ...['      - a as in cat', '      - m as in mat', '      - t as in mat'],
      ...['  - id: step-2', '    teach:', '      - i as in sit', '      - n as in nap', '    sight words: [the]'],
      ...['  - id: step-3', '    teach:', '      - sh as in ship', '    sight words: [no]', '    endings: [-ed]'],
      ...["    contractions: [can't]", ''],
    ])
    const shown = world.out().length
    expect(await main(['sequence', 'own.yaml'], world.io)).toBe(0)
    expect(world.out().slice(shown)).toContain('\nstep-2\n  sounds: i as in sit, n as in nap\n')
    await main(['check', 'a.md', '--format', 'line'], world.io)
    // The s of Sam is not taught; marks, capitals and figures were never mentioned.
    expect(world.out()).not.toMatch(/no-untaught-mark|capital|numeral/)
    expect(world.err()).toBe('')
  })

  it('says of each line what is wrong, with the nearest right thing, and writes nothing', async () => {
    const { code, err } = await run(['sequence', 'new', 'own', '--from', 'list.txt'], {
      'list.txt': 's, a\na as in cat, sh in cat, a as in hat\nsh, -eing, igh, teh\n,\n',
    })
    expect(code).toBe(2)
    expect(err.split('\n')).toEqual([
      'battledore: list.txt, line 1: `s` stands alone: a sound is written with an example word. Did you mean `s as in sat`?',
      'battledore: list.txt, line 2: `cat` does not hold the letters `sh` (its letters: c, a, t).',
      'battledore: list.txt, line 2: `a as in hat` is taught already, at step `step-2`.',
      'battledore: list.txt, line 3: `sh` stands alone: a sound is written with an example word. Did you mean `sh as in ship`?',
      'battledore: list.txt, line 3: `-eing` is no ending that can be taught. Did you mean `-ing`?',
      'battledore: list.txt, line 3: `igh` stands alone: a sound is written with an example word. Did you mean `igh as in night`?',
      'battledore: list.txt, line 3: `teh` is not a word that the dictionary knows. Did you mean `the`?',
      'battledore: list.txt, line 4: `,` teaches nothing. Leave the line out.',
      '',
    ])
    expect(world.io.fs.existsSync(`${world.cwd}/own.yaml`)).toBe(false)
  })

  it('doubts a word that nobody knows, and takes it: it may be the maker’s own', async () => {
    const list = 'a as in cat, m as in mat\nthier, teh, zog, Zub, the\nthe\n'
    const refused = await run(['sequence', 'new', 'own', '--from', 'list.txt'], { 'list.txt': list })
    expect([refused.code, refused.err.match(/taught already/g)?.length]).toEqual([2, 1])
    world.remove()
    const { code, err } = await run(['sequence', 'new', 'own', '--from', 'list.txt'], { 'list.txt': list.slice(0, -4) })
    expect(code).toBe(0)
    expect(err.split('\n')).toEqual([
      'battledore: list.txt, line 2: `thier` is not a word that the dictionary knows. Did you mean `their`?',
      'battledore: list.txt, line 2: `teh` is not a word that the dictionary knows. Did you mean `the`?',
      'battledore: list.txt, line 2: `zog` is not in the dictionary; it is taken as you wrote it. A sound is written with an example word, as `ai as in rain`; an ending with a dash, as `-ed`.',
      '',
    ])
    expect(world.read('own.yaml')).toContain('sight words: [thier, teh, zog, Zub, the]')
  })

  it('never writes over a file, and asks nobody where nobody is', async () => {
    const { code, err } = await run(['sequence', 'new', 'own', '--from', 'list.txt'], {
      'own.yaml': 'x',
      'list.txt': LIST,
    })
    expect([code, world.read('own.yaml')]).toEqual([2, 'x'])
    expect(err).toBe(
      'battledore: `own.yaml` is there already and stays as it is. Take another name, or add to it with `battledore sequence add`.\n',
    )
    world.remove()
    expect((await run(['sequence', 'new', 'own.yaml'])).err).toContain('--from list.txt, a line a step')
    world.remove()
    expect((await run(['sequence', 'new', 'own.txt'])).err).toContain('Did you mean `own.yaml`?')
    world.remove()
    expect((await run(['sequence', 'new', 'own', '--from', 'no.txt'])).err).toMatch(/^battledore: .*no\.txt.*\n$/)
  })
})

describe('sequence new, asked', () => {
  const onTerminal = (stdin: string) => ({ stdin, isTTY: true, stdinIsTTY: true, columns: 80, env: { NO_COLOR: '1' } })

  it('judges each step at once, keeps what was right, and ends with Enter', async () => {
    const { code, out, err } = await run(
      ['sequence', 'new', 'own.yaml'],
      {},
      onTerminal('Our class\nb\na as in cat, m\nm as in mat\nt as in mat, the\na as in hat\n\n\n'),
    )
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain('`m` stands alone')
    expect(out).toContain('Taken: a as in cat.\nStep 1, what else? (Enter goes on) ')
    expect(out.replace(/\s+/g, ' ')).toContain('`a as in hat` is taught already, at step `step-1`')
    expect(world.read('own.yaml').split('\n').slice(2)).toEqual([
      ...['name: own', 'title: Our class', 'accent: southern-british', 'steps:'],
      ...['  - id: step-1', '    teach:', '      - a as in cat', '      - m as in mat'],
      ...['  - id: step-2', '    teach:', '      - t as in mat', '    sight words: [the]', ''],
    ])
  })

  it('writes nothing where nothing was said', async () => {
    const { code, out } = await run(['sequence', 'new', 'own.yaml'], {}, onTerminal('\n\n\n'))
    expect(code).toBe(0)
    expect(out).toContain('Nothing was written.\n')
    expect(world.io.fs.existsSync(`${world.cwd}/own.yaml`)).toBe(false)
  })
})

const OWN = `# ours
name: own
steps:
  - id: one # September
    teach: # the first
      - a as in cat   # apple week
      - t as in cat
    # still open
  - id: two
    sight words: [the] # by heart

# the end
`

describe('sequence add', () => {
  it('adds to the last step, and keeps every other byte', async () => {
    const { code, out } = await run(['sequence', 'add', 'own.yaml', 'sh as in ship', 'said', '-ed', "can't"], {
      'own.yaml': OWN,
    })
    expect(code).toBe(0)
    const text = world.read('own.yaml')
    expect(text).toContain('    sight words: [the, said] # by heart\n')
    expect(text).toContain('    teach:\n      - sh as in ship\n')
    expect(text).toContain("    contractions:\n      - can't\n")
    const added = /^ {4}(teach|endings|contractions):\n {6}- (sh as in ship|-ed|can't)\n/gm
    expect(text.replace(', said', '').replace(added, '')).toBe(OWN)
    expect(out).toBe("Added sh as in ship, said, -ed and can't, at step two of own.yaml.\n")
    expect(await main(['sequence', 'own.yaml'], world.io)).toBe(0)
  })

  it('adds a word that nobody knows, and says that it doubts it, once', async () => {
    const { code, err, out } = await run(['sequence', 'add', 'own.yaml', 'thier', 'zog'], { 'own.yaml': OWN })
    expect([code, err.trimEnd().split('\n').length]).toEqual([0, 2])
    expect(err).toContain('Did you mean `their`?')
    expect(out).toContain('Added thier and zog')
    const again = await run(['sequence', 'add', 'own.yaml', 'said'], { 'own.yaml': world.read('own.yaml') })
    expect([again.code, again.err]).toEqual([0, ''])
  })

  it('adds to a step that is named, in any case', async () => {
    const { out } = await run(['sequence', 'add', 'own.yaml', 'm as in mat', '--step', 'ONE'], { 'own.yaml': OWN })
    expect(world.read('own.yaml')).toBe(
      OWN.replace('      - t as in cat\n', '      - t as in cat\n      - m as in mat\n'),
    )
    expect(out).toBe('Added m as in mat, at step one of own.yaml. 1 later step knows it too.\n')
  })

  it('gives a step of the sequence that a file extends an entry of its own', async () => {
    await run(['sequence', 'add', 'own.yaml', 'my', '--step', 'pink-2'], {
      'own.yaml': 'name: own\nextends: series\nsteps:\n  - id: summer\n    sight words: [laughter]\n',
    })
    expect(world.read('own.yaml')).toContain('[laughter]\n  - id: pink-2\n    sight words: [my]\n')
    expect(await main(['sequence', 'own.yaml'], world.io)).toBe(0)
  })

  it.each([
    ['a sound that is taught already', ['a as in hat'], '`a as in hat` is taught already, at step `one`.'],
    ['letters alone', ['said', 't'], 'Did you mean `t as in cat`?'],
    ['a step that is not there', ['said', '--step', 'tow'], 'has no step `tow`. Did you mean `two`?'],
  ])('adds nothing where there is %s', async (_, what, message) => {
    const { code, err } = await run(['sequence', 'add', 'own.yaml', ...what], { 'own.yaml': OWN })
    expect([code, world.read('own.yaml')]).toEqual([2, OWN])
    expect(err.trimEnd().split('\n')).toHaveLength(1)
    expect(err).toContain(message)
  })

  it('leaves a file with a mistake, a built-in sequence and a missing file alone', async () => {
    const { err } = await run(['sequence', 'add', 'own.yaml', 'said'], { 'own.yaml': `${OWN}x: 1\n` })
    expect(err).toMatch(/^battledore: own\.yaml:13:1: error: Unknown key `x`/)
    expect(await main(['sequence', 'add', 'series', 'said'], world.io)).toBe(2)
    expect(await main(['sequence', 'add', 'no.yaml', 'said'], world.io)).toBe(2)
    expect(world.err()).toContain('`series` is built in and stays as it is.')
    expect(world.err()).toContain('no.yaml')
    expect(world.err()).not.toContain('    at ')
  })
})

it('shows a file that is called as a command is, by its path', async () => {
  const { code, out } = await run(['sequence', './new.yaml'], { 'new.yaml': OWN })
  expect(code).toBe(0)
  expect(out).toContain('own: own\n2 steps.')
})
