// The executable: runs the program from its compiled code where this Node can use it, else from its text.
//
// Half of a short run is V8 compiling the bundle. `npm run compile` leaves its compiled code beside it; V8 itself
// refuses it on another version, and then the text is compiled as always.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Script } from 'node:vm'

type Wrapper = (exports: object, require: NodeJS.Require, module: object, filename: string, folder: string) => void

const here = dirname(fileURLToPath(import.meta.url))
const filename = join(here, 'program.cjs')

function readCache(): Buffer | undefined {
  try {
    return readFileSync(join(here, 'program.cache'))
  } catch {
    return undefined
  }
}

const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(filename, 'utf8')}\n})`
const cachedData = readCache()
const script = new Script(source, { filename, ...(cachedData ? { cachedData } : {}) })
const program = script.runInThisContext() as Wrapper
const module = { exports: {} }
program(module.exports, createRequire(filename), module, filename, here)
if (process.env['BATTLEDORE_WRITE_CACHE']) {
  process.on('exit', () => {
    createRequire(filename)('node:fs').writeFileSync(process.env['BATTLEDORE_WRITE_CACHE'], script.createCachedData())
  })
}
