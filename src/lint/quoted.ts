// How messages set off what is quoted.

/** Letters or a word in backticks. */
export function toQuoted(text: string): string {
  return `\`${text.replace(/`/gu, "'")}\``
}
