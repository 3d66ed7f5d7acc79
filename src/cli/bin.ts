// The executable: hands the process to `main` and sets the exit code.

import { createProcessIo } from './io.ts'
import { main } from './main.ts'

void main(process.argv.slice(2), createProcessIo(process)).then((code) => {
  process.exitCode = code
})
