// Suggestions in messages: readable at the step, fit for children, of the same part of speech, and only where they are
// asked for.

import { describe, expect, it, vi } from 'vitest'
import { rules } from '../../rules/index.ts'
import { checkStory } from '../../src/check/check-story.ts'
import { isChecked } from '../../src/check/result.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import type { Message } from '../../src/lint/types.ts'
import { toProblemLine } from '../../src/problem/index.ts'
import type { Resources } from '../../src/resources/types.ts'
import { knowledgeAt } from '../../src/sequence/index.ts'
import { isReadable } from '../../src/verdict/index.ts'
import { SEQUENCES, testSequence, testWords } from '../finder/sources.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const resources = createResources(createProcessIo(process))

async function check(
  source: string,
  more: {
    readonly suggest?: boolean
    readonly resources?: Resources
    readonly sequence?: string
    readonly step?: string
  } = {},
) {
  const flags = {
    step: { value: more.step ?? 'pink-5', origin: '--step' },
    sequence: { value: more.sequence ?? 'series', origin: '--sequence' },
  }
  const result = await checkStory({
    path: 'tam.md',
    source,
    storyPath: '/stories/tam.md',
    chain: { folders: [], problems: [] },
    flags,
    rules,
    resources,
    suggest: true,
    ...more,
  })
  if (!isChecked(result)) throw new Error(result.problems.map(toProblemLine).join('\n'))
  return result.messages
}

const of = (messages: readonly Message[], word: string): readonly string[] =>
  messages.find((message) => message.word === word && message.reason)?.suggestions ?? []

describe('what could stand there', () => {
  it('is near in meaning, and of the same form', async () => {
    const messages = await check('Meg met the children. Tam bought a hat.', { step: 'blue-2' })
    expect(of(messages, 'children')[0]).toBe('kids')
    expect(of(messages, 'bought')[0]).toBe('got')
  })

  it('is in the case of the word', async () => {
    const messages = await check('Children ran. The CHILD sat.', { step: 'blue-2' })
    expect(of(messages, 'Children')[0]).toBe('Kids')
    expect(of(messages, 'CHILD')[0]).toBe('KID')
  })

  it('goes by the use of the word in its sentence', async () => {
    expect(of(await check('Sid can shout.', { step: 'blue-2' }), 'shout')).toEqual(['yell'])
    expect(of(await check('Sid had a shout.', { step: 'blue-2' }), 'shout')).toEqual([])
  })

  it('is silent where nothing fits, and says what helps', async () => {
    const [light] = (await check('The light is red. It is a light.')).filter(({ word }) => word === 'light')
    expect(light?.suggestions).toEqual([])
    expect(light?.note).toMatch(
      /^No word fits here: word it anew, keep it for step \S+(?:, where all of it is readable)?, or teach it \(it comes 2 times in this story\)\./,
    )
  })

  it('offers nothing for a little word, and says which step teaches it', async () => {
    const [they] = (await check('They sat.', { step: 'pink-3' })).filter(({ word }) => word === 'They')
    expect(they?.suggestions).toEqual([])
    expect(they?.note).toMatch(
      /^No other word does what this little one does: word it anew, keep it for step \S+(?:, where all of it is readable)?, or teach it \(it comes once in this story\)\./,
    )
  })

  it('is not looked for where nothing is wrong, or where nobody asks', async () => {
    const wordHelp = vi.fn(() => resources.wordHelp?.() ?? Promise.reject(new Error('no words')))
    await check('A fat cat sat.', { resources: { ...resources, wordHelp } })
    await check('A boat.', { resources: { ...resources, wordHelp }, suggest: false })
    expect(wordHelp).not.toHaveBeenCalled()
    await check('A boat.', { resources: { ...resources, wordHelp } })
    expect(wordHelp).toHaveBeenCalledOnce()
  })

  it('is left out where a word may be a name', async () => {
    expect(of(await check('Meg saw Tully. Then Tully ran.'), 'Tully')).toEqual([])
  })
})

describe.each(SEQUENCES)('at every step of %s', (name) => {
  const sequence = testSequence(name)
  const phonics = testPhonics(sequence.accent)
  const fitness = testWords().fitness()
  // Words of all kinds, with unfit ones that lie near in meaning or in sound.
  const TEXT = `The mother had a beautiful rabbit. The children jumped over fences. A soldier shouted at the horse. They were thirsty and drank
water at the river. The duchess brought chicken and biscuits. A hammer fell. The doctor wrote quickly. He threw a bottle. It was a
dangerous night. The donkey pulled carriages. The bullet was thrown. Daughters laughed loudly. The glass of juice broke. We chased the butcher.`

  it('is readable there and fit', async () => {
    let found = 0
    for (const { id } of sequence.steps) {
      const knowledge = knowledgeAt(sequence, id)
      for (const { suggestions } of await check(TEXT, { sequence: name, step: id })) {
        for (const word of suggestions) {
          found++
          for (const part of word.split(' ')) {
            expect(fitness.isFit(part), word).toBe(true)
            expect(isReadable(phonics.read(part.toLowerCase()), knowledge), `${word} at ${id}`).toBe(true)
          }
        }
      }
    }
    expect(found).toBeGreaterThan(100)
  })
})
