// What is printed of a story on US Letter (8.5 by 11 inches), read back by pdf.js: nothing is lost, and nothing stands nearer than 8 mm to an edge.

import { afterEach, beforeEach, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { readPdf } from '../../print/read-back.ts'
import { createWorld, type TestWorld } from '../io.ts'

let world: TestWorld

beforeEach(() => {
  world = createWorld()
})
afterEach(() => world.remove())

const SENTENCES = ['Tam had a hat.', 'The hat is on.', 'Tam got up.', 'It is hot.']
const STORY = `---\nstep: pink-5\n---\n\n# Tam\n\n${SENTENCES.join('\n\n---\n\n')}\n`

it.each([
  ['book', ['--fold', 'staple'], true],
  ['book', ['--fold', 'one-sheet'], true],
  ['book', ['--fold', 'none'], false],
  ['strips', ['--cut', 'words'], true],
  ['slips', [], false],
] as const)('%s %s', async (kind, options, isLandscape) => {
  world.write({ 'tam.md': STORY })
  expect(await main(['print', kind, 'tam.md', '--paper', 'letter', ...options], world.io)).toBe(0)
  const { sheets } = await readPdf(world.io.fs.readFileSync(`${world.cwd}/${kind}-tam.pdf`))
  const [wide, high] = isLandscape ? [279.4, 215.9] : [215.9, 279.4]
  for (const { width, height, words } of sheets) {
    expect([width, height]).toEqual([expect.closeTo(wide, 1), expect.closeTo(high, 1)])
    for (const { text, x, y, width: long } of words.filter((word) => word.text.trim() !== '')) {
      expect([text, x >= 7.9, x + long <= wide - 7.9, y >= 7.9, y <= high - 7.9]).toEqual([
        text,
        true,
        true,
        true,
        true,
      ])
    }
  }
  const letters = sheets
    .flatMap(({ words }) => words.map(({ text }) => text))
    .join('')
    .replace(/\s/g, '')
  for (const sentence of SENTENCES) expect(letters).toContain(sentence.replace(/\s/g, ''))
})
