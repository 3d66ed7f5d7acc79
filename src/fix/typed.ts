// A word that a person typed, brought into the form of the one whose place it takes.

import { type FactsOf, toBases, toCaseOf, toForm } from '../words/index.ts'

/** Letters, and what stands between them: `got up`, `mum's`. */
export const isTypedWord = (text: string): boolean => /^\p{L}[\p{L}\p{M}'’-]*(?: \p{L}[\p{L}\p{M}'’-]*)*$/u.test(text)

/** `pal` for `Friends` → `Pals`, for `friend's` → `pal's`. A word typed with a capital keeps it. */
export function shapeTyped(written: string, typed: string, factsOf: FactsOf): string {
  const [, stem = written, owner = ''] = /^(.+)(['’]s)$/i.exec(written) ?? []
  const isOwner = owner !== '' && !/['’]s?$/.test(typed)
  const isMany = isPlural(stem, factsOf) && isSingular(typed, factsOf)
  const shaped = `${isMany ? toForm(typed, 'plural') : typed}${isOwner ? owner : ''}`
  return typed === typed.toLowerCase() ? toCaseOf(written, shaped) : shaped
}

function isPlural(word: string, factsOf: FactsOf): boolean {
  const lower = word.toLowerCase()
  const facts = factsOf(lower)
  return facts?.main === 'noun' && facts.inflection === 'plural' && toBases(lower).length > 0
}

function isSingular(word: string, factsOf: FactsOf): boolean {
  const facts = factsOf(word)
  return facts?.partsOfSpeech.includes('noun') === true && facts.inflection === 'none'
}
