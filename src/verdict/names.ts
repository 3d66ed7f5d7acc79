// Which words of a story are names that it allows.

import { toStraight } from '../apostrophe.ts'
import { findOwner } from './apostrophe.ts'

/**
 * Whether a word is one of the names, or a word of one with several words (`Old Ned`). Whole words only.
 * A name written with a capital needs its capital in the story (`Tam` or `TAM`); one written small matches any case.
 * An owner's ending is no part of the name: see `findNamedOwner`.
 */
export function isAllowedName(word: string, names: readonly string[]): boolean {
  const straight = toStraight(word)
  return names.some((name) =>
    toStraight(name)
      .split(/\s/)
      .some((part) => isSameName(straight, part)),
  )
}

/** The name that owns something: `Tam` of `Tam's`. */
export function findNamedOwner(word: string, names: readonly string[]): string | undefined {
  const owner = findOwner(word)
  return owner !== undefined && isAllowedName(owner, names) ? owner : undefined
}

/**
 * Marks the running words of a sentence that are part of an allowed name, an owner's ending or not.
 * Here a name of several words counts only where all its words stand together, so that `Old Ned` does not let through
 * every `Old`.
 */
export function markNames(words: readonly string[], names: readonly string[]): readonly boolean[] {
  const marked = words.map(() => false)
  for (const name of names) {
    const parts = toStraight(name)
      .split(/\s/)
      .filter((part) => part !== '')
    for (let start = 0; start + parts.length <= words.length; start++) {
      if (parts.every((part, at) => isPartAt(words[start + at] ?? '', part, at === parts.length - 1))) {
        marked.fill(true, start, start + parts.length)
      }
    }
  }
  return marked
}

function isPartAt(word: string, part: string, isLast: boolean): boolean {
  const straight = toStraight(word)
  return isSameName(straight, part) || (isLast && isSameName(findOwner(straight) ?? '', part))
}

function isSameName(word: string, name: string): boolean {
  if (name === name.toLowerCase()) return word.toLowerCase() === name
  return word === name || word === name.toUpperCase()
}
