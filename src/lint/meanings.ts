// What a look-alike was taken for, so that a teacher sees where the program took the wrong one; and what it may be where nothing tells.

import type { JudgedForm, JudgedWord } from '../verdict/types.ts'

/** One sentence for the note of a word that cannot be read, where another meaning would have been judged otherwise, or is as likely; else empty. */
export function toTakenNote(judged: JudgedWord | undefined): string {
  if (judged === undefined || judged.verdict.readable) return ''
  if (judged.unsettled && judged.forms.length > 0) return toChoiceNote(judged)
  const meaning = findTaken(judged)
  return meaning === undefined ? '' : `Read here as “${meaning}”.`
}

function findTaken({ form, forms, pronunciations, verdict }: JudgedWord): string | undefined {
  // The other parts of a word with hyphens have told: `wind-up`.
  if (!pronunciations.heteronym) return verdict.pronunciation?.meaning
  // Where the sentence does not tell, the message speaks of the form that was judged.
  const taken = form ?? verdict.pronunciation?.form
  return forms.find((one) => one.form === taken)?.meaning
}

/** What an unsettled word may mean, and when each can be read. */
export function toChoiceNote(judged: JudgedWord | undefined): string {
  const forms = judged?.forms ?? []
  if (forms.length === 0) return 'Not all of these ways can be read at this step.'
  return `It may be ${forms.map(toChoice).join(', or ')}.`
}

const toChoice = ({ meaning, readableAt }: JudgedForm): string =>
  `“${meaning}” (${readableAt === null ? 'readable at no step' : `readable from step ${readableAt}`})`
