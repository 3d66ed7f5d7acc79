// Counts that go up and down, as text comes into a story and leaves it.

export interface Bag {
  /** @param times below 0 to take out */
  add(name: string, times: number): void
  count(name: string): number
  has(name: string): boolean
  names(): Iterable<string>
}

export function createBag(): Bag {
  const counts = new Map<string, number>()
  return {
    add(name, times) {
      const count = (counts.get(name) ?? 0) + times
      if (count === 0) counts.delete(name)
      else counts.set(name, count)
    },
    count: (name) => counts.get(name) ?? 0,
    has: (name) => counts.has(name),
    names: () => counts.keys(),
  }
}
