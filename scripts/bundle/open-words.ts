// The words of the tagger as it asks for them, opened a piece at a time: it looks up some twenty words of a sentence, and to make an
// object of all its 25,000 takes longer than all else that it does. This runs in the bundle.

/** Words that begin alike, by their first two letters: a line a word, with its tag behind a tab, or its list of tags behind two. */
export type Pieces = Readonly<Record<string, string>>

export type Tags = string | readonly string[]

const toKey = (word: string): string => word.slice(0, 2)

/** @throws where a word or a tag holds a mark that parts them */
export function toPieces(words: Readonly<Record<string, Tags>>): Pieces {
  const pieces = new Map<string, string[]>()
  for (const [word, tags] of Object.entries(words)) {
    const list = typeof tags === 'string' ? [tags] : ['', ...tags]
    if ([word, ...list].some((text) => /[\t\n]/.test(text))) throw new Error(`\`${word}\` cannot be packed`)
    const key = toKey(word)
    pieces.set(key, [...(pieces.get(key) ?? []), [word, ...list].join('\t')])
  }
  return Object.fromEntries([...pieces].map(([key, rows]) => [key, rows.join('\n')]))
}

/** An object that answers `words[word]` and `words.hasOwnProperty(word)`, and takes new words. */
export function openPieces(pieces: Pieces): Record<string, Tags> {
  const opened = new Map<string, Map<string, Tags>>()
  const open = (word: string): Map<string, Tags> => {
    const key = toKey(word)
    let piece = opened.get(key)
    if (piece === undefined) {
      const rows = Object.hasOwn(pieces, key) ? (pieces[key] ?? '').split('\n') : []
      opened.set(key, (piece = new Map(rows.map(toRow))))
    }
    return piece
  }
  const has = (word: string): boolean => open(String(word)).has(String(word))
  return new Proxy<Record<string, Tags>>(
    {},
    {
      get: (_, word) => (word === 'hasOwnProperty' ? has : open(String(word)).get(String(word))),
      has: (_, word) => has(String(word)),
      set: (_, word, tags: Tags) => open(String(word)).set(String(word), tags).size > 0,
      ownKeys: () => Object.keys(pieces).flatMap((key) => [...open(key).keys()]),
      getOwnPropertyDescriptor: (_, word) => {
        const value = open(String(word)).get(String(word))
        return value === undefined ? undefined : { value, enumerable: true, configurable: true, writable: true }
      },
    },
  )
}

function toRow(row: string): readonly [word: string, tags: Tags] {
  const [word = '', ...tags] = row.split('\t')
  return [word, tags[0] === '' ? tags.slice(1) : (tags[0] ?? '')]
}
