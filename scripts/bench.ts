// `npm run bench`: what the program costs, as ratios within one run on the same work. A benchmark, not a test.
//
//   npm run bench                     on the demo shelf and made stories
//   npm run bench -- --corpus DIR     and on the stories of a folder, its inner folders too, beside general linters
//   npm run bench -- --only check     one part of it

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { benchCheck, benchGrowth, benchProcess, type Story } from './bench/check.ts'
import { benchCorpus } from './bench/corpus.ts'
import { benchDesk } from './bench/desk.ts'
import { benchExplain, benchMemory } from './bench/engine.ts'
import { benchKeystroke } from './bench/keystroke.ts'
import type { Row } from './bench/measure.ts'
import { benchPrint } from './bench/print.ts'
import { benchRepository } from './bench/repository.ts'
import { benchShapes } from './bench/shapes.ts'
import { benchMatch, benchShelf } from './bench/shelf.ts'
import { benchStart } from './bench/start.ts'
import { makeStories } from './bench/stories.ts'
import { benchStream } from './bench/stream.ts'
import { benchWatch } from './bench/watch.ts'
import { benchWords } from './bench/words.ts'
import { ROOT } from './root.ts'

const toValue = (name: string): string | undefined => {
  const at = process.argv.indexOf(name)
  return at < 0 ? undefined : process.argv[at + 1]
}
const corpus = toValue('--corpus')

const readFolder = (folder: string): Story[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md') && !name.endsWith('README.md'))
    .sort()
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }))

const made = makeStories(200, 1)
const [story] = made
if (!story) throw new Error('no story was made')
const shelf = readFolder(join(ROOT, 'fixtures', 'shelf'))
const heteronym: Story = { name: 'heteronym.md', text: `${story.text}\n\nThe wind and the live band read on.\n` }

const parts: Readonly<Record<string, () => Promise<Row[]> | Row[]>> = {
  check: () =>
    benchCheck({
      'demo shelf': shelf,
      '40 made stories': made.slice(0, 40),
      ...(corpus ? { corpus: readFolder(corpus) } : {}),
    }),
  corpus: () => (corpus ? benchCorpus(readFolder(corpus)) : []),
  process: () => benchProcess(story, heteronym, made),
  start: () => benchStart(story),
  growth: () => benchGrowth(story),
  shapes: benchShapes,
  keystroke: () => benchKeystroke(corpus ? readFolder(corpus) : made, corpus ? 'real text' : 'made stories'),
  explain: benchExplain,
  memory: benchMemory,
  watch: () => benchWatch(corpus ? readFolder(corpus) : makeStories(400, 1), corpus ? 'real text' : 'made stories'),
  repository: () => benchRepository(makeStories(400, 1)),
  desk: benchDesk,
  print: benchPrint,
  words: benchWords,
  match: () => benchMatch(),
  shelf: () => benchShelf(),
  stream: () => benchStream(corpus ? readFolder(corpus) : made, corpus ? 'real text' : 'made stories'),
}

const only = toValue('--only')
if (only !== undefined && parts[only] === undefined) throw new Error(`--only ${Object.keys(parts).join(', ')}`)

process.stdout.write(`Node ${process.version}, ${process.platform} ${process.arch}\n`)
for (const [name, part] of Object.entries(parts)) {
  if (only !== undefined && name !== only) continue
  for (const { what, figure, wanted, holds } of await part()) {
    process.stdout.write(`${holds ? 'holds ' : 'MISSED'}  ${what}: ${figure}; wanted ${wanted}\n`)
  }
}
