// Two rules for the tests of configuration, which never needs them to do anything.

import type { Rule } from '../../src/lint/types.ts'

function toRule(id: string, severity: Rule['severity'], options: Rule['options']): Rule {
  return { id, severity, options, summary: id, messages: {}, create: () => ({}) }
}

export const rules: readonly Rule[] = [
  toRule('no-numeral', 'error', {}),
  toRule('max-sentence-words', 'warning', {
    max: { type: 'number', default: 8, minimum: 1, maximum: 40, description: 'words' },
    except: { type: 'strings', default: [], description: 'words that do not count' },
  }),
]
