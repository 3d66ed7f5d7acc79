// The one polite status line: it tells what was done, and never talks while somebody types.

import { signal } from '@preact/signals'
import type { Voice } from './page.ts'

/** So long nobody must have typed before something is said. In milliseconds. */
const REST = 2000

export function createVoice(): Voice {
  const said = signal('')
  let typed = Number.NEGATIVE_INFINITY
  let next: ReturnType<typeof setTimeout> | undefined
  const say = (text: string): void => {
    clearTimeout(next)
    const wait = typed + REST - performance.now()
    if (wait <= 0) said.value = text
    else next = setTimeout(() => say(text), wait)
  }
  return {
    said,
    say,
    hush() {
      typed = performance.now()
    },
  }
}
