// The compiled executable: runs the program from compiled code, Node's own keeping where it has one (22 and later), else ours.

import * as nodeModule from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { openCompiled } from './compiled-code.ts'

interface Program {
  start(): Promise<void>
}

const here = import.meta.dirname ?? dirname(fileURLToPath(import.meta.url))
const filename = join(here, 'program.cjs')

/** Missing in Node 20, whose types these are. */
const { enableCompileCache } = nodeModule as { enableCompileCache?: () => unknown }

function load(): Program {
  if (!enableCompileCache) return openCompiled(filename, join(here, 'program.cache')).run() as unknown as Program
  enableCompileCache()
  return nodeModule.createRequire(filename)(filename) as Program
}

void load().start()
