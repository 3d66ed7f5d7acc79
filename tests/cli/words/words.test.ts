// The command `words`: what it prints in each form, and what it says of mistakes.

import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

const schema = JSON.parse(
  readFileSync(new URL('../../../schemas/words.schema.json', import.meta.url), 'utf8'),
) as object
const isValid = new Ajv({ strict: true, allowUnionTypes: true }).compile(schema)
const worlds: TestWorld[] = []
afterEach(() => {
  for (const world of worlds.splice(0)) world.remove()
})

async function run(args: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const world = createWorld(files)
  worlds.push(world)
  const code = await main(['words', ...args], world.io)
  return { code, out: world.out(), err: world.err() }
}

const plain = async (args: readonly string[], files?: Readonly<Record<string, string>>): Promise<string[]> =>
  (await run([...args, '--format', 'plain'], files)).out.split('\n').filter((line) => line !== '')

interface Report {
  readonly words: readonly {
    readonly word: string
    readonly kind: string
    readonly sight: boolean
    readonly readableAt: string
    readonly asObject: string | null
    readonly note: string | null
  }[]
  readonly pairs: readonly (readonly string[])[]
  readonly more: boolean
  readonly caution: string | null
}

async function json(args: readonly string[]): Promise<Report> {
  const report = JSON.parse((await run([...args, '--format', 'json'])).out) as Report
  expect(isValid(report), JSON.stringify(isValid.errors)).toBe(true)
  return report
}

describe('a list', () => {
  it('shows the most useful words in columns, within 80', async () => {
    const { code, out } = await run(['--step', 'pink-4'])
    expect(code).toBe(0)
    expect(out.split('\n').every((line) => line.length <= 80)).toBe(true)
    expect(out).toContain('step pink-4')
    expect(out).toMatch(/\bcup\b/)
    expect(out).toContain('There are more: --count all shows them.')
  })

  it('prints one word a line, and as many as are asked for', async () => {
    const words = await plain(['--step', 'pink-2', '--count', '7'])
    expect(words).toHaveLength(7)
    expect(words.every((word) => /^[a-zI]+$/.test(word))).toBe(true)
  })

  it('has a row and a header of the same length for each word in CSV', async () => {
    const rows = (await run(['--step', 'green-2', '--with', 'ai', '--format', 'csv'])).out.split('\r\n').slice(0, -1)
    expect(rows.length).toBeGreaterThan(20)
    expect(new Set(rows.map((row) => row.split(',').length)).size).toBe(1)
    expect(rows[0]).toMatch(/^word,kind,by heart,readable at,/)
  })

  it('is described by its schema', async () => {
    const { words, more } = await json(['--step', 'pink-6', '--count', '200'])
    expect(more).toBe(true)
    expect(words.some(({ word, sight }) => word === 'the' && sight)).toBe(true)
  })

  it('tells in plain words that nothing fits', async () => {
    const { code, out } = await run(['--step', 'pink-1', '--with', 'igh'])
    expect(code).toBe(0)
    expect(out).toContain('No word that can be read at this step fits.')
  })

  it.each([
    [['--vowel', 'ea'], '`ea` is taught at step green-2.'],
    [['--vowel', 'y'], '`y` is taught at step green-3.'],
    [['--vowel', 'ea as in bread'], '`ea as in bread` is taught at step green-13.'],
    [['--first', '/ʃ/'], '`/ʃ/` is taught at step green-1.'],
    [['--set', 'contrast', '--sounds', 'a,ai'], '`ai` is taught at step green-2.'],
  ])('tells at which step %j is taught', async (args, told) => {
    const pretty = await run(['--step', 'pink-2', ...args])
    // A set of nothing is not what was asked for.
    expect(pretty.code).toBe(args[0] === '--set' ? 1 : 0)
    expect(pretty.out).toContain(told)
    for (const format of ['plain', 'csv', 'json'])
      expect((await run(['--step', 'pink-2', ...args, '--format', format])).err).toBe(`${told}\n`)
  })

  it('tells of no step where the letters are taught', async () => {
    for (const flags of [
      ['--with', '-ing'],
      ['--first', 'st'],
      ['--vowel', 'ai'],
      ['--last', 'nk'],
    ])
      expect((await run(['--step', 'green-14', ...flags])).out).not.toContain('is taught')
  })

  it('takes the step, the sight words and the lists of fit and unfit words from the settings of the folder', async () => {
    const files = { 'battledore.yaml': 'step: pink-4\nsight words: [said]\nunfit words: [hut]\nfit words: [gun]\n' }
    const words = await plain([], files)
    expect(words).toEqual(expect.arrayContaining(['cup', 'said', 'gun']))
    expect(words).not.toContain('hut')
    expect(await plain(['--step', 'pink-4'])).not.toContain('gun')
  })

  it('leaves out what the stories of a folder use', async () => {
    const files = { 'shelf/one.md': '---\nstep: pink-2\n---\nA fat Cat sat.\n' }
    const words = await plain(['--step', 'pink-2', '--not-on', 'shelf'], files)
    expect(words).toContain('hat')
    expect(words).not.toContain('cat')
    expect(words).not.toContain('fat')
  })

  it('lists for a reader', async () => {
    const files = { 'tam.yaml': 'name: Tam\nstep: pink-3\nknows:\n  sight words: [said]\n' }
    const { out } = await run(['--reader', 'tam.yaml', '--count', 'all'], files)
    expect(out).toContain('Tam, step pink-3')
    expect(out).toMatch(/Known by heart: .*said/s)
    expect(out).not.toMatch(/\bcup\b/)
  })

  it('lists for a sequence of your own', async () => {
    const files = {
      'own.yaml':
        'name: own\ntitle: Own\nsteps:\n  - id: one\n    title: First\n    teach: [a as in cat, c as in cat, t as in tap, s as in sat]\n    shapes: [CVC]\n',
    }
    expect(await plain(['--sequence', 'own.yaml', '--step', 'one', '--known'], files)).toEqual(['cat', 'sat'])
  })

  it('goes by the accent', async () => {
    const [american, british] = await Promise.all(
      ['general-american', 'southern-british'].map((accent) =>
        plain(['--sequence', 'series', '--step', 'blue-6', '--accent', accent, '--with', 'a as in cat']),
      ),
    )
    expect(american).toContain('last')
    expect(british).not.toContain('last')
    expect(british).toContain('hand')
  })
})

