// Which words of a table are judged a second time: one in eight, by a number made of their letters, so that a row more or less
// changes nothing for the others.

const ONE_IN = 8

/** FNV-1a over the letters (public domain), with the seed as its first letter. */
function toNumber(text: string): number {
  let hash = 0x811c9dc5
  for (const letter of text) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193) >>> 0
  return hash
}

/** @param seed any text; another one draws other words */
export const isHeldOut = (word: string, seed: string): boolean => toNumber(`${seed}:${word}`) % ONE_IN === 0
