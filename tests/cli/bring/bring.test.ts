// `battledore bring`: files that lie on a disk, what is written beside them, and what is never written over.

import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { bringText } from '../../../src/bring/index.ts'
import { main } from '../../../src/cli/main.ts'
import { docxPicture, makeDocx, PNG, paragraph, run } from '../../bring/make.ts'
import { createWorld, type TestWorld } from '../io.ts'

let world: TestWorld
const start = (files: Readonly<Record<string, string | Uint8Array>>, given: { stdin?: string } = {}): TestWorld => {
  world = createWorld(files, given)
  return world
}
afterEach(() => world?.remove())

const withPicture = makeDocx(paragraph(docxPicture('a red hat')) + paragraph(run('Tam had a hat.')), {
  'word/media/image1.png': PNG,
})

it('writes the story and its pictures beside the text, which stays as it is, and says who can read it', async () => {
  const { io, cwd, read, out, err } = start({ 'old/hat.docx': withPicture })
  expect(await main(['bring', 'old/hat.docx'], io)).toBe(0)
  expect(read('old/hat.md')).toBe('![a red hat](hat-pictures/1.png)\n\nTam had a hat.\n')
  expect(new Uint8Array(readFileSync(join(cwd, 'old/hat-pictures/1.png')))).toEqual(PNG)
  expect(new Uint8Array(readFileSync(join(cwd, 'old/hat.docx')))).toEqual(withPicture)
  expect(out()).toContain('old/hat.md is made of `old/hat.docx`: 1 page, 1 picture.')
  expect(out()).toContain('Earliest step: pink-')
  expect(err()).toBe('')
})

it('with a step, writes it at the top and goes on to check', async () => {
  const { io, read, out } = start({ 'hat.txt': 'Tam won a hat.' })
  expect(await main(['bring', 'hat.txt', '--step', 'pink-3'], io)).toBe(0)
  expect(read('hat.md')).toBe('---\nstep: pink-3\n---\n\nTam won a hat.\n')
  expect(out()).toContain('error: `won` ')
})

it('takes a pasted text to standard output or to a file', async () => {
  const first = start({}, { stdin: 'A hat.\fA cat.' })
  expect(await main(['bring', '-'], first.io)).toBe(0)
  expect(first.out()).toBe('A hat.\n\n---\n\nA cat.\n')
  first.remove()
  const second = start({}, { stdin: 'A hat.' })
  expect(await main(['bring', '-', '--out', 'new/hat.md'], second.io)).toBe(0)
  expect(second.read('new/hat.md')).toBe('A hat.\n')
})

it('brings many into a folder', async () => {
  const { io, cwd } = start({ 'a.txt': 'A hat.', 'b.html': '<p>A cat.' })
  expect(await main(['bring', 'a.txt', 'b.html', '--out', 'new/'], io)).toBe(0)
  expect(readdirSync(join(cwd, 'new')).sort()).toEqual(['a.md', 'b.md'])
})

describe('what is in the way is told in a line, with exit code 2, and nothing is written', () => {
  it('a story that is there already', async () => {
    const { io, read, err } = start({ 'hat.txt': 'A hat.', 'hat.md': 'mine' })
    expect(await main(['bring', 'hat.txt'], io)).toBe(2)
    expect(read('hat.md')).toBe('mine')
    expect(err()).toBe('battledore: `hat.md` is there already. Nothing of `hat.txt` was written.\n')
  })

  it('a picture that is there already', async () => {
    const { io, cwd, read, err } = start({ 'hat.docx': withPicture, 'hat-pictures/1.png': 'mine' })
    expect(await main(['bring', 'hat.docx'], io)).toBe(2)
    expect(read('hat-pictures/1.png')).toBe('mine')
    expect(existsSync(join(cwd, 'hat.md'))).toBe(false)
    expect(err()).toContain('`hat-pictures/1.png` is there already.')
  })

  it.each<readonly [string, readonly string[], string]>([
    ['no such file', ['bring', 'no.txt'], 'battledore: `no.txt` is not there.\n'],
    ['a folder', ['bring', 'sub'], 'battledore: `sub` is a folder, not a file.\n'],
    ['a PDF', ['bring', 'a.pdf'], 'battledore: `a.pdf` is a PDF, and those keep no words, only places of letters.'],
    ['an unknown step', ['bring', 'hat.txt', '--step', 'pnk-3'], 'Did you mean `pink-3`?'],
    [
      'two texts for one file',
      ['bring', 'hat.txt', 'a.pdf', '--out', 'x.md'],
      '`x.md` is one file for 2 texts. Give --out a folder.',
    ],
  ])('%s', async (_, argv, message) => {
    const { io, cwd, err } = start({ 'hat.txt': 'A hat.', 'a.pdf': '%PDF-1.7', 'sub/x.txt': '' })
    expect(await main(argv, io)).toBe(2)
    expect(err()).toContain(message)
    expect(
      err()
        .trim()
        .split('\n')
        .every((line) => line.startsWith('battledore: ')),
    ).toBe(true)
    expect(existsSync(join(cwd, 'hat.md'))).toBe(false)
    expect(existsSync(join(cwd, 'x.md'))).toBe(false)
  })

  it('goes on with the other texts', async () => {
    const { io, read } = start({ 'hat.txt': 'A hat.', 'a.pdf': '%PDF-1.7' })
    expect(await main(['bring', 'a.pdf', 'hat.txt'], io)).toBe(2)
    expect(read('hat.md')).toBe('A hat.\n')
  })
})

// Documents as LibreOffice Writer (Debian) writes them, an office program independent of this one.
const office = spawnSync('soffice', ['--version'], { encoding: 'utf8' }).status === 0

describe.runIf(office)('documents made by LibreOffice', () => {
  const HTML = `<!doctype html><meta charset="utf-8"><h1>The Wet Dog</h1><p>Rag &amp; Old Ned sat in the <b>s</b>un.<br>“Yes!”</p>
<p style="page-break-before: always">1. Rag ran *to* the pond, isn’t it?</p><p># Splash_ed_ &lt;b&gt; Zoé</p>
<p style="page-break-before: always">The end.</p>`
  const WANTED =
    '# The Wet Dog\n\nRag & Old Ned sat in the **s**un.\\\n“Yes!”\n\n---\n\n1\\. Rag ran \\*to\\* the pond, isn’t it?\n\n\\# Splash_ed\\_ \\<b> Zoé\n\n---\n\nThe end.\n'

  it('.odt and .docx come out as they went in', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'battledore-office-'))
    try {
      writeFileSync(join(folder, 'dog.html'), HTML)
      const convert = (from: string, to: string) =>
        spawnSync(
          'soffice',
          [`-env:UserInstallation=file://${folder}/profile`, '--headless', '--convert-to', to, from],
          { cwd: folder, encoding: 'utf8' },
        )
      convert('dog.html', 'odt')
      convert('dog.odt', 'docx:MS Word 2007 XML')
      for (const name of ['dog.odt', 'dog.docx']) {
        const bytes = new Uint8Array(readFileSync(join(folder, name)))
        expect(await bringText({ bytes, name, pictureFolder: 'p' }), name).toMatchObject({ markdown: WANTED, pages: 3 })
      }
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })
})
