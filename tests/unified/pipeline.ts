// The whole way from Markdown to messages, as the program goes it, for tests on real words.

import { readFileSync } from 'node:fs'
import { rules } from '../../rules/index.ts'
import { checkStory } from '../../src/check/check-story.ts'
import { isChecked } from '../../src/check/result.ts'
import type { Layer } from '../../src/config/index.ts'
import type { Message } from '../../src/lint/types.ts'
import { loadTagger } from '../../src/phonics/heteronyms/tagger.ts'
import { succeed, toProblemLine } from '../../src/problem/index.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import { type Fitness, openWordData, type WordData, type WordFacts } from '../../src/words/index.ts'
import { testLexicon, testPhonics } from '../lexicon-for-tests.ts'
import { type BuiltIn, readBuiltIn } from '../sequence/engine.ts'

const resources = {
  phonicsFor: testPhonics,
  sequence: (name: string) => Promise.resolve(succeed(readSequence(name as BuiltIn))),
  tagger: loadTagger,
  wordHelp: () =>
    Promise.resolve({
      factsOf,
      fitnessFor,
      suggesterFor: () => {
        throw new Error('no words are proposed here')
      },
    }),
}

let data: WordData | undefined

/** From the built data of the words: run `npm run compile` first. */
function openWords(): WordData {
  data ??= openWordData(readFileSync(new URL('../../dist/words.bin', import.meta.url)), testLexicon().size)
  return data
}

const fitnessFor = ({ unfit, fit }: { unfit: readonly string[]; fit: readonly string[] }): Fitness =>
  openWords().fitness({ add: unfit, clear: fit })

function factsOf(word: string): WordFacts | undefined {
  const place = testLexicon().indexOf(word)
  return place < 0 ? undefined : openWords().facts.factsAt(place)
}

export interface Checked {
  readonly messages: readonly Message[]
  /** `1:5-1:9` for an offset and its end. */
  toPlaceText(message: Message): string
}

/** Checks a story with its front matter; `flags` win over it. Fails where the story cannot be checked at all. */
export async function check(source: string, flags: Layer = {}): Promise<Checked> {
  const chain = { folders: [], problems: [] }
  const result = await checkStory({ path: 'story.md', source, storyPath: 'story.md', chain, flags, rules, resources })
  if (!isChecked(result)) throw new Error(result.problems.map(toProblemLine).join('\n'))
  const { messages, lines } = result
  const toText = (offset: number): string => Object.values(lines.toPoint(offset)).join(':')
  return { messages, toPlaceText: ({ start, end }) => `${toText(start)}-${toText(end)}` }
}

const loaded = new Map<string, ReturnType<typeof loadSequence>>()

/** The built-in sequence, from its YAML, so that a change to it is tested before it is compiled. */
export function readSequence(name: BuiltIn) {
  const { sequence, problems } = loaded.get(name) ?? loadSequence(readBuiltIn(name), { phonicsFor: testPhonics })
  if (sequence === undefined) throw new Error(problems.map(({ message }) => message).join('\n'))
  loaded.set(name, { sequence, problems })
  return sequence
}
