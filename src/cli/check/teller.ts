// Tells what could not be checked, each mistake once: on standard error, or among the lines of the report for editors.

import type { UncheckedStory } from '../../check/result.ts'
import { createOnce } from '../../report/failure.ts'
import { complain } from '../command.ts'
import type { Io } from '../io.ts'

export interface Teller {
  /** `battledore.yaml:3:1: error: …` */
  config(line: string): void
  story(result: UncheckedStory): void
}

/** With `hasLines`, the report itself says why a story could not be checked, and an editor would misread a second line. */
export function createTeller(hasLines: boolean, io: Io): Teller {
  const isNew = createOnce()
  return {
    config: (line) => (hasLines ? io.stdout.write(`${line} [config]\n`) : complain(io, line)),
    story({ failures }) {
      if (!hasLines) for (const failure of failures) if (isNew(failure)) complain(io, failure)
    },
  }
}
