// `npm run sheets`: the pictures of docs/print.md, of sheets that the program prints today. Needs poppler and ImageMagick.

import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ROOT } from '../root.ts'

interface Picture {
  readonly name: string
  /** What is typed after `battledore print`. */
  readonly args: readonly string[]
  /** Which sides are shown, from 1. */
  readonly sides: readonly number[]
}

const PICTURES: readonly Picture[] = [
  { name: 'book', args: ['book', 'tub.md', '--mark', 'practised'], sides: [1, 2] },
  { name: 'cards', args: ['cards', '--step', 'pink-5', '--count', '8'], sides: [1] },
  { name: 'list', args: ['list', '--step', 'pink-5'], sides: [1] },
  { name: 'one-sheet', args: ['book', 'tub.md', '--fold', 'one-sheet'], sides: [1] },
  { name: 'set', args: ['set', '--step', 'pink-4', '--vowel', 'u'], sides: [1] },
  { name: 'sight', args: ['sight', '--step', 'pink-4'], sides: [1] },
  { name: 'slips', args: ['slips', '--step', 'pink-4', '--kind', 'doing'], sides: [1] },
  { name: 'strips', args: ['strips', 'tub.md', '--cut', 'words'], sides: [1, 3] },
  { name: 'tags', args: ['tags', '--step', 'green-2', '--with', 'ai', '--mark', 'practised'], sides: [1] },
  { name: 'wall', args: ['wall', '--step', 'pink-2', '--count', '6', '--group', 'ending'], sides: [1] },
]

const folder = mkdtempSync(join(tmpdir(), 'battledore-sheets-'))
const target = join(ROOT, 'docs', 'sheets')

function run(command: string, args: readonly string[]): void {
  const { status, stderr, error } = spawnSync(command, args, { cwd: folder, encoding: 'utf8' })
  if (error || status !== 0) throw new Error(`${command} ${args.join(' ')}: ${error?.message ?? stderr}`)
}

function draw({ name, args, sides }: Picture): void {
  run(process.execPath, [join(ROOT, 'dist', 'cli.cjs'), 'print', ...args, '--out', `${name}.pdf`])
  run('pdftoppm', ['-r', '48', '-png', `${name}.pdf`, name])
  const drawn = readdirSync(folder)
    .filter((file) => file.startsWith(`${name}-`) && file.endsWith('.png'))
    .sort()
  const shown = sides.flatMap((side) => drawn[side - 1] ?? [])
  const frame = ['-bordercolor', '#bbbbbb', '-border', '1', '-bordercolor', 'white', '-border', '5']
  const small = ['+append', '-colors', '48', '-depth', '8', '-strip', '-define', 'png:exclude-chunks=date,time']
  run('convert', [...shown, ...frame, ...small, `PNG8:${join(target, `${name}.png`)}`])
}

mkdirSync(target, { recursive: true })
try {
  cpSync(join(ROOT, 'fixtures', 'print'), folder, { recursive: true })
  for (const picture of PICTURES) draw(picture)
} finally {
  rmSync(folder, { recursive: true, force: true })
}
