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
      '  Words that hold it back, each with its first line and column, and the step\n  that makes it readable: red once at 13:12 (pink-5), met once at 13:21\n  (pink-5).\n\n',
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

// By the table of look-alikes: read is /riːd/ (green-2 in the series) or /rɛd/ (green-13), and `I read it` does not tell.
it('has a word that its sentence does not settle wait for the last of its forms, as a check does, and says where it stands', async () => {
  world.write({ 'open.md': '---\nstep: green-2\n---\n\nI had a nap.\n\nI read it.\n' })
  const { out } = await world.run('level', 'open.md')
  expect(out.replace(/\s+/g, ' ')).toContain('read once at 7:3 (green-13, not settled)')
  expect(out).toContain('Not settled: the sentence does not tell')
  const [text] = JSON.parse((await world.run('level', 'open.md', '--format', 'json')).out).texts
  expect(text.holdingBack).toContainEqual({
    ...{ word: 'read', times: 1, readableAt: 'green-13' },
    ...{ line: 7, column: 3, unsettled: true },
  })
  const check = JSON.parse((await world.run('check', 'open.md', '--format', 'json')).out)
  const [{ messages, totals }] = check.files
  expect(messages[0]).toMatchObject({ word: 'read', line: 7, column: 3, readableAt: 'green-13' })
  // The share counts it as a check does: from its first form on.
  expect(text.steps.find(({ step }: { step: string }) => step === 'green-2').readableShare).toBe(1)
  expect(totals.readableShare).toBe(1)
})

it('says where a text is beyond the last step', async () => {
  const { out } = await world.run('level', 'hard.md', '--share', '100%')
  expect(out).toContain('Beyond the last step: at green-15,')
  expect(out).toMatch(/Words that no step makes readable, [^:]*:\s+colonel once at 1:5/)
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
