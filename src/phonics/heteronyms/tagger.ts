// Parts of speech from compromise, loaded only when a sentence needs them: it costs more to load than all the rest.
import { toStraight } from '../../apostrophe.ts'

/** Tags of each word of a sentence, as compromise names them (`Noun`, `PastTense`); an empty set for a mark. */
export type Tagger = (sentence: readonly string[]) => readonly ReadonlySet<string>[]

interface Term {
  readonly text: string
  readonly tags: ReadonlySet<string>
}

const NO_TAGS: ReadonlySet<string> = new Set()

/** Loads the part-of-speech half of compromise; about 200 ms from its sources, so only on need. */
export async function loadTagger(): Promise<Tagger> {
  const { default: nlp } = await import('compromise/two')
  return (sentence) => {
    const terms = (nlp(toText(sentence)).document as readonly (readonly Term[])[]).flat()
    return toTags(sentence, terms)
  }
}

function toText(sentence: readonly string[]): string {
  return sentence
    .map(toStraight)
    .join(' ')
    .replace(/ ([.,!?;:…])/g, '$1')
}

/** Gives each word the tags of the terms that its letters fell into; a contraction or a hyphened word has several. */
function toTags(sentence: readonly string[], terms: readonly Term[]): readonly ReadonlySet<string>[] {
  let at = 0
  let left = 0
  return sentence.map((word) => {
    let need = countLetters(word)
    if (need === 0) return NO_TAGS
    let tags: ReadonlySet<string> = NO_TAGS
    while (need > 0 && at < terms.length) {
      const term = terms[at]
      if (left === 0) left = countLetters(term?.text ?? '')
      if (left > 0 && tags.size === 0) tags = term?.tags ?? NO_TAGS
      const used = Math.min(need, left)
      need -= used
      left -= used
      if (left === 0) at++
    }
    return tags
  })
}

function countLetters(text: string): number {
  return text.replace(/[^\p{L}\p{N}]/gu, '').length
}
