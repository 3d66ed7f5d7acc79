// An ending put on without the change that it asks for: `makeing`, `swiming`, `tryed`, `babys`.

import type { Inflection } from './inflect.ts'

/** Things in -o that are written with -es alone; `photos`, `pianos`, `mangos` and `mangoes` are all right. Common knowledge of spelling, no source. */
const WITH_OES: ReadonlySet<string> = new Set('echo hero potato tomato torpedo veto'.split(' '))

/** How the word with this ending is rightly spelt; undefined where nothing is wrong with it. */
export function findRightForm({ stem, ending, change }: Inflection): string | undefined {
  if (change !== 'none') return undefined
  const meetsE = ending === 'ed' || ending === 'er' || ending === 'est'
  if (ending === 'ing' && /[^aeiou]e$|ue$/.test(stem)) return `${stem.slice(0, -1)}ing`
  if (meetsE && stem.endsWith('e')) return /[^aeiou]e$/.test(stem) ? stem + ending.slice(1) : undefined
  if (/[^aeiou]y$/.test(stem)) {
    if (ending === 's') return `${stem.slice(0, -1)}ies`
    if (meetsE || ending === 'es') return `${stem.slice(0, -1)}i${ending}`
  }
  if (ending === 's' && (/(?:s|x|z|ch|sh)$/.test(stem) || WITH_OES.has(stem))) return `${stem}es`
  const isClosed = /^[^aeiouy]*(?:qu)?[aeiou][bdfgklmnprtvz]$/.test(stem)
  return isClosed && (meetsE || ending === 'ing') ? `${stem}${stem.at(-1)}${ending}` : undefined
}

/** `happily` for `happyly`: the y of a known word becomes i before these endings too. */
export function findRightDerived(word: string): string | undefined {
  const [, stem, ending] = /^(.{2,}[^aeiou])y(ly|ness|ful|less|ment)$/.exec(word) ?? []
  return stem === undefined ? undefined : `${stem}i${ending}`
}
