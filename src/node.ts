// What the package ships as files, for programs on Node: the lexicon and the built-in sequences, opened.

import { findBuiltInNearest, listBuiltIns, loadBuiltIn as openBuiltIn } from './packaged/data.ts'
import type { Accent } from './phonics/types.ts'
import type { Sequence } from './sequence/types.ts'

export { listBuiltIns, loadLexicon, loadPhonics } from './packaged/data.ts'

/**
 * A built-in sequence, in the accent that it was written for or in another.
 * @throws RangeError where there is none of that name
 */
export function loadBuiltIn(name: string, accent?: Accent): Sequence {
  const found = openBuiltIn(name, accent)
  if (found !== undefined) return found
  const nearest = findBuiltInNearest(name)
  const hint = nearest === undefined ? `There are ${listBuiltIns().join(', ')}.` : `Did you mean \`${nearest}\`?`
  throw new RangeError(`There is no built-in sequence \`${name}\`. ${hint}`)
}
