// A switch in a comment silences nothing: what it was there for is gone.

import { defineRule } from '../../src/lint/rule.ts'

export default defineRule({
  id: 'no-unused-switch',
  summary: 'A switch in a comment that silences nothing.',
  severity: 'warning',
  options: {},
  messages: { problem: '{text}' },
  create: ({ report }) => ({
    switchProblem: (problem) =>
      report({
        at: problem,
        messageId: 'problem',
        data: { text: problem.message },
        note: 'Take it out, so that it cannot hide a mistake of tomorrow.',
        expected: problem.expected,
      }),
  }),
})
