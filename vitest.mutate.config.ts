// The tests that `npm run mutate` asks: those it names, each file with modules of its own, so that a mutant of a table is seen.

import { defineConfig } from 'vitest/config'
import { shared } from './vitest.config.ts'

export default defineConfig({
  test: { ...shared, isolate: true, include: JSON.parse(process.env['MUTATE_TESTS'] ?? '[]') as string[] },
})
