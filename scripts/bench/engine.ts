// The cost of the engine: explaining many words, and what the lexicon takes of memory.

import { spawnSync } from 'node:child_process'
import { explain } from '../../src/cli/explain/command.ts'
import { loadBuiltIn, loadLexicon, loadPhonics } from '../../src/packaged/data.ts'
import { toExplainJson } from '../../src/report/explain.ts'
import { ROOT } from '../root.ts'
import { type Row, time } from './measure.ts'

/** 20,000 different words spread evenly over the lexicon, explained at a step and written as JSON; the engine warm, the words new. */
export async function benchExplain(): Promise<Row[]> {
  const sequence = loadBuiltIn('series', undefined)
  if (!sequence) throw new Error('the built-in sequence is missing: npm run compile')
  const lexicon = loadLexicon()
  const words = lexicon.words()
  const every = (from: number) => words.filter((_, at) => at % 5 === from).slice(0, 20_000)
  const place = { sequence, phonics: loadPhonics(sequence.accent), step: 'green-4' }
  const run = (list: readonly string[]) =>
    list.reduce((size, word) => size + JSON.stringify(toExplainJson(explain(word, place))).length, 0)
  run(every(0))
  const milliseconds = await time(() => run(every(1)))
  const again = await time(() => run(every(1)))
  return [
    {
      what: 'explain of 20,000 new words, engine warm',
      figure: `${milliseconds.toFixed(0)} ms`,
      wanted: '< 1,000 ms',
      holds: milliseconds < 1000,
    },
    { what: 'the same words again', figure: `${again.toFixed(0)} ms`, wanted: '< 1,000 ms', holds: again < 1000 },
  ]
}

/** Resident memory of a process that has opened the lexicon, less that of one that has not. */
export function benchMemory(): Row[] {
  const measure = (code: string): number => {
    const script = `${code}; globalThis.gc(); globalThis.gc(); console.log(process.memoryUsage().rss)`
    const sizes = Array.from({ length: 5 }, () =>
      Number(
        spawnSync(process.execPath, ['--expose-gc', '--input-type=module', '-e', script], {
          encoding: 'utf8',
          cwd: ROOT,
        }).stdout,
      ),
    )
    return sizes.sort((x, y) => x - y)[2] ?? 0
  }
  const load = "import { loadLexicon } from './dist/node.js'"
  const before = measure(load)
  const after = measure(
    `${load}; const lexicon = loadLexicon(); for (const word of ['cat', 'zebra', 'mother']) lexicon.find(word); globalThis.keep = lexicon`,
  )
  const megabytes = (after - before) / 1024 / 1024
  return [
    {
      what: 'resident memory of the lexicon',
      figure: `${megabytes.toFixed(1)} MB`,
      wanted: '≤ 12 MB',
      holds: megabytes <= 12,
    },
  ]
}
