// What a report tells to type next shows the same judgement, whoever judged it.

import { afterAll, expect, it } from 'vitest'
import { toExplainCommand } from '../../src/report/explain-command.ts'
import { createVocabularyWorld } from '../cli/vocabulary-world.ts'

it.each([
  ['series', 'general-american', 'battledore explain bank --step blue-4'],
  ['series', 'southern-british', 'battledore explain bank --step blue-4 --accent southern-british'],
  ['england', 'southern-british', 'battledore explain bank --step blue-4 --sequence england'],
  ['our class.yaml', 'general-american', 'battledore explain bank --step blue-4 --sequence "our class.yaml"'],
] as const)('%s in %s', (asked, accent, command) => {
  expect(toExplainCommand('bank', { asked, accent }, 'blue-4')).toBe(command)
})

const world = createVocabularyWorld({
  'set/own.yaml': 'name: own\nsteps:\n  - id: one\n    teach: [a as in cat, t as in cat]\n',
  'set/story.md': '---\nsequence: own.yaml\nstep: one\naccent: southern-british\n---\n\nBath at.\n',
})
afterAll(() => world.remove())

it.each(['check', 'level'])('what %s tells to type can be typed', async (command) => {
  const { out } = await world.run(command, 'set/story.md')
  const [, , ...args] = (
    /battledore explain [^.]+own\.yaml( --accent \S+)?/.exec(out.replace(/\s+/g, ' '))?.[0] ?? ''
  ).split(' ')
  const explained = await world.run('explain', ...args.map((one) => (one === 'WORD' ? 'bath' : one)))
  expect(explained).toMatchObject({ code: 0, err: '' })
  expect(explained.out).toContain('ɑː')
})
