import { afterAll, expect, it } from 'vitest'
import { compileSchema, createVocabularyWorld, readCsv } from '../vocabulary-world.ts'

const world = createVocabularyWorld({
  'hard.md': 'The colonel of the choir.\n',
  'empty.md': '---\nstep: pink-1\n---\n',
  'meg.yaml': 'name: Meg\nstep: pink-4\nknows:\n  sight words: [red, met]\n',
  'wrong.md': '---\nsequence: serie\n---\n\nTam sat.\n',
})
afterAll(() => world.remove())

it('gives the earliest step and the words that hold it back', async () => {
  const { code, out, err } = await world.run('level', 'books/hat.md')
  expect([code, err]).toEqual([0, ''])
  expect(out).toBe(
    'books/hat.md\n  Earliest step: pink-5, “Short e”. There 100 % of 11 words can be read.\n' +
      '  Words that hold it back, and the step that makes each readable: red once\n  (pink-5), met once (pink-5).\n\n',
  )
})

it('goes by what a reader knows', async () => {
  const { out, err } = await world.run('level', 'books/hat.md', '--reader', 'meg.yaml')
  expect(out).toMatch(/^books\/hat\.md\n {2}Earliest step: pink-[1-4],/)
  expect(err).toContain('Judged for Meg')
  expect(err.split('\n').filter((line) => line.length > 80)).toEqual([])
  expect(err).not.toMatch(/[^\n]$/)
  expect((await world.run('level', 'books/hat.md', '--reader', 'none.yaml')).code).toBe(2)
})

it('says where a text is beyond the last step', async () => {
  const { out } = await world.run('level', 'hard.md', '--share', '100%')
  expect(out).toContain('Beyond the last step: at green-15,')
  expect(out).toMatch(/Words that no step makes readable: .*colonel once/)
})

it('needs no step, and takes another share and sequence', async () => {
  const { out } = await world.run('level', 'books', '--share', '0.5', '--format', 'json', '--sequence', 'england')
  const report = JSON.parse(out)
  expect(report.share).toBe(0.5)
  expect(report.texts.map((one: { sequence: string }) => one.sequence)).toEqual(['england', 'england', 'england'])
})

it('prints JSON as its schema says, and CSV', async () => {
  const validate = compileSchema('level')
  const report = JSON.parse((await world.run('level', 'books', 'hard.md', '--format', 'json')).out)
  validate(report)
  expect(validate.errors ?? []).toEqual([])
  expect(report.texts.map(({ step }: { step: string | null }) => step)).toHaveLength(4)
  const rows = readCsv((await world.run('level', 'books', '--format', 'csv')).out)
  expect(rows.map(([path]) => path)).toEqual(['path', 'books/boat.md', 'books/fish.md', 'books/hat.md'])
})

it('tells what cannot be read and goes on with the rest', async () => {
  const { code, out, err } = await world.run(
    'level',
    'empty.md',
    'wrong.md',
    'missing.md',
    'books/hat.md',
    '--format',
    'csv',
  )
  expect(code).toBe(2)
  expect(err.trim().split('\n')).toEqual([
    expect.stringContaining('There is no file or folder `missing.md`.'),
    expect.stringContaining('empty.md:'),
    'battledore: wrong.md:2:11: error: There is no sequence `serie`. Did you mean `series`?',
  ])
  expect(readCsv(out)).toHaveLength(2)
})

it.each(['nine', '101', '-1', ''])('refuses the share %j', async (share) => {
  const { code, err } = await world.run('level', 'books', `--share=${share}`)
  expect([code, err.includes('--share is a percentage')]).toEqual([2, true])
})

it('follows the verdict: a word that the sequence never teaches holds back at every step', async () => {
  world.write({
    'two.yaml':
      'name: two\nsteps:\n  - id: a-1\n    teach: [a as in cat, m as in mat]\n  - id: a-2\n    teach: [t as in mat]\n',
    'egg.md': 'Mat mat egg.\n',
  })
  const { out } = await world.run('level', 'egg.md', '--sequence', 'two.yaml', '--share', '100%')
  expect(out).toMatch(/the line that would teach\s+it:\s+battledore\s+explain\s+WORD/)
  expect(out).toContain('Beyond the last step: at a-2,')
  expect(out.replace(/\s+/g, ' ')).toContain('egg once')
})
