// Waits for an answer that may be overtaken.

/** Undefined where a newer question has taken its place: then there is a newer answer. */
export async function whenAsked<Value>(asked: Promise<Value>): Promise<Value | undefined> {
  try {
    return await asked
  } catch (error) {
    if (error instanceof Error && error.name === 'Dropped') return undefined
    throw error
  }
}
