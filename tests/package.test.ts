// The package as others get it: packed, installed in an empty folder, run and imported there.

import { execFileSync, spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { ROOT } from './console.ts'

let folder: string

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'battledore-package-'))
  const packed = JSON.parse(
    execFileSync('npm', ['pack', '--json', '--pack-destination', folder], { cwd: ROOT, encoding: 'utf8' }),
  )
  const { filename } = (Array.isArray(packed) ? packed[0] : Object.values(packed)[0]) as { filename: string }
  writeFileSync(join(folder, 'package.json'), '{"private":true,"type":"module"}')
  execFileSync('npm', ['install', '--no-audit', '--no-fund', '--loglevel=error', join(folder, filename)], {
    cwd: folder,
  })
}, 180_000)

afterAll(() => rmSync(folder, { recursive: true, force: true }))

function readPluginPage(): { readonly code: string; readonly output: string } {
  const page = readFileSync(join(ROOT, 'docs', 'plugins.md'), 'utf8')
  const [, code = ''] = /```js\n([\s\S]*?)```/.exec(page) ?? []
  const [, output = ''] = /```text\n([\s\S]*?)```/.exec(page) ?? []
  return { code, output }
}

it('has a command that checks a story', () => {
  writeFileSync(join(folder, 'tam.md'), '---\nstep: pink-4\n---\n\nTam won a hat.\n')
  const { status, stdout, stderr } = spawnSync(
    join(folder, 'node_modules', '.bin', 'battledore'),
    ['check', 'tam.md', '--format', 'line'],
    { cwd: folder, encoding: 'utf8' },
  )
  expect(stderr).toBe('')
  expect(stdout).toContain('tam.md:5:5-5:8: error: `won` has `o` as in `son`')
  expect(status).toBe(1)
})

it('has the writing desk, served and as one file', async () => {
  const command = join(folder, 'node_modules', '.bin', 'battledore')
  const { status, stdout } = spawnSync(command, ['desk', '--one-file', 'desk.html'], { cwd: folder, encoding: 'utf8' })
  expect([status, stdout]).toEqual([0, '`desk.html` is the desk as one file. It opens with a double click.\n'])
  const page = readFileSync(join(folder, 'desk.html'), 'utf8')
  expect([page.slice(0, 15), page.slice(-8)]).toEqual(['<!doctype html>', '</html>\n'])
  const desk = spawn(command, ['desk', '--no-open', '--port', '0'], { cwd: folder })
  try {
    const address = await new Promise<URL>((done) => {
      let said = ''
      desk.stdout.on('data', (chunk) => {
        said += chunk
        const [found] = /http:\S+/.exec(said) ?? []
        if (found !== undefined) done(new URL(found))
      })
    })
    for (const name of [
      '',
      'app.js',
      'worker.js',
      'style.css',
      'data/lists.bin',
      'data/pictures.json',
      'data/fonts/andika.ttf',
    ])
      expect((await fetch(`${address.origin}/${name}`)).status).toBe(200)
  } finally {
    desk.kill()
  }
})

it('does what docs/plugins.md shows', () => {
  const { code, output } = readPluginPage()
  writeFileSync(join(folder, 'pipeline.js'), code)
  expect(execFileSync(process.execPath, ['pipeline.js'], { cwd: folder, encoding: 'utf8' })).toBe(output)
})

const TSC = join(ROOT, 'node_modules', 'typescript', 'bin', 'tsc')

/** What the compiler says of a file in the folder, as strict as can be. */
function compile(file: string): string {
  const options = ['--noEmit', '--strict', '--skipLibCheck', '--target', 'es2022', '--lib', 'es2022,dom']
  return spawnSync(process.execPath, [TSC, ...options, '--module', 'nodenext', file], {
    cwd: folder,
    encoding: 'utf8',
  }).stdout
}

it('has types for what docs/plugins.md shows', () => {
  writeFileSync(join(folder, 'pipeline.ts'), readPluginPage().code)
  expect(compile('pipeline.ts')).toBe('')
})

it('has types for all that it exports', () => {
  writeFileSync(
    join(folder, 'use.ts'),
    "import { judge, readStory, type Verdict } from 'battledore'\nimport { loadPhonics } from 'battledore/node'\nexport const story = readStory('A cat.')\nexport const phonics = loadPhonics('general-american')\nexport const use: (v: Verdict) => boolean = (v) => v.readable\nvoid judge\n",
  )
  expect(compile('use.ts')).toBe('')
})
