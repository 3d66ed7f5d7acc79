// Makes a new rule whose tests pass at once: `npm run new-rule max-something`. Its folder, a story in which it speaks, and what is generated from the rules.

import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { toCode, toPage, toStory } from './new-rule/template.ts'
import { ROOT } from './root.ts'

const ID = /^(?:no|max|min|require)(?:-[a-z]+)+$/u

const id = process.argv[2] ?? ''
const folder = join(ROOT, 'rules', id)
const story = join(ROOT, 'fixtures', 'stories', `${id}.md`)

if (!ID.test(id))
  fail(`A rule's id begins with no-, max-, min- or require-, and has small letters: no-silly-hat. This is "${id}".`)
if (existsSync(folder)) fail(`There is a rule ${id} already.`)
if (existsSync(story)) fail(`There is a story fixtures/stories/${id}.md already.`)

mkdirSync(folder)
writeFileSync(join(folder, 'index.ts'), toCode(id))
writeFileSync(join(folder, 'README.md'), toPage(id))
writeFileSync(story, toStory())

// Imported only now: both read the rules as they are loaded.
const { toGeneratedFiles } = await import('./generate-rules.ts')
for (const [name, text] of Object.entries(await toGeneratedFiles())) writeFileSync(join(ROOT, 'rules', name), text)
const { toSchemaFiles } = await import('./build/schemas.ts')
for (const [name, text] of Object.entries(toSchemaFiles())) writeFileSync(join(ROOT, 'schemas', name), text)

// The test of the stories writes what must be said beside the new one.
const vitest = join(ROOT, 'node_modules', 'vitest', 'vitest.mjs')
const written = spawnSync(process.execPath, [vitest, 'run', 'tests/lint/stories.test.ts', '-t', `${id}.md`, '-u'], {
  cwd: ROOT,
  encoding: 'utf8',
})
if (written.status !== 0)
  fail(`fixtures/stories/${id}.expected could not be written:\n${written.stdout}${written.stderr}`)

console.log(`Made rules/${id}/ and fixtures/stories/${id}.md.
Write the rule, its page and the story, then run: npm run rules
and: npx vitest run tests/rules.test.ts tests/lint/stories.test.ts -u`)

function fail(message: string): never {
  console.error(message)
  process.exit(2)
}
