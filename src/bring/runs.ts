// Runs of letters as a writing program shows them: one space between words, none at either end of a line.

import type { Run } from './types.ts'

/** All white space but a newline counts as one space; spaces around a newline go. A space without a break in it stays what it is. */
export function tidyRuns(runs: readonly Run[]): readonly Run[] {
  const tidy: Run[] = []
  let before = '\n'
  for (const run of runs) {
    let text = ''
    for (const letter of run.text.replace(/[^\S\n\u00a0\u202f]+/g, ' ')) {
      if (letter === ' ' && (before === ' ' || before === '\n')) continue
      if (letter === '\n' && before === ' ') {
        if (text.endsWith(' ')) text = text.slice(0, -1)
        else trimEnd(tidy)
      }
      text += letter
      before = letter
    }
    const last = tidy.at(-1)
    if (text === '') continue
    if (last && last.bold === run.bold && last.italic === run.italic) {
      tidy[tidy.length - 1] = { ...last, text: last.text + text }
    } else tidy.push({ ...run, text })
  }
  while (tidy.length > 0 && /[ \n]$/.test(tidy.at(-1)?.text ?? '')) trimEnd(tidy)
  while (tidy.length > 0 && tidy[0]?.text.startsWith('\n')) trimStart(tidy)
  return tidy
}

export const hasText = (runs: readonly Run[]): boolean => runs.some(({ text }) => text.trim() !== '')

function trimEnd(runs: Run[]): void {
  const last = runs.pop()
  const text = last?.text.slice(0, -1) ?? ''
  if (last && text !== '') runs.push({ ...last, text })
}

function trimStart(runs: Run[]): void {
  const first = runs.shift()
  const text = first?.text.slice(1) ?? ''
  if (first && text !== '') runs.unshift({ ...first, text })
}
