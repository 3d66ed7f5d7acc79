// What the lexicon file says of slips: the words that children's books use, and listed words that mostly are slips.

export interface SlipWords {
  /** The words that may be proposed, with their places in the order of use. */
  readonly everyday: ReadonlyMap<string, number>
  /** What is meant by a word that the dictionary has, or an ending makes, and that is mostly a slip: `very` by `verry`. */
  readonly slips: ReadonlyMap<string, string>
  /** Those of them that somebody may be called. */
  readonly names: ReadonlySet<string>
  /** The everyday words with such consonants, as `toSkeleton` gives them. */
  alike(skeleton: string): readonly string[]
}

/** Where nothing is known. */
export const NO_SLIPS: SlipWords = { everyday: new Map(), slips: new Map(), names: new Set(), alike: () => [] }

const PARTS = '\n\n'

/** Three parts: the everyday words on one line; a line a slip, with a mark after those that may be names; a line for each skeleton with its words. */
export function writeSlips(
  { everyday, slips, names }: Pick<SlipWords, 'everyday' | 'slips' | 'names'>,
  toSkeleton: (word: string) => string,
): string {
  const groups = new Map<string, string[]>()
  for (const word of everyday.keys()) groups.set(toSkeleton(word), [...(groups.get(toSkeleton(word)) ?? []), word])
  return [
    [...everyday.keys()].join(' '),
    [...slips].map(([word, meant]) => `${word}\t${meant}${names.has(word) ? '\tname' : ''}`).join('\n'),
    [...groups].map(([skeleton, words]) => `${skeleton}\t${words.join(' ')}`).join('\n'),
  ].join(PARTS)
}

/** Every word of a story is looked for among the slips; the rest is laid out when a word is met that nobody knows. */
export function readSlips(text: string): SlipWords {
  const [words = '', rows = '', groups = ''] = text.split(PARTS)
  const slips = new Map<string, string>()
  const names = new Set<string>()
  for (const line of rows.split('\n')) {
    const end = line.indexOf('\t')
    const mark = line.indexOf('\t', end + 1)
    if (end < 0) continue
    const word = line.slice(0, end)
    slips.set(word, mark < 0 ? line.slice(end + 1) : line.slice(end + 1, mark))
    if (mark >= 0) names.add(word)
  }
  let everyday: ReadonlyMap<string, number> | undefined
  const lines = `\n${groups}\n`
  return {
    slips,
    names,
    get everyday() {
      return (everyday ??= new Map(words.split(' ').map((word, at) => [word, at])))
    },
    alike(skeleton) {
      const start = lines.indexOf(`\n${skeleton}\t`)
      if (start < 0) return []
      const from = start + skeleton.length + 2
      return lines.slice(from, lines.indexOf('\n', from)).split(' ')
    },
  }
}
