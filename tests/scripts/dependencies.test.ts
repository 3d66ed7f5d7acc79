// What is installed with the package: what the library and the program import at run time, and nothing that is bundled.

import { readdirSync, readFileSync } from 'node:fs'
import { isBuiltin } from 'node:module'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { ROOT } from '../console.ts'

const DIST = join(ROOT, 'dist')
const IMPORT = /^(?:import|export)\b[^"]*?\bfrom "([^"./][^"]*)"|^import "([^"./][^"]*)"/gm
const REQUIRE = /\brequire\("([a-z@][^"]*)"\)/g

function find(pattern: RegExp, files: readonly string[]): readonly string[] {
  const texts = files.map((file) => readFileSync(join(DIST, file), 'utf8'))
  const names = texts.flatMap((text) => [...text.matchAll(pattern)].map((match) => match[1] ?? match[2] ?? ''))
  const packages = names.filter((name) => !isBuiltin(name)).map((name) => /^(?:@[^/]+\/)?[^/]+/.exec(name)?.[0] ?? '')
  return [...new Set(packages)].sort()
}

const list = (folder: string): readonly string[] => readdirSync(join(DIST, folder)).map((name) => `${folder}/${name}`)

it('is what package.json says', () => {
  const { dependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
    dependencies: Readonly<Record<string, string>>
  }
  const library = find(IMPORT, ['index.js', 'node.js', ...list('chunks')])
  const program = find(REQUIRE, ['cli.cjs', 'program.cjs', ...list('parts')]).filter((name) => name !== 'picomatch')
  // Only the pool starts threads from files of its own. picomatch is tried for and done without: its copy is inside.
  expect(program).toEqual(['tinypool'])
  expect(Object.keys(dependencies).sort()).toEqual([...new Set([...library, ...program])].sort())
})
