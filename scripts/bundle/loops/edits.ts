// Changes of a source, made together.

export interface Edit {
  readonly from: number
  readonly to: number
  readonly text: string
  /** Whether it ends something: at one place what ends the inner comes first. Otherwise it begins or replaces something. */
  readonly isEnd: boolean
}

/**
 * @param edits an outer one before those inside it; what stands inside something replaced is left out
 * @throws Error where two replace the same text
 */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const replacing = edits.filter(({ from, to }) => to > from)
  const kept = edits.flatMap((edit, order) =>
    replacing.some((one) => isInside(edit, one)) ? [] : [{ ...edit, order }],
  )
  kept.sort((x, y) => x.from - y.from || rank(x) - rank(y) || (x.isEnd ? y.order - x.order : x.order - y.order))
  let done = 0
  let made = ''
  for (const { from, to, text: put } of kept) {
    if (from < done) throw new Error(`two changes of one place: ${text.slice(from, to)}`)
    made += text.slice(done, from) + put
    done = to
  }
  return made + text.slice(done)
}

const rank = ({ from, to, isEnd }: Edit): number => (to > from ? 2 : isEnd ? 0 : 1)

function isInside(one: Edit, other: Edit): boolean {
  if (one === other || one.from < other.from || one.to > other.to) return false
  const isAtEdge = one.from === one.to && (one.from === other.to || (one.from === other.from && !one.isEnd))
  return !isAtEdge
}
