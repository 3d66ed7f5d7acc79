// What the lexicon file says of slips: the words that children's books use, and listed words that mostly are slips.

export interface SlipWords {
  /** The words that may be proposed, with their places in the order of use. */
  readonly everyday: ReadonlyMap<string, number>
  /** What is meant by a word that the dictionary has, or an ending makes, and that is mostly a slip: `very` by `verry`. */
  readonly slips: ReadonlyMap<string, string>
  /** Those of them that somebody may be called. */
  readonly names: ReadonlySet<string>
}

/** Where nothing is known. */
export const NO_SLIPS: SlipWords = { everyday: new Map(), slips: new Map(), names: new Set() }

/** The everyday words on the first line, then a line a slip, with a mark after those that may be names. */
export const writeSlips = ({ everyday, slips, names }: SlipWords): string =>
  [
    [...everyday.keys()].join(' '),
    ...[...slips].map(([word, meant]) => `${word}\t${meant}${names.has(word) ? '\tname' : ''}`),
  ].join('\n')

export function readSlips(text: string): SlipWords {
  const [everyday = '', ...lines] = text.split('\n')
  const rows = lines.map((line) => line.split('\t'))
  return {
    everyday: new Map(everyday.split(' ').map((word, at) => [word, at])),
    slips: new Map(rows.map(([word = '', meant = '']) => [word, meant])),
    names: new Set(rows.flatMap(([word = '', , mark]) => (mark === undefined ? [] : [word]))),
  }
}
