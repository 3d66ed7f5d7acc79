// The letters of a word give a child no sounds: an abbreviation, or letters of another language.

import { defineRule } from '../../src/lint/rule.ts'
import { toMeantNote } from '../../src/lint/slips.ts'
import { toFaultReport, toQuoted } from '../../src/lint/wording.ts'
import { findAbbreviation, findPlaceSign } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'no-soundless-word',
  summary: 'A word whose letters give no sounds: an abbreviation, or another language.',
  severity: 'error',
  claims: ['abbreviation', 'foreign', 'unknown-word'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Words that you read out to the child, such as `TV`.',
    },
  },
  messages: {
    first: '{word} begins with the name of the letter {letter}, not with its sound',
    foreign: '{word} is not written in English letters',
    letters: '{word} is an abbreviation: its letters are said by their names',
    short: '{word} is short for {full}, and its letters do not say that',
    soundless: '{word} cannot be read from its letters',
  },
  create: ({ story, options, report }) => {
    const reportAbbreviation = (text: string, body: ReturnType<typeof toFaultReport>): void => {
      const word = toQuoted(text)
      const found = findAbbreviation(text, true)
      // As a sight word it would be the plain word: `us`.
      const how = findPlaceSign(text)
        ? 'tell the child X and list it under `names`'
        : 'teach X by heart and list it under `sight words`'
      const more = { ...body, note: `Use other words, or ${how.replace('X', word)}.` }
      if (found?.kind === 'short') {
        const full = found.full.map(toQuoted).join(' or ')
        report({ ...more, messageId: 'short', data: { word, full } })
      } else if (found?.kind === 'first letter')
        report({ ...more, messageId: 'first', data: { word, letter: toQuoted(found.letter) } })
      else report({ ...more, messageId: 'letters', data: { word } })
    }
    return {
      fault: (fault) => {
        const { word, code } = fault
        if (options.allow.some((allowed) => allowed.toLowerCase() === word.text.toLowerCase())) return
        const body = toFaultReport(fault)
        const data = { word: toQuoted(word.text) }
        if (code === 'foreign') {
          report({ ...body, messageId: 'foreign', data, note: 'A story is checked in English only.' })
        } else if (code === 'abbreviation') reportAbbreviation(word.text, body)
        else {
          const note =
            toMeantNote(fault, story) ??
            'Write the words out in full, check the spelling, or list it under `names` if it is a name.'
          report({ ...body, messageId: 'soundless', data, note })
        }
      },
    }
  },
})
