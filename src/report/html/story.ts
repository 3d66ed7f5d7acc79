// One story on the page: its figures, then each page as a child sees it with the notes below.

import { parseDocument } from 'yaml'
import type { CheckedStory } from '../../check/result.ts'
import type { Message } from '../../lint/types.ts'
import { toHeading } from '../../story/heading.ts'
import { readStory } from '../../story/read.ts'
import type { Page, Story } from '../../story/types.ts'
import { toGroups } from '../groups.ts'
import { toStepName } from '../step.ts'
import { toCount, toList, toPrintable, toSentence } from '../text.ts'
import { type PageFigures, toChart, toTable } from './chart.ts'
import { escapeHtml } from './escape.ts'
import { type Marking, toMarkedText } from './mark.ts'

interface Note {
  readonly number: number
  readonly messages: readonly Message[]
}

/** A story with its text read again: a result that was kept has only its outline. */
export interface ShownStory {
  readonly checked: CheckedStory
  readonly pages: readonly Page[]
  /** Its heading, or the title at its top; undefined where it has none. */
  readonly title: string | undefined
  /** Of its element; begins the ids of all within. */
  readonly id: string
}

export function toShownStory(checked: CheckedStory, id: string): ShownStory {
  const story = readStory(checked.story.source, checked.options)
  return { checked, pages: story.pages, id, title: toHeading(story) ?? findOwnTitle(story) }
}

/** A kept result has no settings but what it was checked by. */
function findOwnTitle({ frontMatter }: Pick<Story, 'frontMatter'>): string | undefined {
  const own: unknown = frontMatter && parseDocument(frontMatter.value).get('title')
  return typeof own === 'string' ? own : undefined
}

export function toStory({ checked, pages, title, id }: ShownStory): string {
  const notes = toGroups(checked.messages).map((messages, at): Note => ({ number: at + 1, messages }))
  const figures = pages.flatMap(({ number }, at): PageFigures[] => {
    const found = checked.figures.pages[at]
    return found ? [{ page: number, figures: found }] : []
  })
  const name = title === undefined ? '' : `${escapeHtml(toPrintable(title))} `
  // The child's page shows the title already.
  const isShown = pages[0]?.blocks.some(({ kind }) => kind === 'title') === true
  return [
    `<article id="${id}" aria-labelledby="${id}-name">`,
    `<h2 id="${id}-name"${isShown ? ' class="shown"' : ''}>${name}<span class="quiet">${escapeHtml(toPrintable(checked.path))}</span></h2>`,
    `<p class="adult">For a child at step ${escapeHtml(toStepName(checked.step))} of ${escapeHtml(checked.sequence.title)}. ${toSum(checked)}</p>`,
    toChart(figures),
    `<div class="scroll" tabindex="0" role="region" aria-label="Figures of ${escapeHtml(checked.path)}">${toTable(figures, checked.figures.total)}</div>`,
    ...pages.map((page) =>
      toPage(
        page,
        notes.filter(({ messages }) => messages[0]?.page === page.number),
        checked,
        id,
      ),
    ),
    '</article>',
  ].join('\n')
}

function toSum({ messages }: CheckedStory): string {
  if (messages.length === 0) return 'Nothing to mend.'
  const errors = messages.filter(({ severity }) => severity === 'error').length
  return `${toCount(errors, 'error')} and ${toCount(messages.length - errors, 'warning')}.`
}

function toPage(page: Page, notes: readonly Note[], checked: CheckedStory, id: string): string {
  const toNoteId = (note: number): string => `${id}-note-${note}`
  const markings = notes.flatMap(({ number, messages }) => messages.map((message) => toMarking(message, number)))
  const blocks = page.blocks.map((block) => {
    const inside = markings.filter(({ start }) => start >= block.start && start < block.end)
    return `<p${block.kind === 'paragraph' ? '' : ` class="${block.kind}"`}>${toMarkedText(block, inside, toNoteId)}</p>`
  })
  if (blocks.length === 0) blocks.push('<p class="quiet">(a page without words)</p>')
  const list = notes.map((note) => toNote(note, checked, toNoteId(note.number))).join('\n')
  return [
    `<section aria-labelledby="${id}-page-${page.number}"><h3 id="${id}-page-${page.number}">Page ${page.number}</h3>`,
    `<div class="page">${blocks.join('\n')}</div>`,
    list === '' ? '' : `<ol class="notes" start="${notes[0]?.number ?? 1}">\n${list}\n</ol>`,
    '</section>',
  ].join('\n')
}

/** What speaks of a sentence or a page gets its number where it begins; marking it all would hide the words that are to blame. */
const toMarking = ({ start, end, word, letterRanges, rule }: Message, note: number): Marking => ({
  start,
  end,
  note,
  letters: letterRanges,
  isMarked: (word !== undefined && !/-(?:page|sentence)-/.test(rule)) || end - start <= 3,
})

function toNote({ number, messages }: Note, { lines }: CheckedStory, id: string): string {
  const [first] = messages
  if (!first) return ''
  const places = messages.map(({ start }) => `${lines.toPoint(start).line}:${lines.toPoint(start).column}`)
  const more = first.suggestions.length === 0 ? '' : ` Could stand here: ${toList(first.suggestions, 'or')}.`
  return `<li id="${id}" value="${number}"><span class="kind ${first.severity}">${first.severity}</span> ${toCode(toSentence(first.message))} ${toCode(`${first.note ?? ''}${more}`)} <span class="quiet">at ${places.join(', ')}, <code>${escapeHtml(first.rule)}</code></span></li>`
}

/** Backquotes of messages become code. */
const toCode = (text: string): string => escapeHtml(text).replace(/`([^`]*)`/g, '<code>$1</code>')
