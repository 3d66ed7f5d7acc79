// The program in ASCII alone, so that it is read byte for byte, and V8 holds it in half the room.

/**
 * esbuild escapes what is beyond ASCII in texts and names, but not in regular expressions and in `String.raw`. In both the
 * escape stands for the letter, since `String.raw` holds nothing but parts of regular expressions.
 */
export function toAscii(code: string): string {
  return code.replace(/[^\0-\x7f]/gu, (letter) => {
    const unit = letter.codePointAt(0) ?? 0
    if (unit > 0xffff) throw new Error(`\`${letter}\` in a regular expression: write it as \\u{${unit.toString(16)}}`)
    return `\\u${unit.toString(16).padStart(4, '0')}`
  })
}
