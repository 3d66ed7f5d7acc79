// Finds where an item of a numbered list begins. Unlike a bullet, a number at the margin need not be one: below a paragraph it
// is text. So a line is an item only where all lines before it are known to stand in the list.

const item = /\d{1,9}([.)]) {1,4}(?=(\S))/y
const letter = /["'“‘(A-Za-z]/y

/** The first item at `from` or behind it in the list whose item begins at `start`; undefined where that is uncertain. */
export function findNumberedItem(source: string, start: number, from: number, end: number): number | undefined {
  let width = 0
  let sign: string | undefined
  // Whether the line before may go on at the margin.
  let isText = false
  for (let line = start; line < end; line = toNextLine(source, line)) {
    item.lastIndex = line
    const found = item.exec(source)
    if (found !== null && found[1] === (sign ?? found[1])) {
      if (line >= from) return line
      sign = found[1]
      width = found[0].length
      isText = /[A-Za-z]/.test(found[2] as string)
    } else if (sign === undefined) return undefined
    else if (isIndented(source, line, width)) isText = false
    else if (!isText || !isLetter(source, line)) return undefined
  }
  return undefined
}

function toNextLine(source: string, at: number): number {
  const found = source.indexOf('\n', at)
  return found === -1 ? source.length : found + 1
}

function isIndented(source: string, at: number, width: number): boolean {
  for (let place = at; place < at + width; place++) if (source[place] !== ' ') return false
  return true
}

function isLetter(source: string, at: number): boolean {
  letter.lastIndex = at
  return letter.test(source)
}
