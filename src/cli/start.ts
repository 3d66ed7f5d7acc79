// Hands the process to `main` and leaves with its exit code.

import { createProcessIo } from './io.ts'
import { main } from './main.ts'

export async function start(): Promise<void> {
  process.exitCode = await main(process.argv.slice(2), createProcessIo(process))
  // Left to itself, Node first finishes what V8 does in the background: a tenth of a short run. What is still on its way
  // to a slow reader is waited for.
  if (process.stdout.writableLength === 0 && process.stderr.writableLength === 0) process.exit()
}
