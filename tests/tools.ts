// Tests that need a program from outside the project: left out where it is missing, and said so.

import { spawnSync } from 'node:child_process'
import { describe } from 'vitest'

const hasProgram = (name: string): boolean => spawnSync('sh', ['-c', `command -v ${name}`]).status === 0

/** On a busy machine a browser now and then takes longer than any wait; what fails three times is broken. */
const BROWSERS = /chromium|firefox/

/** `program` is also the name of Debian's package unless `debian` names it. */
export function describeWith(program: string, title: string, tests: () => void, debian = program): void {
  const isThere = hasProgram(program)
  const notice = `LEFT OUT: \`${program}\` is missing; apt-get install ${debian}`
  if (!isThere) process.stderr.write(`${title}: ${notice}\n`)
  const retry = BROWSERS.test(program) ? 2 : 0
  describe.runIf(isThere)(isThere ? title : `${title} (${notice})`, { retry }, tests)
}
