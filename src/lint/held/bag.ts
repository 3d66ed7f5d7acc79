// Counts that go up and down, as text comes into a story and leaves it.

export interface Bag {
  /** @param times below 0 to take out */
  add(name: string, times: number): void
  count(name: string): number
  has(name: string): boolean
  names(): Iterable<string>
  /** What is counted otherwise than when changes were last forgotten, with its count of that time. */
  changes(): readonly (readonly [string, number])[]
  forgetChanges(): void
}

export function createBag(): Bag {
  const counts = new Map<string, number>()
  const before = new Map<string, number>()
  const countOf = (name: string): number => counts.get(name) ?? 0
  return {
    add(name, times) {
      const now = countOf(name)
      if (!before.has(name)) before.set(name, now)
      if (now + times === 0) counts.delete(name)
      else counts.set(name, now + times)
    },
    count: countOf,
    has: (name) => counts.has(name),
    names: () => counts.keys(),
    changes: () => [...before].filter(([name, count]) => countOf(name) !== count),
    forgetChanges: () => before.clear(),
  }
}
