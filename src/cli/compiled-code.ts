// The program from V8's compiled code, on a Node that keeps none itself (before 22).
//
// Half of a short run is V8 compiling the program. `npm run compile` leaves its compiled code beside it; V8 itself
// refuses it on another version, and then the text is compiled as always.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname } from 'node:path'
import type * as v8 from 'node:v8'
import { Script } from 'node:vm'

type Wrapper = (exports: object, require: NodeJS.Require, module: object, filename: string, folder: string) => void

export interface Compiled {
  readonly script: Script
  /** Runs the module, and gives what it exports. */
  run(): Record<string, unknown>
}

/**
 * How much of a function must have run before V8 makes the fastest code of it; 67,584 if not told. Most functions here meet
 * all that they will ever meet only after some stories, and code that was made before is thrown away and made again: of a
 * check of 200 stories, a third of the processor's time.
 */
const INTERRUPT_BUDGET = 1_000_000

/**
 * How many times larger the space for new objects becomes when it is full of living ones; twice if not told. It begins with
 * 1 MB, and most of what a check makes at first (the lexicon, words) stays: what stays is copied each time, and many small
 * collections make V8 believe that it is time for a great one. A twentieth of the processor's time.
 */
const GROWTH = 4

/**
 * For a Node that keeps no compiled code itself. Living objects are few, so that other threads that help to copy them take more of
 * the processor's time than they save: 3 % of a check of 200 stories, and as much from what a second worker has.
 */
export const tuneV8 = (): void =>
  findV8().setFlagsFromString(
    `--interrupt-budget=${INTERRUPT_BUDGET} --semi-space-growth-factor=${GROWTH} --no-parallel-scavenge`,
  )

type V8 = Pick<typeof v8, 'setFlagsFromString'>
interface OldProcess {
  noDeprecation?: boolean | undefined
  binding(name: 'v8'): V8
}

/**
 * `node:v8` loads Node's streams for its heap snapshots: 3 ms, and a short run needs neither. Node 20, which alone comes here and changes no more,
 * has the same function without them, and warns of the way to it.
 */
function findV8(): V8 {
  const old = process as unknown as OldProcess
  const { noDeprecation } = old
  old.noDeprecation = true
  try {
    return old.binding('v8')
  } catch {
    return createRequire(import.meta.url)('node:v8') as V8
  } finally {
    old.noDeprecation = noDeprecation
  }
}

export function openCompiled(filename: string, cache: string): Compiled {
  // Before the script: V8 takes compiled code only under the flags that it was made with.
  tuneV8()
  // The program is ASCII: read so, no letter need be looked at.
  const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(filename, 'latin1')}\n})`
  const cachedData = readIfThere(cache)
  const script = new Script(source, { filename, ...(cachedData ? { cachedData } : {}) })
  return {
    script,
    run() {
      const require = createRequire(filename)
      const module = { id: filename, filename, loaded: true, exports: {} }
      // The parts require the program: they must get this one, not load it anew.
      require.cache[filename] = module as unknown as NodeJS.Module
      const wrapper = script.runInThisContext() as Wrapper
      wrapper(module.exports, require, module, filename, dirname(filename))
      return module.exports
    },
  }
}

function readIfThere(path: string): Buffer | undefined {
  try {
    return readFileSync(path)
  } catch {
    return undefined
  }
}
