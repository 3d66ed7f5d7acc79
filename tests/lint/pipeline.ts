// The whole way from Markdown to messages, as the program goes it, for tests on real words.

import { existsSync, readFileSync } from 'node:fs'
import { rules } from '../../rules/index.ts'
import { buildLexicon } from '../../scripts/build/lexicon.ts'
import { readFrontMatter, resolveSettings, toRuleSettings } from '../../src/config/index.ts'
import type { Layer } from '../../src/config/index.ts'
import { createStoryContext } from '../../src/lint/context.ts'
import { runRules } from '../../src/lint/run.ts'
import type { Message, RuleSettings } from '../../src/lint/types.ts'
import { createPhonics, openLexicon } from '../../src/phonics/index.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { createLines, readStory } from '../../src/story/index.ts'

const BUILT = new URL('../../dist/lexicon.bin', import.meta.url)
const lexicon = openLexicon(existsSync(BUILT) ? readFileSync(BUILT) : buildLexicon().bytes)
export const phonics = createPhonics(lexicon, 'general-american')
export const series = readSequence('series')

export interface Checked {
  readonly messages: readonly Message[]
  /** `1:5-1:9` for an offset and its end. */
  toPlaceText(message: Message): string
}

/** Checks a story with its front matter; `flags` win over it, `more` over the settings of rules. */
export async function check(text: string, flags: Layer = {}, more: RuleSettings = {}): Promise<Checked> {
  const path = 'story.md'
  const story = readStory(text)
  const { layer, raw, problems } = await readFrontMatter({ path, text }, story.frontMatter, rules)
  if (problems.length > 0) throw new Error(problems.map(({ message }) => message).join('\n'))
  const chain = { folders: [], problems: [] }
  const settings = resolveSettings({ chain, storyPath: path, frontMatter: layer, flags, rules, defaultSequence: 'series' })
  const { reducedVowels } = settings
  const sequence = reducedVowels.value === undefined ? series : { ...series, reducedVowels: reducedVowels.value }
  const names = settings.names.map(({ value }) => value)
  const context = createStoryContext(story, { phonics, sequence, step: settings.step.value ?? 'pink-1', names }, raw)
  const lines = createLines(text)
  return {
    messages: runRules(context, rules, { ...toRuleSettings(settings), ...more }),
    toPlaceText: ({ start, end }) => [start, end].map((offset) => Object.values(lines.toPoint(offset)).join(':')).join('-'),
  }
}

function readSequence(name: string): Sequence {
  const yaml = readFileSync(new URL(`../../src/sequence/built-in/${name}.yaml`, import.meta.url), 'utf8')
  const { sequence, problems } = loadSequence(yaml, { phonicsFor: (accent) => createPhonics(lexicon, accent) })
  if (sequence === undefined || problems.length > 0) throw new Error(problems.map(({ line, message }) => `${line}: ${message}`).join('\n'))
  return sequence
}
