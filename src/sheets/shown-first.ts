// Cards of words of which there is a picture come first.

/** A handful of cards that can be looked at is better than a sheet of empty frames, unless so many are asked for. */
const HANDFUL = 4

export function toShownFirst(
  words: readonly string[],
  hasPicture: (word: string) => boolean,
  isCounted: boolean,
): readonly string[] {
  const shown = words.filter(hasPicture)
  const others = words.filter((word) => !hasPicture(word))
  return [...shown, ...(isCounted ? others : others.slice(0, Math.max(0, HANDFUL - shown.length)))]
}
