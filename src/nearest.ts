// Finds the nearest valid name for a misspelt one, for "did you mean" messages.

import { countEdits } from './edits.ts'

const toEditDistance = (from: string, to: string): number => countEdits(from, to, { swaps: true })

/**
 * The candidate nearest to a word, or undefined where none is near. Case is ignored.
 * A candidate is near where it takes at most one edit for every three letters of the longer word (at least one edit),
 * or where the word is the beginning of that candidate alone.
 */
export function findNearest(word: string, candidates: readonly string[]): string | undefined {
  const wanted = word.toLowerCase()
  let best: string | undefined
  let bestDistance = Number.POSITIVE_INFINITY
  for (const candidate of candidates) {
    const allowed = Math.max(1, Math.floor(Math.max(wanted.length, candidate.length) / 3))
    if (Math.abs(wanted.length - candidate.length) > allowed) continue
    const distance = toEditDistance(wanted, candidate.toLowerCase())
    if (distance > allowed || distance >= bestDistance) continue
    best = candidate
    bestDistance = distance
  }
  return best ?? findOnlyCompletion(wanted, candidates)
}

function findOnlyCompletion(wanted: string, candidates: readonly string[]): string | undefined {
  if (wanted.length < 2) return undefined
  const longer = candidates.filter((candidate) => candidate.toLowerCase().startsWith(wanted))
  return longer.length === 1 ? longer[0] : undefined
}

/**
 * The candidate whose beginning is nearest to a word that was cut short, at most one edit for every five letters.
 * Undefined where none is near, or where two are equally near.
 */
export function findNearestBeginning(word: string, candidates: readonly string[]): string | undefined {
  const wanted = word.toLowerCase()
  const allowed = Math.floor(wanted.length / 5)
  const found = candidates.map((candidate) => ({ candidate, edits: toEditsOfBeginning(wanted, candidate, allowed) }))
  const least = Math.min(...found.map(({ edits }) => edits))
  const nearest = found.filter(({ edits }) => edits === least)
  return least <= allowed && nearest.length === 1 ? nearest[0]?.candidate : undefined
}

function toEditsOfBeginning(wanted: string, candidate: string, allowed: number): number {
  const lengths = Array.from({ length: 2 * allowed + 1 }, (_, index) => wanted.length - allowed + index)
  return Math.min(...lengths.map((length) => toEditDistance(wanted, candidate.slice(0, length).toLowerCase())))
}
