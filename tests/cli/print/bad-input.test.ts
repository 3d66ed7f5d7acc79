// What cannot be printed is told in one line with its file and place, exit 2, and nothing is written.

import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { deflateSync } from 'node:zlib'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

let world: TestWorld

beforeEach(() => {
  world = createWorld()
})
afterEach(() => world.remove())

const story = (picture: string): string => `---\nstep: pink-4\n---\n\n# Tam\n\n![hat](${picture})\n\nTam had a hat.\n`
const SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h9v9z"/></svg>'

/** A PNG of one colour, made by the standard: signature, IHDR, IDAT, IEND with their check sums. */
function toPng(width: number, height: number, colourType = 2, dots?: Buffer): Uint8Array {
  const chunk = (name: string, data: Buffer): Buffer => {
    const body = Buffer.concat([Buffer.from(name, 'latin1'), data])
    const frame = Buffer.alloc(8)
    frame.writeUInt32BE(data.length)
    frame.writeUInt32BE(crc(body), 4)
    return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)])
  }
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width)
  head.writeUInt32BE(height, 4)
  head.set([8, colourType, 0, 0, 0], 8)
  const row = Buffer.alloc(1 + width * (colourType === 6 ? 4 : 3))
  const rows = width * height > 1e6 ? Buffer.alloc(10) : Buffer.concat(Array.from({ length: height }, () => row))
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]),
    chunk('IHDR', head),
    chunk('IDAT', dots ?? deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

function crc(bytes: Uint8Array): number {
  let sum = 0xffffffff
  for (const byte of bytes) {
    sum ^= byte
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1
  }
  return (sum ^ 0xffffffff) >>> 0
}

const print = (...args: string[]): Promise<number> => main(['print', ...args], world.io)
const listPdfs = (): string[] => readdirSync(world.cwd).filter((name) => name.endsWith('.pdf'))

/** Exit 2, one line that says this, and no file. */
async function expectTold(args: readonly string[], said: RegExp | string): Promise<void> {
  expect([await print(...args), world.out()]).toEqual([2, ''])
  const lines = world.err().trim().split('\n')
  expect(lines).toHaveLength(1)
  if (typeof said === 'string') expect(lines[0]).toContain(said)
  else expect(lines[0]).toMatch(said)
  expect(lines[0]).not.toMatch(/\bat .*\.ts|undefined|NaN|\[object/)
  expect(listPdfs()).toEqual([])
}

it.each<[what: string, picture: string, files: Record<string, string | Uint8Array>, said: RegExp]>([
  ['is not there', 'hat.png', {}, /tam\.md:7:1: `hat\.png` is not there/],
  ['is on the web', 'https://example.com/hat.png', {}, /tam\.md:7:1: the picture `https.*is on the web, and is never/],
  ['is outside', '../../hat.png', {}, /tam\.md:7:1: the picture `\.\.\/\.\.\/hat\.png` lies outside/],
  ['is half a PNG', 'hat.png', { 'hat.png': toPng(20, 20).subarray(0, 70) }, /hat\.png` is broken/],
  ['is huge and see-through', 'hat.png', { 'hat.png': toPng(4000, 3000, 6) }, /4000 × 3000 dots with see-through/],
  [
    'has a byte that is wrong',
    'hat.png',
    { 'hat.png': toPng(20, 20).map((b, at) => (at === 45 ? b ^ 1 : b)) },
    /broken/,
  ],
  ['is of another kind', 'hat.webp', { 'hat.webp': 'RIFF0000WEBPVP8 ' }, /is a WebP picture, which cannot be printed/],
  [
    'is half a JPEG',
    'hat.jpg',
    { 'hat.jpg': Buffer.from('ffd8ffe000104a46494600010100000100010000', 'hex') },
    /broken/,
  ],
  ['is empty', 'hat.png', { 'hat.png': '' }, /`hat\.png` is empty/],
  [
    'is a drawing that names a file',
    'hat.svg',
    {
      'hat.svg': SVG.replace('<path', '<image href="secret.png" width="9" height="9"/><path'),
      'secret.png': toPng(9, 9),
    },
    /hat\.svg` names something outside itself \(`secret\.png`\), which is never read/,
  ],
  [
    'is a drawing with entities',
    'hat.svg',
    { 'hat.svg': `<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>${SVG}` },
    /hat\.svg` has a document type of its own/,
  ],
  ['is half a drawing', 'hat.svg', { 'hat.svg': SVG.slice(0, -10) }, /hat\.svg` is broken/],
])('a picture that %s', async (_, picture, files, said) => {
  world.write({ 'tam.md': story(picture), ...files })
  await expectTold(['book', 'tam.md'], said)
})

it('prints pictures that are whole, whatever they are called', async () => {
  world.write({ 'tam.md': story('my%20hat.jpg'), 'my hat.jpg': toPng(20, 30, 6) })
  expect([await print('book', 'tam.md'), world.err()]).toEqual([0, ''])
  expect(listPdfs()).toEqual(['book-tam.pdf'])
})

it.each<[what: string, args: readonly string[], said: RegExp]>([
  [
    'backs of a list',
    ['list', '--words', 'hat', '--backs', 'words'],
    /--backs words is for `print cards`, not for `print list`/,
  ],
  ['a fold of tags', ['tags', '--words', 'hat', '--fold', 'one-sheet'], /--fold one-sheet is for `print book`/],
  ['loose words of a list', ['list', '--words', 'hat', '--cut', 'words'], /--cut words is for `print strips`/],
  ['named words of a bank', ['bank', '--step', 'pink-4', '--words', 'hat'], /--words is for other sheets/],
  ['an unknown kind', ['cardz', '--step', 'pink-4'], /print can be tags, .*Did you mean `cards`\?/],
  ['an unknown paper', ['tags', '--step', 'pink-4', '--paper', 'lettr'], /--paper can be a4 or letter.*`letter`\?/],
  ['no step', ['tags'], /step/],
  ['no story', ['book'], /Say which story/],
  ['a story that is not there', ['book', 'tim.md'], /tim\.md/],
  ['an unknown size', ['tags', '--step', 'pink-4', '--size', 'huge'], /--size can be small, usual, large/],
  ['no words', ['tags', '--step', 'pink-4', '--words', ' , '], /no word to print/],
  ['no sight words', ['sight', '--step', 'pink-1'], /no word to print.*No sight word is taught/],
  ['a count of 0', ['tags', '--step', 'pink-4', '--count', '0'], /--count is a number from 1 on/],
  ['10,000 words', ['tags', '--step', 'green-14', '--count', '10000'], /at most 500 are printed at once/],
  ['a word wider than its card', ['tags', '--step', 'pink-4', '--words', 'o'.repeat(60)], /too wide for its tag/],
  ['a letter that the font lacks', ['tags', '--step', 'pink-4', '--words', 'hat, ねこ'], /Andika has no `ね`, `こ`/],
  ['an unknown font', ['tags', '--step', 'pink-4', '--letters', 'andica'], /--letters can be .*`andika`\?/],
  ['a font that is none', ['tags', '--step', 'pink-4', '--letters', './tam.md'], /no font that can be read/],
  [
    'shapes without Andika',
    ['tags', '--step', 'pink-4', '--letters', 'lexend', '--letter-shapes', 'straight-t'],
    /only Andika has/,
  ],
  ['backs of sheets without', ['tags', '--step', 'pink-4', '--sides', 'backs'], /they have no backs/],
  [
    'a folder of pictures that is not there',
    ['cards', '--step', 'pink-4', '--pictures', 'mine'],
    /`mine` is not there/,
  ],
])('%s', async (_, args, said) => {
  world.write({ 'tam.md': '---\nstep: pink-4\n---\n\nTam had a hat.\n' })
  await expectTold(args, said)
})

it('never writes over a file that it has not made, unless told to', async () => {
  world.write({ 'tags.pdf': 'my own' })
  const args = ['tags', '--step', 'pink-4', '--words', 'hat', '--out', 'tags.pdf']
  expect(await print(...args)).toBe(2)
  expect(world.err()).toContain('`tags.pdf` is there already, and this program has not made it')
  expect(world.read('tags.pdf')).toBe('my own')
  expect(await print(...args, '--force')).toBe(0)
  expect(await print(...args)).toBe(0)
})

it('writes no drawing where one of them would replace a file of somebody', async () => {
  world.write({ 'x-2.svg': 'my own' })
  const args = ['sight', '--step', 'pink-6', '--format', 'svg', '--out', 'x.svg']
  expect(await print(...args)).toBe(2)
  expect(existsSync(join(world.cwd, 'x-1.svg'))).toBe(false)
  expect(world.read('x-2.svg')).toBe('my own')
})

/** The PNG with other data behind check sums that hold. */
it('a picture whose dots are broken behind good check sums', async () => {
  for (const dots of [Buffer.from('no dots at all'), deflateSync(Buffer.alloc(30))]) {
    world.write({
      'tam.md': story('hat.png'),
      'hat.png': toPng(20, 20, 2, dots),
      'mine/hat.png': toPng(20, 20, 6, dots),
    })
    await expectTold(['book', 'tam.md'], /tam\.md:7:1: `hat\.png` is broken: its dots cannot be read/)
    const second = createWorld()
    second.write({ 'mine/hat.png': toPng(20, 20, 6, dots) })
    expect(await main(['print', 'cards', '--words', 'hat', '--pictures', 'mine'], second.io)).toBe(2)
    expect(second.err()).toMatch(/`mine\/hat\.png` is broken/)
    second.remove()
    world.remove()
    world = createWorld()
  }
})

it('a drawing that stops the drawer, and none that merely holds words', async () => {
  const toDrawing = (inside: string): string => SVG.replace(/<path.*\/>/, inside)
  world.write({ 'tam.md': story('hat.svg'), 'hat.svg': toDrawing('<path fill="url(#gone)" d="M0 0h9v9z"/>') })
  await expectTold(['book', 'tam.md'], /tam\.md:7:1: `hat\.svg` is a drawing that cannot be printed/)
  world.write({ 'hat.svg': toDrawing('<text x="1" y="5" font-size="4">hat</text>') })
  expect(await print('book', 'tam.md')).toBe(0)
})

/** The first bytes are those of ISO/IEC 23008-12 (HEIF); the container is not filled. */
it.each(['hat.heic', 'hat.jpg'])('a picture of a phone called %s says what to do', async (name) => {
  const heic = Buffer.from('0000001866747970686569630000000068656963', 'hex')
  world.write({ 'tam.md': story(name), [name]: heic })
  await expectTold(['book', 'tam.md'], /tam\.md:7:1: `hat\.\w+` is a HEIC picture.*export it as JPEG/)
})
