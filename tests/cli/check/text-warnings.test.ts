// What is odd about a whole text is a warning on the page where it stands, and the story is checked all the same.

import { afterAll, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld } from '../io.ts'

const world = createWorld({
  'hat.md': '---\nstep: pink-6\n---\nTam had a hat.\n\n---\n\nTam sat.\n---\nA hen.\n\n<div>\nThe night.\n</div>\n',
})
afterAll(() => world.remove())

it('tells dashes below text and text in HTML on their page', async () => {
  const code = await main(['check', 'hat.md', '--format', 'json'], world.io)
  const [file] = JSON.parse(world.out()).files
  const told = file.messages.map(({ rule, severity, page, line }: Record<string, unknown>) => [
    rule,
    severity,
    page,
    line,
  ])
  expect(told).toEqual([
    ['text', 'warning', 2, 9],
    ['text', 'warning', 2, 13],
  ])
  expect(file.pages).toHaveLength(2)
  expect(code).toBe(0)
})
