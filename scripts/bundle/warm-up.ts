// Leaves V8's compiled code of the program beside it, as it stands after checking some stories: functions that ran are
// in it. Run by `npm run compile`, on a Node that keeps no compiled code itself:
//
//   node --import tsx scripts/bundle/warm-up.ts check STORY ...

import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { openCompiled } from '../../src/cli/compiled-code.ts'
import { ROOT } from '../root.ts'

const cache = join(ROOT, 'dist', 'program.cache')
const { script, run } = openCompiled(join(ROOT, 'dist', 'program.cjs'), cache)
process.on('exit', () => writeFileSync(cache, script.createCachedData()))
const { start } = run() as { start(): Promise<void> }
await start()
