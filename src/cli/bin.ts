// The executable: hands the process to `main` and leaves with its exit code.

import { createProcessIo } from './io.ts'
import { main } from './main.ts'

void main(process.argv.slice(2), createProcessIo(process)).then((code) => {
  process.exitCode = code
  // Left to itself, Node first finishes what V8 does in the background: a tenth of a short run. What is still on its way
  // to a slow reader is waited for.
  if (process.stdout.writableLength === 0 && process.stderr.writableLength === 0) process.exit()
})
