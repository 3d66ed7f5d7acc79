// Which words keep their full stop, so that no sentence ends there.

/** Before a name, written with a capital: never the end of a sentence. */
const titles = new Set([
  'Capt',
  'Dr',
  'Lt',
  'Messrs',
  'Mlle',
  'Mme',
  'Mr',
  'Mrs',
  'Ms',
  'Mt',
  'Mx',
  'Prof',
  'Rev',
  'Sgt',
  'St',
  'Ste',
])

/** May end a sentence: they do so before a capital, a digit or the end. */
const tails = new Set(['a.m', 'approx', 'co', 'etc', 'inc', 'jr', 'ltd', 'p.m', 'sr', 'vs'])

/** Never the end of a sentence, however they are written; neither are `e.g.` and `i.e.`, as initials. */
const leads = new Set(['eg', 'ie', 'viz'])

/** How a word behaves with a full stop after it. `word`: as any word, and the stop ends the sentence. */
export type StopKind = 'title' | 'initials' | 'initial' | 'tail' | 'word'

/**
 * `value` is the word without its full stop.
 *
 * The parser's own lists hold days, months and units (`sat`, `sun`, `mar`, `in`) and all numbers below 1000: in a
 * child's book these are words at the end of a sentence far more often.
 */
export function toStopKind(value: string): StopKind {
  if (titles.has(value)) return 'title'
  const lower = value.toLowerCase()
  if (leads.has(lower)) return 'title'
  if (tails.has(lower)) return 'tail'
  if (value.includes('.') && /^\p{L}(?:\.\p{L})+$/u.test(value)) return 'initials'
  return /^[A-HJ-Z]$/.test(value) ? 'initial' : 'word'
}

const allKept = [...titles, ...tails, ...leads].map((it) => it.replaceAll('.', '\\.'))
const anyKept = new RegExp(`(?<![A-Za-z])(?:[A-Za-z]|${allKept.join('|')})\\.`, 'i')

/** Whether a text may hold a word that keeps its full stop. */
export function mayKeepStop(text: string): boolean {
  return anyKept.test(text)
}

/** Whether a text ends in a word that keeps its full stop. */
export function endsInTitle(text: string): boolean {
  const word = /[\p{L}.]+$/u.exec(text.slice(-12))?.[0] ?? ''
  return toStopKind(word) !== 'word'
}
