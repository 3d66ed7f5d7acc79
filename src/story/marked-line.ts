// Reads a line of plain text in which some words stand between asterisks, as a teacher writes them in bold or italics.

/** A stretch of text between equal runs of one or two asterisks. */
export interface MarkedText {
  /** Of the first asterisk. */
  readonly start: number
  /** How many asterisks stand on each side. */
  readonly marks: number
  /** After the last asterisk. */
  readonly end: number
}

export interface MarkedLine {
  readonly marked: readonly MarkedText[]
  readonly end: number
}

const letters = String.raw`A-Za-z\u00C0-\u024F0-9`

/**
 * Begins and ends with a letter, so that its first run can only open and its last run closes: what CommonMark calls
 * flanking asks nothing further. Equal runs always fit one another.
 */
const markedText = new RegExp(String.raw`(\*\*?)[${letters}](?:[ ${letters},'’-]*[${letters}])?\1(?!\*)`, 'y')

/**
 * The line at an offset; undefined where it could hold more than plain text and words so marked. Two of them that touch are
 * left to the Markdown parser.
 * @param holds the letters and marks that mean nothing to Markdown inside a line, as a class of a regular expression holds them
 */
export function createMarkedLineReader(
  opens: string,
  holds: string,
): (source: string, at: number) => MarkedLine | undefined {
  const opening = new RegExp(`[*${opens}]`, 'y')
  const run = new RegExp(`[ ${holds}]+`, 'y')
  const lineEnd = /(?<! )(?=\r?\n|$)/y
  const reads = (pattern: RegExp, source: string, at: number): boolean => {
    pattern.lastIndex = at
    return pattern.test(source)
  }
  return (source, from) => {
    if (!reads(opening, source, from)) return undefined
    const marked: MarkedText[] = []
    let at = from
    while (!reads(lineEnd, source, at)) {
      const isTouching = marked.at(-1)?.end === at
      if (!isTouching && reads(markedText, source, at)) {
        marked.push({ start: at, marks: source[at + 1] === '*' ? 2 : 1, end: markedText.lastIndex })
        at = markedText.lastIndex
      } else if (reads(run, source, at)) at = run.lastIndex
      else return undefined
    }
    return marked.length === 0 ? undefined : { marked, end: at }
  }
}
