// `npm run test:browser`: the desk driven in real browsers, run by .ci/run and not by `npm test`.

import { defineConfig } from 'vitest/config'
import { BROWSER, shared } from './vitest.config.ts'

// Three at a time: browsers wait more than they work.
export default defineConfig({ test: { ...shared, maxWorkers: 3, include: BROWSER } })
