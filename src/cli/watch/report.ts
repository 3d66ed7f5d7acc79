// What a watcher prints: for each story and each config, one begin line, its problems, one end line.

import { type CheckedStory, isChecked, type UncheckedStory } from '../../check/result.ts'
import type { ConfigChain } from '../../config/index.ts'
import { type Problem, toProblemLine } from '../../problem/index.ts'
import { toMessageLines } from '../../report/line.ts'
import { toPrettyStory } from '../../report/pretty.ts'
import { toProblemReportLine, toShownProblem } from '../../report/problems.ts'
import { toCount, toPrintable } from '../../report/text.ts'
import { toPaint, toWidth } from '../command.ts'
import type { Io } from '../io.ts'

export interface WatchReport {
  story(result: CheckedStory | UncheckedStory): void
  /** Takes back what was said of a file. */
  clear(path: string): void
  /** Told only when what is wrong with a config has changed. */
  configs(chain: ConfigChain): void
}

export async function createWatchReport(format: 'pretty' | 'line', io: Io): Promise<WatchReport> {
  const pretty = format === 'pretty' ? { width: toWidth(io), paint: await toPaint(io) } : undefined
  const reported = new Map<string, string>()
  const print = (path: string, text: string, count: number): void => io.stdout.write(toRun(path, text, count))
  const toText = (checked: CheckedStory): string =>
    pretty ? `${toPrettyStory(checked, pretty)}\n` : toMessageLines(checked)
  return {
    story(result) {
      if (isChecked(result)) print(result.path, toText(result), result.messages.length)
      else print(result.path, toReasonLines(result), result.problems.length)
    },
    clear: (path) => print(path, '', 0),
    configs(chain) {
      for (const [path, problems] of toProblemsByFile(
        chain,
        [...reported.keys()].filter((path) => !io.fs.existsSync(path)),
      )) {
        const text = problems.map((problem) => toProblemReportLine(toShownProblem(problem, path), 'config')).join('')
        if (text === (reported.get(path) ?? '')) continue
        reported.set(path, text)
        print(path, text, problems.length)
      }
    },
  }
}

/**
 * Each on the story, whose marks alone an editor clears at a begin line; what stands in another file names its place there.
 */
const toReasonLines = ({ path, problems }: UncheckedStory): string =>
  problems
    .map((problem) => {
      const isHere = (problem.path ?? path) === path
      const shown = toShownProblem(problem, path)
      const elsewhere = { path, place: undefined, text: toProblemLine(problem), problem }
      return toProblemReportLine(isHere ? shown : elsewhere)
    })
    .join('')

/** One run over one file, as the tasks of `battledore init` read it. */
function toRun(path: string, text: string, count: number): string {
  return `checking ${toPrintable(path)}\n${text}done: ${toCount(count, 'problem')}, watching\n`
}

/** Every config of the chain, those without problems too, and those that have gone. */
function toProblemsByFile({ folders, problems }: ConfigChain, gone: readonly string[]): Map<string, Problem[]> {
  const paths = folders.flatMap(({ files }) => files.map(({ source }) => source.path))
  const byFile = new Map<string, Problem[]>([...gone, ...paths].map((path) => [path, []]))
  for (const problem of problems) {
    const { path = '' } = problem
    byFile.set(path, [...(byFile.get(path) ?? []), problem])
  }
  return byFile
}
