// `readable share` is also what the rule on it asks for, unless the rule is told something of its own.

import { expect, it } from 'vitest'
import { rules } from '../../rules/index.ts'
import { createConfigFinder, resolveSettings, toRuleSettings } from '../../src/config/index.ts'
import { succeed } from '../../src/problem/index.ts'

async function toShare(config: string): Promise<unknown> {
  const finder = createConfigFinder(
    async (path) => (path === '/lane/battledore.yaml' ? succeed(config) : undefined),
    rules,
  )
  const chain = await finder.findFor('/lane/tam.md')
  const settings = resolveSettings({ chain, storyPath: '/lane/tam.md', rules, defaultSequence: 'series' })
  return toRuleSettings(settings)['min-readable-share']?.options?.['share']
}

it('hands the share of the folder to the rule', async () => {
  expect(await toShare('readable share: 95%\n')).toBe(0.95)
})

it('keeps what the rule is told', async () => {
  expect(await toShare('readable share: 95%\nrules:\n  min-readable-share: { share: 0.5 }\n')).toBe(0.5)
})

it("keeps the rule's own share where nobody says one", async () => {
  expect(await toShare('step: pink-1\n')).toBe(0.75)
})
