// What the worker says to a question that a part of the page asks again whenever something has changed.

import { useEffect, useState } from 'preact/hooks'
import { toFault } from './actions.ts'
import { whenAsked } from './asked.ts'
import type { Answer, Kind, Question } from './core/questions.ts'
import { usePage } from './page.ts'

export interface Asked<K extends Kind> {
  /** What the answer is about: that of another one is never shown. */
  readonly of: unknown
  /** Asked again when one of these is another. */
  readonly when: readonly unknown[]
  /** Milliseconds without a change before it is asked again. */
  readonly rest?: number
  /** Undefined where there is nothing to ask. */
  question(): Question<K> | undefined
}

/** The newest answer, until a newer one is there. An answer that comes late, or to a part that is gone, is dropped. */
export function useAnswer<K extends Kind>({ of, when, rest = 0, question }: Asked<K>): Answer<K> | undefined {
  const page = usePage()
  const [held, setHeld] = useState<{ readonly of: unknown; readonly answer: Answer<K> } | undefined>(undefined)
  const isNew = held === undefined || held.of !== of
  useEffect(() => {
    const leave = new AbortController()
    const ask = async (): Promise<void> => {
      const asked = question()
      if (asked === undefined) return
      try {
        const answer = await whenAsked(page.tools.ask(asked, { signal: leave.signal }))
        if (answer !== undefined && !leave.signal.aborted) setHeld({ of, answer })
      } catch (error) {
        if (!leave.signal.aborted) toFault(page)(error)
      }
    }
    const later = setTimeout(ask, isNew ? 0 : rest)
    return () => {
      clearTimeout(later)
      leave.abort()
    }
  }, [page, of, ...when])
  return isNew ? undefined : held.answer
}
