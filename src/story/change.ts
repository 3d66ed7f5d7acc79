// Where two versions of a text differ: one stretch, with what stands before and after it the same.

/** A stretch of the old text from `start` to `oldEnd`, which in the new one reaches to `newEnd`. */
export interface Change {
  readonly start: number
  readonly oldEnd: number
  readonly newEnd: number
}

export function findChange(before: string, after: string): Change {
  const most = Math.min(before.length, after.length)
  const start = countSame(most, (from, to) => before.slice(from, to) === after.slice(from, to))
  const end = countSame(most - start, (from, to) => sliceFromEnd(before, from, to) === sliceFromEnd(after, from, to))
  return { start, oldEnd: before.length - end, newEnd: after.length - end }
}

const sliceFromEnd = (text: string, from: number, to: number): string =>
  text.slice(text.length - to, text.length - from)

/** How many letters are the same: long stretches are compared as a whole, which is as fast as memory. */
function countSame(most: number, isSame: (from: number, to: number) => boolean): number {
  let count = 0
  for (let step = 4096; step >= 1; step = step === 1 ? 0 : step >> 2)
    while (count + step <= most && isSame(count, count + step)) count += step
  return count
}
