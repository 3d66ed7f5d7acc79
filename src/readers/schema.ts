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

const lessonEntries = {
  date: v.pipe(
    v.string('Write the day as `date: 2026-09-14`'),
    v.regex(/^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/, 'Write the day as `2026-09-14`: year, month, day'),
    v.description('The day of the lesson: `2026-09-14`.'),
  ),
  step: v.optional(
    v.pipe(text('the id of a step, such as `pink-2`'), v.description('The step that was reached with this lesson.')),
  ),
  taught: list('[sh as in ship, said, -s]', 'What was taught: `sh as in ship`, a word known by heart, an ending.'),
  secure: v.optional(
    v.pipe(
      v.union([v.picklist(['yes', 'no']), v.boolean()], 'Write `yes` or `no`'),
      v.description('Write `no` for what was met and cannot be relied on yet. Default: yes.'),
    ),
  ),
}

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
  step: v.optional(
    v.pipe(
      text('the id of the step reached, such as `pink-2`'),
      v.description('The step that has been taught last; with lessons, the step before the first of them.'),
    ),
  ),
  accent: v.optional(
    v.pipe(
      v.picklist(ACCENTS, `Write \`${ACCENTS.join('` or `')}\``),
      v.description('The accent that the reader hears. Default: that of the sequence.'),
    ),
  ),
  knows: own('What the reader knows beyond the step.'),
  'not yet': own('What the step has taught and the reader does not know yet.'),
  lessons: v.optional(
    v.pipe(
      v.array(
        v.strictObject(lessonEntries, 'Write a lesson as `- date: 2026-09-14` with `taught: […]` or `step:` below'),
        'Write a list of lessons, each as `- date: 2026-09-14`',
      ),
      v.description('Lessons by their day, in any order. `battledore taught` writes them.'),
    ),
  ),
  members: v.optional(
    v.pipe(
      v.array(v.string(), 'Write a list of reader files, as `[meg.yaml, sid.yaml]`'),
      v.minLength(1, 'Name at least one reader file'),
      v.description(
        'For a group: the files of its readers, as seen from this file. A group has no other key but its name.',
      ),
    ),
  ),
}

/** The file as it is written, once checked. */
export const readerSchema = v.pipe(
  v.strictObject(readerEntries, 'Write a reader as `name: …` and `step: …`'),
  v.title('A reader: one child, or a group that is taught together'),
)

export type ReaderFile = v.InferOutput<typeof readerSchema>
