// Reads the dictionary: leaves out abbreviations and letter names, and mends what is written in two ways.

import { dictionary } from 'cmu-pronouncing-dictionary'
import { isVowel, type Transcription, toTranscription } from '../../src/phonics/arpabet.ts'

/** A word with its transcriptions in the dictionary's order. */
export interface DictionaryWord {
  readonly word: string
  readonly transcriptions: readonly Transcription[]
}

export interface Correction {
  readonly word: string
  /** The transcriptions that replace the dictionary's; empty to leave the word out. */
  readonly transcriptions: readonly Transcription[]
  readonly reason: string
}

/** The files of corrections. */
export const CORRECTIONS = ['corrections.tsv', 'class-names.tsv']

/** Reads one of them: word, transcriptions parted by `/` (or `-`), reason. */
export function readCorrections(table: string): Correction[] {
  return table
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [word = '', sounds = '', reason = ''] = line.split('\t')
      const transcriptions = sounds === '-' ? [] : sounds.split('/').map((one) => toTranscription(one.trim()))
      return { word, transcriptions, reason }
    })
}

const LETTER_NAMES: Readonly<Record<string, readonly string[]>> = {
  a: ['EY'],
  b: ['B IY'],
  c: ['S IY'],
  d: ['D IY'],
  e: ['IY'],
  f: ['EH F'],
  g: ['JH IY'],
  h: ['EY CH'],
  i: ['AY'],
  j: ['JH EY'],
  k: ['K EY'],
  l: ['EH L'],
  m: ['EH M'],
  n: ['EH N'],
  o: ['OW'],
  p: ['P IY'],
  q: ['K Y UW'],
  r: ['AA R'],
  s: ['EH S', 'EH Z'],
  t: ['T IY'],
  u: ['Y UW'],
  v: ['V IY'],
  w: ['D AH B AH L Y UW'],
  x: ['EH K S'],
  y: ['W AY'],
  z: ['Z IY'],
}

/** Whether a transcription spells the word out letter by letter: `tv`, `us` as U S. */
function isSpelledOut(word: string, phones: readonly string[]): boolean {
  if (word.length < 2) return false
  let rest = [phones.join(' ')]
  for (const letter of word) {
    const names = LETTER_NAMES[letter] ?? []
    rest = rest.flatMap((left) =>
      names.filter((name) => left === name || left.startsWith(`${name} `)).map((name) => left.slice(name.length + 1)),
    )
  }
  if (rest.includes('')) return true
  // ufos, lps: letter names and a plural
  return (
    word.length > 2 &&
    word.endsWith('s') &&
    phones.at(-1) === 'Z' &&
    isSpelledOut(word.slice(0, -1), phones.slice(0, -1))
  )
}

/**
 * All ordinary words of the dictionary: letters and inner apostrophes only, with a vowel letter (`tv` and `mr` are
 * abbreviations), and not said letter by letter (`usa`).
 */
