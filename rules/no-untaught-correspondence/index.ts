// A word holds letters with a sound that the sequence teaches at a later step, or not at all though it is an ordinary one.

import { defineRule } from '../../src/lint/rule.ts'
import { toSeen } from '../../src/lint/seen.ts'
import type { StoryContext } from '../../src/lint/types.ts'
import { toAsIn, toFaultReport, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'
import { findExample, findSoundExample } from '../../src/sequence/taught.ts'

export default defineRule({
  id: 'no-untaught-correspondence',
  summary: 'Letters whose sound is taught at a later step, or not in this sequence.',
  severity: 'error',
  claims: ['correspondence-later', 'correspondence-untaught'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Letters that the child may meet all the same, such as `igh`.',
    },
  },
  messages: {
    changed: '{word} has {letters} for the {other} in {example}, {when}',
    dropped: '{word} has {letters} as in {example} without its `e`, {when}',
    later: '{word} has {letters}{example}, {when}',
    other: '{word} has {letters} with another sound than in {example}, {when}',
    silent: '{word} has a silent {letters}, as in {example}, {when}',
    sound: '{word} has {letters} that sounds like the {other} in {example}, {when}',
  },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      const unit = reason?.unit
      if (unit === undefined) return
      const { key, letters, stand } = toSeen(word.text, unit, reason)
      if (options.allow.includes(unit.letters) || options.allow.includes(letters)) return
      const shown = unit.shown === word.text.toLowerCase() ? undefined : unit.shown
      const example = findExample(story.sequence, key, word.text) ?? shown
      // Where the word itself is the example that the sequence gives, another spelling of the sound says it better.
      const sound = example === undefined ? findSoundExample(story.sequence, key, word.text) : undefined
      const isHelp = sound !== undefined && (letters.length === 1 || story.knowledge.correspondences.has(sound.key))
      const other = isHelp ? sound : undefined
      const body = { ...toFaultReport(fault), note: toWordNote(fault, story) }
      const data = {
        word: toQuoted(word.text),
        letters: toQuoted(letters),
        when: toWhen(reason?.taughtAt, story),
      }
      const known =
        example === undefined && other === undefined ? findKnownExample(story, letters, word.text) : undefined
      if (known !== undefined) report({ ...body, messageId: 'other', data: { ...data, example: toQuoted(known) } })
      else if (stand === 'changed' && example !== undefined) {
        const changed = { letters: toQuoted(unit.letters), other: toQuoted(letters), example: toQuoted(example) }
        report({ ...body, messageId: 'changed', data: { ...data, ...changed } })
      } else if (stand === 'dropped' && example !== undefined)
        report({ ...body, messageId: 'dropped', data: { ...data, example: toQuoted(example) } })
      else if (stand === 'silent' && example !== undefined)
        report({ ...body, messageId: 'silent', data: { ...data, example: toQuoted(example) } })
      else if (other === undefined) report({ ...body, messageId: 'later', data: { ...data, example: toAsIn(example) } })
      else {
        const more = { other: toQuoted(other.letters), example: toQuoted(other.example) }
        report({ ...body, messageId: 'sound', data: { ...data, ...more } })
      }
    },
  }),
})

/** A word by which the child learnt the same letters with another sound: `snow` for the `ow` of `cow`. */
function findKnownExample({ knowledge, sequence }: StoryContext, letters: string, word: string): string | undefined {
  const start = `${letters.toLowerCase()}=`
  const keys = [...knowledge.correspondences].filter((key) => key.startsWith(start))
  return keys.map((key) => findExample(sequence, key, word)).find((example) => example !== undefined)
}
