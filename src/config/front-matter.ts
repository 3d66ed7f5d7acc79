// Reads the front matter of a story: our keys are checked, those of other tools are let through.

import type { Rule } from '../lint/types.ts'
import { createLines } from '../story/lines.ts'
import type { FrontMatter } from '../story/types.ts'
import type { ReadContext } from './context.ts'
import { createToProblemAt } from './context.ts'
import { readKeys } from './keys.ts'
import { readLayer, readList, readValue } from './layer.ts'
import { parseYaml, toWhole } from './parse.ts'
import { storyEntries } from './schema.ts'
import { toPlain } from './tree.ts'
import type { Source, StorySettings } from './types.ts'

const NOTHING: StorySettings = { layer: {}, introduces: [], practises: [], raw: {}, problems: [] }

/** `source.text` is the whole story; places of problems and values count in it. Never throws. */
export async function readFrontMatter(
  source: Source,
  frontMatter: FrontMatter | undefined,
  rules: readonly Rule[],
): Promise<StorySettings> {
  if (!frontMatter) return NOTHING
  const lines = createLines(source.text)
  const offset = frontMatter.valueStart
  const { tree, problems } = await parseYaml(frontMatter.value, createToProblemAt({ source, lines, offset }))
  if (!tree) return { ...NOTHING, problems: toWhole(problems, 'The lines at the top of the story cannot be read') }
  const context: ReadContext = { source, lines, offset, rules, place: 'front matter', problems: [...problems] }
  const entries = readKeys(tree, Object.keys(storyEntries), context)
  const raw = tree.kind === 'map' ? (toPlain(tree) as Record<string, unknown>) : {}
  const title = readValue(entries, 'title', storyEntries.title, context)
  const order = readValue(entries, 'order', storyEntries.order, context)
  return {
    ...(title ? { title } : {}),
    ...(order ? { order } : {}),
    introduces: readList(entries, 'introduces', storyEntries.introduces, context),
    practises: readList(entries, 'practises', storyEntries.practises, context),
    layer: readLayer(entries, context),
    raw,
    problems: context.problems,
  }
}
