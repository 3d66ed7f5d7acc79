// Checks stories for as long as a watcher or an editor runs, and notices when a config or a sequence has changed.

import { resolve } from 'node:path'
import { rules } from '../../rules/index.ts'
import type { CheckInput } from '../check/check-story.ts'
import { createHeldCheck, type HeldCheck } from '../check/held-check.ts'
import { type ConfigChain, type ConfigFinder, createConfigFinder, findIgnoring, type Layer } from '../config/index.ts'
import { isSequencePath } from '../files/index.ts'
import type { Resources } from '../resources/types.ts'
import type { Host, OpenStory } from '../server/host.ts'
import { toSlashes } from './files/shown.ts'
import { createTextFiles } from './files/text-files.ts'
import type { Io } from './io.ts'
import { createResources } from './resources.ts'

/** The part of the editor's host that a watcher needs too. */
export interface Checker extends Pick<Host, 'check' | 'prepare' | 'findChain' | 'resources' | 'refresh'> {
  /** Configs and sequences asked for so far, whether they are there or not. */
  sources(): readonly string[]
  /** Those of them that have changed since. */
  changedSources(): readonly string[]
}

export interface CheckerOptions {
  readonly flags?: Layer
  /** The one config file to use, as given. */
  readonly config?: string | undefined
  /** Whether messages say what could stand there instead. */
  readonly suggest?: boolean
}

/** How many stories are held: those between which somebody goes to and fro. */
const MOST_HELD = 4

export function createChecker(io: Io, { flags = {}, config, suggest = false }: CheckerOptions = {}): Checker {
  const base = createResources(io)
  const stamps = new Map<string, string>()
  let sequences = base
  let configs = createConfigs()
  const held = new Map<string, HeldCheck>()

  function note(path: string): void {
    if (!stamps.has(path)) stamps.set(path, toStamp(path, io))
  }
  function createConfigs(): ConfigFinder {
    const { read, show } = createTextFiles(io)
    const noted = (path: string) => {
      note(path)
      return read(path)
    }
    const only = config === undefined ? {} : { only: toSlashes(resolve(io.cwd, config)) }
    return createConfigFinder(noted, rules, { ...only, show })
  }
  const resources: Resources = {
    ...base,
    sequence: (name, accent) => {
      if (isSequencePath(name)) note(resolve(io.cwd, name))
      return sequences.sequence(name, accent)
    },
  }
  const changedSources = () => [...stamps].filter(([path, stamp]) => toStamp(path, io) !== stamp).map(([path]) => path)
  const toInput = (story: OpenStory, chain: ConfigChain): CheckInput => ({
    ...story,
    chain,
    flags,
    rules,
    resources,
    suggest,
  })

  /** A check, a hover, a completion and fixes stand on the same. */
  function hold(storyPath: string): HeldCheck {
    const one = held.get(storyPath) ?? createHeldCheck()
    held.delete(storyPath)
    held.set(storyPath, one)
    if (held.size > MOST_HELD) held.delete([...held.keys()][0] ?? '')
    return one
  }

  return {
    resources,
    findChain: (storyPath) => configs.findFor(storyPath),
    async check(story) {
      const chain = await configs.findFor(story.storyPath)
      if (findIgnoring(chain, story.storyPath)) return undefined
      return hold(story.storyPath).check(toInput(story, chain))
    },
    prepare: async (story) => hold(story.storyPath).prepare(toInput(story, await configs.findFor(story.storyPath))),
    sources: () => [...stamps.keys()],
    changedSources,
    refresh() {
      if (changedSources().length === 0) return false
      stamps.clear()
      held.clear()
      sequences = createResources(io)
      configs = createConfigs()
      return true
    },
  }
}

/** Changes whenever the file does; empty where there is none. */
export function toStamp(path: string, io: Io): string {
  try {
    const status = io.fs.statSync(path, { throwIfNoEntry: false })
    return status ? `${status.mtimeMs}:${status.size}:${status.ino}` : ''
  } catch {
    return ''
  }
}
