// Asks for a sequence on a terminal: its title, the accent, and step after step what is taught, each judged at once.

import type { Accent } from '../../phonics/types.ts'
import { isError, toProblemText } from '../../problem/index.ts'
import { toList, toPrintable, wrap } from '../../report/text.ts'
import { type DraftStep, type DraftTools, judgeLine, type SequenceDraft } from '../../sequence/draft.ts'
import { toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { createLineReader } from '../lines-of-input.ts'

const HOW = [
  'Now step after step what is taught, in your order, with commas between:',
  'a sound by an example word (a as in cat, sh as in ship), an ending (-ed), or a word known by heart (said).',
  'Enter alone ends.',
].join(' ')

/** Undefined where nobody said anything. */
export async function askSteps(
  draft: SequenceDraft,
  given: { readonly title?: string; readonly accent?: Accent },
  tools: DraftTools,
  io: Io,
): Promise<SequenceDraft | undefined> {
  const lines = createLineReader(io)
  const say = (text: string, indent = ''): void => {
    const wrapped = wrap(text, toWidth(io) - indent.length)
    io.stdout.write(wrapped.map((line) => `${indent}${line}\n`).join(''))
  }
  const ask = async (question: string): Promise<string | undefined> => {
    io.stdout.write(question)
    return (await lines.next())?.trim()
  }
  try {
    const title = given.title ?? (await ask(`What is it called? [${draft.title}] `))
    if (title === undefined) return undefined
    const heard =
      given.accent === undefined ? await ask('Which English do the children hear: American or British? [A/b] ') : ''
    const accent = given.accent ?? (/^b/i.test(heard ?? '') ? 'southern-british' : 'general-american')
    say(HOW)
    const head: SequenceDraft = { ...draft, title: title === '' ? draft.title : title, accent }
    const steps = await askEach(head, tools, ask, say)
    return steps.length === 0 ? undefined : { ...head, steps }
  } finally {
    await lines.end()
  }
}

async function askEach(
  draft: SequenceDraft,
  tools: DraftTools,
  ask: (question: string) => Promise<string | undefined>,
  say: (text: string, indent?: string) => void,
): Promise<readonly DraftStep[]> {
  const steps: DraftStep[] = []
  let open: DraftStep | undefined
  for (;;) {
    const number = steps.length + 1
    const line = await ask(open === undefined ? `Step ${number}: ` : `Step ${number}, what else? (Enter goes on) `)
    if (open !== undefined && !line) {
      if (open.items.length > 0) steps.push(open)
      open = undefined
      if (line === undefined) return steps
      continue
    }
    if (!line) return steps
    const judged = judgeLine(line, `step-${number}`, { ...draft, steps }, tools, open)
    for (const problem of judged.problems) say(toPrintable(toProblemText(problem)), '  ')
    const { items } = judged.step
    if (items.length > 0) say(`Taken: ${toList(items.map(toTaken))}.`, '  ')
    // Where something was wrong, the step stays open, and what was right is kept; what is only doubtful is taken.
    if (judged.problems.some(isError)) open = judged.step
    else {
      if (items.length > 0) steps.push(judged.step)
      open = undefined
    }
  }
}

const toTaken = ({ kind, written }: DraftStep['items'][number]): string =>
  kind === 'word' ? `the word ${written}` : kind === 'ending' ? `the ending ${written}` : written