describe('sets', () => {
  it('proposes a box of objects, with the caution', async () => {
    const { code, out } = await run(['--step', 'pink-3', '--vowel', 'o', '--set', 'box', '--count', '5'])
    expect(code).toBe(0)
    expect(out.replace(/\s+/g, ' ')).toMatch(/16 CFR 1501.*EN 71-1.*watch children.*local rules/)
    const { words, caution } = await json(['--step', 'pink-3', '--vowel', 'o', '--set', 'box', '--count', '5'])
    expect(words.length).toBeGreaterThan(3)
    expect(caution).toContain('choke')
  })

  it('carries the caution wherever objects are listed, and nowhere else', async () => {
    expect((await run(['--step', 'pink-3', '--object'])).out).toContain('Caution')
    expect((await run(['--step', 'pink-5', '--set', 'mixed'])).out).toContain('Caution')
    expect((await run(['--step', 'pink-5', '--set', 'mixed', '--picture'])).out).not.toContain('Caution')
    expect((await run(['--step', 'pink-3'])).out).not.toContain('Caution')
  })

  it.each([
    ['--object', 'plain'],
    ['--object', 'csv'],
    ['--set mixed', 'csv'],
  ])('says the caution beside the words of %s as %s', async (flags, format) => {
    const { out, err } = await run(['--step', 'pink-5', ...flags.split(' '), '--format', format])
    expect(err).toMatch(/^Caution: Small objects can choke a young child\. [^\n]*\n$/)
    expect(out).not.toContain('choke')
    expect((await run(['--step', 'pink-5', '--picture', '--format', format])).err).toBe('')
  })

  it('says nothing beside JSON, which holds the caution', async () => {
    expect((await run(['--step', 'pink-5', '--object', '--format', 'json'])).err).toBe('')
  })

  it('says of an empty box what is not taught yet, and blames no letters that look alike', async () => {
    const { code, out } = await run(['--step', 'pink-2', '--set', 'box', '--vowel', 'e'])
    expect(code).toBe(1)
    expect(out.replace(/\s+/g, ' ')).toContain(
      'No word that can be read at this step and fits can be shown as a small object. `e` is taught at step pink-5.',
    )
    expect(out).not.toMatch(/look alike|less at once|Caution/)
  })

  it('tells of each word that a child may call otherwise, and takes such words last', async () => {
    const { words } = await json(['--step', 'pink-6', '--vowel', 'o', '--set', 'box', '--count', '6'])
    const classes = words.map(({ asObject }) => asObject)
    expect(classes.filter((one) => one === 'fine').length).toBeGreaterThan(3)
    const { out, err } = await run([
      '--step',
      'pink-6',
      '--vowel',
      'o',
      '--set',
      'box',
      '--count',
      '6',
      '--format',
      'plain',
    ])
    for (const { word, asObject, note } of words.filter((one) => one.asObject !== 'fine')) {
      expect(out).toContain(word)
      expect(err).toContain(`${word} (${note})`)
      expect(err).toContain(asObject === 'hint' ? 'Needs a word from you:' : 'A child may say another word first:')
    }
    for (const word of (await json(['--step', 'pink-6', '--object', '--count', '12'])).words)
      expect(word.asObject).toBe('fine')
  })

  it('fills a box with doubtful words only where as many are asked for', async () => {
    for (const vowel of ['a', 'e', 'o', 'u']) {
      const { words } = await json(['--step', 'blue-4', '--vowel', vowel, '--set', 'box'])
      expect(words.length, vowel).toBeGreaterThan(3)
      expect(
        words.filter(({ asObject }) => asObject !== 'fine'),
        vowel,
      ).toEqual([])
    }
  })

  it('fills a box with doubtful words no further than four, and says how to get more', async () => {
    const { words } = await json(['--step', 'pink-5', '--vowel', 'i', '--set', 'box'])
    expect(words).toHaveLength(4)
    const { out } = await run(['--step', 'pink-5', '--vowel', 'i', '--set', 'box'])
    expect(out).toContain('For more of them: --count 6.')
    expect((await json(['--step', 'pink-5', '--vowel', 'i', '--set', 'box', '--count', '6'])).words).toHaveLength(6)
  })

  it('has something for each spelling that is taught, or says in a line what there is', async () => {
    for (const vowel of ['igh', 'u_e', 'er', 'oi', 'au', 'ew', 'ue', 'ear', 'ore', 'ure', 'air', 'oy']) {
      const { code, out } = await run(['--step', 'green-14', '--vowel', vowel, '--set', 'box'])
      expect(code, vowel).toBe(out.includes('No word that can be read') ? 1 : 0)
      expect(out.includes('Caution'), vowel).toBe(code === 0)
      const pictures = await plain(['--step', 'green-14', '--vowel', vowel, '--picture'])
      if (code === 1 && pictures.length > 0) expect(out, vowel).toMatch(/add\s--picture/)
    }
    const named = async (vowel: string) => plain(['--step', 'green-14', '--with', vowel, '--picture', '--count', 'all'])
    expect(await named('igh')).toEqual(expect.arrayContaining(['night', 'light']))
    expect(await named('u_e as in cube')).toContain('cube')
    expect(await named('oi')).toContain('coin')
    expect(await named('au')).toContain('sauce')
    expect(await named('er')).toContain('fern')
  })

  it('pairs no words that are said alike', async () => {
    for (const sounds of ['a_e,ai', 'ee,ea']) {
      const { code, out } = await run(['--step', 'green-14', '--set', 'contrast', '--sounds', sounds])
      expect(code).toBe(1)
      expect(out.replace(/\s+/g, ' ')).toContain('say the same sound, so no two words differ in it.')
      expect(out).not.toMatch(/sale|meat/)
    }
  })

  it('puts no dangerous thing into a box', async () => {
    const objects = await plain(['--step', 'green-14', '--object', '--count', 'all'])
    for (const word of [
      'blowtorch',
      'laser',
      'disinfectant',
      'balloon',
      'needle',
      'knife',
      'battery',
      'axe',
      'pill',
      'match',
    ])
      expect(objects, word).not.toContain(word)
  })

  it('blames no letters that look alike where a box holds all words that fit', async () => {
    const { out } = await run(['--step', 'pink-5', '--set', 'box', '--vowel', 'o', '--last', 'x'])
    expect(out).toMatch(/^box {2}fox {2}ox$/m)
    expect(out).toContain('These are all the words that fit.')
    expect(out).not.toContain('look alike')
  })

  it('numbers the pairs in CSV', async () => {
    const args = ['--step', 'pink-5', '--set', 'contrast', '--sounds', 'a,u', '--count', '3', '--format', 'csv']
    const [head, ...rows] = (await run(args)).out.trimEnd().split('\r\n')
    expect(head?.split(',').at(-1)).toBe('pair')
    expect(rows.map((row) => row.split(',').at(-1))).toEqual(['1', '1', '2', '2', '3', '3'])
  })

  it('proposes pairs', async () => {
    const { pairs } = await json(['--step', 'pink-5', '--set', 'contrast', '--sounds', 'a,u'])
    expect(pairs.map((pair) => pair.join(' '))).toContain('cap cup')
    expect((await run(['--step', 'pink-5', '--set', 'contrast', '--sounds', 'a,u', '--format', 'plain'])).out).toMatch(
      /^cap cup$/m,
    )
  })
})

