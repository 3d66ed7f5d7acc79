// One record of a stream: what it asks for, or what is wrong with it.

/** Given back as it came. */
export type JsonId = string | number | boolean | null

export interface StreamRecord {
  readonly id: JsonId
  readonly text: string
  readonly settings: { readonly sequence?: unknown; readonly step?: unknown; readonly accent?: unknown }
}

export interface BrokenRecord {
  readonly id: JsonId
  readonly message: string
}

export function readRecord(line: string): StreamRecord | BrokenRecord {
  let value: unknown
  try {
    value = JSON.parse(line)
  } catch {
    return { id: null, message: 'The line is not JSON.' }
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return { id: null, message: 'The line is not a JSON object.' }
  const { id = null, text, sequence, step, accent } = value as Record<string, unknown>
  if (typeof id === 'object' && id !== null) return { id: null, message: '`id` is a text or a number.' }
  if (typeof text !== 'string') return { id: id as JsonId, message: '`text` is missing, or is no text.' }
  const settings = Object.fromEntries(
    Object.entries({ sequence, step, accent }).filter(([, given]) => given !== undefined && given !== null),
  )
  return { id: id as JsonId, text, settings }
}
