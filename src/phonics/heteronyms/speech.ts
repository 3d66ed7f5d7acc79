// Which words of a sentence are spoken in it, by quotation marks that are words of their own.

/** True where the word stands after an opening quotation mark that is not closed before it. */
export function isSpoken(words: readonly string[], index: number): boolean {
  let open = false
  for (let i = 0; i <= index; i++) {
    const word = words[i]
    if (word === '“') open = true
    else if (word === '”') open = false
    else if (word === '"') open = !open
  }
  return open
}

export function withoutSpeech(words: readonly string[]): readonly string[] {
  return words.filter((_, i) => !isSpoken(words, i))
}
