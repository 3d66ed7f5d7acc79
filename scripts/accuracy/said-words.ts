// Names of many lands and noises of picture books: does the program say them as the table says, or say that it does not know?

import { readFileSync } from 'node:fs'
import type { Spelled } from '../../src/phonics/cutting.ts'
import { isUnsure } from '../../src/phonics/phonics.ts'

/** A word with the ways in which it may be said, sounds in ARPAbet without stress. */
export interface SaidWord {
  readonly word: string
  readonly ways: readonly string[]
  /** How the program said it when it was first asked, where that was none of the ways and the table tells. */
  readonly firstLook?: string
}

export interface SaidFigures {
  readonly words: number
  readonly right: number
  /** The program says that it does not know. */
  readonly unknown: number
  readonly wrong: readonly string[]
}

/** A table whose first column is the word and whose last is its sounds. */
export function readSaidWords(
  name:
    | 'names-drawn'
    | 'names-eighth'
    | 'names-eighteenth'
    | 'names-eleventh'
    | 'names-fifteenth'
    | 'names-fifth'
    | 'names-fourteenth'
    | 'names-fourth'
    | 'names-fresh'
    | 'names-nineteenth'
    | 'names-ninth'
    | 'names-of-children'
    | 'names-of-lands'
    | 'names-second'
    | 'names-seventh'
    | 'names-seventeenth'
    | 'names-sixteenth'
    | 'names-sixth'
    | 'names-tenth'
    | 'names-third'
    | 'names-thirteenth'
    | 'names-twelfth'
    | 'names-twentieth'
    | 'noises',
): readonly SaidWord[] {
  const file = new URL(`../../tests/phonics/data/${name}.tsv`, import.meta.url)
  const lines = readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
  const at = lines[0]?.split('\t').indexOf('first look') ?? -1
  return lines.slice(1).map((line) => {
    const cells = line.split('\t')
    const ways = (cells.at(-1) ?? '').split('/').map((way) => way.trim())
    const firstLook = at < 0 ? undefined : cells[at]
    return { word: cells[0] ?? '', ways, ...(firstLook && { firstLook }) }
  })
}

/** @param spell the cuttings of a word, best first; the first is what a message shows */
export function measureSaidWords(words: readonly SaidWord[], spell: (word: string) => Spelled): SaidFigures {
  const wrong: string[] = []
  let right = 0
  let unknown = 0
  for (const { word, ways } of words) {
    // Without accents, as the engine reads them.
    const spelled = spell(word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase())
    const first = isUnsure(word, spelled) ? undefined : spelled.cuttings[0]
    const said = first?.raw.units.flatMap(({ phones }) => phones).join(' ')
    if (said === undefined) unknown++
    else if (ways.some((way) => toLoose(way) === toLoose(said))) right++
    else wrong.push(`${word} ${said}`)
  }
  return { words: words.length, right, unknown, wrong }
}

/** What bearers themselves say in more than one way: weak vowels, o as in `hot` or `dog`, a long vowel before r. */
const toLoose = (sounds: string): string =>
  sounds
    .replace(/\b(IH|IY|UW) R\b/g, (_, vowel) => `${vowel === 'UW' ? 'UH' : 'IH'} R`)
    .replace(/\b(AH|IH)\b/g, 'AH')
    .replace(/\bAO\b/g, 'AA')
    .replace(/\bER AH\b/g, 'AH R AH')
