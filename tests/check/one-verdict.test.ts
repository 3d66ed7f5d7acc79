// A look-alike gets one verdict at every step: what the sentence asks for does not hang on what the child can read already.

import { describe, expect, it } from 'vitest'
import { check } from '../unified/pipeline.ts'

async function tell(sentence: string, step: string) {
  const { messages } = await check(`---\nstep: ${step}\nnames: [Ann, Meg, Nan, Sam, Sid]\n---\n\n${sentence}\n`)
  const found = messages.filter(({ message }) => message.startsWith('`read`'))
  return found.map(({ message, readableAt, note }) => ({ message, readableAt, note }))
}

// The series teaches ea as in sea at green-2, and as in bread at green-13.
describe('read, before and after one of its ways is taught', () => {
  it.each(['Meg read it to Sid.', 'Sam read to Dad.', 'Nan read it.', 'Ann read a map.'])(
    '%s is of the past at every step',
    async (sentence) => {
      for (const step of ['pink-6', 'blue-6', 'green-1', 'green-2', 'green-12']) {
        const [one] = await tell(sentence, step)
        expect([step, one?.message]).toEqual([
          step,
          expect.stringContaining('`ea` as in `bread`, taught at step green-13'),
        ])
        expect(one?.readableAt).toBe('green-13')
      }
      expect(await tell(sentence, 'green-13')).toEqual([])
    },
  )

  it.each(['Meg and Sid read.', 'We read it.'])('%s is left open at every step', async (sentence) => {
    for (const step of ['pink-6', 'blue-6', 'green-1']) {
      const [one] = await tell(sentence, step)
      expect([step, one?.readableAt]).toEqual([step, 'green-13'])
      expect(one?.note).toContain('keep this one for step green-13')
      expect(one?.note).toContain('it can be said in more than one way')
    }
    const [one] = await tell(sentence, 'green-2')
    expect(one).toMatchObject({ message: expect.stringContaining('does not settle which'), readableAt: 'green-13' })
    expect(await tell(sentence, 'green-13')).toEqual([])
  })

  it('Can Meg read it? is of today', async () => {
    expect((await tell('Can Meg read it?', 'green-1'))[0]?.readableAt).toBe('green-2')
    expect(await tell('Can Meg read it?', 'green-2')).toEqual([])
  })
})

it('a weak vowel that breaks the rules is told as one', async () => {
  const { messages } = await check('---\nstep: green-12\n---\n\nIt took one minute.\n')
  expect(messages.map(({ message }) => message)).toContain(
    '`minute` breaks the rules: its `u_e` is a weak vowel, hardly said, and no step teaches that',
  )
})
