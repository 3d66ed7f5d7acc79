// What may be proposed where the settings of a folder add to the built-in list or clear words of it: asked at every door.

import type { Settings } from '../config/index.ts'
import type { Fitness, WordData } from '../words/index.ts'
import type { Io } from './io.ts'
import { findSettings } from './list-reader.ts'

/** Undefined where the built-in list holds alone. */
export function toOwnFitness({ unfitWords, fitWords }: Settings, data: WordData): Fitness | undefined {
  const [add, clear] = [unfitWords, fitWords].map((words) => words.map(({ value }) => value))
  return unfitWords.length + fitWords.length > 0
    ? data.fitness({ ...(add && { add }), ...(clear && { clear }) })
    : undefined
}

/** By the settings of the folder that the program runs in. What is wrong with them is told by who reads them for their own sake. */
export async function findOwnFitness(data: WordData, io: Io): Promise<Fitness | undefined> {
  const settings = await findSettings({}, io)
  return settings.ok ? toOwnFitness(settings.value, data) : undefined
}
