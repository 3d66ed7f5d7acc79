// Hands the process to `main` and leaves with its exit code.

import { createProcessIo } from './io.ts'
import { main } from './main.ts'

export async function start(): Promise<void> {
  const io = createProcessIo(process)
  process.exitCode = await main(process.argv.slice(2), io)
  // Left to itself, Node first finishes what V8 does in the background: a tenth of a short run. What is still on its way
  // to a slow reader is waited for.
  if (!io.stdout.isPending && !io.stderr.isPending) process.exit()
}
