// An ending put on without the change that it asks for: `makeing`, `swiming`, `tryed`, `babys`.

import type { Inflection } from './inflect.ts'

/** How the word with this ending is rightly spelt; undefined where nothing is wrong with it. */
export function findRightForm({ stem, ending, change }: Inflection): string | undefined {
  if (change !== 'none') return undefined
  const begins = /^[aeiou]/.test(ending) && ending !== 'es'
  if (begins && /[^aeiou]e$|ue$/.test(stem) && !/^e/.test(ending)) return stem.slice(0, -1) + ending
  if (begins && /^e/.test(ending) && stem.endsWith('e'))
    return /[^aeiou]e$/.test(stem) ? stem + ending.slice(1) : undefined
  if (/[^aeiou]y$/.test(stem)) {
    if (ending === 's') return `${stem.slice(0, -1)}ies`
    if (ending === 'es' || ending === 'ed' || ending === 'er' || ending === 'est')
      return `${stem.slice(0, -1)}i${ending}`
  }
  if (ending === 's' && /(?:s|x|z|ch|sh)$/.test(stem)) return `${stem}es`
  const isClosed = /^[^aeiouy]*(?:qu)?[aeiou][bdfgklmnprtvz]$/.test(stem)
  return begins && isClosed ? `${stem}${stem.at(-1)}${ending}` : undefined
}
