// Pronunciations and knowledge written by hand, so that the verdict is tested without the dictionary.
//
// A pronunciation is written unit by unit: `sh=ʃ i=ɪ p=p`, `c=k a_e=eɪ k=k`, `r=r u=ʌ nn<n=n +ing=ɪŋ`:
//   +ed=d    an ending          nn<n=n   letters that an ending changed, and what they stand for
//   e=       silent letters     i~=ə     a vowel worn down
// The word is written with dots between its syllables: `run.ning`.

import type { CorrespondenceKey, Pronunciation, Span, Unit, WordPronunciations } from '../../src/phonics/types.ts'
import type { Knowledge, Sequence, Step, StepAdds, TaughtCorrespondence } from '../../src/sequence/types.ts'

const VOWELS = /[aeiouæɑɒɔəɛɜɝɚɪʊʌ]/

/** One way to say the dotted word. */
export function toPronunciation(dotted: string, units: string, form?: string): Pronunciation {
  const word = dotted.replaceAll('.', '')
  const isTaken = new Array<boolean>(word.length).fill(false)
  const built = units.split(' ').map((unit) => toUnit(unit, word, isTaken))
  const ipa = built.map(({ sound }) => sound).join('')
  return { units: built, ipa, syllables: dotted.split('.'), ...(form === undefined ? {} : { form }) }
}

/** Every pronunciation of the dotted word, from the dictionary unless it starts with `?`. */
export function toPronunciations(dotted: string, ...pronunciations: readonly string[]): WordPronunciations {
  const isGuess = dotted.startsWith('?')
  const plain = dotted.replace('?', '')
  return {
    word: plain.replaceAll('.', ''),
    source: isGuess ? 'guess' : 'dictionary',
    pronunciations: pronunciations.map((units) => toPronunciation(plain, units)),
    heteronym: false,
  }
}

function toUnit(text: string, word: string, isTaken: boolean[]): Unit {
  const [, plus, written, base, tilde, sound] = /^(\+?)([^<~=]+)(?:<([^~=]+))?(~?)=(.*)$/.exec(text) ?? []
  if (written === undefined || sound === undefined) throw new Error(`cannot read the unit ${text}`)
  const spans = written.split('_').map((part) => take(part, word, isTaken))
  return {
    letters: written,
    spans,
    sound,
    kind: plus === '+' ? 'inflection' : sound === '' ? 'silent' : 'correspondence',
    key: `${base ?? written}=${sound}`,
    vowel: VOWELS.test(sound) && sound !== 'j',
    ...(base === undefined ? {} : { base }),
    ...(tilde === '~' ? { reduced: true as const } : {}),
  }
}

function take(part: string, word: string, isTaken: boolean[]): Span {
  for (let start = 0; start + part.length <= word.length; start++) {
    const isFree = !isTaken.slice(start, start + part.length).includes(true)
    if (!isFree || word.slice(start, start + part.length).toLowerCase() !== part) continue
    isTaken.fill(true, start, start + part.length)
    return [start, start + part.length]
  }
  throw new Error(`no free ${part} in ${word}`)
}

/** What a child knows: nothing but the keys given, unless said otherwise. */
export function toKnowledge(keys: string, more: Partial<Knowledge> = {}): Knowledge {
  return {
    correspondences: new Set(keys.split(' ').filter(isKey)),
    sightWords: new Set(),
    shapes: 'any',
    endings: new Set(),
    endingChanges: new Set(),
    contractions: new Set(),
    marks: 'any',
    capitals: 'all',
    numerals: true,
    limits: {},
    soundedEndings: new Set(),
    soundedChanges: new Set(),
    reducedVowels: 'accept',
    ...more,
  }
}

/** A step that adds nothing but what is given; `keys` as in `toKnowledge`. */
export function toStep(id: string, keys: string, more: Partial<StepAdds> = {}): Step {
  const correspondences = keys.split(' ').filter(isKey).map(toTaught)
  return {
    id,
    title: `Step ${id}`,
    adds: {
      correspondences,
      sightWords: [],
      shapes: [],
      endings: [],
      endingChanges: [],
      contractions: [],
      marks: [],
      capitals: undefined,
      numerals: undefined,
      limits: {},
      ...more,
    },
  }
}

export function toSequence(steps: readonly Step[], more: Partial<Sequence> = {}): Sequence {
  return {
    name: 'tansy-lane',
    title: 'Tansy Lane',
    accent: 'general-american',
    steps,
    lookAlikes: [],
    endings: 'taught',
    reducedVowels: 'accept',
    ...more,
  }
}

function toTaught(key: CorrespondenceKey): TaughtCorrespondence {
  return { letters: key.split('=')[0] ?? '', example: '', key }
}

function isKey(text: string): text is CorrespondenceKey {
  return text.includes('=')
}
