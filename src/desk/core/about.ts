// About this story: its settings by name, who says them, and what each can be.

import { type ReadText, readText } from '../../check/read-text.ts'
import { findSequence } from '../../check/who-reads.ts'
import { canBeSet } from '../../fix/head.ts'
import { type Problem, type Range, type Sourced, toProblem } from '../../problem/index.ts'
import { toAccentName } from '../../report/accent.ts'
import { findStep } from '../../sequence/index.ts'
import type { Sequence } from '../../sequence/types.ts'
import { toStepUnknown } from '../../sequence/unknown-step.ts'
import { toHeading } from '../../story/heading.ts'
import type { About, ListKey, Setting } from './questions/about.ts'
import type { StoryText } from './questions/shared.ts'
import { listSequences } from './sequences.ts'
import { type DeskState, folderOf } from './state.ts'
import { isPrepared, openStory } from './stories.ts'

const ACCENTS = ['general-american', 'southern-british'] as const

export async function about(story: StoryText, state: DeskState): Promise<About> {
  const { version } = story
  const open = await openStory(story, state)
  const read = isPrepared(open.prepared) || !open.input ? open.prepared : await readText(open.input)
  if ('problems' in read) return { version, ...NOTHING, problems: [...open.told, ...read.problems] }
  const found = await findSequence(read.settings, folderOf(state).resources)
  const sequence = found.ok ? found.value : undefined
  const { settings, own } = read
  const isOpen = await canBeSet(read.story)
  // Where the lines cannot be read, what is wrong belongs to no field.
  const isAtField = ({ place }: Problem): boolean =>
    isOpen && place !== undefined && findKey(read, place.start.offset) !== undefined
  return {
    version,
    title: toTitle(read),
    sequence: {
      ...toSetting('sequence', settings.sequence, read),
      ...(!found.ok && { problem: found.problems[0] ?? null }),
    },
    step: { ...toSetting('step', settings.step, read), ...toStepProblem(read, sequence) },
    accent: { ...toSetting('accent', settings.accent, read), value: settings.accent.value ?? sequence?.accent ?? '' },
    order: toOrder(read),
    names: toList('names', settings.names, read),
    'sight words': toList('sight words', settings.sightWords, read),
    introduces: toList('introduces', own.introduces, read),
    practises: toList('practises', own.practises, read),
    choices: {
      sequences: await listSequences(state),
      steps: (sequence?.steps ?? []).map(({ id, title }) => ({ value: id, title })),
      accents: ACCENTS.map((value) => ({ value, title: toAccentName(value) })),
    },
    isOpen,
    problems: [...open.told, ...own.problems.filter((problem) => !isAtField(problem))],
  }
}

const EMPTY = { isOwn: false, from: '', problem: null } as const

/** Of a story that cannot be read at all. */
const NOTHING = {
  title: { ...EMPTY, value: null },
  sequence: { ...EMPTY, value: '' },
  step: { ...EMPTY, value: null },
  accent: { ...EMPTY, value: '' },
  order: { ...EMPTY, value: null },
  names: { ...EMPTY, value: [] },
  'sight words': { ...EMPTY, value: [] },
  introduces: { ...EMPTY, value: [] },
  practises: { ...EMPTY, value: [] },
  choices: { sequences: [], steps: [], accents: [] },
  isOpen: false,
} satisfies Omit<About, 'version' | 'problems'>

const isOwnOrigin = (origin: string): boolean => origin.startsWith('top of the story')

function toSetting<Value>(
  key: string,
  { value, origin }: Sourced<Value | undefined>,
  read: ReadText,
): Setting<Value> & Setting<Value | null> {
  const isOwn = isOwnOrigin(origin)
  const from = isOwn || value === undefined ? '' : origin === 'default' ? 'what holds where nobody says' : origin
  return { value: (value ?? null) as Value, isOwn, from, problem: findProblem(key, read) }
}

/** Its own items; where it has none, those that the folder gives it. */
function toList(key: ListKey, items: readonly Sourced<string>[], read: ReadText): Setting<readonly string[]> {
  const own = items.filter(({ origin }) => isOwnOrigin(origin))
  const inherited = items.filter((one) => !own.includes(one))
  const isOwn = own.length > 0 || inherited.length === 0
  const shown = isOwn ? own : inherited
  return {
    value: shown.map(({ value }) => value),
    isOwn,
    from: isOwn ? '' : (inherited[0]?.origin ?? ''),
    inherited: inherited.map(({ value }) => value),
    problem: findProblem(key, read),
  }
}

/** The heading that the child reads, else the setting. */
function toTitle(read: ReadText): Setting<string | null> {
  const { story, own } = read
  const heading = toHeading(story)
  const value = heading || own.title?.value || null
  return { value, isOwn: value !== null, from: '', problem: findProblem('title', read) }
}

function toOrder(read: ReadText): Setting<string | null> {
  const { order } = read.own
  return {
    value: order === undefined ? null : String(order.value),
    isOwn: order !== undefined,
    from: '',
    problem: findProblem('order', read),
  }
}

function toStepProblem({ settings }: ReadText, sequence: Sequence | undefined): { readonly problem?: Problem } {
  const asked = settings.step.value
  if (asked === undefined || sequence === undefined || findStep(sequence, asked)) return {}
  return { problem: toProblem(toStepUnknown(asked, sequence)) }
}

/** What is wrong with what the story says under a key. */
const findProblem = (key: string, read: ReadText): Problem | null =>
  read.own.problems.find(({ place }) => place !== undefined && findKey(read, place.start.offset) === key) ?? null

/** The key whose lines hold an offset of the story. */
function findKey({ story }: ReadText, offset: number): string | undefined {
  const { frontMatter } = story
  if (frontMatter === undefined) return undefined
  const at = offset - frontMatter.valueStart
  const lines = [...frontMatter.value.matchAll(/^([A-Za-z][\w -]*?)\s*:/gm)]
  const line = lines.findLast(({ index }: { readonly index: Range['start'] }) => index <= at)
  const key = line?.[1]?.replace(/[-_]/g, ' ').toLowerCase()
  return key !== undefined && key in NOTHING && key !== 'choices' ? key : undefined
}
