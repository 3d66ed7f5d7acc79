// A set for a lesson in one file: a page of contents, then the sheets that this stage of the work needs.

import { type Ask, layContents, moveParts, type Sheet } from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { OBJECT_CAUTION } from '../../report/caution.ts'
import { findStep, knowledgeAt } from '../../sequence/index.ts'
import { type Prepared, toAskedFor, type WordSheetKind } from '../../sheets/index.ts'
import type { Io } from '../io.ts'
import type { PrintContext } from './context.ts'
import { findObjects } from './objects.ts'
import { layStory } from './stories.ts'
import type { FileStory } from './story.ts'
import { layWords } from './words.ts'

interface Section {
  readonly head: string
  /** What hands do with it. */
  readonly hint: string
  readonly prepared: Prepared
}

/** Parts of one kind of sheet; no kind has so many. */
const PARTS = 1e7

export async function laySet(context: PrintContext, story: FileStory | undefined, io: Io): Promise<Result<Prepared>> {
  const { reader, ask, options } = context
  const objects = await findObjects(context, io)
  if (!objects.ok) return objects
  const sections = await laySections(context, objects.value, io)
  if (!sections.ok) return sections
  if (story) {
    // The story may be of another step than the words, and its own says how large its letters are.
    const { pageWords } = knowledgeAt(story.sequence, story.step).limits
    const strips = layStory({ wishes: context.wishes, ask: { ...ask, pageWords }, kind: 'strips', story }, io)
    if (!strips.ok) return strips
    sections.value.push({
      head: `strips of “${strips.value.title}”`,
      hint: 'Cut from mark to mark.',
      prepared: strips.value,
    })
  }
  if (sections.value.length === 0)
    return fail({
      code: 'no-words',
      message: 'There is no word to print',
      note: 'Ask for less at once, or for a later step.',
    })
  const title = `A set for ${[findStep(reader.sequence, reader.step)?.id ?? reader.step, ...toAskedFor(options)].join(', ')}`
  const contents = layContents({ title, entries: toEntries(sections.value, objects.value) }, ask)
  if (!contents.ok) return contents
  const sheets: Sheet[] = [contents.value]
  for (const [at, { prepared }] of sections.value.entries())
    sheets.push(...moveParts(prepared.laid.sheets, (at + 1) * PARTS))
  return succeed({
    laid: { sheets, counts: sections.value.flatMap(({ prepared }) => prepared.laid.counts) },
    title,
    name: ['set', reader.step, ...toAskedFor(options)],
    notices: [...new Set(sections.value.flatMap(({ prepared }) => prepared.notices))],
  })
}

/** Kinds that have no word at this step are left out: the first steps bring no sight words. */
async function laySections(context: PrintContext, objects: readonly string[], io: Io): Promise<Result<Section[]>> {
  const { options } = context
  const asks: readonly { kind: WordSheetKind; head: string; hint: string; more: object }[] = [
    {
      kind: 'cards',
      head: 'picture cards with their tags',
      hint: 'Cut from mark to mark; the child lays each tag below its picture.',
      more: {},
    },
    ...(objects.length > 0
      ? [
          {
            kind: 'tags' as const,
            head: 'tags for the objects',
            hint: 'Cut from mark to mark; the child lays each tag beside its object.',
            more: { words: objects.join(','), wordsFrom: undefined },
          },
        ]
      : []),
    { kind: 'list', head: 'words to read, without pictures', hint: '', more: {} },
    {
      kind: 'slips',
      head: 'slips to read in silence',
      hint: 'Cut, and fold each along its line, the word inside.',
      more: {},
    },
    {
      kind: 'sight',
      head: 'words to know by heart',
      hint: 'Cut from mark to mark; two or three at a time.',
      more: { newAtStep: true },
    },
  ]
  const sections: Section[] = []
  for (const { kind, head, hint, more } of asks) {
    const own = { ...context, ask: toPlain(context.ask), kind, options: { ...options, ...more } }
    const prepared = await layWords(own, io)
    if (prepared.ok) sections.push({ head, hint, prepared: prepared.value })
    else if (prepared.problems.some(({ code }) => code !== 'no-words')) return prepared
  }
  return succeed(sections)
}

/** Backs would put every second sheet on the back of the one before. */
const toPlain = (ask: Ask): Ask => ({ ...ask, backs: 'none' })

function toEntries(sections: readonly Section[], objects: readonly string[]) {
  let sheet = 2
  const entries = sections.map(({ head, hint, prepared }) => {
    const { length } = prepared.laid.sheets
    const range = length === 1 ? `Sheet ${sheet}` : `Sheets ${sheet} to ${sheet + length - 1}`
    sheet += length
    return { head: `${range}: ${head}`, text: [`${prepared.laid.counts.join(', ')}.`, hint].join(' ').trim() }
  })
  return [
    ...(objects.length > 0
      ? [{ head: 'To find: small objects for the box', text: `${objects.join(', ')}. ${OBJECT_CAUTION}` }]
      : []),
    ...entries,
    {
      head: 'Before you print',
      text: 'On one side of the paper, at 100 %. Small pieces of card can be swallowed. Round the corners of what you laminate: they are sharp.',
    },
  ]
}
