// A book of five pages at the step pink-6, with every figure counted by hand, word by word.

export const FIVE_PAGES = `Tam had a hat.

---

The hat is red.

---

Tam is in the red hut.

---

The hen sat on the hat.

---

Tam got the hen a fish.
`

export interface HandCounted {
  readonly words: number
  readonly decodable: number
  readonly sight: number
  readonly unreadable: number
  readonly newWords: readonly string[]
}

export const PAGES: readonly HandCounted[] = [
  { words: 4, decodable: 3, sight: 1, unreadable: 0, newWords: ['tam', 'had', 'a', 'hat'] },
  { words: 4, decodable: 2, sight: 2, unreadable: 0, newWords: ['the', 'is', 'red'] },
  { words: 6, decodable: 4, sight: 2, unreadable: 0, newWords: ['in', 'hut'] },
  { words: 6, decodable: 4, sight: 2, unreadable: 0, newWords: ['hen', 'sat', 'on'] },
  { words: 6, decodable: 3, sight: 2, unreadable: 1, newWords: ['got', 'fish'] },
]

export const TIMES: Readonly<Record<string, number>> = {
  tam: 3,
  had: 1,
  a: 2,
  hat: 3,
  the: 5,
  is: 2,
  red: 2,
  in: 1,
  hut: 1,
  hen: 2,
  sat: 1,
  on: 1,
  got: 1,
  fish: 1,
}

export const TOTAL = {
  words: 26,
  decodable: 16,
  sight: 9,
  unreadable: 1,
  decodableShare: 16 / 26,
  readableShare: 25 / 26,
}
export const DIFFERENT = { words: 14, decodable: 10, sight: 3, unreadable: 1 }
