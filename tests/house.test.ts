// The house as the table in DEVELOPERS.md draws it: which room may import which, no circle, and a core that touches nothing outside.

import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { expect, it } from 'vitest'
import { ROOT } from './console.ts'

const SOURCES = ['src', 'rules']

function listSources(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`
    if (entry.isDirectory()) return listSources(path)
    return /\.tsx?$/.test(path) ? [path] : []
  })
}

const files = SOURCES.flatMap(listSources)
const IMPORT = /(?:import|export)\s(?:type\s)?[^'"]*?from\s+'([^']+)'|import\('([^']+)'\)/g

const imports = files.flatMap((file) => {
  const text = readFileSync(join(ROOT, file), 'utf8')
  return [...text.matchAll(IMPORT)].map((match) => ({
    file,
    to: match[1] ?? match[2] ?? '',
  }))
})

/** `src/phonics/guess/model.ts` → `phonics`; a file directly in src counts as its own room. */
const toRoom = (path: string): string => {
  if (path.startsWith('rules/')) return 'rules'
  const [, room = '', rest] = path.split('/')
  return rest === undefined ? room.replace(/\.tsx?$/, '') : room
}

const arrows = imports
  .filter(({ to }) => to.startsWith('.'))
  .map(({ file, to }) => ({
    from: toRoom(file),
    to: toRoom(relative(ROOT, resolve(ROOT, dirname(file), to))),
    file,
  }))
  .filter(({ from, to }) => from !== to)

/** Every room may import these; see DEVELOPERS.md. */
const GROUND: ReadonlySet<string> = new Set([
  'apostrophe',
  'edits',
  'files',
  'hash',
  'letter-kinds',
  'nearest',
  'problem',
  'sorted',
])

interface Room {
  readonly name: string
  /** Whether it may touch files, process, clock and console. */
  readonly isDoor: boolean
  readonly imports: readonly string[]
}

/** The rooms of the table in DEVELOPERS.md, in its order. */
const rooms = readTable()

function readTable(): readonly Room[] {
  const text = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8')
  const rows = [...text.matchAll(/^\| `(?:src\/)?([\w-]+)`( †)? \| .+ \| ([^|]+) \|$/gm)]
  const names = rows.map(([, name = '']) => name)
  return rows.map(([, name = '', mark, imports = '']) => {
    const but = /^every room(?: but (.+))?$/.exec(imports)
    const above = names.slice(0, names.indexOf(name)).filter((room) => !GROUND.has(room))
    const listed = imports === 'nothing' ? [] : imports.split(', ')
    const left = but?.[1]?.split(', ') ?? []
    return { name, isDoor: mark !== undefined, imports: but ? above.filter((room) => !left.includes(room)) : listed }
  })
}

const findRoom = (name: string): Room | undefined => rooms.find((room) => room.name === name)

it('every room has its row, each row a room', () => {
  expect(rooms.map(({ name }) => name).sort()).toEqual([...new Set(files.map(toRoom))].sort())
})

it('a room imports only rooms above it', () => {
  const wrong = rooms.flatMap(({ name, imports }, at) =>
    imports.filter((one) => !rooms.slice(0, at).some((room) => room.name === one)).map((one) => `${name} → ${one}`),
  )
  expect(wrong).toEqual([])
})

it('no arrow lies outside the table', () => {
  expect(arrows.length).toBeGreaterThan(200)
  const wrong = arrows.filter(({ from, to }) => !GROUND.has(to) && !findRoom(from)?.imports.includes(to))
  expect(wrong.map(({ file, to }) => `${file} → ${to}`)).toEqual([])
  const upward = arrows.filter(({ from, to }) => GROUND.has(from) && !GROUND.has(to))
  expect(upward.map(({ file, to }) => `${file} → ${to}`)).toEqual([])
})

it('no row names a room that it does not import', () => {
  const drawn = new Set(arrows.map(({ from, to }) => `${from} → ${to}`))
  const stale = rooms.flatMap(({ name, imports }) => imports.map((one) => `${name} → ${one}`))
  // A door may open every room above it.
  expect(stale.filter((one) => !drawn.has(one) && !one.startsWith('cli → '))).toEqual([])
})

it('the core touches no file, process, clock or console', () => {
  const core = files.filter((file) => !findRoom(toRoom(file))?.isDoor)
  const wrong = core.flatMap((file) => {
    const text = toCode(readFileSync(join(ROOT, file), 'utf8'))
    const found =
      /\bfrom 'node:|\bprocess\.|\bconsole\.|\bDate\.now|new Date\(\)|\bperformance\.now|\bMath\.random/.exec(text)
    return found ? [`${file}: ${found[0]}`] : []
  })
  expect(wrong).toEqual([])
})

const toCode = (text: string): string => text.replace(/(?<!:)\/\/.*|\/\*[\s\S]*?\*\//g, '')

/** A name of the browser that a file uses without having made it itself, as the language server does with `document`. */
function findPageName(code: string): string | undefined {
  return ['document', 'window', 'navigator', 'localStorage', 'sessionStorage', 'indexedDB'].find((name) => {
    const isOwn = new RegExp(`(?:const|let|readonly) ${name}\\b|[({,]\\s*${name}\\s*[:,)}]`).test(code)
    return !isOwn && new RegExp(`(?<![\\w.'\`-] ?)\\b${name}(?:\\.|\\[|\\()`).test(code)
  })
}

it('only the desk knows the page that it stands in', () => {
  expect(findPageName('const text = window.name')).toBe('window')
  expect(findPageName('const read = (document: TextDocument) => document.getText()')).toBeUndefined()
  const wrong = files
    .filter((file) => !file.startsWith('src/desk/'))
    .flatMap((file) => {
      const code = toCode(readFileSync(join(ROOT, file), 'utf8')).replace(/'[^'\n]*'|`[^`]*`/g, "''")
      const name = findPageName(code)
      return name === undefined ? [] : [`${file}: ${name}`]
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
