// What `bring` tells of one text: where its story lies, and what to look at with one's own eyes.

import type { BroughtStory, Note, NoteCode } from '../bring/index.ts'
import { toCount, toPrintable, wrap } from './text.ts'

type Tell = (count: number) => string

const are = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one} is` : `${count} ${many} are`)

/** What the maker should look at, in words for somebody who has the old text before them. */
const TELL: Readonly<Record<NoteCode, Tell>> = {
  drawing: (count) => `${are(count, 'drawing or shape', 'drawings or shapes')} not taken: put them in as pictures.`,
  'empty-lines-are-pages': () =>
    'No page break was found. A page begins where three or more lines are empty: see that they are right.',
  encoding: () =>
    'It is not saved as UTF-8. It was read as older Windows programs write: look at letters like é and ’.',
  footnote: (count) =>
    `${are(count, 'footnote', 'footnotes')} below the text, for the grown-up (lines that begin with >).`,
  header: (count) => `${are(count, 'line', 'lines')} at the head or foot of the sheets not taken.`,
  'picture-kind': (count) =>
    `${are(count, 'picture', 'pictures')} of a kind that cannot be shown here: save as PNG or JPG and put in again.`,
  'picture-on-web': (count) =>
    `${are(count, 'picture', 'pictures')} on the web and not taken: nothing is ever fetched.`,
  'pictures-are-pages': () =>
    'No page break was found. Each picture has a page of its own: see that the text goes with the right picture.',
  table: (count) => `${are(count, 'table', 'tables')} written cell by cell, row after row.`,
}

/** @param shown the text as it was named, @param target the path of the story */
export function toBroughtLines(
  shown: string,
  target: string,
  { pages, pictures, notes }: Pick<BroughtStory, 'pages' | 'pictures' | 'notes'>,
  width: number,
): string[] {
  const counts = [toCount(pages, 'page'), ...(pictures.length > 0 ? [toCount(pictures.length, 'picture')] : [])]
  const head = `${toPrintable(target)} is made of ${toPrintable(shown)}: ${counts.join(', ')}.`
  return [...wrap(head, width), ...sum(notes).flatMap((note) => toNoteLines(note, width))]
}

const toNoteLines = ({ code, count }: Note, width: number): string[] => {
  const [first = '', ...others] = wrap(TELL[code](count), width - 4)
  return [`  - ${first}`, ...others.map((line) => `    ${line}`)]
}

function sum(notes: readonly Note[]): readonly Note[] {
  const counts = new Map<NoteCode, number>()
  for (const { code, count } of notes) counts.set(code, (counts.get(code) ?? 0) + count)
  return [...counts].map(([code, count]) => ({ code, count })).sort((a, b) => (a.code < b.code ? -1 : 1))
}
