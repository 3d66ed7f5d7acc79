// The one way to write a rule: data plus a visitor, with options and messages checked by the compiler.

import type { MessageTexts, OptionSpecs, Rule } from './types.ts'

/**
 * Defines a rule. Message ids, the data that fills a message and the types of the options all follow from the data,
 * so that a misspelt one does not compile.
 */
export function defineRule<const Specs extends OptionSpecs, const Texts extends MessageTexts>(
  rule: Rule<Specs, Texts>,
): Rule {
  return rule
}