describe('a word bank', () => {
  it.each(['pink-2', 'blue-2', 'green-4', 'green-14'])('of %s goes on one page', async (step) => {
    const { out } = await run(['--step', step, '--as', 'sheet'])
    const lines = out.split('\n')
    expect(lines.length).toBeLessThan(66)
    expect(lines.every((line) => line.length <= 80)).toBe(true)
    expect(lines.filter((line) => /^(Naming|Doing|Describing|Little) words$/.test(line))).toHaveLength(4)
  })

  it('has each word under its kind', async () => {
    const { words } = await json(['--step', 'pink-6', '--as', 'sheet'])
    const kindsOf = (word: string) => words.filter((one) => one.word === word).map(({ kind }) => kind)
    expect(['dog', 'big', 'the', 'yet'].map(kindsOf)).toEqual([['naming'], ['describing'], ['little'], ['little']])
    // A thing, and what is done with it.
    for (const word of ['mop', 'pin', 'run']) expect(kindsOf(word)).toEqual(['naming', 'doing'])
  })
})

describe('mistakes', () => {
  it.each([
    [[], 'Say which step the readers have reached'],
    [['--step', 'pink-22'], 'Did you mean `pink-2`?'],
    [['--step', 'pink-2', '--sequence', 'serie'], 'Did you mean `series`?'],
    [['--step', 'pink-2', '--length', 'x'], '--length is a number'],
    [['--step', 'pink-2', '--length', '3-2'], 'Did you mean `2-3`?'],
    [['--step', 'pink-2', '--length', '0'], '--length starts at 1'],
    [
      ['--step', 'pink-2', '--vowel', 'zzz'],
      '--vowel is a vowel that is taught, such as a, i, o, u, e; this is `zzz`.',
    ],
    [['--step', 'pink-2', '--vowel', ','], '--vowel needs a spelling'],
    [['--step', 'pink-2', '--vowel', 'q'], 'this is `q`'],
    [['--step', 'green-2', '--vowel', 'ae'], 'Did you mean'],
    [['--step', 'pink-2', '--first', 'hs'], 'Did you mean `sh`?'],
    [['--step', 'pink-2', '--with', 'zzz'], 'No word holds `zzz`'],
    [['--step', 'pink-2', '--rhymes-with', 'xyzzy'], '`xyzzy` is not in the dictionary.'],
    [['--step', 'pink-2', '--rhymes-with', 'rabit'], 'Did you mean `rabbit`?'],
    [['--step', 'pink-2', '--as', 'sheet', '--set', 'box', '--vowel', 'a'], 'do not go together'],
    [['--step', 'pink-5', '--sounds', 'a,u'], 'write --set contrast --sounds a,u'],
    [['--step', 'pink-2', '--set', 'box'], '--vowel o'],
    [['--step', 'pink-2', '--set', 'contrast'], '--sounds a,u'],
    [['--step', 'pink-2', '--set', 'contrast', '--sounds', 'a,st'], '`st` is not one spelling'],
    [['--step', 'pink-2', '--not-on', 'nowhere'], 'nowhere'],
    [['--step', 'pink-2', '--reader', 'nobody.yaml'], 'nobody.yaml'],
    [['--step', 'pink-2', '--format', 'xml'], 'xml'],
  ])('%j', async (args, message) => {
    const { code, out, err } = await run(args)
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(err).toContain(message)
  })
})
