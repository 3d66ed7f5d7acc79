// What a new folder is set up for: as the flags say, else as the settings that hold there already.

import { relative } from 'node:path'
import { DEFAULT_SEQUENCE } from '../../check/read-text.ts'
import { CONFIG_NAMES, createConfigFinder, resolveSettings } from '../../config/index.ts'
import type { Accent } from '../../phonics/types.ts'
import { toSlashes } from '../files/shown.ts'
import { createTextFiles } from '../files/text-files.ts'
import type { Io } from '../io.ts'

interface Asked {
  readonly sequence?: string
  readonly accent?: Accent
  readonly force?: boolean
}

interface Settled {
  /** As somebody in the current folder names it. */
  readonly sequence: string
  /** As a file in the new folder names it. */
  readonly written: string
  readonly accent?: Accent
}

/** Settings that are kept have the last word, since the check of the example follows them; by force they are written anew. */
export async function settle(folder: string, { sequence, accent, force }: Asked, io: Io): Promise<Settled> {
  if (force) {
    const plain = sequence ?? DEFAULT_SEQUENCE
    return { sequence: plain, written: plain, ...(accent && { accent }) }
  }
  const { read, show } = createTextFiles(io)
  const storyPath = `${toSlashes(folder)}/stories/story.md`
  const chain = await createConfigFinder(read, [], { show }).findFor(storyPath)
  const found = resolveSettings({ chain, storyPath, rules: [], defaultSequence: DEFAULT_SEQUENCE })
  const isKept = CONFIG_NAMES.some((name) => io.fs.existsSync(`${folder}/${name}`))
  const value = isKept ? found.sequence.value : (sequence ?? found.sequence.value)
  const said = isKept ? (found.accent.value ?? accent) : (accent ?? found.accent.value)
  const isFromFile = value !== sequence && /[\\/]/.test(value)
  const written = isFromFile ? toSlashes(relative(folder, value)) : value
  return { sequence: value, written, ...(said && { accent: said }) }
}
