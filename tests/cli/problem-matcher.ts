// Reads the output of a task as VS Code does, by what its own source says: a begin line clears the marks of the file it
// names, or all; each line that fits the pattern makes a mark; a background task shows its marks at the end line.

export interface Matcher {
  readonly pattern: Readonly<Record<string, string | number>> & { readonly regexp: string }
  readonly background?: {
    readonly beginsPattern: { readonly regexp: string; readonly file: number }
    readonly endsPattern: { readonly regexp: string }
  }
}

export interface Mark {
  readonly file: string
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  readonly severity: string
  readonly message: string
  readonly code: string
}

/** The marks that stand once the whole output has been read, and whether a background run is still open. */
export function readMarks(
  output: string,
  { pattern, background }: Matcher,
): { readonly marks: readonly Mark[]; readonly isOpen: boolean } {
  let marks: Mark[] = []
  let found: Mark[] = []
  let isOpen = false
  const problem = new RegExp(pattern.regexp)
  for (const line of output.split('\n')) {
    // A begin line inside an open run is not looked at: the editor has that run still to end.
    const begins = background && !isOpen ? new RegExp(background.beginsPattern.regexp).exec(line) : undefined
    if (begins && background) {
      isOpen = true
      const file = begins[background.beginsPattern.file]
      marks = marks.filter((mark) => file !== undefined && mark.file !== file)
      found = []
    } else if (background && new RegExp(background.endsPattern.regexp).test(line)) {
      isOpen = false
      marks.push(...found)
      found = []
    } else {
      const match = problem.exec(line)
      if (match) found.push(toMark(match, pattern))
    }
  }
  return { marks: background ? marks : found, isOpen }
}

function toMark(match: RegExpExecArray, pattern: Matcher['pattern']): Mark {
  const text = (name: string): string => match[Number(pattern[name])] ?? ''
  const number = (name: string): number => Number(text(name))
  return {
    file: text('file'),
    severity: text('severity'),
    message: text('message'),
    code: text('code'),
    line: number('line'),
    column: number('column'),
    endLine: number('endLine'),
    endColumn: number('endColumn'),
  }
}
