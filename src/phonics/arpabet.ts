// The sounds of the CMU Pronouncing Dictionary (ARPAbet) and what is true of each.

const VOWELS: ReadonlySet<string> = new Set('AA AE AH AO AW AY EH ER EY IH IY OW OY UH UW'.split(' '))

const HISSES: ReadonlySet<string> = new Set(['S', 'Z', 'SH', 'ZH', 'CH', 'JH'])
const VOICELESS: ReadonlySet<string> = new Set(['P', 'T', 'K', 'F', 'TH', 'S', 'SH', 'CH', 'HH'])

export const isVowel = (phone: string): boolean => VOWELS.has(phone)

/** Whether an -s after this sound is said as a syllable of its own: `buses`, `wishes`. */
export const isHiss = (phone: string): boolean => HISSES.has(phone)

export const isVoiceless = (phone: string): boolean => VOICELESS.has(phone)

export interface Transcription {
  readonly phones: readonly string[]
  /** Stress of each vowel in turn: 1 main, 2 secondary, 0 none. */
  readonly stress: readonly (0 | 1 | 2)[]
}

/** Reads `R AE1 B AH0 T`. */
export function toTranscription(text: string): Transcription {
  const phones: string[] = []
  const stress: (0 | 1 | 2)[] = []
  for (const symbol of text.split(' ')) {
    const digit = symbol.charCodeAt(symbol.length - 1) - 48
    if (digit < 0 || digit > 2) phones.push(symbol)
    else {
      phones.push(symbol.slice(0, -1))
      stress.push(digit as 0 | 1 | 2)
    }
  }
  return { phones, stress }
}
