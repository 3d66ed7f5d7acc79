// Reads the joined letters of printed text, which come along when it is pasted from a PDF: `ﬁsh`, `oﬀ`.

import { replaceText } from './replace.ts'
import type { TextMap } from './text-map.ts'

const ligature = /[\uFB00-\uFB06]/
const allLigatures = new RegExp(ligature, 'g')

/** A block's text with the single letters; each of them stands where the joined ones stand. */
export function withSingleLetters(map: TextMap): TextMap {
  if (!ligature.test(map.text)) return map
  return replaceText(
    map,
    [...map.text.matchAll(allLigatures)].map(({ 0: found, index }) => ({
      start: index,
      end: index + found.length,
      // Unicode's own reading: ﬀ ﬁ ﬂ ﬃ ﬄ, and st for ﬅ and ﬆ.
      text: found.normalize('NFKC'),
    })),
  )
}
