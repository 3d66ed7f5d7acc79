// A sequence that is being written: each step judged as soon as it is said, and the file that comes of it.

import type { Accent } from '../phonics/types.ts'
import { isError, type Problem, toProblemText } from '../problem/index.ts'
import { toStepLines, toText } from './add.ts'
import { resolveItem, type TaughtItem } from './item.ts'
import { type LoadTools, loadSequence } from './load.ts'
import type { TaughtCorrespondence } from './types.ts'

export interface DraftStep {
  readonly id: string
  /** In the teacher's words; without it the step goes by its id. */
  readonly title?: string
  readonly items: readonly TaughtItem[]
}

export interface SequenceDraft {
  readonly name: string
  readonly title: string
  readonly accent: Accent
  readonly steps: readonly DraftStep[]
}

export interface DraftTools extends Pick<LoadTools, 'phonicsFor'> {
  /** Sounds with example words, to name one where somebody writes letters alone. */
  readonly examples: readonly TaughtCorrespondence[]
}

/**
 * The file. What nobody has mentioned (shapes, marks, capitals, limits) is left out, so that nothing is limited by it.
 */
export function toSequenceYaml({ name, title, accent, steps }: SequenceDraft): string {
  const head = [
    '# What is taught, step by step. Each step knows all before it. A sound is taught by an example word.',
    '# Look at it with `battledore sequence` and the name of this file; write on here, or with `battledore sequence add`.',
    `name: ${toText(name)}`,
    `title: ${toText(title)}`,
    `accent: ${accent}`,
    'steps:',
  ]
  const lines = steps.flatMap(({ id, title: own, items }) =>
    toStepLines(id, items, own).map((line, at) => `  ${at === 0 ? '- ' : '  '}${line}`),
  )
  return `${[...head, ...lines].join('\n')}\n`
}

export interface JudgedStep {
  /** With what can be taught; the rest is told, and what is taught and doubtful is told as a warning. */
  readonly step: DraftStep
  readonly problems: readonly Problem[]
}

/**
 * One line of a list: `a as in cat, m as in mat, the`. Words before a colon are the title: `Autumn: a as in cat`.
 * @param id of the step
 * @param kept what was right of this step already
 */
export function judgeLine(
  line: string,
  id: string,
  draft: SequenceDraft,
  tools: DraftTools,
  kept?: DraftStep,
): JudgedStep {
  const [, before, rest] = /^([^,:]+):(.*)$/.exec(line) ?? []
  const title = before?.trim() ?? kept?.title
  const phonics = tools.phonicsFor(draft.accent)
  const problems: Problem[] = []
  let step: DraftStep = { id, ...(title !== undefined && { title }), items: kept?.items ?? [] }
  for (const written of (rest ?? line).split(/[,;]/)) {
    if (written.trim() === '') continue
    const resolved = resolveItem(written, phonics, tools.examples, 'doubted')
    if ('problem' in resolved) {
      problems.push(resolved.problem)
      continue
    }
    const longer = { ...step, items: [...step.items, resolved.item] }
    const found = findNew(step, longer, draft, tools)
    if (!found.some(isError)) step = longer
    problems.push(...found, ...(resolved.doubt ? [resolved.doubt] : []))
  }
  return { step, problems }
}

/** What the file would say of the longer step and not of the shorter one, such as that a sound is taught already. */
function findNew(step: DraftStep, longer: DraftStep, draft: SequenceDraft, tools: DraftTools): readonly Problem[] {
  const read = (last: DraftStep): readonly Problem[] =>
    loadSequence(toSequenceYaml({ ...draft, steps: [...draft.steps, last] }), { phonicsFor: tools.phonicsFor }).problems
  const before = new Set(draft.steps.length > 0 || step.items.length > 0 ? read(step).map(toProblemText) : [])
  return read(longer)
    .filter((one) => !before.has(toProblemText(one)))
    .map(({ place: _, ...problem }) => problem)
}
