// The house as DEVELOPERS.md draws it: which folder may import which, no circle, and a core that touches nothing outside.

import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { expect, it } from 'vitest'
import { ROOT } from './console.ts'

const SOURCES = ['src', 'rules']

function listSources(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`
    if (entry.isDirectory()) return listSources(path)
    return path.endsWith('.ts') ? [path] : []
  })
}

const files = SOURCES.flatMap(listSources)
const IMPORT = /(?:import|export)\s(?:type\s)?[^'"]*?from\s+'([^']+)'|import\('([^']+)'\)/g

const imports = files.flatMap((file) => {
  const text = readFileSync(join(ROOT, file), 'utf8')
  return [...text.matchAll(IMPORT)].map((match) => ({
    file,
    to: match[1] ?? match[2] ?? '',
    isType: /^(?:import|export)\s+type\s/.test(match[0]),
  }))
})

/** `src/phonics/guess/model.ts` → `phonics`; a file directly in src counts as its own room. */
const toRoom = (path: string): string => {
  if (path.startsWith('rules/')) return 'rules'
  const [, room = '', rest] = path.split('/')
  return rest === undefined ? room.replace(/\.ts$/, '') : room
}

const arrows = imports
  .filter(({ to }) => to.startsWith('.'))
  .map(({ file, to, isType }) => ({
    from: toRoom(file),
    to: toRoom(relative(ROOT, resolve(ROOT, dirname(file), to))),
    file,
    isType,
  }))
  .filter(({ from, to }) => from !== to)

/** Rooms in order: a room may import only rooms before it. Types of rules are known to config and story settings alike. */
const ORDER = [
  'problem',
  'nearest',
  'sorted',
  'yaml',
  'story',
  'bring',
  'phonics',
  'words',
  'sequence',
  'verdict',
  'usage',
  'readers',
  'shelf',
  'finder',
  'resources',
  'lint',
  'unified',
  'config',
  'rules',
  'check',
  'print',
  'init',
  'report',
  'fix',
  'packaged',
  'server',
  'cli',
  'index',
  'node',
]

it('every room has its place in the order', () => {
  expect([...new Set(files.map(toRoom))].filter((room) => !ORDER.includes(room))).toEqual([])
})

it('imports point one way', () => {
  expect(arrows.length).toBeGreaterThan(200)
  const wrong = arrows.filter(({ from, to }) => ORDER.indexOf(to) > ORDER.indexOf(from))
  expect(wrong.map(({ file, to }) => `${file} → ${to}`)).toEqual([])
})

it('the core touches no file, process, clock or console', () => {
  const outside = new Set(['cli', 'server', 'node', 'packaged'])
  const core = files.filter((file) => !outside.has(toRoom(file)))
  const wrong = core.flatMap((file) => {
    const text = readFileSync(join(ROOT, file), 'utf8').replace(/\/\/.*|\/\*[\s\S]*?\*\//g, '')
    const found =
      /\bfrom 'node:|\bprocess\.|\bconsole\.|\bDate\.now|new Date\(\)|\bperformance\.now|\bMath\.random/.exec(text)
    return found ? [`${file}: ${found[0]}`] : []
  })
  expect(wrong).toEqual([])
})

it('no file is in a circle of imports', () => {
  const next = new Map<string, string[]>()
  for (const { file, to } of imports) {
    if (!to.startsWith('.')) continue
    next.set(file, [...(next.get(file) ?? []), relative(ROOT, resolve(ROOT, dirname(file), to))])
  }
  const done = new Set<string>()
  const circles: string[] = []
  const visit = (file: string, way: readonly string[]) => {
    if (way.includes(file)) circles.push([...way.slice(way.indexOf(file)), file].join(' → '))
    else if (!done.has(file)) {
      for (const other of next.get(file) ?? []) visit(other, [...way, file])
      done.add(file)
    }
  }
  for (const file of files) visit(file, [])
  expect(circles).toEqual([])
})
