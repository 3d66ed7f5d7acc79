// Marks on configs and sequences, which need not be open: set when a story that they hold for is checked, taken back once
// they are mended.

import type { PublishDiagnosticsParams } from 'vscode-languageserver'
import type { ConfigChain } from '../config/index.ts'
import type { Problem } from '../problem/index.ts'
import { NOT_CHECKED, toProblemDiagnostic } from './diagnostics.ts'
import type { Host } from './host.ts'

export type Publish = (params: PublishDiagnosticsParams) => void

export interface ConfigMarks {
  /** After the check of a story: `found` is what it cannot be checked for, and stands in other files. */
  set(story: string, chain: ConfigChain, found: readonly Problem[]): void
  /** When a story is closed. */
  forget(story: string): void
}

export function createConfigMarks(host: Host, publish: Publish): ConfigMarks {
  const marked = new Map<string, string>()
  /** By config, what it is told for itself. */
  const own = new Map<string, readonly Problem[]>()
  const byStory = new Map<string, readonly Problem[]>()

  function mark(path: string): void {
    const found = [...byStory.values()].flat().filter((problem) => problem.path === path)
    const code = own.has(path) ? 'config' : NOT_CHECKED
    const all = [...(own.get(path) ?? []), ...found].map((problem) =>
      JSON.stringify(toProblemDiagnostic(problem, code)),
    )
    // Every story below a config may say the same of it.
    const text = `[${[...new Set(all)]}]`
    if (text === (marked.get(path) ?? '[]')) return
    marked.set(path, text)
    publish({ uri: host.toUri(path), diagnostics: JSON.parse(text) })
  }
  function report(story: string, found: readonly Problem[]): readonly string[] {
    const before = byStory.get(story) ?? []
    if (found.length > 0) byStory.set(story, found)
    else byStory.delete(story)
    return [...before, ...found].map(({ path = '' }) => path)
  }

  return {
    set(story, { folders, problems }, found) {
      const paths = new Set(folders.flatMap(({ files }) => files.map(({ source }) => source.path)))
      for (const { path } of problems) if (path !== undefined) paths.add(path)
      for (const path of paths)
        own.set(
          path,
          problems.filter((problem) => problem.path === path),
        )
      for (const path of report(story, found)) paths.add(path)
      for (const path of paths) mark(path)
    },
    forget(story) {
      for (const path of report(story, [])) mark(path)
    },
  }
}
