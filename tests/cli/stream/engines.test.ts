// The recipes of docs/streams.md, run as they stand there by the engines that they are for: Dask (Debian's python3-distributed),
// Ray (where the Python named in PYTHON, or python3, has it) and GNU parallel. In each run one process dies in the middle of its shard.

import { execFileSync, spawnSync } from 'node:child_process'
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { ROOT } from '../../../scripts/root.ts'
import { describeWith } from '../../tools.ts'

const PAGE = readFileSync(join(ROOT, 'docs/streams.md'), 'utf8')
const COMPILED = join(ROOT, 'dist/cli.cjs')
const SHARDS = 6
const IN_SHARD = 20

/** The code under a heading, in order. */
function findCode(heading: string): readonly string[] {
  const section = new RegExp(`^## ${heading}\\n([\\s\\S]*?)(?=^## |$(?![\\s\\S]))`, 'm').exec(PAGE)?.[1] ?? ''
  return [...section.matchAll(/^```\w+\n([\s\S]*?)^```$/gm)].map(([, code = '']) => code)
}

const toLine = (id: number): string => JSON.stringify({ id, text: `Sid sat ${id % 3 ? 'at night' : 'on a hat'}.` })
const INPUT = `${Array.from({ length: SHARDS * IN_SHARD }, (_, id) => toLine(id)).join('\n')}\n`

/** The program, of which the first process to be started writes half a line and kills itself. */
const DIES_ONCE = (folder: string) => `#!/bin/sh
if mkdir '${folder}/died' 2>/dev/null; then
  head -n 3 | '${process.execPath}' '${COMPILED}' "$@" | head -c 2000
  kill -KILL $$
fi
exec '${process.execPath}' '${COMPILED}' "$@"
`

let folder = ''
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** Runs a recipe in a folder with the shards of the page's own command, and returns all results in order. */
function run(command: string, recipe: string): string {
  folder = mkdtempSync(join(tmpdir(), 'battledore-engine-'))
  writeFileSync(join(folder, 'stories.ndjson'), INPUT)
  const split = (findCode('Shards')[0] ?? '').replace('--lines 10000', `--lines ${IN_SHARD}`)
  execFileSync('sh', ['-ec', split], { cwd: folder })
  runIn(command, recipe)
  expect(existsSync(join(folder, 'died')), 'no process died').toBe(true)
  const results = readdirSync(join(folder, 'results')).sort()
  expect(results).toEqual(Array.from({ length: SHARDS }, (_, at) => String(at).padStart(5, '0')))
  return results.map((name) => readFileSync(join(folder, 'results', name), 'utf8')).join('')
}

/** Runs a recipe in the folder, and returns what it prints. */
function runIn(command: string, recipe: string): string {
  writeFileSync(join(folder, 'recipe'), recipe)
  mkdirSync(join(folder, 'bin'))
  writeFileSync(join(folder, 'bin', 'battledore'), DIES_ONCE(folder))
  chmodSync(join(folder, 'bin', 'battledore'), 0o755)
  const env = { ...process.env, PATH: `${join(folder, 'bin')}${delimiter}${process.env['PATH']}` }
  const { status, stderr, stdout } = spawnSync(command, ['recipe'], { cwd: folder, env, encoding: 'utf8' })
  expect(status, stderr).toBe(0)
  return stdout
}

const runAlone = (input = INPUT): string =>
  execFileSync(process.execPath, [COMPILED, 'stream', '--step', 'pink-4'], { input }).toString()

describeWith('parallel', 'GNU parallel by shards', () => {
  it('gives what one process gives, though one was killed', () => {
    const recipe = findCode('GNU parallel')[1]?.replace('parallel', 'parallel --will-cite') ?? ''
    expect(run('sh', recipe)).toBe(runAlone())
  })
})

/** No Beam: what it does for the recipe, in a few lines, so that the recipe's own lines are run. */
const STAND_IN = `
import json, sys, types

class BatchElements:
    def __init__(self, min_batch_size, max_batch_size): self.size = 50
    def __ror__(self, all): return [all[at:at + self.size] for at in range(0, len(all), self.size)]

class ParDo:
    def __init__(self, do): self.do = do
    def __ror__(self, shards): return [line for shard in shards for line in self.do.process(shard)]

for name, held in {"": dict(DoFn=object, ParDo=ParDo), ".transforms": {}, ".transforms.util": dict(BatchElements=BatchElements)}.items():
    sys.modules["apache_beam" + name] = module = types.ModuleType("apache_beam" + name)
    vars(module).update(held)

with open("stories.ndjson", encoding="utf-8", newline="\\n") as lines: stories = lines.read().rstrip("\\n").split("\\n")
`

describeWith('python3', 'the lines for Beam, with a stand-in for Beam', () => {
  it('give what one process gives, also where a story has odd ends of lines', () => {
    const recipe = (findCode('Beam')[0] ?? '').replace(/^stories \|/m, 'found = stories |')
    const odd = Array.from(
      { length: 4 },
      (_, id) => `${JSON.stringify({ id: `\u2028\u0085${id}`, text: 'Sid\u2028sat.' })}\n`,
    )
    const input = INPUT + odd.join('')
    folder = mkdtempSync(join(tmpdir(), 'battledore-engine-'))
    writeFileSync(join(folder, 'stories.ndjson'), input)
    mkdirSync(join(folder, 'died'))
    const out = runIn(
      'python3',
      `${STAND_IN}${recipe}\nsys.stdout.buffer.write("".join(line + "\\n" for line in found).encode())\n`,
    )
    expect(out).toBe(runAlone(input))
  })
})

/** A Python that has a module; undefined where none has. */
const findPython = (module: string): string | undefined =>
  [process.env['PYTHON'], 'python3', '/usr/bin/python3'].find(
    (python) => python && spawnSync(python, ['-c', `import ${module}`]).status === 0,
  )

describe.each([
  { heading: 'Dask', module: 'distributed', get: 'apt-get install python3-distributed' },
  { heading: 'Ray', module: 'ray', get: 'pip install ray in an environment of its own, and PYTHON=its python' },
])('$heading', ({ heading, module, get }) => {
  const python = findPython(module)
  if (!python) process.stderr.write(`${heading}: LEFT OUT: Python has no \`${module}\`; ${get}\n`)
  it.runIf(python)(
    'gives what one process gives, though one was killed',
    () => {
      expect(run(python ?? '', findCode(heading)[0] ?? '')).toBe(runAlone())
    },
    300_000,
  )
})
