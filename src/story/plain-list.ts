// Reads a plain list under a heading, as the makers of a story are named at its end, without the Markdown parser: in old
// stories a list that says so little is half of what the parser is asked for.

import type { List, ListItem } from 'mdast'
import type { Point } from 'unist'

type Place = Point & { readonly offset: number }

interface PlainList {
  readonly node: List
  /** The end of its last item, counted from where the offsets of its places count. */
  readonly end: number
}

/** @returns the list whose first item is the line at `at`, with places that count from `from`; undefined where it could be more than plain */
export type PlainListReader = (source: string, at: Place, from: number) => PlainList | undefined

/**
 * One line an item, all with the same sign, over at a blank line. The next text must stand at the margin and be no item,
 * or it would belong to the list. A word in brackets is a word: whoever asks has seen that the source defines no links.
 * @param opens what may start a text, and what it may hold, for a class of a regular expression
 */
export function createPlainListReader(opens: string, holds: string): PlainListReader {
  const bracketed = String.raw`\[[${opens}](?:[ ,.]?[A-Za-z0-9-])*\](?![\[(:])`
  const item = new RegExp(String.raw`([*+-]) ([${opens}](?: *(?:[${holds}]|${bracketed}))*)(?=\r?\n|$)`, 'y')
  const after = new RegExp(String.raw`(?:[ \t]*(?:\r?\n|$))+(?:$|[#${opens}])`, 'y')
  return (source, at, from) => {
    const children: ListItem[] = []
    let mark: string | undefined
    let end = at
    for (let start = at; ; start = toNextLine(source, end, from)) {
      item.lastIndex = from + start.offset
      const found = item.exec(source)
      mark ??= found?.[1]
      if (found === null || found[1] !== mark) return undefined
      end = toPlace(start, found[0].length)
      children.push(toItem(found[2] as string, start, end))
      const next = source.slice(from + end.offset, from + end.offset + 2)
      after.lastIndex = from + end.offset + (next === '\r\n' ? 2 : 1)
      if (next === '' || after.test(source)) break
    }
    const node: List = {
      ...{ type: 'list', ordered: false, start: null, spread: false, children },
      position: { start: at, end },
    }
    return { node, end: end.offset }
  }
}

function toItem(value: string, start: Place, end: Place): ListItem {
  const position = { start: toPlace(start, 2), end }
  return {
    ...{ type: 'listItem', spread: false, checked: null },
    children: [{ type: 'paragraph', children: [{ type: 'text', value, position }], position }],
    position: { start, end },
  }
}

const toPlace = ({ line, column, offset }: Place, further: number): Place => ({
  line,
  column: column + further,
  offset: offset + further,
})

const toNextLine = (source: string, { line, offset }: Place, from: number): Place => ({
  line: line + 1,
  column: 1,
  offset: offset + (source[from + offset] === '\r' ? 2 : 1),
})
