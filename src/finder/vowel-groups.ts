// Words in groups by their vowel, in the order in which vowels are taught.

import type { Sequence } from '../sequence/types.ts'
import type { FoundWord } from './find.ts'

export interface VowelGroup {
  /** Letters of the vowel, with an example where two vowels are written alike: `ea (bread)`; empty where there is one group. */
  readonly label: string
  /** In order of the alphabet. */
  readonly words: readonly FoundWord[]
}

/** A smaller group is no row of its own. */
const LEAST_GROUP = 3
const OTHERS = 'others'
const LONGER = 'longer'

/** Words of one syllable by their vowel; the longer ones, and vowels that few words have, at the end. */
export function groupByVowel(words: readonly FoundWord[], sequence: Sequence): readonly VowelGroup[] {
  const labels = toLabels(sequence)
  const order = [...labels.values(), OTHERS, LONGER]
  const groups = toGroups(words, (found) => toLabel(found, labels))
  const small = [...groups].filter(([label, own]) => label !== LONGER && label !== OTHERS && own.length < LEAST_GROUP)
  for (const [label, own] of small) {
    groups.delete(label)
    groups.set(OTHERS, [...(groups.get(OTHERS) ?? []), ...own])
  }
  const sorted = [...groups].sort(([one], [other]) => order.indexOf(one) - order.indexOf(other))
  return sorted.map(([label, own]) => ({
    label: sorted.length === 1 ? '' : label,
    words: own.sort((one, other) => (one.word < other.word ? -1 : 1)),
  }))
}

function toGroups(words: readonly FoundWord[], toName: (found: FoundWord) => string): Map<string, FoundWord[]> {
  const groups = new Map<string, FoundWord[]>()
  for (const found of words) {
    const name = toName(found)
    groups.set(name, [...(groups.get(name) ?? []), found])
  }
  return groups
}

function toLabel(
  { pronunciation: { units, syllables }, isSight }: FoundWord,
  labels: ReadonlyMap<string, string>,
): string {
  if (isSight) return OTHERS
  if (syllables > 1) return LONGER
  const vowel = units.find((unit) => unit.vowel)
  return labels.get(vowel?.key ?? '') ?? OTHERS
}

/** By key, in the order of teaching. */
function toLabels({ steps }: Sequence): ReadonlyMap<string, string> {
  const taught = steps.flatMap(({ adds }) => adds.correspondences)
  const isTwice = (letters: string): boolean => taught.filter((one) => one.letters === letters).length > 1
  const seen = new Set<string>()
  return new Map(
    taught.map(({ key, letters, example }) => {
      const label = isTwice(letters) && seen.has(letters) ? `${letters} (${example})` : letters
      seen.add(letters)
      return [key, label]
    }),
  )
}
