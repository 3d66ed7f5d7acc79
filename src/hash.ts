// A number of 32 bits for a text, the same on every machine: FNV-1a over its UTF-16 units (Fowler, Noll, Vo).

/** @param from what a text before it came to, to carry on from there */
export function hashText(text: string, from = 0x811c9dc5): number {
  let hash = from
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  return hash >>> 0
}
