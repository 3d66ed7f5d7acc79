// A set for a lesson in one file: a page of contents, then the sheets that this stage of the work needs.

import { type Ask, layContents, moveParts, type Sheet } from '../print/index.ts'
import { fail, type Result, succeed } from '../problem/index.ts'
import type { Prepared, WordSheetKind } from './types.ts'

export interface SetWish {
  /** Of the step by which it is called, and of what was asked for beside. */
  readonly step: string
  readonly asked: readonly string[]
  readonly ask: Ask
  /** Small objects for the box; none where none fits. */
  readonly objects: readonly string[]
  /** What is said wherever objects are listed. */
  readonly caution: string
  /** Strips of the story that goes with it. */
  readonly strips: Prepared | undefined
  /** @returns `no-words` where this step has none for such a sheet */
  layWords(kind: WordSheetKind, ask: Ask, own: OwnWords): Promise<Result<Prepared>>
}

/** What one kind of sheet asks beyond the set: just these words, or only what the step brings. */
interface OwnWords {
  readonly words?: readonly string[]
  readonly newAtStep?: boolean
}

interface Section {
  readonly head: string
  /** What hands do with it. */
  readonly hint: string
  readonly prepared: Prepared
}

/** Parts of one kind of sheet; no kind has so many. */
const PARTS = 1e7

export async function layLessonSet(wish: SetWish): Promise<Result<Prepared>> {
  const { ask, strips } = wish
  const laid = await laySections(wish)
  if (!laid.ok) return laid
  const sections = [
    ...laid.value,
    ...(strips ? [{ head: `strips of “${strips.title}”`, hint: 'Cut from mark to mark.', prepared: strips }] : []),
  ]
  if (sections.length === 0)
    return fail({
      code: 'no-words',
      message: 'There is no word to print',
      note: 'Ask for less at once, or for a later step.',
    })
  const title = `A set for ${[wish.step, ...wish.asked].join(', ')}`
  const contents = layContents({ title, entries: toEntries(sections, wish) }, ask)
  if (!contents.ok) return contents
  const sheets: Sheet[] = [contents.value]
  for (const [at, { prepared }] of sections.entries()) sheets.push(...moveParts(prepared.laid.sheets, (at + 1) * PARTS))
  return succeed({
    laid: { sheets, counts: sections.flatMap(({ prepared }) => prepared.laid.counts) },
    title,
    name: ['set', wish.step, ...wish.asked],
    notices: [...new Set(sections.flatMap(({ prepared }) => prepared.notices))],
  })
}

/** Kinds that have no word at this step are left out: the first steps bring no sight words. */
async function laySections({ ask, objects, layWords }: SetWish): Promise<Result<readonly Section[]>> {
  const asks: readonly { kind: WordSheetKind; head: string; hint: string; own: OwnWords }[] = [
    {
      kind: 'cards',
      head: 'picture cards with their tags',
      hint: 'Cut from mark to mark; the child lays each tag below its picture.',
      own: {},
    },
    ...(objects.length > 0
      ? [
          {
            kind: 'tags' as const,
            head: 'tags for the objects',
            hint: 'Cut from mark to mark; the child lays each tag beside its object.',
            own: { words: objects },
          },
        ]
      : []),
    { kind: 'list', head: 'words to read, without pictures', hint: '', own: {} },
    {
      kind: 'slips',
      head: 'slips to read in silence',
      hint: 'Cut, and fold each along its line, the word inside.',
      own: {},
    },
    {
      kind: 'sight',
      head: 'words to know by heart',
      hint: 'Cut from mark to mark; two or three at a time.',
      own: { newAtStep: true },
    },
  ]
  const sections: Section[] = []
  for (const { kind, head, hint, own } of asks) {
    // Backs would put every second sheet on the back of the one before.
    const prepared = await layWords(kind, { ...ask, backs: 'none' }, own)
    if (prepared.ok) sections.push({ head, hint, prepared: prepared.value })
    else if (prepared.problems.some(({ code }) => code !== 'no-words')) return prepared
  }
  return succeed(sections)
}

function toEntries(sections: readonly Section[], { objects, caution }: SetWish) {
  let sheet = 2
  const entries = sections.map(({ head, hint, prepared }) => {
    const { length } = prepared.laid.sheets
    const range = length === 1 ? `Sheet ${sheet}` : `Sheets ${sheet} to ${sheet + length - 1}`
    sheet += length
    return { head: `${range}: ${head}`, text: [`${prepared.laid.counts.join(', ')}.`, hint].join(' ').trim() }
  })
  return [
    ...(objects.length > 0
      ? [{ head: 'To find: small objects for the box', text: `${objects.join(', ')}. ${caution}` }]
      : []),
    ...entries,
    {
      head: 'Before you print',
      text: 'On one side of the paper, at 100 %. Small pieces of card can be swallowed. Round the corners of what you laminate: they are sharp.',
    },
  ]
}