export function readDictionary(): { words: DictionaryWord[]; leftOut: Readonly<Record<string, number>> } {
  const byWord = new Map<string, Transcription[]>()
  const leftOut = { notLetters: 0, abbreviation: 0, spelledOut: 0 }
  for (const [key, sounds] of Object.entries(dictionary)) {
    const word = key.replace(/\(\d\)$/, '')
    if (!/^[a-z][a-z']*$/.test(word) || word.endsWith("'")) leftOut.notLetters++
    else if (word !== 'a' && word !== 'i' && (word.length < 2 || !/[aeiouy]/.test(word))) leftOut.abbreviation++
    else {
      const transcription = mend(word, toTranscription((sounds as string).replace(/ #.*/, '')))
      if (isSpelledOut(word, transcription.phones)) leftOut.spelledOut++
      else addNew(byWord, word, transcription)
    }
  }
  const words = [...byWord].map(([word, all]) => ({ word, transcriptions: dropBroad(word, all) }))
  return { words: words.sort((x, y) => (x.word < y.word ? -1 : 1)), leftOut }
}

/** `want`, `swan` and `watch` with the vowel of `ball` as well as that of `father`: the spelling is taught with the second. */
function dropBroad(word: string, all: readonly Transcription[]): readonly Transcription[] {
  if (!/(?:w|wh|qu)a(?![lruw])/.test(word)) return all
  const sounds = all.map(({ phones }) => phones.join(' '))
  return all.filter((_, at) => {
    const plain = sounds[at]?.replace(/\bAO\b/, 'AA') ?? ''
    return plain === sounds[at] || !sounds.includes(plain)
  })
}

function addNew(byWord: Map<string, Transcription[]>, word: string, transcription: Transcription): void {
  const list = byWord.get(word)
  const sounds = transcription.phones.join(' ')
  if (!list) byWord.set(word, [transcription])
  else if (!list.some((one) => one.phones.join(' ') === sounds)) list.push(transcription)
}

/** `intention` and `ancient` are said as `attention` is; most such words are written so. */
const isHushed = (word: string, phone: string, before: string | undefined): boolean =>
  phone === 'CH' && before === 'N' && /n[cst]i[eo]n/.test(word)

/**
 * Mends what the dictionary writes in two ways:
 * `w` as HH W (now said by few), ER R for ER, ER or AA for a last `a` (`pasadena`, `africa`), vowels before r.
 */
export function mend(word: string, { phones, stress }: Transcription): Transcription {
  const mended: string[] = []
  const marks: (0 | 1 | 2)[] = []
  let vowels = 0
  for (const [at, phone] of phones.entries()) {
    const mark = isVowel(phone) ? stress[vowels++] : undefined
    if (phone === 'ER' && mark === 0 && isVowel(phones[at + 1] ?? '') && (stress[vowels] ?? 0) > 0) {
      // The r of `around` and `giraffe` opens the stressed syllable: a-round.
      mended.push('AH', 'R')
      marks.push(0)
      continue
    }
    const before = mended.at(-1)
    if (phone === 'R' && before === 'ER') continue
    // No k is written in `length` and `strength`.
    if (phone === 'K' && before === 'NG' && /length|strength/.test(word)) continue
    if (phone === 'W' && before === 'HH' && word.includes('w')) mended.pop()
    if (phone === 'R') mended.push(...toBeforeR(word, mended.pop()))
    if (phone === 'ER' && isOneBeat(word, before)) mended.push('R')
    else {
      mended.push(isHushed(word, phone, before) ? 'SH' : phone)
      if (mark !== undefined) marks.push(mark)
    }
  }
  dropBeforeLy(word, mended, marks)
  if (word.endsWith('a') && mended.at(-1) === 'ER') mended[mended.length - 1] = 'AH'
  if (hasWeakEnd(word) && mended.at(-1) === 'AA' && marks.length > 1 && marks.at(-1) !== 1) {
    mended[mended.length - 1] = 'AH'
    marks[marks.length - 1] = 0
  }
  // `decide` is written with a second stress, and `describe` without one.
  if (
    marks[0] === 2 &&
    marks[1] === 1 &&
    /^(?:IH|[BDR] IH|P R IH)\b/.test(mended.join(' ')) &&
    /^(?:be|de|e|pre|re)/.test(word)
  )
    marks[0] = 0
  // `un` and `up` before a word are said in full: unhappy, upstairs.
  if (marks[0] === 0 && mended[0] === 'AH' && /^(un|up(?!on))/.test(word)) marks[0] = 2
  return { phones: mended, stress: marks }
}

/** No letter says a vowel before the l of `wobbly`, which the dictionary writes as that of `bubbly` only here and there. */
function dropBeforeLy(word: string, phones: string[], marks: number[]): void {
  if (!/[bdfgkpstz]ly$/.test(word) || !/ AH L IY$/.test(phones.join(' ')) || marks.at(-2) !== 0) return
  phones.splice(-3, 1)
  marks.splice(-2, 1)
  if (marks.at(-1) === 2) marks[marks.length - 1] = 0
}

/** Said with a full a at the end. */
const FULL_ENDS = new Set(['accra', 'baja', 'dada', 'grandma', 'grandpa', 'hoopla', 'panama', 'tata'])

/** The last a of `Africa`, `Elena` and `polka` is weak, as in `sofa`, though the dictionary writes some two hundred with a full one. */
const hasWeakEnd = (word: string): boolean => /[^aeiou]a$|ia$/.test(word) && !FULL_ENDS.has(word)

/** `hear` is written with IY and `near` with IH, `poor` with UW and `tour` with UH: one sound before r. */
function toBeforeR(word: string, phone: string | undefined): readonly string[] {
  if (phone === 'IY' && /e[ae]r|[ei]er|eir|ere/.test(word)) return ['IH']
  if (phone === 'UW' && /[ou]r/.test(word)) return ['UH']
  return phone === undefined ? [] : [phone]
}

/** `fire` and `hour` are written with one vowel or two; teachers clap them once. */
const isOneBeat = (word: string, before: string | undefined): boolean =>
  (before === 'AY' && /[iy]re|oir/.test(word)) || (before === 'AW' && /our/.test(word))
