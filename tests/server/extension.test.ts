// The VS Code extension: which server it starts, that it packs, and that what was packed runs by itself.

import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { isBuiltin } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findServer } from '../../editors/vscode/src/find-server.ts'
import { packageExtension } from '../../scripts/package-extension.ts'
import { frame } from './client.ts'
import { unzip } from './unzip.ts'

describe('the server that is started', () => {
  const own = '/extension/server/cli.cjs'
  const places = { setting: '', folders: ['/a', '/b'], isTrusted: true, own }
  const inB = join('/b', 'node_modules', 'battledore', 'dist', 'cli.cjs')

  it('is that of an opened folder, else our own', () => {
    expect(findServer(places, (path) => path === inB)).toBe(inB)
    expect(findServer(places, () => false)).toBe(own)
  })

  it('is the one that a person has set, from the first folder on', () => {
    expect(findServer({ ...places, setting: 'x/cli.cjs' }, () => true)).toBe('/a/x/cli.cjs')
  })

  it('is never that of a folder that is not trusted', () => {
    expect(findServer({ ...places, isTrusted: false, setting: 'x/cli.cjs' }, () => true)).toBe(own)
  })
})

describe('the packed file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-extension-'))
  let files: ReadonlyMap<string, Buffer> = new Map()
  beforeAll(async () => {
    files = unzip(readFileSync(await packageExtension(join(folder, 'packed.vsix'))))
    for (const [name, data] of files) {
      mkdirSync(dirname(join(folder, name)), { recursive: true })
      writeFileSync(join(folder, name), data)
    }
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))

  it('holds the extension, the program, its data and the schemas, and no sources', () => {
    const names = [...files.keys()]
    expect(names).toEqual(
      expect.arrayContaining(
        [
          'package.json',
          'NOTICES.md',
          'LICENSE.txt',
          'readme.md',
          'dist/extension.cjs',
          'server/battledore-desk.html',
          'server/cli.cjs',
          'server/desk/app.js',
          'server/desk/worker.js',
          'server/fonts/andika.ttf',
          'server/worker.cjs',
          'server/lexicon.bin',
          'server/sequences/series.json',
          'schemas/config.schema.json',
        ].map((name) => `extension/${name}`),
      ),
    )
    expect(names.filter((name) => /\.ts$|node_modules/.test(name))).toEqual([])
    const manifest = JSON.parse(String(files.get('extension/package.json'))) as {
      main: string
      contributes: { yamlValidation: { url: string }[] }
    }
    for (const path of [manifest.main, ...manifest.contributes.yamlValidation.map(({ url }) => url)])
      expect(names).toContain(`extension/${path.replace('./', '')}`)
  })

  it('has an extension that asks for nothing but what the editor gives it', () => {
    const code = String(files.get('extension/dist/extension.cjs'))
    const asked = new Set([...code.matchAll(/\brequire\("([^"]+)"\)/g)].map((match) => match[1] ?? ''))
    expect(asked).toContain('vscode')
    expect([...asked].filter((name) => name !== 'vscode' && !isBuiltin(name))).toEqual([])
  })

  it('has a server that checks a story without the project around it', async () => {
    const child = spawn(process.execPath, [join(folder, 'extension/server/cli.cjs'), 'serve', '--stdio'], {
      cwd: folder,
      stdio: ['pipe', 'pipe', 'inherit'],
    })
    let out = ''
    const marked = new Promise<void>((done) => {
      child.stdout.on('data', (chunk: Buffer) => {
        out += chunk.toString()
        if (out.includes('publishDiagnostics')) done()
      })
    })
    child.stdin.write(
      frame({
        jsonrpc: '2.0',
        id: 1,
        method: 'initialize',
        params: { processId: null, rootUri: null, capabilities: {} },
      }),
    )
    const textDocument = {
      uri: 'file:///tmp/tam.md',
      languageId: 'markdown',
      version: 1,
      text: '---\nstep: pink-4\n---\nTam sat at night.\n',
    }
    child.stdin.write(frame({ jsonrpc: '2.0', method: 'textDocument/didOpen', params: { textDocument } }))
    await marked
    child.stdin.end()
    expect(out).toContain('`night` has `igh`')
  })
})
