// Which files are stories, by their names.

export const STORY_NAME = /\.(?:md|markdown)$/i

/** Files that stand beside stories in a repository and are written for adults. Sorted. */
const FOR_ADULTS = new Set('changelog code-of-conduct code_of_conduct contributing licence license readme'.split(' '))

/**
 * `README.md`, `readme.en.md`.
 * @param name without its folder
 */
export function isForAdults(name: string): boolean {
  const [first = '', ...further] = name.toLowerCase().split('.')
  return FOR_ADULTS.has(first) && STORY_NAME.test(name) && further.every((part) => /^[\w-]+$/.test(part))
}
