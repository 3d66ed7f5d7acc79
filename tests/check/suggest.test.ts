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
    readonly suggest?: boolean | 'careful'
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
    const messages = await check('Tam had a big boat. The rabbit sat. Meg had boats.', { step: 'blue-2' })
    expect(of(messages, 'rabbit')).toEqual(expect.arrayContaining(['cat']))
    for (const word of of(messages, 'boats')) expect(word).toMatch(/s$/)
    expect(of(messages, 'boats').length).toBeGreaterThan(0)
  })

  it('is in the case of the word', async () => {
    const messages = await check('Rabbits ran. BOAT!', { step: 'blue-2' })
    for (const word of of(messages, 'Rabbits')) expect(word).toMatch(/^[A-Z][a-z]+s$/)
    for (const word of of(messages, 'BOAT')) expect(word).toBe(word.toUpperCase())
  })

  it('goes with the article before it', async () => {
    const messages = await check('It is an apple. It is a garden.')
    for (const word of of(messages, 'apple')) expect(word).toMatch(/^[aeiou]/)
    for (const word of of(messages, 'garden')) expect(word).toMatch(/^[^aeiou]/)
  })

  it('goes by the use of the word in its sentence', async () => {
    const doing = of(await check('Sid can play.'), 'play')
    const naming = of(await check('Sid had a play.'), 'play')
    expect(doing).not.toEqual(naming)
  })

  it('asks the tagger only where it is asked to be careful', async () => {
    const tagger = vi.fn(() => resources.tagger())
    await check('The sleep is big. Home ran play.', { resources: { ...resources, tagger } })
    expect(tagger).not.toHaveBeenCalled()
    await check('Quick play is fun. Light hats.', { resources: { ...resources, tagger }, suggest: 'careful' })
    expect(tagger).toHaveBeenCalled()
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
          expect(fitness.isFit(word), word).toBe(true)
          expect(isReadable(phonics.read(word.toLowerCase()), knowledge), `${word} at ${id}`).toBe(true)
        }
      }
    }
    expect(found).toBeGreaterThan(100)
  })
})
