// A function that finds each answer once.

/** What is known of a word does not change within a run, and a story says the same words again and again. */
export function keep<T>(find: (key: string) => T): (key: string) => T {
  const found = new Map<string, T>()
  return (key) => {
    const known = found.get(key)
    if (known !== undefined || found.has(key)) return known as T
    const value = find(key)
    found.set(key, value)
    return value
  }
}
