// Which characters are letters, capitals and digits: plain text by its codes, all other by Unicode's classes.
//
// V8 builds a class such as \p{L} anew for each expression that holds one, a fifth to one millisecond each time, and twenty of
// them were a twentieth of a short run. Nearly all words of a story have plain letters alone.

/** ASCII, and the dashes, quotes, dots and ellipses of printed text, none of which is a letter or a digit. */
export const isPlainText = (text: string): boolean => !BEYOND.test(text)

const BEYOND = /[^\0-\x7F\u2010-\u2027]/

export const hasLetter = (text: string): boolean => /[A-Za-z]/.test(text) || (BEYOND.test(text) && /\p{L}/u.test(text))

export const hasLetterOrDigit = (text: string): boolean =>
  /[A-Za-z0-9]/.test(text) || (BEYOND.test(text) && /[\p{L}\p{N}]/u.test(text))

export const hasCapital = (text: string): boolean => /[A-Z]/.test(text) || (BEYOND.test(text) && /\p{Lu}/u.test(text))

export const startsWithCapital = (text: string): boolean => {
  const code = text.charCodeAt(0)
  return code < 0x80 ? code > 0x40 && code < 0x5b : BEYOND.test(text) && /^\p{Lu}/u.test(text)
}

/** `Meg` and `Élan`, not `A`, `STOP` or `stop`. */
export const isCapitalised = (text: string): boolean =>
  isPlainText(text) ? /^[A-Z][a-z]/.test(text) : /^\p{Lu}\p{Ll}/u.test(text)

export const startsWithSmall = (text: string): boolean => {
  const code = text.charCodeAt(0)
  return code < 0x80 ? code > 0x60 && code < 0x7b : BEYOND.test(text) && /^\p{Ll}/u.test(text)
}
