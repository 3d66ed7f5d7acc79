// Bundles the launcher, the program with its parts, and the library.

import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import * as nodeModule from 'node:module'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type BuildOptions, build } from 'esbuild'
import { toNotices } from '../notices/notices.ts'
import { findBundled, findData } from '../notices/packages.ts'
import { DESK_INSIDE } from './desk.ts'
import { lazyBuiltIns } from './lazy-built-ins.ts'
import { lazyEntities } from './lazy-entities.ts'
import { countedLoops } from './loops/plugin.ts'
import { splitProgram } from './split.ts'
import { taggerWords } from './tagger-words.ts'

const SPLIT = {
  entry: 'src/cli/start.ts',
  // Wanted by every check that has something to say: in the program V8 finds them compiled. And what a diff of a story takes
  // beyond its check: four small files, which cost such a run more to open than a check to carry.
  kept: new Set([
    'src/check/suggest.ts',
    'src/cli/fix/run.ts',
    'src/fix/diff-library.ts',
    'src/packaged/word-files.ts',
    'src/resources/word-help.ts',
  ]),
}

/** Where a CommonJS file lies, as ESM asks for it; seldom asked, and half a millisecond to make. */
const META = "const importMeta={get url(){return require('node:url').pathToFileURL(__filename).href}};"

/** Like an old story from anywhere: long words, strange names, marks of all kinds, and an end that names its makers. */
const WARM_UP_STORY = fileURLToPath(new URL('warm-up.md', import.meta.url))

const INSIDE = join('dist', '.packages.json')

export async function bundle(root: string): Promise<void> {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  const common: BuildOptions = {
    bundle: true,
    platform: 'node',
    target: 'node20',
    absWorkingDir: root,
    logLevel: 'warning',
    // A table of fontkit names a key twice, to the same end.
    logOverride: { 'duplicate-object-key': 'silent' },
    legalComments: 'none',
    define: { BATTLEDORE_VERSION: JSON.stringify(version) },
  }
  const program: BuildOptions = {
    ...common,
    minifySyntax: true,
    minifyWhitespace: true,
    // Starts threads from files of its own, so it stays a package.
    external: ['tinypool'],
  }
  const cjs: BuildOptions = {
    ...program,
    format: 'cjs',
    // Only where the chunks are joined: before, `lazy-built-ins.ts` looks at names. Short names are a third of the text and 2 % of a short run.
    minifyIdentifiers: true,
    // The parts are CommonJS: `require` takes them as they are, where `import()` would wrap them once more.
    supported: { 'dynamic-import': false },
    define: { ...common.define, 'import.meta.url': 'importMeta.url', 'import.meta.dirname': '__dirname' },
    banner: { js: META },
  }
  for (const old of ['program.cache', 'parts', 'chunks'])
    rmSync(join(root, 'dist', old), { force: true, recursive: true })
  const loops = countedLoops(root)
  const withTagger = {
    ...program,
    plugins: [taggerWords(join(root, 'dist', 'parts')), lazyBuiltIns, lazyEntities, loops],
  }
  const metafile = await splitProgram(withTagger, cjs, SPLIT)
  await build({
    ...cjs,
    entryPoints: ['src/cli/launch.ts'],
    outfile: 'dist/cli.cjs',
    banner: { js: `#!/usr/bin/env node\n${META}` },
  })
  await build({ ...cjs, entryPoints: ['src/cli/worker.ts'], outfile: 'dist/worker.cjs' })
  await build({
    ...common,
    format: 'esm',
    plugins: [loops],
    packages: 'external',
    entryPoints: ['src/index.ts', 'src/node.ts'],
    outdir: 'dist',
    splitting: true,
    chunkNames: 'chunks/[name]-[hash]',
  })
  // What else is bundled into dist/ adds its metafile here: by that its packages come into the notices.
  const desk = JSON.parse(readFileSync(join(root, DESK_INSIDE), 'utf8')) as readonly string[]
  const inside = [...new Set([...[metafile].flatMap(findBundled), ...desk, ...findData(root)])].sort()
  writeFileSync(join(root, INSIDE), JSON.stringify(inside))
  writeFileSync(join(root, 'dist', 'NOTICES.md'), toNotices(root, inside))
}

/** The folders of all packages inside dist/, for what is packed with it. */
export const readInside = (root: string): readonly string[] =>
  JSON.parse(readFileSync(join(root, INSIDE), 'utf8')) as readonly string[]

/**
 * Checks some stories once, so that the compiled code of all that a check may need lies ready: what is missing, V8 compiles in
 * each run. Where that fails the program still runs, only slower.
 */
export function warmUp(root: string): void {
  if ('enableCompileCache' in nodeModule) return
  const fixtures = ['shelf/02-a-duck-at-the-pond.md', 'shelf/03-the-ship-in-the-shed.md', 'stories/odd-words.md']
  const stories = [WARM_UP_STORY, ...fixtures.map((name) => join(root, 'fixtures', name))]
  const script = join(root, 'scripts', 'bundle', 'warm-up.ts')
  spawnSync(process.execPath, ['--import', 'tsx', script, 'check', ...stories, '--step', 'green-5'], {
    cwd: root,
    stdio: 'ignore',
  })
  if (!existsSync(join(root, 'dist', 'program.cache'))) process.stderr.write('bundle: no compiled code could be kept\n')
}
