// Words of other kinds, each by a list of the project's own: abbreviations and words in capitals, words put together of two little ones, British
// spellings, what is known by heart, and slips in a sequence file. All lists from memory, written down before the program was asked.

import { loadBuiltIn } from '../../src/packaged/data.ts'
import { knowledgeAt } from '../../src/sequence/knowledge.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import { ACCENTS } from '../../src/sequence/vocabulary.ts'
import { createWordJudge, findPattern, findReadableAt, judgeInSequence } from '../../src/verdict/index.ts'
import { drawRandom } from '../../tests/verdict/random-sequences.ts'
import { listInUse } from '../build/frequency.ts'
import { type Engine, openSequence } from './engine.ts'
import { makeWords } from './made-words.ts'

const toList = (text: string): readonly string[] => text.trim().split(/\s+/)

export interface Judged {
  readonly asked: number
  readonly wrong: readonly string[]
}

const LAST = 'green-15'

const ABBREVIATIONS =
  toList(`UK USA TV TVs CD DVD BBC NHS PC PE DJ VIP UFO ID OK SOS HQ PTA GPS Mr Mrs Ms Dr St Rd Prof Jr Sgt Capt etc kg km cm
  X-ray T-shirt U-turn V-neck T-Rex e-mail U.K. a.m. A.A. J.K.`)
const NO_ABBREVIATIONS = toList(
  'STOP NO HELP BANG GO CAT DOG YES RUN HA BOO ZAP POP MUM MOM DAD SHH HMM BRR DIT ZOG FLIB Miss Tom Sam Max',
)

export function measureAbbreviations({ phonics }: Engine): Judged {
  const series = openSequence('series', 'general-american')
  const isTold = (word: string) =>
    judgeInSequence(phonics['general-american'].read(word), series, LAST).reasons.some(
      ({ code }) => code === 'abbreviation',
    )
  return {
    asked: ABBREVIATIONS.length + NO_ABBREVIATIONS.length,
    wrong: [...ABBREVIATIONS.filter((word) => !isTold(word)), ...NO_ABBREVIATIONS.filter(isTold)],
  }
}

/** Common words and made ones, small and in capitals, where capitals are read. */
export function measureCapitals({ phonics, lexicon }: Engine): Judged {
  const series = openSequence('series', 'general-american')
  const random = drawRandom(51)
  const common = listInUse(3000, /^[a-z]{3,}$/)
  const made = makeWords(
    (word) => lexicon.indexOf(word) >= 0,
    series.steps.map(({ id }) => id),
  )
  const words = [
    ...Array.from({ length: 200 }, () => common[random(common.length)] as string),
    ...Array.from({ length: 200 }, () => made[random(made.length)]?.word as string),
  ]
  const { read } = phonics['general-american']
  const codes = (word: string) => judgeInSequence(read(word), series, LAST).reasons.map(({ code }) => code)
  const small = words.filter((word) => !codes(word.toUpperCase()).includes('abbreviation'))
  return {
    asked: small.length,
    wrong: small.filter((word) => `${codes(word)}` !== `${codes(word.toUpperCase())}`),
  }
}

const OF_TWO =
  toList(`some+one some+thing some+where any+one any+body any+thing any+where every+one every+body every+thing every+where on+to in+to him+self
  her+self my+self your+self it+self may+be with+out with+in in+side out+side up+on can+not some+how any+how any+way some+body be+come`)

/** Readable where both parts are and the step allows so long a word, or before that: by heart, or by its letters. */
export function measureOfTwo({ phonics }: Engine): Judged {
  const found = ACCENTS.flatMap((accent) =>
    ['series', 'england', 'common-core'].flatMap((name) => {
      const sequence = openSequence(name, accent)
      const place = (word: string): number => {
        const at = findReadableAt(phonics[accent].read(word), sequence)
        return at === undefined ? Number.POSITIVE_INFINITY : sequence.steps.findIndex(({ id }) => id === at)
      }
      return OF_TWO.map((pair) => {
        const word = pair.replace('+', '')
        const [said] = phonics[accent].read(word).pronunciations
        const allowed = sequence.steps.findIndex(({ id }) => {
          const { letters = 99, syllables = 99 } = knowledgeAt(sequence, id).limits
          return word.length <= letters && (said?.syllables.length ?? 0) <= syllables
        })
        return { word: `${name} ${word}`, isLate: place(word) > Math.max(allowed, ...pair.split('+').map(place)) }
      })
    }),
  )
  return { asked: found.length, wrong: found.filter(({ isLate }) => isLate).map(({ word }) => word) }
}

