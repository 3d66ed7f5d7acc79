// Words put together of two that children know, often one of them by heart: `someone`, `onto`, `yourself`, `bathroom`, `ours` and `uh-oh`.

import type { WordEnding } from './types.ts'

/** The words before and after the join; `-s` is the ending, and others may stand behind both words. With hyphens there may be more: `ha-ha-ha`. */
export type TwoWords = readonly string[]

export const isWordEnding = (part: string): part is WordEnding => part === '-s' || part === '-ed' || part === '-ing'

/** Every one of the first with every one of the second. */
const FAMILIES: readonly (readonly [first: string, second: string])[] = [
  ['any every some', 'body one thing where how time times day way ways more place what'],
  // The o of `nothing` is another than that of `no`.
  ['no', 'body one where how time times day way more place what'],
  ['my your him her it our them one', 'self'],
  ['your our them', 'selves'],
  ['what who when where how which', 'ever'],
  ['our your her their', '-s'],
]

/** Others, cut where the two words meet. */
const OTHERS =
  'in|to on|to up|on with|in with|out to|day to|night be|come can|not for|ever there|fore in|side out|side else|where may|be good|bye wel|come where|by here|by there|fore through|out mean|while'

/** Compounds of which one part, or both, are words that classes learn by heart; each is said as its parts are. */
const COMPOUNDS = `
  after|glow after|noon after|noons after|wards any|more bath|robe bath|room bath|rooms bath|time bath|tub beef|steak bird|bath bird|house
  boy|friend boy|friends by|stander class|mate class|mates class|room class|rooms clothes|line door|bell door|bells door|knob door|man
  door|mat door|step door|steps door|way door|ways eye|ball eye|balls eye|brow eye|brows eye|glasses eye|lash eye|lashes eye|lid eye|lids
  eye|sight eye|witness eye|witnesses farm|house fire|house floor|board floor|boards friend|ship friend|ships full|back girl|friend girl|friends god|father
  god|mother gold|fish gold|mine gold|smith grand|child grand|children grand|father grand|fathers grand|mother grand|mothers
  grand|parent grand|parents grass|hopper grass|hoppers grass|land green|house green|houses guest|house half|time half|way
  head|master heart|beat heart|beats hen|house horse|shoe horse|shoes hour|glass house|boat house|keeper house|work
  light|house mad|house out|door out|doors out|house pass|word pass|words path|way path|ways play|house play|school
  pull|over push|chair rain|water red|eye sales|woman salt|water school|bag school|bags school|boy school|boys school|children
  school|girl school|girls school|house school|room school|teacher school|work school|yard sea|water shoe|box shoe|horn shoe|lace
  shoe|laces shoe|maker shoe|makers step|father step|mother summer|house sweet|heart tea|house tree|house two|some
  under|go under|water water|bed water|colour water|fall water|falls water|front water|melon water|melons water|proof water|side
  water|tight water|way were|wolf work|house`.trim()

const ALL = toTable()

/** A word each, and no beginning, which is said otherwise alone: `re-read`. */
const PARTS = /^(?!(?:co|de|ex|pre|re|un)-)[a-z]{2,}(?:-[a-z]{2,})+$/

/** Undefined for other words, also for those that only look so: `together` is no `to`, `get` and `her`. */
export function findTwoWords(word: string): TwoWords | undefined {
  if (PARTS.test(word)) return word.split('-')
  const known = ALL.get(word)
  if (known !== undefined) return known
  // `doorknobs`: more than one of a thing.
  const [first, second] = word.endsWith('s') ? (ALL.get(word.slice(0, -1)) ?? []) : []
  if (first !== undefined && second !== undefined && second !== '-s') return [first, `${second}s`]
  const [, stem, ending] = OF_COME.exec(word) ?? []
  const parts = stem === undefined ? undefined : ALL.get(`${stem}e`)
  return parts === undefined || ending === undefined ? undefined : [...parts, `-${ending}`]
}

/** `welcomed` and `becoming`: no other of them takes an ending. */
const OF_COME = /^(.+com)(ed|ing)$/

function toTable(): ReadonlyMap<string, TwoWords> {
  const pairs = FAMILIES.flatMap(([first, second]) =>
    first.split(' ').flatMap((one) => second.split(' ').map((two): TwoWords => [one, two])),
  )
  const others = `${OTHERS} ${COMPOUNDS}`.split(/\s+/).map((written): TwoWords => {
    const [one = '', two = ''] = written.split('|')
    return [one, two]
  })
  return new Map([...pairs, ...others].map((pair) => [pair.join('').replace('-', ''), pair]))
}
