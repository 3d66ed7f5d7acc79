// Words and endings that are asked for by their sound: what rhymes with a word, which family it is of.

import type { Pool } from './pool.ts'
import { findRime, toListPronunciation } from './pronunciation.ts'
import type { QueryTools } from './query-tools.ts'
import { fail, findLikeliest } from './query-values.ts'

/** The sounds of a word that the dictionary lacks are a guess, and most such words are slips of the keys. */
export function toRhymeWord(text: string, { phonics, pool }: QueryTools) {
  const word = text.trim().toLowerCase()
  const { pronunciations, source } = phonics.read(word)
  const [pronunciation] = pronunciations
  if (!pronunciation) return fail(`--rhymes-with needs a word; this is \`${text}\`.`)
  if (source !== 'guess') return { word, pronunciation: toListPronunciation(pronunciation) }
  const places = Array.from({ length: pool.size }, (_, at) => at)
  const known = places.filter((at) => pool.factsAt(at).known >= 2).map(pool.wordAt)
  const nearest = findLikeliest(word, known) ?? findLikeliest(word, places.map(pool.wordAt))
  const hint = nearest === undefined ? '' : ` Did you mean \`${nearest}\`?`
  return fail(
    `\`${word}\` is not in the dictionary.${hint} For an invented word ask for its ending, such as --family -at.`,
  )
}

/** `-at` and `at` are the letters, said as most readable words say them; `cat` is the family of that word. */
export function toFamily(text: string, tools: QueryTools): { readonly letters: string; readonly sounds: string } {
  const word = text.trim().toLowerCase()
  const pronunciation = word.startsWith('-') ? undefined : tools.phonics.read(word).pronunciations[0]
  const own = pronunciation && findRime(word, toListPronunciation(pronunciation))
  if (own) return own
  const letters = word.replace(/^-/, '')
  if (!/^[a-z]+$/.test(letters))
    return fail(`--family is an ending such as -at, or a word such as cat; this is \`${text}\`.`)
  return { letters, sounds: findCommonSounds(letters, tools.pool) }
}

function findCommonSounds(letters: string, pool: Pool): string {
  const counts = new Map<string, number>()
  for (let at = 0; at < pool.size; at++) {
    if (!pool.wordAt(at).endsWith(letters) || (pool.isCheap && !pool.isReadable(at))) continue
    const rime = findRime(pool.wordAt(at), pool.pronunciationAt(at))
    if (rime?.letters === letters) counts.set(rime.sounds, (counts.get(rime.sounds) ?? 0) + 1)
  }
  return [...counts].sort((left, right) => right[1] - left[1])[0]?.[0] ?? ''
}
