// A sequence, read step by step: a built-in one, or one of the folder with its mistakes at their steps.

import { isSequencePath, toMissing } from '../../files/index.ts'
import { fail, isError, type Problem, type Result, succeed } from '../../problem/index.ts'
import { changeSequence, listOwnSteps, listWritten, type SequenceChange } from '../../sequence/change.ts'
import { judgeLine, type SequenceDraft, toSequenceYaml } from '../../sequence/draft.ts'
import { ITEM_KEYS } from '../../sequence/item.ts'
import { loadSequence } from '../../sequence/load.ts'
import { toSource } from '../../sequence/source.ts'
import type { Sequence, Step } from '../../sequence/types.ts'
import { toChange } from './changes.ts'
import type { SequenceItem, SequenceNew, SequenceShown, SequenceStep } from './questions/sequence.ts'
import type { Changed, Tried } from './questions/shared.ts'
import { toLoadTools } from './resources.ts'
import { type DeskState, toolsOf } from './state.ts'
import { toStepLines } from './step-lines.ts'

/** @param text in the place of what the file holds */
export async function showSequence(name: string, text: string | undefined, state: DeskState): Promise<SequenceShown> {
  const { builtIns } = toolsOf(state)
  if (isSequencePath(name)) {
    const yaml = text === undefined ? await readYaml(name, state) : succeed(text)
    return yaml.ok ? showOwn(name, yaml.value, state) : toEmpty(name, yaml.problems)
  }
  const sequence = builtIns.load(name)
  if (sequence)
    return { ...toEmpty(name, []), ...toHead(sequence), path: null, steps: sequence.steps.map((step) => toStep(step)) }
  return toEmpty(name, fail({ code: 'unknown-name', message: `There is no sequence \`${name}\`` }).problems)
}

async function readYaml(path: string, state: DeskState): Promise<Result<string>> {
  return (await state.files.read(path)) ?? fail(toMissing(path))
}

const toEmpty = (name: string, problems: readonly Problem[]): SequenceShown => ({
  ...{ name, title: name, accent: '', extends: null, steps: [], problems, text: null },
  path: isSequencePath(name) ? name : null,
})

const toHead = ({ title, accent }: Sequence) => ({ title, accent })

function showOwn(path: string, yaml: string, state: DeskState): SequenceShown {
  const tools = toolsOf(state)
  const { sequence, problems } = loadSequence(yaml, { ...toLoadTools(tools), path })
  const shown = { ...toEmpty(path, problems), text: yaml }
  if (sequence === undefined) return shown
  const own = listOwnSteps(yaml)
  const base = toBase(yaml)
  const under = base === undefined ? undefined : tools.builtIns.load(base, sequence.accent)
  const lines = toLines(yaml, own.length)
  const steps = sequence.steps.map((step) => {
    const at = own.findIndex(({ id }) => id === step.id)
    const inherited = under?.steps.find(({ id }) => id === step.id)
    const written = ITEM_KEYS.flatMap((key) => listWritten(own[at], key).map((one) => toOwnItem(key, one)))
    return {
      ...toStep(step),
      items: [...(inherited ? listItems(inherited) : []), ...written],
      problems: problems.filter(
        ({ place }) => at >= 0 && place !== undefined && findStepAt(lines, place.start.line) === at,
      ),
    }
  })
  return { ...shown, ...toHead(sequence), extends: base ?? null, steps }
}

function toBase(yaml: string): string | undefined {
  const base = (toSource(yaml).value as { readonly extends?: unknown } | null)?.extends
  return typeof base === 'string' ? base : undefined
}

/** The line at which each own step begins. */
function toLines(yaml: string, count: number): readonly number[] {
  const source = toSource(yaml)
  return Array.from({ length: count }, (_, at) => source.lineOf(['steps', at, 'id']))
}

const findStepAt = (lines: readonly number[], line: number): number => lines.findLastIndex((first) => first <= line)

