// `npm run test:slow`: what takes minutes by itself, run by .ci/run and not by `npm test`.

import { defineConfig } from 'vitest/config'
import { SLOW, shared } from './vitest.config.ts'

export default defineConfig({ test: { ...shared, include: SLOW } })
