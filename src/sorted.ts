// Finds a place in a sorted list by halving.

/**
 * The last index below `end` at which `holds` is true; -1 where it is true nowhere.
 * @param holds true up to some index and false from there on
 */
export function findLastIndex(end: number, holds: (index: number) => boolean): number {
  let low = -1
  let high = end - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (holds(middle)) low = middle
    else high = middle - 1
  }
  return low
}

/** The first index whose value is not below the wanted one; the length of the list where all are. */
export const findFirstNotBelow = <Value extends string | number>(list: ArrayLike<Value>, wanted: Value): number =>
  findLastIndex(list.length, (index) => (list[index] as Value) < wanted) + 1

/** Whether two lists hold the same values in the same order. */
export const isSame = <Value>(these: readonly Value[], those: readonly Value[]): boolean =>
  these.length === those.length && these.every((one, at) => one === those[at])

/** The index of a value; -1 where the list lacks it. */
export function findIndexOf<Value extends string | number>(list: ArrayLike<Value>, wanted: Value): number {
  const index = findFirstNotBelow(list, wanted)
  return list[index] === wanted ? index : -1
}