const toStep = (step: Step): SequenceStep => ({
  id: step.id,
  title: step.title,
  items: listItems(step),
  more: toStepLines(step),
  problems: [],
})

/** What a step of a ready sequence teaches. */
function listItems({ adds }: Step): readonly SequenceItem[] {
  const plain = (kind: SequenceItem['kind'], written: string): SequenceItem => ({
    ...{ kind, written, letters: null, example: null, isOwn: false },
  })
  return [
    ...adds.correspondences.map(
      ({ letters, example }): SequenceItem => ({
        ...plain('sound', `${letters} as in ${example}`),
        letters,
        example,
      }),
    ),
    ...adds.sightWords.map((word) => plain('word', word)),
    ...adds.endings.map((ending) => plain('ending', ending)),
    ...(adds.contractions === 'any' ? [] : adds.contractions.map((word) => plain('contraction', word))),
  ]
}

const KINDS = { teach: 'sound', 'sight words': 'word', endings: 'ending', contractions: 'contraction' } as const

function toOwnItem(key: (typeof ITEM_KEYS)[number], written: string): SequenceItem {
  const [, letters, example] = /^(\S+)\s+as\s+in\s+(.+)$/.exec(written.trim()) ?? []
  const kind = KINDS[key]
  return { kind, written: written.trim(), letters: letters ?? null, example: example ?? null, isOwn: true }
}

type Changing = Tried<Changed & { readonly shown: SequenceShown }>

export async function editSequence(
  path: string,
  text: string | undefined,
  edit: SequenceChange,
  state: DeskState,
): Promise<Changing> {
  const yaml = text === undefined ? await readYaml(path, state) : succeed(text)
  if (!yaml.ok) return yaml
  const changed = changeSequence(yaml.value, edit, { ...toLoadTools(toolsOf(state)), path })
  if (!changed.ok) return changed
  return succeed({ ...toChange(path, yaml.value, changed.value), shown: showOwn(path, changed.value, state) })
}

/** All mistakes, each with its line; a sequence that has one is not made. */
export async function makeSequence(
  { path, title, accent, steps: lines }: SequenceNew,
  state: DeskState,
): Promise<Changing> {
  if (!/^[^/].*\.ya?ml$/i.test(path) || path.split('/').some((part) => part === '' || part.startsWith('.')))
    return fail({
      code: 'bad-value',
      message: `A sequence file ends in .yaml, such as our-words.yaml; this is \`${path}\``,
    })
  if ((await state.files.all()).includes(path))
    return fail({
      code: 'foreign-file',
      message: `\`${path}\` is there already and stays as it is`,
      note: 'Take another name.',
    })
  const tools = toolsOf(state)
  const examples = tools.builtIns.load('series', accent)?.steps.flatMap(({ adds }) => adds.correspondences) ?? []
  const name = path
    .replace(/^.*\//, '')
    .replace(/\.ya?ml$/i, '')
    .trim()
    .replace(/\s+/g, '-')
  let draft: SequenceDraft = { name, title: title.trim() || name, accent, steps: [] }
  const problems: Problem[] = []
  for (const [at, line] of lines.entries()) {
    if (line.trim() === '') continue
    const judged = judgeLine(line, `step-${draft.steps.length + 1}`, draft, { phonicsFor: tools.phonicsFor, examples })
    problems.push(...judged.problems.map((one) => ({ ...one, message: `Step ${at + 1}: ${one.message}` })))
    if (judged.step.items.length > 0) draft = { ...draft, steps: [...draft.steps, judged.step] }
  }
  if (problems.some(isError)) return { ok: false, problems }
  if (draft.steps.length === 0)
    return fail({
      code: 'bad-value',
      message: 'Say what the first step teaches',
      note: 'For example: a as in cat, m as in mat.',
    })
  const yaml = toSequenceYaml(draft)
  return succeed({ path, before: null, edits: [{ start: 0, end: 0, text: yaml }], shown: showOwn(path, yaml, state) })
}
