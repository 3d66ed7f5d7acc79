// Which packages lie in what we ship: those that esbuild took code from, and those whose data the build reads.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Metafile } from 'esbuild'

const FOLDER = /node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+/

/** The folders of packages that gave code to a bundle, seen from the root. */
export function findBundled({ outputs }: Metafile): readonly string[] {
  const used = Object.values(outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => (bytesInOutput > 0 ? [path] : [])),
  )
  return toSorted(used.flatMap((path) => FOLDER.exec(path)?.[0] ?? []))
}

/** Makes files, and leaves nothing of its own in them. */
const TOOLS = new Set(['@valibot/to-json-schema', 'esbuild', 'tsx', 'typescript'])

/** The scripts that make the files that are shipped. */
const MAKERS = ['scripts/compile.ts', 'scripts/build']

/** The folders of packages that the scripts name which make our data, fonts and pictures. */
export function findData(root: string): readonly string[] {
  const { dependencies = {}, devDependencies = {} } = JSON.parse(
    readFileSync(join(root, 'package.json'), 'utf8'),
  ) as Readonly<Record<string, Readonly<Record<string, string>>>>
  const texts = MAKERS.flatMap((path) => listScripts(root, path)).map((path) => readFileSync(join(root, path), 'utf8'))
  return Object.keys({ ...dependencies, ...devDependencies })
    .filter((name) => !TOOLS.has(name) && texts.some((text) => isNamed(name, text)))
    .sort()
    .map((name) => `node_modules/${name}`)
}

const isNamed = (name: string, text: string): boolean =>
  [`'${name}'`, `'${name}/`, `node_modules/${name}/`].some((mark) => text.includes(mark))

function listScripts(root: string, path: string): readonly string[] {
  if (path.endsWith('.ts')) return [path]
  return readdirSync(join(root, path), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(path, name))
}

const toSorted = (names: readonly string[]): readonly string[] => [...new Set(names)].sort()
