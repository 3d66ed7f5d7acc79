// Bundles the program into one file that starts fast, with rare parts in files of their own, and the library.

import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { build, type BuildOptions, type Plugin } from 'esbuild'

/** Parts loaded only when they are needed: import path as written → file in dist/parts/. */
const PARTS: readonly { readonly name: string; readonly entry: string }[] = [
  { name: 'tagger', entry: 'src/phonics/heteronyms/tagger.ts' },
  { name: 'load-sequence', entry: 'src/sequence/load.ts' },
]

/** Packages loaded by a dynamic import: each becomes a part. */
const LAZY_PACKAGES = [
  { name: 'ignore', contents: "export { default } from 'ignore'" },
  { name: 'tinyglobby', contents: "export * from 'tinyglobby'" },
  { name: 'yaml', contents: "export * from 'yaml'" },
] as const

/** Turns dynamic imports of the parts into imports of their files. */
const lazy = (root: string): Plugin => ({
  name: 'lazy',
  setup(plugin) {
    plugin.onResolve({ filter: /.*/ }, ({ path, kind, resolveDir }) => {
      if (kind !== 'dynamic-import') return undefined
      const name = path.startsWith('.') ? PARTS.find(({ entry }) => join(root, entry) === resolve(resolveDir, path))?.name : LAZY_PACKAGES.find(({ name }) => name === path)?.name
      return name === undefined ? undefined : { path: `./parts/${name}.cjs`, external: true }
    })
  },
})

export async function bundle(root: string): Promise<void> {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  const common: BuildOptions = {
    bundle: true, platform: 'node', target: 'node20', absWorkingDir: root, logLevel: 'warning', legalComments: 'none',
    define: { BATTLEDORE_VERSION: JSON.stringify(version) },
  }
  const cjs: BuildOptions = {
    ...common, format: 'cjs', minifySyntax: true, minifyWhitespace: true,
    define: { ...common.define, 'import.meta.url': 'importMetaUrl' },
    banner: { js: "const importMetaUrl=require('node:url').pathToFileURL(__filename).href;" },
  }
  await Promise.all([
    build({
      ...cjs, entryPoints: ['src/cli/bin.ts'], outfile: 'dist/cli.cjs', plugins: [lazy(root)],
      banner: { js: `#!/usr/bin/env node\n${cjs.banner?.['js']}` },
    }),
    ...PARTS.map(({ name, entry }) => build({ ...cjs, entryPoints: [entry], outfile: `dist/parts/${name}.cjs` })),
    ...LAZY_PACKAGES.map(({ name, contents }) => build({ ...cjs, stdin: { contents, resolveDir: root }, outfile: `dist/parts/${name}.cjs` })),
    build({ ...common, format: 'esm', packages: 'external', entryPoints: ['src/index.ts', 'src/node.ts'], outdir: 'dist', splitting: true, chunkNames: 'chunks/[name]-[hash]' }),
  ])
}
