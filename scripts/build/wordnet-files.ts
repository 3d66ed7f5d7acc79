// What the lines of WordNet's files say: a row of `index.sense`, a line of `data.noun` and its like.

export type WordNetPos = 'noun' | 'verb' | 'adj' | 'adv'

/** One sense of a lemma, as a row of `index.sense` gives it. */
export interface Sense {
  readonly pos: WordNetPos
  /** Lexicographer file: `animal`, `artifact`, `time`…; `all`, `pert`, `ppl` for adjectives. */
  readonly lexFile: string
  /** Byte offset of the synset in its data file. */
  readonly offset: number
  /** How often the sense was tagged in WordNet's own texts. */
  readonly tags: number
}

interface Pointer {
  readonly symbol: string
  readonly pos: WordNetPos
  readonly offset: number
  /** Word numbers from 1 in the source and the target synset; 0 for the whole synset. */
  readonly from: number
  readonly to: number
}

export interface Synset {
  readonly pos: WordNetPos
  readonly offset: number
  /** A satellite is an adjective gathered round a head by likeness: `huge` round `large`. */
  readonly isSatellite: boolean
  /** As written: with capitals, underscores for spaces, no syntactic marker. */
  readonly words: readonly string[]
  readonly pointers: readonly Pointer[]
  /** What it means, with examples. */
  readonly gloss: string
}

// Numbers and names as in WordNet's lexnames(5WN).
const LEX_FILES = [
  'all',
  'pert',
  'adverb',
  'tops',
  'act',
  'animal',
  'artifact',
  'attribute',
  'body',
  'cognition',
  'communication',
  'event',
  'feeling',
  'food',
  'group',
  'location',
  'motive',
  'object',
  'person',
  'phenomenon',
  'plant',
  'possession',
  'process',
  'quantity',
  'relation',
  'shape',
  'state',
  'substance',
  'time',
  'verb.body',
  'verb.change',
  'verb.cognition',
  'verb.communication',
  'verb.competition',
  'verb.consumption',
  'verb.contact',
  'verb.creation',
  'verb.emotion',
  'verb.motion',
  'verb.perception',
  'verb.possession',
  'verb.social',
  'verb.stative',
  'verb.weather',
  'ppl',
] as const

// Sense type 5 is an adjective satellite; pointers write it `s`.
const POS_OF_TYPE: readonly (WordNetPos | undefined)[] = [undefined, 'noun', 'verb', 'adj', 'adv', 'adj']
const POS_OF_LETTER: Readonly<Record<string, WordNetPos>> = { n: 'noun', v: 'verb', a: 'adj', s: 'adj', r: 'adv' }

// boat%1:06:00:: 02861626 1 71  → lemma % type : file : … offset, sense number, tags
/** The senses of each lemma, most frequent first, from the text of `index.sense`. */
export function readSenses(text: string): Map<string, Sense[]> {
  const rows = new Map<string, { sense: Sense; number: number }[]>()
  for (const line of text.split('\n')) {
    const percent = line.indexOf('%')
    const pos = POS_OF_TYPE[line.charCodeAt(percent + 1) - 48]
    if (percent < 0 || pos === undefined) continue
    const [, offset, number, tags] = line.split(' ')
    const lemma = line.slice(0, percent)
    const file = Number(line.slice(percent + 3, percent + 5))
    const sense = { pos, lexFile: LEX_FILES[file] ?? 'all', offset: Number(offset), tags: Number(tags) }
    const known = rows.get(lemma)
    if (known === undefined) rows.set(lemma, [{ sense, number: Number(number) }])
    else known.push({ sense, number: Number(number) })
  }
  const senses = new Map<string, Sense[]>()
  for (const [lemma, all] of rows)
    senses.set(
      lemma,
      all.sort((a, b) => a.number - b.number).map((row) => row.sense),
    )
  return senses
}

// 02861626 06 n 01 boat 0 013 @ 04537436 n 0000 + 01947887 v 0101 … | gloss
/** One line of a data file. */
export function toSynset(line: string, pos: WordNetPos, offset: number): Synset {
  const fields = line.split(' ')
  const wordCount = Number.parseInt(fields[3] ?? '0', 16)
  const words: string[] = []
  for (let i = 0; i < wordCount; i++) words.push((fields[4 + 2 * i] ?? '').replace(/\(\w+\)$/, ''))
  const first = 4 + 2 * wordCount
  const pointers: Pointer[] = []
  for (let i = 0; i < Number(fields[first]); i++) {
    const [symbol = '', target, letter = '', numbers = '0000'] = fields.slice(first + 1 + 4 * i, first + 5 + 4 * i)
    pointers.push({
      symbol,
      pos: POS_OF_LETTER[letter] ?? 'noun',
      offset: Number(target),
      from: Number.parseInt(numbers.slice(0, 2), 16),
      to: Number.parseInt(numbers.slice(2), 16),
    })
  }
  return {
    pos,
    offset,
    isSatellite: fields[2] === 's',
    words,
    pointers,
    gloss: line.slice(line.indexOf('|') + 1).trim(),
  }
}
