// Where a story is judged: here, or by workers on all cores.

import { rules } from '../../../rules/index.ts'
import { checkStory } from '../../check/check-story.ts'
import { isChecked, toOutlined } from '../../check/result.ts'
import type { Layer } from '../../config/index.ts'
import type { Result } from '../../report/reporter.ts'
import type { ReaderExtra } from '../../sequence/reader.ts'
import type { WordSet } from '../../usage/count.ts'
import type { Io } from '../io.ts'
import { createResources } from '../resources.ts'
import type { Task, TaskOptions } from './task.ts'

/** What holds for all stories of a run; plain values, since workers are told of it. */
export interface RunSettings extends TaskOptions {
  readonly flags: Layer
  readonly reader?: ReaderExtra
  /** Whether the reports show what could stand there instead. */
  readonly suggest?: boolean
  /** What earlier books of a shelf have used. No plain value: with it, one judge does all the work. */
  readonly findEarlierWords?: (storyPath: string) => WordSet
}

export interface Judge {
  /** How many stories it is well to hand over before the first is back. */
  readonly ahead: number
  judge(task: Task): Promise<Result>
  end(): Promise<void>
}

export function createJudge({ flags, reader, suggest, findEarlierWords }: RunSettings, io: Io): Judge {
  const resources = createResources(io)
  const more = { ...(reader && { reader }), ...(suggest && { suggest }) }
  return {
    ahead: 1,
    async judge(task) {
      const earlier = findEarlierWords ? { earlierWords: findEarlierWords(task.storyPath) } : {}
      const result = await checkStory({ ...task, flags, rules, resources, ...more, ...earlier })
      return isChecked(result) ? toOutlined(result) : result
    },
    end: () => Promise.resolve(),
  }
}
