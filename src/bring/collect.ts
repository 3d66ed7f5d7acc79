// Gathers pieces while a document is walked: text into paragraphs, and pictures beside the paragraph that they stand in.

import { hasText, tidyRuns } from './runs.ts'
import type { BroughtPicture, Note, NoteCode, Piece, Run } from './types.ts'

export interface Collector {
  add(text: string, look: Pick<Run, 'bold' | 'italic'>): void
  /** Ends the paragraph; what was gathered becomes a piece of this kind. An empty one leaves a gap where one was meant. */
  end(kind?: 'title' | 'heading' | 'text' | 'aside', isGap?: boolean): void
  addPicture(picture: BroughtPicture): void
  /** A piece that stands after the paragraph being gathered. */
  addAfter(piece: Piece): void
  addBreak(): void
  note(code: NoteCode): void
  readonly pieces: readonly Piece[]
  notes(): readonly Note[]
}

export function createCollector(): Collector {
  const pieces: Piece[] = []
  const counts = new Map<NoteCode, number>()
  let runs: Run[] = []
  let after: Piece[] = []
  return {
    pieces,
    add: (text, look) => runs.push({ text, ...look }),
    end(kind = 'text', isGap = false) {
      const tidy = tidyRuns(runs)
      if (hasText(tidy)) pieces.push({ kind, runs: tidy })
      else if (isGap && after.length === 0) pieces.push({ kind: 'gap' })
      pieces.push(...after)
      runs = []
      after = []
    },
    // A picture in the middle of a sentence must not cut it in two.
    addPicture(picture) {
      if (hasText(runs)) after.push({ kind: 'picture', picture })
      else pieces.push({ kind: 'picture', picture })
    },
    addAfter: (piece) => after.push(piece),
    addBreak() {
      this.end()
      pieces.push({ kind: 'break' })
    },
    note: (code) => counts.set(code, (counts.get(code) ?? 0) + 1),
    notes: () => [...counts].map(([code, count]) => ({ code, count })),
  }
}
