// A word is not in the dictionary, so its sounds are a guess from its letters.

import { hasCapital } from '../../src/letter-kinds.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { findMeant, toQuestion } from '../../src/lint/slips.ts'
import type { StoryContext, WordFault } from '../../src/lint/types.ts'
import { toAsIn, toFaultReport, toQuoted, toUnsureNameNote } from '../../src/lint/wording.ts'
import { findOtherSpelling } from '../../src/phonics/british-spellings.ts'
import type { Accent } from '../../src/phonics/types.ts'
import { findExample } from '../../src/sequence/taught.ts'
import type { Word } from '../../src/story/types.ts'
import { toBareName } from '../../src/usage/likely-names.ts'
import type { Verdict } from '../../src/verdict/types.ts'
import { toCaseOf } from '../../src/words/letter-case.ts'

export default defineRule({
  id: 'no-unknown-word',
  summary: 'A word that the dictionary does not know; shows how it was read, or what was meant.',
  severity: 'warning',
  claims: ['guessed', 'misspelt', 'unsure'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Invented words that you know about, such as `plop`.',
    },
  },
  messages: {
    otherLand: '{word} is the {land} spelling; {other} writes {right}',
    slip: '{word} is not in the dictionary',
    slipOfListed: '{word} is most likely misspelt',
    guessed: '{word} is not in the dictionary; it was read by its letters: {guess}',
    misspelt: '{word} is misspelt: {meant}',
    unsure: 'it is not known how {word} is said; the letters would say {guess}',
    unsureName: 'it is not known how {word} is said; is it a name?',
  },
  create: ({ story, options, report }) => {
    const isAllowed = (text: string) => options.allow.some((allowed) => allowed.toLowerCase() === text.toLowerCase())
    // Listed words that nobody slips into. Most words of a story have been met in it before.
    const quiet = new Set<string>()
    return {
      // Beside the error of a word that cannot be read: most likely it is only misspelt.
      word: (word, sentence) => {
        if (word.form !== 'word' || quiet.has(word.text) || isAllowed(word.text)) return
        const judged = story.judge(word, sentence)
        const { pronunciations, verdict } = judged
        const isListed = pronunciations.source === 'dictionary'
        if (pronunciations.unsure) return
        const other = findOtherSpelling(word.text, story.accent)
        if (other !== undefined && !isMeant(word.text, verdict.kind, story)) {
          report(toOtherLand(word, toCaseOf(word.text, other), story.accent))
          return
        }
        // Those are faults, and told as such.
        if (!isListed && verdict.readable) return
        const expected = findMeant(word.text, judged, story)
        if (expected.length === 0) {
          if (isListed && story.findSlips(word.text).length === 0) quiet.add(word.text)
          return
        }
        report({
          at: word,
          word,
          reason: 'slip',
          messageId: isListed ? 'slipOfListed' : 'slip',
          data: { word: toQuoted(word.text) },
          expected,
          note: toQuestion(expected),
          isOnce: true,
        })
      },
      fault: (fault) => {
        const { word, code } = fault
        if (isAllowed(word.text)) return
        const right = fault.judged?.pronunciations.meant
        if (right !== undefined) {
          const expected = [toCaseOf(word.text, right)]
          const data = { word: toQuoted(word.text), meant: toQuoted(expected[0] ?? right) }
          report({ ...toFaultReport(fault), messageId: 'misspelt', data, expected, isError: true })
          return
        }
        const expected = story.findSlips(word.text).map((meant) => toCaseOf(word.text, meant))
        const question = expected.length === 0 ? '' : `${toQuestion(expected)} `
        const note =
          question + 'Check the spelling. If the word is meant, nothing need be done: a child can sound it out.'
        const data = { word: toQuoted(word.text), guess: toGuess(fault, story) }
        const body = { ...toFaultReport(fault), data, expected }
        // What letters would say of a name helps nobody: the first word of a sentence is told as any name is.
        const messageId = hasCapital(word.text) ? 'unsureName' : 'unsure'
        if (code === 'unsure') report({ ...body, messageId, note: question + toUnsureNote(word.text), isError: true })
        else report({ ...body, messageId: 'guessed', note })
      },
    }
  },
})

/** `color` where the accent is British, `colour` where it is American. */
const toOtherLand = (word: Word, right: string, accent: Accent) => {
  const isBritish = accent === 'southern-british'
  const lands = isBritish ? { land: 'American', other: 'Britain' } : { land: 'British', other: 'America' }
  const note = `Write ${toQuoted(right)}, or choose the other accent.`
  return {
    at: word,
    word,
    reason: 'other-spelling',
    messageId: 'otherLand',
    data: { word: toQuoted(word.text), right: toQuoted(right), ...lands },
    expected: [right],
    note,
    isOnce: true,
  } as const
}

/** Whether a word is meant as it stands: taught by heart, or a name. */
const isMeant = (text: string, kind: Verdict['kind'], story: StoryContext): boolean =>
  kind === 'sight' || kind === 'name' || (hasCapital(text) && story.likelyNames().has(toBareName(text)))

const toUnsureNote = (text: string): string =>
  hasCapital(text)
    ? toUnsureNameNote(toBareName(text))
    : 'Use another word, or say it to the child and list it under `sight words`.'

/** `z` as in `zip`, `u` as in `cup`, `b` as in `bat` */
function toGuess({ word, judged }: WordFault, { sequence }: StoryContext): string {
  const units = judged?.verdict.pronunciation?.units ?? []
  return units
    .map((unit) => {
      if (unit.kind === 'silent') return `silent ${toQuoted(unit.letters)}`
      return `${toQuoted(unit.letters)}${toAsIn(findExample(sequence, unit.key, word.text))}`
    })
    .join(', ')
}
