// Pieces from which the forms of sequence and reader files are made.

import * as v from 'valibot'

/** @param what as it goes on after `Write` */
export const text = (what: string) => v.pipe(v.string(`Write ${what}`), v.regex(/\S/, `Write ${what}`))

export const list = (example: string, description: string) =>
  v.optional(
    v.pipe(
      v.array(v.string(`Write plain words in the list, as \`${example}\``), `Write a list, as \`${example}\``),
      v.description(description),
    ),
  )
