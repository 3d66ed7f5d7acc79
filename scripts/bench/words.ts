// What finding words costs: a query over the whole lexicon, the command against a check, and suggestions in a check.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createPool, findWords, readQuery, type WrittenQuery } from '../../src/finder/index.ts'
import { DATA_FOLDER, loadBuiltIn, loadLexicon, loadPhonics } from '../../src/packaged/data.ts'
import { readWordFiles } from '../../src/packaged/word-files.ts'
import { openWordFiles } from '../../src/resources/word-files.ts'
import { PROGRAM } from '../root.ts'
import { pair, type Row, runProcess, time, toMedian, toRatioRow } from './measure.ts'

/** At the last step, where the most words are readable. */
const QUERIES: Readonly<Record<string, WrittenQuery>> = {
  'the 60 most useful words': { count: '60' },
  'one vowel': { vowel: 'ai' },
  rhymes: { rhymesWith: 'rain' },
  'a pattern by sound': { pattern: 'CCVC' },
  'all words': { count: 'all' },
}

export async function benchWords(): Promise<Row[]> {
  return [...(await benchQueries()), ...(await benchProcesses())]
}

/** Milliseconds of a query with its pool, once the files are open. */
async function benchQueries(): Promise<Row[]> {
  const sequence = loadBuiltIn('series', undefined)
  if (!sequence) throw new Error('dist/ is not built: run `npm run compile` first')
  const lexicon = loadLexicon()
  const phonics = loadPhonics(sequence.accent)
  const { data, table } = openWordFiles(readWordFiles(DATA_FOLDER), lexicon.size)
  const step = sequence.steps.at(-1)?.id ?? ''
  const rows: Row[] = []
  for (const [what, written] of Object.entries(QUERIES)) {
    const ask = (): void => {
      const pool = createPool({ table, facts: data.facts, lexicon, phonics }, { sequence, step, builtIn: 'series' })
      const query = readQuery(written, { sequence, phonics, pool })
      if ('problem' in query) throw new Error(query.problem)
      findWords(pool, query)
    }
    const times = []
    for (let k = 0; k < 9; k++) times.push(await time(ask))
    const [first = 0] = times
    const middle = toMedian(times)
    rows.push({
      what: `words over the whole lexicon: ${what}`,
      figure: `${middle.toFixed(1)} ms (the first time ${first.toFixed(1)} ms)`,
      wanted: '≤ 50 ms',
      holds: middle <= 50,
    })
  }
  return rows
}

async function benchProcesses(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-bench-'))
  try {
    const path = (name: string, text: string): string => {
      writeFileSync(join(folder, name), `---\nstep: pink-5\n---\n${text}\n`)
      return join(folder, name)
    }
    const clean = path('clean.md', 'A fat cat sat in a big hat.')
    const hard = path('hard.md', 'A rabbit sat in the boat. It had a large garden.')
    const run =
      (...args: string[]) =>
      () =>
        runProcess(process.execPath, [PROGRAM, ...args])
    const bare = () => runProcess(process.execPath, ['-e', '0'])
    return [
      toRatioRow(
        'words, whole process ÷ check of a clean story',
        await pair(run('words', '--step', 'green-14', '--vowel', 'ai'), run('check', clean), 15),
        1.6,
      ),
      toRatioRow(
        'check of a clean story with suggestions ÷ without',
        await pair(run('check', clean), run('check', clean, '--no-suggest'), 15),
        1.1,
      ),
      toRatioRow(
        'check of a story with three hard words and suggestions ÷ node -e 0',
        await pair(run('check', hard), bare, 15),
        3,
      ),
      toRatioRow(
        'the same ÷ without suggestions (no limit set)',
        await pair(run('check', hard), run('check', hard, '--no-suggest'), 15),
        Infinity,
      ),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
