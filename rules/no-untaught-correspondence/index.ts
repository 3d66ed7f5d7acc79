// A word holds letters with a sound that the sequence teaches at a later step, or not at all though it is an ordinary one.

import { defineRule } from '../../src/lint/rule.ts'
import type { StoryContext } from '../../src/lint/types.ts'
import { toAsIn, toFaultReport, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'
import type { Unit } from '../../src/phonics/types.ts'
import { findExample, findSoundExample } from '../../src/sequence/taught.ts'
import { toKey } from '../../src/verdict/index.ts'

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
    later: '{word} has {letters}{example}, {when}',
    other: '{word} has {letters} with another sound than in {example}, {when}',
    sound: '{word} has {letters} that sounds like the {other} in {example}, {when}',
  },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      const unit = reason?.unit
      if (unit === undefined || options.allow.includes(unit.letters)) return
      const { key, letters } = toSeen(unit, story)
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
      else if (other === undefined) report({ ...body, messageId: 'later', data: { ...data, example: toAsIn(example) } })
      else {
        const more = { other: toQuoted(other.letters), example: toQuoted(other.example) }
        report({ ...body, messageId: 'sound', data: { ...data, ...more } })
      }
    },
  }),
})

/** The letters that a child meets: the `ie` of `cried` as in `pie`, where that is taught, else the `y` that it stands for. */
function toSeen({ letters, base, key, sound }: Unit, { sequence }: StoryContext) {
  const own = toKey(letters, sound)
  if (base === undefined || findExample(sequence, own, '') !== undefined)
    return { letters, key: base === undefined ? key : own }
  return { letters: base, key }
}

/** A word by which the child learnt the same letters with another sound: `snow` for the `ow` of `cow`. */
function findKnownExample({ knowledge, sequence }: StoryContext, letters: string, word: string): string | undefined {
  const start = `${letters.toLowerCase()}=`
  const keys = [...knowledge.correspondences].filter((key) => key.startsWith(start))
  return keys.map((key) => findExample(sequence, key, word)).find((example) => example !== undefined)
}