const BRITISH =
  toList(`colour/color favourite/favorite flavour/flavor neighbour/neighbor harbour/harbor rumour/rumor honour/honor humour/humor
  centre/center litre/liter metre/meter theatre/theater fibre/fiber organised/organized realise/realize recognise/recognize apologise/apologize
  travelled/traveled traveller/traveler cancelled/canceled modelling/modeling jewellery/jewelry pyjamas/pajamas moustache/mustache grey/gray
  tyre/tire kerb/curb cheque/check plough/plow programme/program storey/story defence/defense licence/license mould/mold aeroplane/airplane
  doughnut/donut catalogue/catalog dialogue/dialog skilful/skillful woollen/woolen axe/ax mum/mom maths/math`)

/** Both spellings are known for words in a British accent, and none is guessed. */
export function measureBritishSpellings({ phonics }: Engine): Judged {
  const isKnown = (word: string) => phonics['southern-british'].read(word).source === 'dictionary'
  return { asked: BRITISH.length, wrong: BRITISH.filter((pair) => !pair.split('/').every(isKnown)) }
}

/** Words that `series` teaches by heart, at their step and at the last one before they can be sounded out, against every pattern that it teaches. */
export function measureByHeart({ phonics }: Engine): Judged {
  const series = openSequence('series', 'general-american')
  const lines = series.steps.flatMap(({ adds }) =>
    adds.correspondences.map(({ letters, example }) => `${letters} as in ${example}`),
  )
  const found = series.steps.flatMap(({ id, adds }) => {
    const judge = createWordJudge(series, id)
    const patterns = lines.flatMap((line) => findPattern(line, series, id) ?? [])
    return adds.sightWords.map((word) => {
      const { verdict } = judge(phonics['general-american'].read(word))
      return { word, count: patterns.filter((pattern) => pattern.isPractised(word, verdict)).length }
    })
  })
  return { asked: found.length, wrong: found.filter(({ count }) => count > 0).map(({ word }) => word) }
}

/** What a maker writes under `extends: series`, and what has to stand in the answer. */
const SLIPS: readonly (readonly [yaml: string, told: string])[] = [
  ['- id: pink1\n    sight words: [lane]', '`pink-1`'],
  ['- id: geen-3\n    sight words: [lane]', '`green-3`'],
  ['- id: green-16\n    sight words: [lane]', 'after'],
  ['- id: pink-2\n    after: pink-1', 'after'],
  ['- id: more\n    sight words: [thier]', '`their`'],
  ['- id: more\n    sight words: [dont]', "`don't`"],
  ['- id: more\n    sight words: [becuase]', '`because`'],
  ['- id: more\n    contractions: [cant]', "`can't`"],
  ['- id: more\n    teach: [sh as in chip]', '`ch as in chip`'],
  ['- id: more\n    teach: [ce as in ice]', '`ce as in fence`'],
  ['- id: more\n    teach: [sh like ship]', '`sh as in ship`'],
  ['- id: more\n    teach: [sh as in shop]', 'taught already'],
  ['- id: more\n    sight words: [the]', 'taught already'],
  ['- id: more\n    endings: [-ly]', '-s, -es'],
  ['- id: more\n    sightwords: [lane]', '`sight words`'],
]

export function measureSequenceSlips({ phonics }: Engine): Judged {
  const wrong = SLIPS.filter(([yaml, told]) => {
    const { problems } = loadSequence(`name: own\nextends: series\nsteps:\n  ${yaml}\n`, {
      phonicsFor: (accent) => phonics[accent],
      accent: 'general-american',
      resolve: loadBuiltIn,
    })
    return !problems.some(({ message, expected, note = '' }) =>
      `${message} ${expected.map((one) => `\`${one}\``)} ${note}`.includes(told),
    )
  })
  return { asked: SLIPS.length, wrong: wrong.map(([yaml]) => yaml.replace(/\s+/g, ' ')) }
}
