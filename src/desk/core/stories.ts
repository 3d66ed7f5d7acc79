// Stories as they are open on the page: settings, text and verdicts, made once for each version of a text.

import { rules } from '../../../rules/index.ts'
import type { CheckInput, PreparedStory } from '../../check/check-story.ts'
import { createHeldCheck, type HeldCheck } from '../../check/held-check.ts'
import type { FreshStory, UncheckedStory } from '../../check/result.ts'
import { type ConfigChain, findIgnoring } from '../../config/index.ts'
import { type Problem, type Result, succeed, toProblem } from '../../problem/index.ts'
import type { OpenStory } from './open-story.ts'
import type { StoryText } from './questions/shared.ts'
import { findReader } from './readers.ts'
import { type DeskState, folderOf } from './state.ts'

/** How many are kept: those between which somebody goes to and fro. */
const MOST_KEPT = 4

/** The story as it was last opened, where neither its text nor its reader has changed. */
export function openStory(story: StoryText, state: DeskState): Promise<OpenStory> {
  const { path, text, reader } = story
  const { stories } = state
  const known = stories.get(path)
  const isSame = known?.text === text && known.reader === reader
  const held = known?.held ?? createHeldCheck()
  const kept = isSame ? known : { text, reader, held, opened: prepare(story, held, state) }
  stories.delete(path)
  stories.set(path, kept)
  if (stories.size > MOST_KEPT) stories.delete([...stories.keys()][0] ?? '')
  return kept.opened
}

async function prepare(
  { path, text, reader: readerPath }: StoryText,
  held: HeldCheck,
  state: DeskState,
): Promise<OpenStory> {
  const { configs, resources } = folderOf(state)
  const chain = await configs.findFor(path)
  const reader = readerPath === undefined ? succeed(undefined) : await findReader(readerPath, state)
  const own = { told: [...chain.problems, ...toLeftOut(chain, path)], checked: undefined, held }
  if (!reader.ok) return { ...own, reader: undefined, input: undefined, prepared: { path, problems: reader.problems } }
  const input: CheckInput = {
    path,
    source: text,
    storyPath: path,
    chain,
    flags: reader.value?.layer ?? {},
    rules,
    resources,
    ...(reader.value && { reader: reader.value.extra }),
  }
  return { ...own, reader: reader.value, input, prepared: await held.prepare(input) }
}

/** What the command leaves out is checked here all the same: somebody has opened it. */
function toLeftOut(chain: ConfigChain, path: string): readonly Problem[] {
  const ignoring = findIgnoring(chain, path)
  if (ignoring === undefined) return []
  const message = `\`battledore check\` leaves this story out, by \`${ignoring.value}\` (${ignoring.origin})`
  return [toProblem({ code: 'unused-file', severity: 'warning', message, path })]
}

export const isPrepared = (prepared: PreparedStory | UncheckedStory): prepared is PreparedStory =>
  !('problems' in prepared)

/** A story that can be asked about, or why it cannot. */
export function toPrepared({ prepared }: OpenStory): Result<PreparedStory> {
  return isPrepared(prepared) ? succeed(prepared) : { ok: false, problems: prepared.problems }
}

export async function checkOpen(open: OpenStory): Promise<FreshStory | UncheckedStory> {
  const { prepared, input, held } = open
  if (!isPrepared(prepared) || input === undefined) return prepared as UncheckedStory
  return (open.checked ??= held.check(input))
}
