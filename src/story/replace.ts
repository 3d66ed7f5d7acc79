// Puts other text in place of some of a block's text; the places in the source stay true.

import { appendText, createTextMap, type TextMap, toSourceEnd, toSourceStart } from './text-map.ts'

/** Text offsets, and what stands there instead. */
export interface Replacement {
  readonly start: number
  readonly end: number
  readonly text: string
}

/**
 * The map with its replacements, which are in order of place and do not overlap. Each letter of a replacement stands
 * where all of the replaced text stands.
 */
export function replaceText(map: TextMap, replacements: Iterable<Replacement>): TextMap {
  const result = createTextMap()
  let done = 0
  let segment = 0
  const copyTo = (to: number): void => {
    while (done < to) {
      const end = map.starts[segment + 1] ?? map.text.length
      const last = Math.min(end, to)
      append(done, last, map.text.slice(done, last))
      done = last
      if (done === end) segment++
    }
  }
  const append = (start: number, end: number, text: string): void => {
    const source = toSourceStart(map, start)
    appendText(result, text, source, toSourceEnd(map, end) - source)
  }
  for (const { start, end, text } of replacements) {
    copyTo(start)
    append(start, end, text)
    done = end
    while ((map.starts[segment + 1] ?? Number.POSITIVE_INFINITY) <= done) segment++
  }
  copyTo(map.text.length)
  return result
}
