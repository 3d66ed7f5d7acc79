// Words put together of two little words that children learn by heart: `someone`, `onto`, `yourself`, and `ours`.

/** The words before and after the join; `-s` is the ending. */
export type TwoWords = readonly [first: string, second: string]

/** Every one of the first with every one of the second. */
const FAMILIES: readonly (readonly [first: string, second: string])[] = [
  ['any every some no', 'body one thing where how time times day way more place what'],
  ['my your him her it our them one', 'self'],
  ['your our them', 'selves'],
  ['what who when where how which', 'ever'],
  ['our your her their', '-s'],
]

/** Others, cut where the two words meet. */
const OTHERS = 'in|to on|to up|on with|in with|out to|day to|night be|come can|not for|ever there|fore in|side out|side'

const ALL = toTable()

/** Undefined for other words, also for those that only look so: `together` is no `to`, `get` and `her`. */
export function findTwoWords(word: string): TwoWords | undefined {
  return ALL.get(word)
}

function toTable(): ReadonlyMap<string, TwoWords> {
  const pairs = FAMILIES.flatMap(([first, second]) =>
    first.split(' ').flatMap((one) => second.split(' ').map((two): TwoWords => [one, two])),
  )
  const others = OTHERS.split(' ').map((written): TwoWords => {
    const [one = '', two = ''] = written.split('|')
    return [one, two]
  })
  return new Map([...pairs, ...others].map((pair) => [pair.join('').replace('-', ''), pair]))
}
