// What a new rule begins with: it finds one word that no story has, so that all its tests pass before the first change.

const WORD = 'moppet'

export function toCode(id: string): string {
  return `// One sentence on what this rule finds.

import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted } from '../../src/lint/wording.ts'

export default defineRule({
  id: '${id}',
  summary: 'One line for the index.',
  severity: 'warning',
  options: {},
  messages: { found: '{word} is what this rule looks for' },
  create: ({ report }) => ({
    word: (word) => {
      if (word.text.toLowerCase() !== '${WORD}') return
      report({ at: word, word, messageId: 'found', data: { word: toQuoted(word.text) }, note: 'Say what to do next.' })
    },
  }),
})
`
}

export function toPage(id: string): string {
  return `# ${id}

One line for the index.

## Why it matters

Say what a child or a teacher would stumble over.

## At a glance

\`\`\`text
Sid has a ${WORD}.
          ~~~~~~
          what this rule looks for
\`\`\`

## Options

None.

## Examples

A problem:

\`\`\`markdown problem step=pink-6
Sid has a ${WORD}.
\`\`\`

\`\`\`message
1:11-1:17 \`${WORD}\` is what this rule looks for
\`\`\`

Nothing to say:

\`\`\`markdown step=pink-6
Sid has a hat.
\`\`\`
`
}

/** The story in which the rule speaks. */
export function toStory(): string {
  return `---
title: A Name for a New Rule
step: pink-6
---

Sid has a ${WORD}.
`
}
