// Whole stories with all that must be said about them beside them: `name.md` and `name.expected`.
// After a change that is meant, `npx vitest run tests/lint/stories.test.ts -u` writes the files anew; read what changed.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { rules } from '../../rules/index.ts'
import { MESSAGE_REASONS } from '../../src/lint/reasons.ts'
import { ROOT } from '../console.ts'
import { check } from '../unified/pipeline.ts'

const FOLDER = join(ROOT, 'fixtures', 'stories')
const findFiles = (ending: string): readonly string[] => readdirSync(FOLDER).filter((name) => name.endsWith(ending))

test.each(findFiles('.md'))('%s', async (name) => {
  const { messages, toPlaceText } = await check(readFileSync(join(FOLDER, name), 'utf8'))
  const lines = messages.flatMap((message) => [
    `${toPlaceText(message)} ${message.severity}: ${message.message} [${message.rule}] page ${message.page}`,
    `    ${message.note}`,
  ])
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(join(FOLDER, name.replace(/md$/u, 'expected')))
})

test('every reason of a message is one that other programs are told of', async () => {
  const said = new Set<string>()
  for (const name of findFiles('.md'))
    for (const { reason } of (await check(readFileSync(join(FOLDER, name), 'utf8'))).messages)
      if (reason !== undefined) said.add(reason)
  expect([...said].filter((reason) => !MESSAGE_REASONS.some((known) => known === reason))).toEqual([])
  expect(said.size).toBeGreaterThan(20)
})

test('every rule speaks in some story', () => {
  const expected = findFiles('.expected').map((name) => readFileSync(join(FOLDER, name), 'utf8'))
  const silent = rules.filter(({ id }) => !expected.some((text) => text.includes(`[${id}]`)))
  expect(silent.map(({ id }) => id)).toEqual([])
})
