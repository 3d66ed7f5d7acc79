// The pieces of made words: letters, what a beginner says for them (General American), and the step of `series` that teaches them.

export interface Piece {
  readonly letters: string
  readonly keys: readonly string[]
  readonly step: string
  readonly isVowel?: boolean
  /** The pair stands at the end of a word: `ay`, `oy`. */
  readonly isLast?: boolean
}

const STEPS: Readonly<Record<string, string>> = {
  'pink-1': 'a m s t c r p n h f',
  'pink-2': 'i l d g b',
  'pink-3': 'o j k w v',
  'pink-4': 'u y z',
  'pink-5': 'e x',
  'blue-1': 'ff ll ss zz ck',
  'blue-2': 'qu',
  'green-1': 'sh ch th ng tch',
}

const SOUNDS: Readonly<Record<string, readonly string[]>> = {
  a: ['æ'],
  c: ['k'],
  ch: ['tʃ'],
  ck: ['k'],
  e: ['ɛ'],
  ff: ['f'],
  g: ['ɡ'],
  i: ['ɪ'],
  j: ['dʒ'],
  ll: ['l'],
  n: ['n', 'ŋ'],
  ng: ['ŋ'],
  o: ['ɑ'],
  qu: ['kw'],
  sh: ['ʃ'],
  ss: ['s'],
  th: ['θ', 'ð'],
  u: ['ʌ'],
  x: ['ks'],
  y: ['j'],
  zz: ['z'],
}

const stepOf = (letters: string): string =>
  Object.entries(STEPS).find(([, taught]) => taught.split(' ').includes(letters))?.[0] ?? ''

const toPiece = (letters: string): Piece => ({
  letters,
  keys: (SOUNDS[letters] ?? [letters]).map((sound) => `${letters}=${sound}`),
  step: stepOf(letters),
  ...(/^[aeiou]$/.test(letters) ? { isVowel: true } : {}),
})

const toPieces = (letters: string): readonly Piece[] => letters.split(' ').map(toPiece)

export const ONSETS = toPieces('b c d f g h j k l m n p r s t v w y z sh ch th qu')
export const CODAS = toPieces('b d f g k m n p t v x z ff ss zz ck sh ch th ng')
export const SHORT = toPieces('a e i o u')

const toCluster = (letters: string): readonly Piece[] => [...letters].map(toPiece)

export const CLUSTERS_BEFORE = 'bl br cl cr dr fl fr gl gr pl pr sk sl sm sn sp st sw tr tw'.split(' ').map(toCluster)
export const CLUSTERS_AFTER = 'nd nt mp ft st sk sp pt ct lp lb'.split(' ').map(toCluster)

/** A pair with all its first sounds; its step is the first at which one of them is taught. */
const toPair = (letters: string, step: string, sounds: string, isLast = false): Piece => ({
  letters,
  keys: sounds.split(' ').map((sound) => `${letters}=${sound}`),
  step,
  isVowel: true,
  isLast,
})

export const PAIRS: readonly Piece[] = [
  toPair('ee', 'green-2', 'iː'),
  toPair('ea', 'green-2', 'iː'),
  toPair('ai', 'green-2', 'eɪ'),
  toPair('ay', 'green-2', 'eɪ', true),
  toPair('oa', 'green-3', 'oʊ'),
  toPair('ow', 'green-3', 'oʊ aʊ', true),
  toPair('igh', 'green-3', 'aɪ', true),
  toPair('ie', 'green-3', 'aɪ iː', true),
  toPair('oe', 'green-3', 'oʊ', true),
  toPair('ar', 'green-5', 'ɑr'),
  toPair('or', 'green-5', 'ɔr'),
  toPair('er', 'green-5', 'ɜr'),
  toPair('ir', 'green-5', 'ɜr'),
  toPair('ur', 'green-5', 'ɜr'),
  toPair('oo', 'green-6', 'uː ʊ'),
  toPair('ou', 'green-6', 'aʊ'),
  toPair('oi', 'green-6', 'ɔɪ'),
  toPair('oy', 'green-6', 'ɔɪ', true),
  toPair('aw', 'green-7', 'ɔ', true),
  toPair('au', 'green-7', 'ɔ'),
  toPair('ew', 'green-7', 'uː juː', true),
  toPair('ue', 'green-7', 'uː juː', true),
  toPair('air', 'green-10', 'ɛr', true),
  toPair('ear', 'green-10', 'ɪr ɛr', true),
  toPair('eer', 'green-10', 'ɪr', true),
  toPair('ore', 'green-10', 'ɔr', true),
  toPair('are', 'green-10', 'ɛr', true),
]

const toSplit = (letter: string, sounds: string): Piece => ({
  letters: letter,
  keys: sounds.split(' ').map((sound) => `${letter}_e=${sound}`),
  step: 'green-4',
  isVowel: true,
})

export const SPLIT: readonly Piece[] = [
  toSplit('a', 'eɪ'),
  toSplit('e', 'iː'),
  toSplit('i', 'aɪ'),
  toSplit('o', 'oʊ'),
  toSplit('u', 'uː juː'),
]
