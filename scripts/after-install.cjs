// Compiles a fresh checkout once its packages are in place; npm runs this as the script `dependencies`.
//
// The pre-commit framework clones a repository, runs `npm install` in it, packs it and installs the pack. Scripts named
// build, prepare, prepack, install, preinstall or postinstall make npm 11 treat such a package in another way and leave
// a `battledore` that leads nowhere, so package.json has none of them: https://github.com/pre-commit/pre-commit/pull/3743
// This file is plain JavaScript because it runs where the packages for development may be missing.

const { execFileSync } = require('node:child_process')
const { existsSync } = require('node:fs')
const { join } = require('node:path')

const root = join(__dirname, '..')
const isCompiled = existsSync(join(root, 'dist', 'cli.cjs'))
const canCompile = ['tsx', 'esbuild'].every((name) => existsSync(join(root, 'node_modules', name)))

// On stderr: what installs a package may read its stdout.
if (!isCompiled && canCompile) {
  execFileSync(process.execPath, ['--import', 'tsx', join('scripts', 'compile.ts')], { cwd: root, stdio: ['ignore', 2, 2] })
}
