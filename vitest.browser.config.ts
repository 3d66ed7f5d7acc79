// `npm run test:browser`: the desk driven in real browsers, run by .ci/run and not by `npm test`.

import { defineConfig } from 'vitest/config'
import { BROWSER, shared } from './vitest.config.ts'

export default defineConfig({ test: { ...shared, include: BROWSER } })
