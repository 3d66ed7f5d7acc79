// Words drawn out on paper: `Nooo` is no with a long o, `Shhh` is shh, `looong` is long.

import type { RawPronunciation, RawUnit } from './raw.ts'
import type { Span } from './types.ts'

/** A word with its runs made short, and where each of its letters begins in the drawn-out word. */
export interface Squeezed {
  readonly word: string
  readonly starts: readonly number[]
}

const RUNS = /(.)\1*/g
/** The h of `ohh` is drawn out too, and the w of `aww`. */
const LONG_RUN = /(.)\1\1|[aeiou]hh$|^[aeo]ww$/

/** The words that a drawn-out word may stand for: each run of three and more as two letters or as one. */
export function findSqueezed(word: string): readonly Squeezed[] {
  if (!LONG_RUN.test(word)) return []
  const [short, long] = [squeeze(word, 1), squeeze(word, 2)]
  return LONG_WORDS.test(long.word) ? [long, short] : [short, long]
}

/** Words with two like letters where the same word with one is another: `Mooo`, `Booom`, `Seee`, `Hisss`, `Alll`; not `Weee`, nor `Sooo`. */
const LONG_WORDS =
  /^(?:[bcmw]?oo|baa|[a-z]*(?:oo|ee)(?!ng)[a-z]+|(?!(?:[bhmw]|sh)ee$)[a-z]*ee|[a-z]*[aiou](?:ff|ll|ss|zz))$/

/** A word without a vowel, its runs no longer than letters are doubled, h never: `Zzzz`, `Brrr`, `Shh`. */
export const squeezeNoise = (word: string): Squeezed => squeeze(word, 2)

function squeeze(word: string, most: number): Squeezed {
  let letters = ''
  const starts: number[] = []
  for (const { 0: run, index } of word.matchAll(RUNS)) {
    // The s of `ssshh` belongs to its h.
    const isOne =
      run.startsWith('hh') || run.startsWith('ww') || (run.startsWith('ss') && word[index + run.length] === 'h')
    const kept = isOne ? 1 : run.length < 3 ? run.length : most
    for (let k = 0; k < kept; k++) starts.push(index + k)
    letters += run.slice(0, kept)
  }
  return { word: letters, starts: [...starts, word.length] }
}

/** Letters without a vowel that are a sound all the same: `shh`, `hmm`, `zzz`, `brr`, `psst`, `tsk`. */
const SOUND = /sh|ss|zz|mm|hm|rr|ff|ps+t|tsk/

export const isSoundWord = (word: string): boolean => !/[aeiouy']/.test(word) && SOUND.test(word)

/** Whether somebody wrote a noise, or drew a word out: no dictionary has these, and they are no slips. */
export const isDrawnOrNoise = (written: string): boolean => {
  const word = written.toLowerCase()
  return LONG_RUN.test(word) || isSoundWord(word)
}

/** The units of the short word laid over the drawn-out one; a unit with more letters than its own remembers them as its base. */
export function stretch({ units }: RawPronunciation, word: string, { starts }: Squeezed): RawPronunciation {
  const toSpan = ([from, to]: Span): Span => [starts[from] ?? 0, starts[to] ?? word.length]
  return {
    units: units.map((unit): RawUnit => {
      const spans = unit.spans.map(toSpan)
      const letters = spans.map(([from, to]) => word.slice(from, to)).join('_')
      const isLonger = unit.spans.some(([from, to], k) => to - from < (spans[k]?.[1] ?? 0) - (spans[k]?.[0] ?? 0))
      return isLonger ? { ...unit, spans, letters, base: unit.base ?? unit.letters } : { ...unit, spans }
    }),
  }
}
