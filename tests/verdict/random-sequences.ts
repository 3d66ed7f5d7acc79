// Small sequences as a class might have them, drawn at random from the lines of the built-in ones.

import { readFileSync } from 'node:fs'

/** Whole numbers below a bound, the same for the same seed (mulberry32). */
export type Random = (below: number) => number

export function drawRandom(seed: number): Random {
  let state = seed >>> 0
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below
  }
}

const FOLDER = new URL('../../src/sequence/built-in/', import.meta.url)

/** Every `teach` line of the built-in sequences. */
const LINES: readonly string[] = [
  ...new Set(
    ['series', 'england', 'common-core'].flatMap((name) =>
      [...readFileSync(new URL(`${name}.yaml`, FOLDER), 'utf8').matchAll(/- (\S+ as in [a-z]+)/g)].map(
        ([, line]) => line as string,
      ),
    ),
  ),
]

/** One to twelve steps; `more` counts further things that it speaks of: endings, changes, shapes, contractions, limits. */
export function drawSequence(random: Random, more = 0): string {
  const steps = 1 + random(12)
  const left = [...LINES]
  const pick = () => left.splice(random(left.length), 1)[0]
  const named = [
    '    endings: [-s]',
    '    shapes: [VC, CVC]',
    '    endings: [-ed, -ing]',
    '    ending changes: [double]',
    '    contractions: ["can\'t"]',
    '    limits:\n      letters: 4',
  ]
  const own = Array.from({ length: steps }, (_, at) => {
    const lines = Array.from({ length: 1 + random(6) }, pick)
    const extra = at < more ? `\n${named[at % named.length]}` : ''
    const limits = at === 0 && more > 3 ? '' : extra
    return `  - id: s-${at + 1}\n    teach:\n${lines.map((line) => `      - ${line}`).join('\n')}${at === 0 || !extra.includes('limits') ? limits : ''}`
  })
  return `name: own\nsteps:\n${own.join('\n')}\n`
}
