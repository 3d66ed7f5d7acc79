// How far apart two words are in letters, or in sounds: the least number of parts to add, drop or change, as a share of
// the longer word.

/** 0 for the same, 1 where nothing agrees. Parts are letters or sounds. */
export function toDistance(a: ArrayLike<string>, b: ArrayLike<string>): number {
  const longer = Math.max(a.length, b.length)
  return longer === 0 ? 0 : countEdits(a, b) / longer
}

/** The least that the distance can be, by the lengths alone. */
export const toLeastDistance = (a: ArrayLike<unknown>, b: ArrayLike<unknown>): number =>
  Math.abs(a.length - b.length) / Math.max(1, a.length, b.length)

/** One row for all: it is asked of thousands of words. */
let row = new Uint16Array(32)

function countEdits(a: ArrayLike<string>, b: ArrayLike<string>): number {
  if (b.length >= row.length) row = new Uint16Array(2 * b.length)
  for (let j = 0; j <= b.length; j++) row[j] = j
  for (let i = 0; i < a.length; i++) {
    let corner = row[0] ?? 0
    row[0] = i + 1
    for (let j = 0; j < b.length; j++) {
      const above = row[j + 1] ?? 0
      row[j + 1] = Math.min(corner + (a[i] === b[j] ? 0 : 1), above + 1, (row[j] ?? 0) + 1)
      corner = above
    }
  }
  return row[b.length] ?? 0
}
