// Whole stories with all that must be said about them beside them: `name.md` and `name.expected`.
// After a change that is meant, `npx vitest run tests/lint/stories.test.ts -u` writes the files anew; read what changed.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { rules } from '../../rules/index.ts'
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

test('every rule speaks in some story', () => {
  const expected = findFiles('.expected').map((name) => readFileSync(join(FOLDER, name), 'utf8'))
  const silent = rules.filter(({ id }) => !expected.some((text) => text.includes(`[${id}]`)))
  expect(silent.map(({ id }) => id)).toEqual([])
})
