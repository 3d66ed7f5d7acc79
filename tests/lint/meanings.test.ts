// What a message says of the meaning that was taken for a look-alike. The meanings and steps are those of the table and of the
// series, which has `ow` of snow at green-3, that of cow at green-6, and a word such as `bear` at green-10.

import { expect, test } from 'vitest'
import { check } from '../unified/pipeline.ts'

async function findNote(sentence: string, word: string, step: string): Promise<string> {
  const { messages } = await check(`---\nstep: ${step}\n---\n${sentence}\n`)
  const found = messages.find((message) => message.word === word && message.reason !== undefined)
  return found?.note ?? 'no note'
}

test.each([
  [
    'He wore a red bow in his hair.',
    'bow',
    'Read here as “a knot with two loops; or what shoots arrows or plays a fiddle”.',
  ],
  ['He took a bow.', 'bow', 'Read here as “to bend low to greet or thank; or the front of a ship”.'],
  ['She can tear it.', 'tear', 'Read here as “to pull apart; a hole made by pulling”.'],
  ['A dove sat in the tree.', 'dove', 'Read here as “a bird like a small pigeon”.'],
  ['It is a wind-up toy.', 'wind-up', 'Read here as “to turn or wrap round”.'],
])('%s: the note of %s says which meaning was taken', async (sentence, word, note) => {
  expect(await findNote(sentence, word, 'green-2')).toContain(note)
})

test('a word with one spoken form has no such note', async () => {
  const note = await findNote('The night was wet.', 'night', 'green-2')
  expect(note).toContain('step green-3')
  expect(note).not.toContain('Read here')
})

test('where nothing tells, the note names both meanings with their steps', async () => {
  expect(await findNote('Meg and Sid read.', 'read', 'green-2')).toBe(
    'It may be “look at words and take them in, now or in general” (readable from step green-2), or “looked at words and took them in, before now” (readable from step green-13). Make the sentence plainer, or use another word.',
  )
})
