// What an editor shows over a word: its letters over their sounds, and the step that makes it readable.

import type { PreparedStory } from '../check/check-story.ts'
import { findMeant } from '../lint/slips.ts'
import { findUnitExamples } from '../report/examples.ts'
import { toExplainText } from '../report/explain.ts'
import { findFormReasons } from '../report/form-reasons.ts'
import type { Paint } from '../report/paint.ts'
import { toTakenFirst } from '../report/taken-first.ts'
import { findWord } from '../story/find-word.ts'
import type { Range } from '../story/types.ts'

/** Columns of the box. */
const WIDTH = 72

const asIs = (text: string): string => text
const PLAIN: Paint = { strong: asIs, quiet: asIs, error: asIs, warning: asIs, good: asIs }

export interface HoverText extends Range {
  /** Lines of plain text, laid out in columns. */
  readonly text: string
}

/** Undefined where no word stands, and for numerals and words in foreign letters. */
export function toHover({ story, context, sequence, step }: PreparedStory, offset: number): HoverText | undefined {
  const found = findWord(story, offset)
  if (found?.word.form !== 'word') return undefined
  const { word, sentence } = found
  const judged = context.judge(word, sentence)
  const pronunciations = toTakenFirst(judged)
  const { verdict, readableAt, form, unsettled, forms } = judged
  const taken = form !== undefined && pronunciations.heteronym ? { form } : unsettled ? 'open' : undefined
  const all = pronunciations.pronunciations
  const ownForms = forms.length === 0 ? [] : all.map((one) => forms.find((own) => own.form === one.form))
  const formsReadableAt = ownForms.map((own) => own?.readableAt ?? null)
  const text = toExplainText(
    {
      word: word.text,
      pronunciations,
      slips: findMeant(word.text, judged, context),
      readableAt,
      verdict,
      step,
      taught: context,
      examples: all.map((pronunciation) => findUnitExamples(pronunciation, sequence)),
      meanings: all.map(({ meaning }) => meaning),
      formsReadableAt,
      formsReasons: findFormReasons(pronunciations, formsReadableAt, sequence),
      formsReadable: ownForms.map((own) => own?.readable === true),
      taken,
    },
    { width: WIDTH, paint: PLAIN },
  )
  return { text, start: word.start, end: word.end }
}
