// A switch in a comment does not say what was meant, so it does nothing.

import { defineRule } from '../../src/lint/rule.ts'

export default defineRule({
  id: 'no-unknown-switch',
  summary: 'A switch in a comment that is misspelt, or names a rule that does not exist.',
  severity: 'warning',
  options: {},
  messages: { problem: '{text}' },
  create: ({ report }) => ({
    switchProblem: (problem) =>
      report({
        at: problem,
        messageId: 'problem',
        data: { text: problem.message },
        note: 'It does nothing as it stands: mend it, or take it out.',
        expected: problem.expected,
      }),
  }),
})
