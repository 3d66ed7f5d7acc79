// Makes the folder of a new rule: `npm run new-rule max-word-vowels`.

import { existsSync, mkdirSync, writeFileSync } from 'node:fs'

const ID = /^(?:no|max|min|require)(?:-[a-z]+)+$/u

const id = process.argv[2] ?? ''
const folder = new URL(`../rules/${id}/`, import.meta.url)

if (!ID.test(id))
  fail(`A rule's id begins with no-, max-, min- or require-, and has small letters: no-silly-hat. This is "${id}".`)
if (existsSync(folder)) fail(`There is a rule ${id} already.`)

mkdirSync(folder)
writeFileSync(new URL('index.ts', folder), toCode())
writeFileSync(new URL('README.md', folder), toPage())
const { toGeneratedFiles } = await import('./generate-rules.ts')
for (const [name, text] of Object.entries(await toGeneratedFiles())) writeFileSync(new URL(`../${name}`, folder), text)
console.log(`Made rules/${id}/. Write the rule and its page, then run: npx vitest run tests/rules.test.ts`)

function fail(message: string): never {
  console.error(message)
  process.exit(2)
}

function toCode(): string {
  return `// One sentence on what this rule finds.

import { toQuoted } from '../../src/lint/wording.ts'
import { defineRule } from '../../src/lint/rule.ts'

export default defineRule({
  id: '${id}',
  summary: 'One line for the index.',
  severity: 'warning',
  options: {},
  messages: { found: '{word} is what this rule looks for' },
  create: ({ report }) => ({
    word: (word) => {
      if (word.text !== 'TODO') return
      report({ at: word, word, messageId: 'found', data: { word: toQuoted(word.text) }, note: 'What to do next.' })
    },
  }),
})
`
}

function toPage(): string {
  return `# ${id}

One line for the index.

## Why it matters

## Example

## Options

None.

## Examples

### A problem

\`\`\`markdown problem step=pink-2
\`\`\`

\`\`\`text
1:1-1:1 message
\`\`\`

### Fine

\`\`\`markdown step=pink-2
\`\`\`
`
}
