// Sentences of tests in which words carry a tag: `sits/V`.

/** What the tagger calls a word by each letter of a test. */
export type TagsOf = Readonly<Record<string, readonly string[]>>

/** The words and marks in order, without the stars around the word that is asked for, and the tags of each. */
export function toTagged(text: string, tagsOf: TagsOf) {
  const parts = text.replace(/\*/g, '').match(/[\p{L}'’-]+(?:\/[A-Z])?|[^\s\p{L}]/gu) ?? []
  return {
    sentence: parts.map((part) => part.replace(/\/[A-Z]$/, '')),
    tags: parts.map((part) => new Set(tagsOf[/\/([A-Z])$/.exec(part)?.[1] ?? ''])),
  }
}
