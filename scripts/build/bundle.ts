// Bundles the program into one file that starts fast, with rare parts in files of their own, and the library.
//
// Every dynamic import of the sources becomes a part of its own, dist/parts/NAME.cjs, read only when it is reached.
// A part holds copies of what it imports: it shares no state with the program, so it must do its whole work itself.

import { spawnSync } from 'node:child_process'
import { readFileSync, rmSync } from 'node:fs'
import { basename, dirname, join, relative, resolve } from 'node:path'
import { type BuildOptions, build, type Plugin } from 'esbuild'

/** Packages whose main export is not a plain module need to be told how they are taken. */
const CONTENTS: Readonly<Record<string, string>> = {
  'compromise/two': "module.exports = require('compromise/two')",
  ignore: "module.exports = require('ignore')",
}

/** Starts threads from files of its own, so it stays a package. */
const WHOLE = new Set(['tinypool'])

/**
 * Wanted by every check that has something to say, so they stay in the program, where V8 finds them compiled; they are
 * run only when they are reached.
 */
const KEPT = new Set(['src/check/suggest.ts', 'src/packaged/word-files.ts', 'src/resources/word-help.ts'])

/** Where the parts lie, as the program names them. */
const PARTS = './parts/'

interface Part {
  readonly name: string
  readonly entry: string
}

/** Turns dynamic imports into imports of part files, and notes which parts are wanted. */
const lazy = (root: string, folder: string, wanted: Map<string, Part>): Plugin => ({
  name: 'lazy',
  setup(plugin) {
    plugin.onResolve({ filter: /.*/ }, ({ path, kind, resolveDir }) => {
      if (kind !== 'dynamic-import' || path.startsWith('node:')) return undefined
      if (WHOLE.has(path)) return { path, external: true }
      const entry = path.startsWith('.') ? resolve(resolveDir, path) : path
      if (folder === PARTS && KEPT.has(relative(root, entry))) return undefined
      const name = path.startsWith('.') ? toPartName(relative(join(root, 'src'), entry)) : path.replaceAll('/', '-')
      wanted.set(name, { name, entry })
      return { path: folder + name + '.cjs', external: true }
    })
  },
})

/** `phonics/heteronyms/tagger.ts` → `tagger`; `cli/shelf/run.ts` → `shelf-run`. */
const toPartName = (path: string): string => {
  const name = basename(path, '.ts')
  const parent = basename(dirname(path))
  return path.startsWith('cli/') || name === 'index' ? `${parent}-${name}` : name
}

export async function bundle(root: string): Promise<void> {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  const define = { BATTLEDORE_VERSION: JSON.stringify(version) }
  const common: BuildOptions = {
    bundle: true,
    platform: 'node',
    target: 'node20',
    absWorkingDir: root,
    logLevel: 'warning',
    legalComments: 'none',
    define,
  }
  const metaUrl = "const importMetaUrl=require('node:url').pathToFileURL(__filename).href;"
  const cjs: BuildOptions = {
    ...common,
    format: 'cjs',
    minifySyntax: true,
    minifyWhitespace: true,
    // The parts are CommonJS: `require` takes them as they are, where `import()` would wrap them once more.
    supported: { 'dynamic-import': false },
    define: { ...define, 'import.meta.url': 'importMetaUrl' },
    banner: { js: metaUrl },
  }
  for (const old of ['program.cache', 'parts', 'chunks'])
    rmSync(join(root, 'dist', old), { force: true, recursive: true })
  const wanted = new Map<string, Part>()
  await build({
    ...cjs,
    entryPoints: ['src/cli/bin.ts'],
    outfile: 'dist/program.cjs',
    plugins: [lazy(root, PARTS, wanted)],
  })
  await build({
    ...cjs,
    entryPoints: ['src/cli/launch.ts'],
    outfile: 'dist/cli.cjs',
    banner: { js: `#!/usr/bin/env node\n${metaUrl}` },
  })
  const made = new Set<string>()
  for (;;) {
    const next = [...wanted.values()].filter(({ name }) => !made.has(name))
    if (next.length === 0) break
    for (const { name } of next) made.add(name)
    await Promise.all(
      next.map((part) =>
        build({
          ...cjs,
          ...toInput(part, root),
          outfile: `dist/parts/${part.name}.cjs`,
          plugins: [lazy(root, './', wanted)],
        }),
      ),
    )
  }
  await build({
    ...common,
    format: 'esm',
    packages: 'external',
    entryPoints: ['src/index.ts', 'src/node.ts'],
    outdir: 'dist',
    splitting: true,
    chunkNames: 'chunks/[name]-[hash]',
  })
}

/**
 * Leaves V8's compiled code of the program beside it, as it stands after checking some stories: functions that ran are in it.
 * Where that fails the program still runs, only slower.
 */
export function warmUp(root: string): void {
  const fixtures = ['shelf/02-a-duck-at-the-pond.md', 'shelf/03-the-ship-in-the-shed.md', 'stories/odd-words.md']
  const stories = fixtures.map((name) => join(root, 'fixtures', name))
  spawnSync(process.execPath, [join(root, 'dist', 'cli.cjs'), 'check', ...stories], {
    env: { ...process.env, BATTLEDORE_WRITE_CACHE: join(root, 'dist', 'program.cache') },
    stdio: 'ignore',
  })
}

const toInput = ({ entry }: Part, root: string): BuildOptions =>
  entry.startsWith('/')
    ? { entryPoints: [entry] }
    : { stdin: { contents: CONTENTS[entry] ?? `export * from '${entry}'`, resolveDir: root } }
