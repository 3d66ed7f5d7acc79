// Puts a word into the case of the one that it replaces.

/** `Boats`, `tubs` → `Tubs`; `BOATS` → `TUBS`; a single capital letter counts as the first. */
export function toCaseOf(original: string, word: string): string {
  if (original.length > 1 && original === original.toUpperCase()) return word.toUpperCase()
  const first = original.charAt(0)
  return first === first.toLowerCase() ? word : word.charAt(0).toUpperCase() + word.slice(1)
}
