// The tests that `npm run mutate` asks: those it names, each file with modules of its own, so that a mutant of a table is seen. What took longest is
// asked last: most mutants are noticed before it comes to that.

import { relative } from 'node:path'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'
import { shared } from './vitest.config.ts'

/** Milliseconds, the most that was seen: a file that failed has stopped early. */
const longest = new Map<string, number>()

class ShortestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    for (const { moduleId, project } of files) {
      const name = `${project.name}:${relative(this.ctx.config.root, moduleId)}`
      const last = this.ctx.cache.getFileTestResults(name)?.duration ?? 0
      longest.set(moduleId, Math.max(longest.get(moduleId) ?? 0, last))
    }
    return files.sort((left, right) => (longest.get(left.moduleId) ?? 0) - (longest.get(right.moduleId) ?? 0))
  }
}

export default defineConfig({
  test: {
    ...shared,
    isolate: true,
    // Code that counts what runs is slow on a busy machine; what does not end is stopped from outside.
    testTimeout: 600_000,
    include: JSON.parse(process.env['MUTATE_TESTS'] ?? '[]') as string[],
    sequence: { sequencer: ShortestFirst },
  },
})
