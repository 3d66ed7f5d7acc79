// Words with an ending: each is readable where its stem, its ending and the change before it are. Drawn with a seed and put together by the rules
// of English Appendix 1 (Department for Education 2013), so that the step follows from how they were made.

import type { Sequence } from '../../src/sequence/types.ts'
import { ACCENTS } from '../../src/sequence/vocabulary.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { drawRandom } from '../../tests/verdict/random-sequences.ts'
import { listInUse } from '../build/frequency.ts'
import { loadWordnet } from '../build/wordnet.ts'
import { type Engine, openSequence } from './engine.ts'
import { toLettersStep } from './made-words.ts'
import type { Judged } from './word-kinds.ts'

const COMMONEST = 6000
const EACH = 20

/** What becomes of the stem, which stems it is for, and the steps of `series` that teach the ending and the change. */
const KINDS: readonly (readonly [stem: RegExp, toForm: (stem: string) => string, ...steps: readonly string[]])[] = [
  [/[bdgklmnpt]$/, (stem) => `${stem}s`, 'blue-2'],
  [/(?:ch|sh|x|zz|ss)$/, (stem) => `${stem}es`, 'green-7'],
  [/[aeiou][bdfklmnptv]e$/, (stem) => `${stem}s`, 'blue-2'],
  [/[^aeiou]y$/, (stem) => `${stem.slice(0, -1)}ies`, 'blue-2', 'green-11'],
  [/[^aeiou][dkpt]$/, (stem) => `${stem}ing`, 'green-6'],
  [/[^aeiou][dkpt]$/, (stem) => `${stem}ed`, 'green-7'],
  [/[aeiou][bcdfgklmnprtvz]e$/, (stem) => `${stem.slice(0, -1)}ing`, 'green-6', 'green-11'],
  [/[aeiou][bcdfgklmnprtvz]e$/, (stem) => `${stem}d`, 'green-7', 'green-11'],
  [/^[^aeiou]+[aeiou][bdgmnprt]$/, (stem) => `${stem}${stem.at(-1)}ing`, 'green-6', 'green-11'],
  [/^[^aeiou]+[aeiou][bdgmnprt]$/, (stem) => `${stem}${stem.at(-1)}ed`, 'green-7', 'green-11'],
  [/[^aeiou]y$/, (stem) => `${stem.slice(0, -1)}ied`, 'green-7', 'green-11'],
]

export function measureEndedWords(engine: Engine): Judged {
  const drawn = drawForms(engine)
  const wrong = ACCENTS.flatMap((accent) => {
    const sequence = openSequence('series', accent)
    const read = engine.phonics[accent].read
    return drawn.flatMap(({ stem, form, steps }) => {
      const found = findReadableAt(read(form), sequence)
      const first = findReadableAt(read(stem), sequence)
      const syllables = read(form).pronunciations[0]?.syllables.length ?? 0
      const expected = toLast(sequence, [first, ...steps, toLettersStep(form), toSyllablesStep(syllables)])
      return found === expected ? [] : [`${form} ${found ?? 'never'}, not ${expected ?? 'never'}`]
    })
  })
  return { asked: drawn.length * ACCENTS.length, wrong }
}

/** Never where one of them is. */
function toLast(sequence: Sequence, steps: readonly (string | undefined)[]): string | undefined {
  const ids = sequence.steps.map(({ id }) => id)
  const places = steps.map((step) => (step === undefined ? -1 : ids.indexOf(step)))
  return places.includes(-1) ? undefined : ids[Math.max(...places)]
}

const toSyllablesStep = (count: number): string =>
  count < 2 ? 'pink-1' : count === 2 ? 'blue-6' : count === 3 ? 'green-13' : 'green-14'

interface Form {
  readonly stem: string
  readonly form: string
  readonly steps: readonly string[]
}

function drawForms({ lexicon, phonics }: Engine): readonly Form[] {
  const random = drawRandom(41)
  const inUse = listInUse(COMMONEST, /^[a-z]{3,}$/)
  const isPlain = (word: string) => {
    const { heteronym, unsure, source } = phonics['general-american'].read(word)
    return source === 'dictionary' && !heteronym && !unsure
  }
  const wordnet = loadWordnet()
  return KINDS.flatMap(([pattern, toForm, ...steps]) => {
    const isStem = (stem: string) =>
      wordnet.isVerb(stem) || (toForm(stem).endsWith('s') && wordnet.isNoun(stem) && !wordnet.isName(stem))
    const found = inUse.filter((stem) => pattern.test(stem) && isStem(stem) && lexicon.indexOf(toForm(stem)) >= 0)
    const plain = found.filter((stem) => isPlain(stem) && isPlain(toForm(stem)))
    return Array.from(
      { length: Math.min(EACH, plain.length) },
      () => plain.splice(random(plain.length), 1)[0] as string,
    ).map((stem) => ({ stem, form: toForm(stem), steps }))
  })
}
