// `npx tsx scripts/outputs.ts PROGRAM FOLDER…`: a digest of all that the program says of the stories of some folders. Two
// builds that say the same give the same lines, so whoever makes the program faster can show that it still says the same:
//
//   npx tsx scripts/outputs.ts old/dist/cli.cjs stories fixtures/stories > old.txt
//   npx tsx scripts/outputs.ts dist/cli.cjs stories fixtures/stories | diff old.txt -
//
// `--keep DIR` writes what was said there, a file a line, so that `diff -r` shows where two builds part, and
// `outputs-compare.ts` counts in what. It takes a second or so of the processor for each story: 42 runs over each folder, and
// two processes for each story alone.

import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative, resolve } from 'node:path'
import { parseArgs } from 'node:util'

const FORMATS = ['pretty', 'line', 'json', 'github', 'sarif', 'junit', 'html']

/** An early, a middle and a late step of each. */
const STEPS: readonly (readonly [sequence: string, steps: readonly string[]])[] = [
  ['series', ['pink-4', 'green-5', 'green-14']],
  ['england', ['reception-1', 'y1-6', 'y2-6']],
  ['common-core', ['k-2', 'g1-4', 'g2-4']],
]

const { values, positionals } = parseArgs({ options: { keep: { type: 'string' } }, allowPositionals: true })
const [program = '', ...folders] = positionals.map((path) => resolve(path))
if (folders.length === 0) throw new Error('npx tsx scripts/outputs.ts [--keep DIR] PROGRAM FOLDER…')
const kept = values.keep
if (kept !== undefined) mkdirSync(kept, { recursive: true })

/** A line with the name of a run and a digest of what it said. */
function tell(name: string, ...parts: readonly (string | Buffer)[]): void {
  const digest = parts.reduce((hash, part) => hash.update(part).update('\0'), createHash('sha256')).digest('hex')
  process.stdout.write(`${name} ${digest.slice(0, 24)}\n`)
  if (kept !== undefined) writeFileSync(join(kept, name.replace(/[^\w-]+/g, '_')), parts.map(String).join('\n'))
}

function run(folder: string, args: readonly string[], input = ''): readonly (string | Buffer)[] {
  const { stdout, stderr, status, error } = spawnSync(process.execPath, [program, ...args], {
    cwd: folder,
    input,
    maxBuffer: 1 << 30,
  })
  if (error) throw error
  return [stdout, stderr, String(status)]
}

/** All formats of one run: each goes to a file. */
function tellChecks(folder: string, name: string, args: readonly string[]): void {
  const to = mkdtempSync(join(tmpdir(), 'battledore-outputs-'))
  try {
    const formats = FORMATS.flatMap((format) => ['--format', `${format}=${join(to, format)}`])
    const said = run(folder, ['check', '.', ...args, ...formats])
    tell(`${name} said`, ...said)
    for (const format of FORMATS) tell(`${name} ${format}`, readFileSync(join(to, format)))
  } finally {
    rmSync(to, { recursive: true })
  }
}

for (const folder of folders) {
  const stories = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md') && statSync(join(folder, file)).isFile())
    .sort()
  const texts = stories.map((file) => JSON.stringify({ id: file, text: readFileSync(join(folder, file), 'utf8') }))
  const input = `${texts.join('\n')}\n`
  const at = relative(process.cwd(), folder)
  for (const [sequence, steps] of STEPS) {
    for (const step of steps) {
      const reader = ['--sequence', sequence, '--step', step]
      tellChecks(folder, `${at} ${step} offers`, reader)
      tellChecks(folder, `${at} ${step} plain`, [...reader, '--no-suggest'])
      tell(`${at} ${step} stream`, ...run(folder, ['stream', ...reader], input))
      tell(`${at} ${step} stream offers`, ...run(folder, ['stream', '--suggest', ...reader], input))
    }
    tell(`${at} ${sequence} level`, ...run(folder, ['level', '.', '--sequence', sequence]))
    tell(`${at} ${sequence} shelf`, ...run(folder, ['shelf', '.', '--sequence', sequence]))
  }
  // Each story in a process of its own: what one story leaves behind for the next must change nothing.
  for (const file of stories) {
    tell(`${at} ${file} alone`, ...run(folder, ['check', file, '--step', 'green-5']))
    tell(`${at} ${file} fix`, ...run(folder, ['fix', file, '--step', 'green-5', '--dry-run']))
  }
}
