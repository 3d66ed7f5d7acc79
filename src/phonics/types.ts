// What the engine knows about one word: its letters, its sounds, and which letters say which sound.

import type { Heteronyms } from './heteronyms/types.ts'
import type { SlipWords } from './lexicon/slip-words.ts'

/** The accents in which a word can be judged. General American comes from the dictionary, Southern British is derived. */
export type Accent = 'general-american' | 'southern-british'

/** A range of letters in a word: zero-based, end-exclusive, in UTF-16 units of the word. */
export type Span = readonly [start: number, end: number]

/** What a group of letters is in the word: an ordinary spelling, an ending, or letters that say nothing. */
export type UnitKind = 'correspondence' | 'inflection' | 'silent'

/** One group of letters with the sound that it says: `sh` in `ship`, `a_e` in `cake`, the ending `ed` in `rained`. */
export interface Unit {
  /** The grapheme as a teacher writes it: `sh`, `a_e`, `ed`. */
  readonly letters: string
  /** Where its letters stand in the word; two ranges for a split grapheme. */
  readonly spans: readonly Span[]
  /** Its sound in IPA, in the accent asked for; empty for silent letters. */
  readonly sound: string
  readonly kind: UnitKind
  /** The correspondence a child must know to read it, `a_e=eɪ`: grapheme (or `base`) and sound, with sounds made alike that teachers of this accent teach as one. Always compare this, not letters and sound. */
  readonly key: CorrespondenceKey
  /** The grapheme it stands for where an ending changed the spelling: `n` for the `nn` of `running`, `y` for the `i` of `cried`. */
  readonly base?: string
  /** True where the sound holds a vowel, so that units can be told into C and V. */
  readonly vowel: boolean
  /** True where the vowel is unstressed and worn down to a schwa or a short i: the `i` of `rabbit`, the `a` of `sofa`. */
  readonly reduced?: true
  /** Stress of a vowel unit: 1 main, 2 secondary, 0 none. */
  readonly stress?: 0 | 1 | 2
  /** A word that shows the key, where English ordinarily spells the sound so; missing where the spelling is an exception. */
  readonly shown?: string
}

/** One way to say a word, letter group by letter group. The units cover the letters once, in order of their first letter. */
export interface Pronunciation {
  readonly units: readonly Unit[]
  /** The whole word in IPA, with stress marks where the word has more than one syllable. */
  readonly ipa: string
  /** The word cut as a teacher cuts it: `['rab', 'bit']`. */
  readonly syllables: readonly string[]
  /** For a word with more than one spoken form (`read`), a key that names this one; see heteronyms. */
  readonly form?: string
  /** What this form means, for a teacher. */
  readonly meaning?: string
}

/** Behind the words that one is put together of: `theirs`, `welcomed`, `becoming`. */
export type WordEnding = '-s' | '-ed' | '-ing' | '-er'

/** Every careful pronunciation of a word, best first. */
export interface WordPronunciations {
  readonly word: string
  readonly source: 'dictionary' | 'guess'
  readonly pronunciations: readonly Pronunciation[]
  /** For a word put together of two little ones (`someone`), what it is made of, with its ending. */
  readonly parts?: readonly (WordPronunciations | WordEnding)[]
  /** True where the pronunciations are different words and the sentence must choose. */
  readonly heteronym: boolean
  /** What was meant by a misspelt word: `making` for `makeing`, whose ending asks for a change; `the dog` for `thedog`. */
  readonly meant?: string
  /** The letters of a word that nobody listed can be said in several ways, and nothing tells which: the first is a mere guess. */
  readonly unsure?: true
}

/** The engine in one accent: words in, pronunciations out. Pure and cached. */
export interface Phonics {
  readonly accent: Accent
  /** Words with several spoken forms, whatever the accent. */
  readonly heteronyms: Heteronyms
  /** Pronunciations of a word in any case; curly apostrophes are taken as straight. Never throws; no pronunciations for what has no letters or more than 200. */
  read(word: string): WordPronunciations
  /** Whether `read` would say that the word is in the dictionary; a cheap look where many words are tried. */
  isListed(word: string): boolean
  /** What is known of slips, whatever the accent; see `findSlip`. */
  readonly slips: SlipWords
}

/** The name of a correspondence inside the program: grapheme, equals sign, IPA, as `a_e=eɪ`. */
export type CorrespondenceKey = `${string}=${string}`
