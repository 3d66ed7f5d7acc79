// Which tests are asked about the mutants of a folder: its own, not those of the whole program, which notice much by chance; none that starts a process.

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join, sep } from 'node:path'
import { SLOW } from '../../vitest.config.ts'
import { ROOT } from '../root.ts'

/** For each folder of src, the folders of tests that speak about it. */
export const FOLDERS = {
  lint: ['lint', 'rules', 'rules.test.ts', 'unified'],
  phonics: ['phonics'],
  sequence: ['sequence'],
  story: ['story'],
  verdict: ['verdict', 'usage'],
} as const

export type Folder = keyof typeof FOLDERS

export const isFolder = (name: string): name is Folder => Object.hasOwn(FOLDERS, name)

const PROCESS = /node:child_process|node:worker_threads|tinypool/u
const IMPORT = /from '(\.[^']+)'/gu

/** Whether a test, or what it imports from the tests, starts a process or a thread. */
function startsProcess(path: string, seen = new Set<string>()): boolean {
  if (seen.has(path) || !existsSync(path)) return false
  seen.add(path)
  const text = readFileSync(path, 'utf8')
  if (PROCESS.test(text)) return true
  const near = [...text.matchAll(IMPORT)].map(([, to]) => join(dirname(path), to as string))
  return near.some((other) => startsProcess(other, seen))
}

/** Paths from the root, with slashes. */
export function findTests(folder: Folder): readonly string[] {
  return FOLDERS[folder]
    .flatMap((name) => (name.endsWith('.ts') ? [`tests/${name}`] : listTests(`tests/${name}`)))
    .filter((path) => !SLOW.includes(path) && !startsProcess(join(ROOT, path)))
}

const listTests = (folder: string): readonly string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.split(sep).join('/')}`)
    .filter((path) => path.endsWith('.test.ts'))
    .sort()
