// Letters over example words: how a word is made up, and which of its letters are to blame.

import type { Pronunciation, Span, Unit } from '../../phonics/types.ts'
import { findExample } from '../../sequence/taught.ts'
import type { Sequence } from '../../sequence/types.ts'
import { findUnitExample } from '../../verdict/index.ts'
import type { Letters } from './questions/cards.ts'

export function toLetters(
  word: string,
  pronunciation: Pronunciation | undefined,
  blamed: readonly Span[],
  sequence: Sequence,
): readonly Letters[] {
  const isBlamed = ({ spans }: Unit): boolean =>
    blamed.some(([from, to]) => spans.some(([start, end]) => start < to && from < end))
  const units = pronunciation?.units ?? []
  return units.map((unit) => ({
    letters: unit.spans.map(([from, to]) => word.slice(from, to)).join('_'),
    example: findOtherWord(unit, units, word.toLowerCase(), sequence) ?? null,
    isBlamed: isBlamed(unit),
    isSilent: unit.sound === '',
  }))
}

/** The word itself says nothing about its letters, so it comes last. */
function findOtherWord(unit: Unit, units: readonly Unit[], word: string, sequence: Sequence): string | undefined {
  const taught = findUnitExample(unit, { units }, sequence)
  const candidates = [taught, findExample(sequence, unit.key, word), unit.shown]
  return candidates.find((one) => one !== undefined && one.toLowerCase() !== word) ?? taught ?? unit.shown
}
