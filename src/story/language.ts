// Notices text that is not in English, by its letters or by the small words of other languages.

/** Frequent small words that are no English words. From memory, checked against each other for overlap by the tests. */
const smallWords = {
  Afrikaans: ['die', 'en', 'het', 'nie', 'sy', 'hulle', 'vir', 'wat', 'ons', 'ek'],
  Dutch: ['de', 'het', 'een', 'niet', 'van', 'zijn', 'maar', 'naar', 'ook', 'wordt'],
  French: ['le', 'les', 'des', 'une', 'est', 'dans', 'pas', 'avec', 'elle', 'et'],
  German: ['der', 'das', 'und', 'ist', 'nicht', 'ein', 'eine', 'mit', 'sie', 'ich'],
  Italian: ['il', 'che', 'di', 'una', 'sono', 'della', 'nel', 'gli', 'anche', 'e'],
  Portuguese: ['os', 'uma', 'um', 'com', 'ele', 'ela', 'mas', 'muito', 'para', 'e'],
  Spanish: ['el', 'los', 'las', 'una', 'que', 'y', 'es', 'con', 'por', 'muy'],
  Swahili: ['na', 'ya', 'wa', 'kwa', 'ni', 'la', 'alikuwa', 'katika', 'sana', 'yake'],
} as const satisfies Readonly<Record<string, readonly string[]>>

const englishWords = new Set([
  'the',
  'and',
  'is',
  'in',
  'it',
  'he',
  'she',
  'to',
  'of',
  'was',
  'you',
  'they',
  'this',
  'had',
])

const minWords = 20
const minShare = 0.12
/** The start of a book tells its language as well as the whole. */
export const maxSample = 300

/**
 * A name for the language of these words when it is surely not English: half of them in another script, or at least
 * one word in eight a small word of one other language, and more of these than English ones. The first readers hold
 * few small words of any kind, so their lack alone says nothing.
 * @param firstWords the first of them, `maxSample` at most
 * @param count how many words there are, and how many of them in foreign letters
 */
export function findForeignLanguage(
  firstWords: () => readonly string[],
  { words, foreign }: { readonly words: number; readonly foreign: number },
): string | undefined {
  if (foreign * 2 > words) return 'another language'
  if (words < minWords) return undefined
  const sample = firstWords()
  // Nearly every story is English, and shows it at once.
  const early = sample.slice(0, 60).filter((word) => englishWords.has(word.toLowerCase())).length
  if (early * 8 >= Math.min(words, 60)) return undefined
  const counts = new Map<string, number>()
  for (const word of sample) {
    const key = word.toLowerCase()
    counts.set(key, (counts.get(key) ?? 0) + 1)
  }
  const count = (list: Iterable<string>) => [...list].reduce((sum, word) => sum + (counts.get(word) ?? 0), 0)
  const english = count(englishWords)
  const [name, found] = Object.entries(smallWords)
    .map(([language, list]) => [language, count(list)] as const)
    .reduce((best, it) => (it[1] > best[1] ? it : best), ['', 0])
  return found >= sample.length * minShare && found > english ? name : undefined
}
