// Shapes of letters that a maker can choose, as the font Andika has them.

interface Shape {
  /** The feature of the font: its own documentation names them. */
  readonly feature: string
  readonly reason: string
}

export const LETTER_SHAPES = {
  'barred-j': { feature: 'cv35', reason: 'a j with a bar on top, as some schools write it' },
  'open-4': { feature: 'cv04', reason: 'a 4 that is open at the top, as it is written by hand' },
  'plain-1': { feature: 'cv01', reason: 'a 1 without a base' },
  'plain-6-9': { feature: 'cv06', reason: 'a 6 and a 9 with a straight stem' },
  'pointed-q': { feature: 'cv51', reason: 'a q with a point, less like a turned p' },
  'straight-t': { feature: 'cv56', reason: 'a t without a tail' },
  'straight-y': { feature: 'cv67', reason: 'a y without a curl' },
  'tailed-i': { feature: 'cv31', reason: 'an i with a tail' },
  'tailed-l': { feature: 'cv39', reason: 'an l with a tail, so that it is no capital I' },
  'two-storey-a': { feature: 'ss13', reason: 'the a of most books, for readers who are past the first ones' },
  'two-storey-g': { feature: 'ss14', reason: 'the g of many books' },
} as const satisfies Readonly<Record<string, Shape>>
