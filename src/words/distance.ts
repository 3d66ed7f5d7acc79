// How far apart two words are in letters, or in sounds: the least number of parts to add, drop or change, as a share of
// the longer word.

/** 0 for the same, 1 where nothing agrees. Parts are letters or sounds. */
export function toDistance(a: ArrayLike<string>, b: ArrayLike<string>): number {
  const longer = Math.max(a.length, b.length)
  return longer === 0 ? 0 : countEdits(a, b) / longer
}

function countEdits(a: ArrayLike<string>, b: ArrayLike<string>): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i)
  for (let i = 0; i < a.length; i++) {
    const next = [i + 1]
    for (let j = 0; j < b.length; j++) {
      const changed = (row[j] ?? 0) + (a[i] === b[j] ? 0 : 1)
      next.push(Math.min(changed, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1))
    }
    row = next
  }
  return row[b.length] ?? 0
}
