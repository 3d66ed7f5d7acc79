// What is found of a word, remembered for the next time; with a bound, since a stream of texts never ends.

const MOST_WORDS = 20_000
const NOTHING = Symbol('nothing')

/** The same answers as `find`, each found once, until so many words have been asked about that it begins anew. */
export function remember<T>(find: (word: string) => T): (word: string) => T {
  const found = new Map<string, T | typeof NOTHING>()
  return (word) => {
    const known = found.get(word)
    if (known !== undefined) return known === NOTHING ? (undefined as T) : known
    const value = find(word)
    if (found.size >= MOST_WORDS) found.clear()
    found.set(word, value === undefined ? NOTHING : value)
    return value
  }
}

/** The same for the word that was asked last: of one word several things are asked in turn. */
export function rememberLast<T>(find: (word: string) => T): (word: string) => T {
  let last: { readonly word: string; readonly value: T } | undefined
  return (word) => {
    if (last?.word !== word) last = { word, value: find(word) }
    return last.value
  }
}
