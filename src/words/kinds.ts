// Which kinds a word is of in a child's world: naming, doing, describing, little.

export type WordKind = (typeof WORD_KINDS)[number]

export const WORD_KINDS = ['naming', 'doing', 'describing', 'little'] as const

/** The kinds of a word as judged, the main one first; undefined where it is of one kind, the one that its part of speech tells. */
export type Kinds = (word: string) => readonly WordKind[] | undefined

/** Lines of a word and its kinds, as text: few words, read only where kinds are asked for. */
export const packKinds = (rows: readonly (readonly [word: string, kinds: readonly WordKind[]])[]): Uint8Array =>
  new TextEncoder().encode(rows.map(([word, kinds]) => `${word}\t${kinds.join(',')}`).join('\n'))

/** The bytes are read when the first word is asked for. */
export function openKinds(bytes: Uint8Array): Kinds {
  let kinds: ReadonlyMap<string, readonly WordKind[]> | undefined
  return (word) => {
    kinds ??= read(new TextDecoder().decode(bytes))
    return kinds.get(word)
  }
}

const read = (text: string): ReadonlyMap<string, readonly WordKind[]> =>
  new Map(
    text.split('\n').map((line) => {
      const [word = '', kinds = ''] = line.split('\t')
      return [word, kinds.split(',') as WordKind[]]
    }),
  )
