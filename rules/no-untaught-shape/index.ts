// A word's consonants and vowels stand in an order that is not taught yet, as the two consonants that open `frog`.

import { defineRule } from '../../src/lint/rule.ts'
import type { WordFault } from '../../src/lint/types.ts'
import { toFaultReport, toLettersText, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'
import type { Span, Unit } from '../../src/phonics/types.ts'

export default defineRule({
  id: 'no-untaught-shape',
  summary: 'Consonants side by side, or another word shape, before it is taught.',
  severity: 'error',
  claims: ['shape'],
  options: {},
  messages: {
    cluster: '{word} has the consonants {letters} side by side, {when}',
    shape: '{word} has the shape {shape} (C a consonant, V a vowel), {when}',
  },
  create: ({ story, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      const body = { ...toFaultReport(fault), note: toWordNote(fault, story) }
      const data = { word: toQuoted(word.text), when: toWhen(reason?.taughtAt, story) }
      const shape = String(reason?.found ?? '')
      const cluster = shape.includes('CC') ? findCluster(fault) : undefined
      if (cluster === undefined) report({ ...body, messageId: 'shape', data: { ...data, shape } })
      else {
        const letters = toQuoted(toLettersText(word.text, [cluster]))
        report({ ...body, letters: [cluster], messageId: 'cluster', data: { ...data, letters } })
      }
    },
  }),
})

/** The longest run of consonants in the blamed syllable: the `fr` of `frog`, not its `g`. */
function findCluster({ reason, judged }: WordFault): Span | undefined {
  const blamed = reason?.letters ?? []
  const isBlamed = ({ spans }: Unit): boolean =>
    blamed.some(([from, to]) => (spans[0]?.[0] ?? -1) >= from && (spans[0]?.[0] ?? to) < to)
  const runs: Unit[][] = [[]]
  for (const unit of judged?.verdict.pronunciation?.units ?? []) {
    if (unit.vowel || !isBlamed(unit)) runs.push([])
    else if (unit.kind !== 'silent') runs.at(-1)?.push(unit)
  }
  const run = runs.reduce((best, next) => (next.length > best.length ? next : best))
  const start = run[0]?.spans[0]?.[0]
  const end = run.at(-1)?.spans.at(-1)?.[1]
  return run.length < 2 || start === undefined || end === undefined ? undefined : [start, end]
}
