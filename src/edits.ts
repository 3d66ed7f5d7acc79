// How many edits part two words: letters, or sounds, that must be added, dropped or changed.

/** Rows for all: it is asked of thousands of words. */
let rows = [new Uint16Array(32), new Uint16Array(32), new Uint16Array(32)] as const

/**
 * The least number of edits: a part added, dropped or changed counts one (Levenshtein distance). With `swaps`, two
 * neighbours that changed places count one too (optimal string alignment, a restricted Damerau–Levenshtein distance).
 */
export function countEdits(from: ArrayLike<string>, to: ArrayLike<string>, { swaps = false } = {}): number {
  if (to.length >= rows[0].length) {
    const width = 2 * to.length
    rows = [new Uint16Array(width), new Uint16Array(width), new Uint16Array(width)]
  }
  let [beforeLast, last, current] = rows
  for (let column = 0; column <= to.length; column++) last[column] = column
  for (let row = 1; row <= from.length; row++) {
    const part = from[row - 1]
    current[0] = row
    for (let column = 1; column <= to.length; column++) {
      const change = (last[column - 1] as number) + (part === to[column - 1] ? 0 : 1)
      const least = Math.min(change, (last[column] as number) + 1, (current[column - 1] as number) + 1)
      const isSwap = swaps && row > 1 && column > 1 && part === to[column - 2] && from[row - 2] === to[column - 1]
      current[column] = isSwap ? Math.min(least, (beforeLast[column - 2] as number) + 1) : least
    }
    ;[beforeLast, last, current] = [last, current, beforeLast]
  }
  return last[to.length] as number
}
