// Words put together of two that children know, often one of them by heart: `someone`, `onto`, `yourself`, `bathroom`, `ours` and `uh-oh`.

import type { WordEnding } from './types.ts'

/** The words before and after the join; `-s` is the ending, and others may stand behind both words. With hyphens there may be more: `ha-ha-ha`. */
export type TwoWords = readonly string[]

export const isWordEnding = (part: string): part is WordEnding => /^-(?:s|ed|ing|er)$/.test(part)

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

/**
 * Compounds of which one part, or both, are words that classes learn by heart. Each is made of two words of every day, is said as these are
 * and tells of both: so no `forget`, and no `handsome`, whose -some is an ending. Of `newcome` and its like there is more than the word itself.
 */
const COMPOUNDS = `
  after|glow after|life after|noon after|noons after|shave after|wards any|more bath|robe bath|room bath|rooms bath|time
  bath|tub be|came be|side be|sides beef|steak bird|bath bird|house boy|friend boy|friends break|down break|through break|up
  business|man business|men busy|body by|pass by|stander child|birth class|mate class|mates class|room class|rooms clothes|line
  club|house come|back court|house day|break dog|house door|bell door|bells door|knob door|man door|mat door|step door|steps
  door|way door|ways egg|plant eye|ball eye|balls eye|brow eye|brows eye|glasses eye|lash eye|lashes eye|lid eye|lids eye|sight
  eye|witness eye|witnesses farm|house fast|ball fire|house floor|board floor|boards four|teen friend|ship friend|ships
  full|back girl|friend girl|friends god|father god|mother gold|fish gold|mine gold|smith grand|child grand|children
  grand|father grand|fathers grand|mother grand|mothers grand|parent grand|parents grass|hopper grass|hoppers grass|land
  green|house green|houses guest|house hair|do half|time half|way head|master heart|beat heart|beats heart|break heart|breaking
  heart|broken heart|felt hen|house here|after here|by horse|shoe horse|shoes hour|glass house|boat house|hold house|keeper
  house|keeping house|wife house|wives house|work in|come in|door in|doors in|put jail|house late|come light|house love|bird
  love|sick mad|house man|kind master|mind near|by new|come on|come out|break out|come out|do out|door out|doors out|house
  out|put over|come over|do pass|port pass|word pass|words path|way path|ways play|house play|school pull|over push|chair
  push|over push|up rain|water red|eye sales|woman salt|water school|bag school|bags school|boy school|boys school|children
  school|girl school|girls school|house school|master school|room school|teacher school|work school|yard sea|water shoe|box
  shoe|horn shoe|lace shoe|laces shoe|maker shoe|makers stand|by step|father step|mother straight|away straight|forward
  strong|hold summer|house sweet|heart sword|fish tea|house there|after towns|people tree|house under|go under|water up|come
  up|hold water|bed water|colour water|fall water|falls water|front water|melon water|melons water|proof water|side water|tight
  water|way were|wolf where|by whole|sale wild|cat wild|fire wild|life with|hold work|house`.trim()

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
  if (parts === undefined || ending === undefined) return undefined
  return ending === 'ers' ? [...parts, '-er', '-s'] : [...parts, `-${ending}`]
}

/** `welcomed`, `becoming` and `newcomers`: no other of them takes an ending. */
const OF_COME = /^(.+com)(ed|ing|ers?)$/

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
