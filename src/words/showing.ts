// What a small child says when a thing, or a picture of it, is put before it: judged word by word, by hand.

/**
 * `fine`: this word comes first; `likelier`: another word comes first; `hint`: something must be shown or said beside it; `no`:
 * it cannot be had, is not safe in the hand, or cannot be seen.
 */
export type ShownClass = (typeof SHOWN_CLASSES)[number]

export const SHOWN_CLASSES = ['fine', 'likelier', 'hint', 'no'] as const

/** One word as it was judged. */
export interface Shown {
  /** As a small object, a toy or a model. */
  readonly object: ShownClass
  /** As a picture. */
  readonly picture: ShownClass
  /** The likelier word, or what must be shown or said. Empty where neither is needed. */
  readonly note: string
}

/** Undefined for a word that nobody has judged. */
export type Showing = (word: string) => Shown | undefined

/** Lines of tab-separated cells, as text: few words, read only where boxes and pictures are asked for. */
export const packShowing = (rows: readonly (readonly [word: string, shown: Shown])[]): Uint8Array =>
  new TextEncoder().encode(
    rows.map(([word, { object, picture, note }]) => [word, object, picture, note].join('\t')).join('\n'),
  )

/** The bytes are read when the first word is asked for. */
export function openShowing(bytes: Uint8Array): Showing {
  let shown: ReadonlyMap<string, Shown> | undefined
  return (word) => {
    shown ??= read(new TextDecoder().decode(bytes))
    return shown.get(word)
  }
}

const toClass = (cell: string | undefined): ShownClass => SHOWN_CLASSES.find((one) => one === cell) ?? 'no'

const read = (text: string): ReadonlyMap<string, Shown> =>
  new Map(
    text.split('\n').map((line) => {
      const [word = '', object, picture, note = ''] = line.split('\t')
      return [word, { object: toClass(object), picture: toClass(picture), note }]
    }),
  )
