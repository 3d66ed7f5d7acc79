import { configDefaults, defineConfig } from 'vitest/config'

/** The hook in the real pre-commit framework, the recipes for engines, the accuracy of the whole dictionary and of the British voice, a new rule in a copy, each page of each bank: long runs each. */
export const SLOW = [
  'tests/cli/pre-commit.test.ts',
  'tests/cli/stream/engines.test.ts',
  'tests/phonics/alignment.test.ts',
  'tests/phonics/synthesiser.test.ts',
  'tests/print/bank-page.test.ts',
  'tests/scripts/new-rule.test.ts',
]

/** The page in Chromium and Firefox: no teacher needs two browsers to know that a change holds. */
export const BROWSER = [
  'tests/desk/browser/**/*.test.ts',
  'tests/desk/core/worker.test.ts',
  'tests/desk/folder/in-browser.test.ts',
]

export const shared = {
  pool: 'threads',
  isolate: false,
  // Two, also where vitest would leave one core free: nobody else waits for it.
  maxWorkers: 2,
  // Real processes and a build share two cores.
  testTimeout: 60_000,
  hookTimeout: 120_000,
} as const

export default defineConfig({
  test: { ...shared, include: ['tests/**/*.test.ts'], exclude: [...configDefaults.exclude, ...SLOW, ...BROWSER] },
})
