// The form of a reader file, from which the checks and the JSON Schema for editors are both made.

import * as v from 'valibot'
import { list, text } from '../sequence/schema-parts.ts'

const ownEntries = {
  'sight words': list('[said, they]', 'Words known by heart.'),
  correspondences: list('- sh as in ship', 'What letters say, by example, one a line: `sh as in ship`.'),
}

const own = (description: string) =>
  v.optional(
    v.pipe(
      v.strictObject(ownEntries, 'Write `sight words: […]` or `correspondences:` below'),
      v.description(description),
    ),
  )

const ACCENTS = ['general-american', 'southern-british'] as const

const readerEntries = {
  name: v.pipe(
    text('the name of a child or a group'),
    v.description('The name of a child or a group. It stays on this machine.'),
  ),
  sequence: v.optional(
    v.pipe(
      text('the name of a sequence or the path of a sequence file'),
      v.description('A built-in sequence, or the path of a sequence file as seen from this file. Default: series.'),
    ),
  ),
  step: v.pipe(
    text('the id of the step reached, such as `pink-2`'),
    v.description('The step that has been taught last.'),
  ),
  accent: v.optional(
    v.pipe(
      v.picklist(ACCENTS, `Write \`${ACCENTS.join('` or `')}\``),
      v.description('The accent that the reader hears. Default: that of the sequence.'),
    ),
  ),
  knows: own('What the reader knows beyond the step.'),
  'not yet': own('What the step has taught and the reader does not know yet.'),
}

/** The file as it is written, once checked. */
export const readerSchema = v.pipe(
  v.strictObject(readerEntries, 'Write a reader as `name: …` and `step: …`'),
  v.title('A reader: one child, or a group that is taught together'),
)

export type ReaderFile = v.InferOutput<typeof readerSchema>
