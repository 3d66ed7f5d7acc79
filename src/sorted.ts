// Finds a place in a sorted list by halving.

/**
 * The last index from `first` to below `end` at which `holds` is true, and `first - 1` where it is true nowhere.
 * @param holds true up to some index and false from there on
 */
export function findLastIndex(first: number, end: number, holds: (index: number) => boolean): number {
  let low = first - 1
  let high = end - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (holds(middle)) low = middle
    else high = middle - 1
  }
  return low
}
