// Which words were meant by a misspelt one of a story, and how that is asked.

import { hasCapital } from '../letter-kinds.ts'
import { toBareName } from '../usage/likely-names.ts'
import type { JudgedWord } from '../verdict/types.ts'
import { toCaseOf } from '../words/letter-case.ts'
import { toByHeart } from './by-heart.ts'
import { toQuoted } from './quoted.ts'
import type { StoryContext, WordFault } from './types.ts'

const NONE: readonly string[] = []

/** The likeliest first, with the capital of what was written; none for a word that is meant as it stands: a name, taught by heart. */
export function findMeant(
  text: string,
  { pronunciations, verdict }: JudgedWord,
  story: StoryContext,
): readonly string[] {
  const isListed = pronunciations.source === 'dictionary'
  if (pronunciations.meant !== undefined || (!isListed && hasCapital(text))) return NONE
  const found = story.findSlips(text)
  if (found.length === 0) return NONE
  const isKnown = verdict.kind === 'sight' || verdict.kind === 'name'
  const isName = hasCapital(text) && story.likelyNames().has(toBareName(text))
  return isListed && (isKnown || isName) ? NONE : found.map((meant) => toCaseOf(text, meant))
}

/** What a rule says of a word is nothing beside the word that was meant. */
export function toMeantNote({ word, judged }: WordFault, story: StoryContext): string | undefined {
  const meant = judged === undefined ? NONE : findMeant(word.text, judged, story)
  return meant.length === 0
    ? undefined
    : `${toQuestion(meant)} If not, use another word, or list ${toQuoted(toByHeart(word.text, story))} under \`sight words\`.`
}

/** `Did you mean \`there\` or \`their\`?` */
export const toQuestion = (words: readonly string[]): string => `Did you mean ${words.map(toQuoted).join(' or ')}?`
