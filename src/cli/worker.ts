// What a worker of `check` runs: the program from compiled code, as the launcher has it, and the part that judges.

import * as nodeModule from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { openCompiled } from './compiled-code.ts'

interface PoolPart {
  judgeOrder(order: unknown): Promise<string>
}

const here = import.meta.dirname ?? dirname(fileURLToPath(import.meta.url))

// The part requires the program, and then gets this one. Node 22 and later keep compiled code for all threads.
if (!('enableCompileCache' in nodeModule)) openCompiled(join(here, 'program.cjs'), join(here, 'program.cache')).run()
const part = nodeModule.createRequire(import.meta.url)('./parts/cli-check-pool.cjs') as PoolPart

export const judgeOrder = (order: unknown): Promise<string> => part.judgeOrder(order)
