// Marks on config files, which need not be open: set when a story below one is checked, taken back once it is mended.

import type { PublishDiagnosticsParams } from 'vscode-languageserver'
import type { ConfigChain, Problem } from '../config/index.ts'
import { toConfigDiagnostic } from './diagnostics.ts'
import type { Host } from './host.ts'

export type Publish = (params: PublishDiagnosticsParams) => void

export function createConfigMarks(host: Host, publish: Publish): (chain: ConfigChain) => void {
  const marked = new Map<string, string>()
  return ({ folders, problems }) => {
    const byPath = new Map<string, Problem[]>()
    for (const { files } of folders) for (const { source } of files) byPath.set(source.path, [])
    for (const problem of problems) byPath.set(problem.path, [...(byPath.get(problem.path) ?? []), problem])
    for (const [path, found] of byPath) {
      const diagnostics = found.map(toConfigDiagnostic)
      const text = JSON.stringify(diagnostics)
      if (text === (marked.get(path) ?? '[]')) continue
      marked.set(path, text)
      publish({ uri: host.toUri(path), diagnostics })
    }
  }
}
