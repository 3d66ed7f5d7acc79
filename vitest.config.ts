import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    pool: 'threads',
    isolate: false,
    // Real processes and a build share two cores.
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
})
