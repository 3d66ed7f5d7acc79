// A set for a lesson by the command: finds its objects and its words, and has it laid out.

import type { Result } from '../../problem/index.ts'
import { succeed } from '../../problem/index.ts'
import { OBJECT_CAUTION } from '../../report/caution.ts'
import { findStep, knowledgeAt } from '../../sequence/index.ts'
import { layLessonSet, type Prepared, toAskedFor } from '../../sheets/index.ts'
import type { Io } from '../io.ts'
import type { PrintContext } from './context.ts'
import { findObjects } from './objects.ts'
import { layStory } from './stories.ts'
import type { FileStory } from './story.ts'
import { layWords } from './words.ts'

export async function laySet(context: PrintContext, story: FileStory | undefined, io: Io): Promise<Result<Prepared>> {
  const { reader, options } = context
  const objects = await findObjects(context, io)
  if (!objects.ok) return objects
  const strips = story ? layStrips(context, story, io) : succeed(undefined)
  if (!strips.ok) return strips
  return layLessonSet({
    step: findStep(reader.sequence, reader.step)?.id ?? reader.step,
    asked: toAskedFor(options),
    ask: context.ask,
    objects: objects.value,
    caution: OBJECT_CAUTION,
    strips: strips.value,
    layWords(kind, ask, { words, newAtStep }) {
      const { wordsFrom: _, ...named } = options
      const own = words ? { ...named, words: words.join(',') } : { ...options, ...(newAtStep && { newAtStep }) }
      return layWords({ ...context, ask, kind, options: own }, io)
    },
  })
}

/** The story may be of another step than the words, and its own says how large its letters are. */
function layStrips({ wishes, ask }: PrintContext, story: FileStory, io: Io): Result<Prepared> {
  const { pageWords } = knowledgeAt(story.sequence, story.step).limits
  return layStory({ wishes, ask: { ...ask, pageWords }, kind: 'strips', story }, io)
}
