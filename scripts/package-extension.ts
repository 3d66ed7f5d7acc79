// `npm run package-extension`: packs the VS Code extension with the compiled program inside. Needs no network.
//
//   npm run package-extension -- FILE    where to put it; else dist/battledore-vscode-VERSION.vsix

import { spawnSync } from 'node:child_process'
import { copyFileSync, cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { readInside } from './bundle/bundle.ts'
import { toNotices } from './notices/notices.ts'
import { findBundled } from './notices/packages.ts'
import { ROOT as root } from './root.ts'

/** What the program needs at run time. */
const SERVER = [
  ...['cli.cjs', 'program.cjs', 'worker.cjs', 'parts', 'sequences', 'lexicon.bin', 'words.bin', 'lists.bin'],
  ...['desk', 'battledore-desk.html', 'pictures.json', 'fonts'],
]
const SCHEMAS = ['config', 'sequence', 'reader']

/** Gives the path of the packed file. The program must be compiled before. */
export async function packageExtension(file: string): Promise<string> {
  const folder = join(root, 'editors', 'vscode')
  const [server, schemas] = [join(folder, 'server'), join(folder, 'schemas')]
  for (const path of [server, schemas]) {
    rmSync(path, { recursive: true, force: true })
    mkdirSync(path)
  }
  for (const name of SERVER.filter((one) => existsSync(join(root, 'dist', one))))
    cpSync(join(root, 'dist', name), join(server, name), { recursive: true })
  for (const name of SCHEMAS)
    copyFileSync(join(root, 'schemas', `${name}.schema.json`), join(schemas, `${name}.schema.json`))
  copyFileSync(join(root, 'LICENSE'), join(folder, 'LICENSE'))
  const { metafile } = await build({
    metafile: true,
    absWorkingDir: folder,
    entryPoints: ['src/extension.ts'],
    outfile: 'dist/extension.cjs',
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    external: ['vscode'],
    minify: true,
    logLevel: 'warning',
    legalComments: 'none',
  })
  const inside = [...new Set([...readInside(root), ...findBundled(metafile)])].sort()
  writeFileSync(join(folder, 'NOTICES.md'), toNotices(root, inside))
  // Its own file: the command that npm links does nothing else.
  const vsce = join(dirname(createRequire(import.meta.url).resolve('@vscode/vsce/package.json')), 'vsce')
  const options = ['package', '--no-dependencies', '--allow-missing-repository', '--out', file]
  const { status, stdout, stderr } = spawnSync(process.execPath, [vsce, ...options], { cwd: folder, encoding: 'utf8' })
  if (status !== 0) throw new Error(`vsce could not pack the extension:\n${stdout}${stderr}`)
  return file
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  const file = resolve(process.argv[2] ?? join(root, 'dist', `battledore-vscode-${version}.vsix`))
  process.stdout.write(`${await packageExtension(file)}\n`)
}
