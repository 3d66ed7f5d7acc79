// The name of a file that says what is printed in it.

/** `['cards', 'pink-3', 'o']` → `cards-pink-3-o`. */
export const toFileName = (parts: readonly (string | undefined)[]): string =>
  parts
    .flatMap((part) => (part === undefined ? [] : [part.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')]))
    .map((part) => part.replace(/^-+|-+$/g, ''))
    .filter((part) => part !== '')
    .join('-')
    .slice(0, 80)
