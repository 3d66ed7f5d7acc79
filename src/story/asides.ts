// What stands in a story beside the child's text: its pictures, and what is for the adult, each on its page.

import { placeEmphasis } from './emphasis.ts'
import { findPageNumber } from './find-page.ts'
import { toStanding } from './move.ts'
import type { FoundNote, FoundPicture, Outline } from './outline.ts'
import type { Cut } from './pages.ts'
import { toSourceStart } from './text-map.ts'
import type { Note, Page, Picture, Story } from './types.ts'

export function toAsides(outline: Outline, cut: Cut, pages: readonly Page[]): Pick<Story, 'pictures' | 'notes'> {
  const creditsStart = cut.credits[0]?.start ?? Number.POSITIVE_INFINITY
  const toPicture = (found: FoundPicture): Picture => ({
    ...found,
    page: findPageNumber({ pages }, found.start),
    inNote: found.inNote || found.start >= creditsStart,
  })
  const credits = cut.credits.flatMap((piece): FoundNote[] => {
    if (piece.kind !== 'text' && piece.kind !== 'heading') return []
    const { start, end } = piece
    const { map, emphasis } = toStanding(piece)
    return map.text.trim() === '' ? [] : [{ kind: 'credits', map, emphasis, start, end }]
  })
  const toNote = ({ kind, map, emphasis, start, end }: FoundNote): Note => ({
    kind,
    text: map.text,
    emphasis: placeEmphasis(emphasis, map),
    page: findPageNumber({ pages }, start),
    toSource: (offset) => toSourceStart(map, offset),
    start,
    end,
  })
  const byPlace = (left: FoundNote, right: FoundNote): number => left.start - right.start
  const notes = [...outline.notes, ...credits].sort(byPlace)
  return { pictures: outline.pictures.map(toPicture), notes: notes.map(toNote) }
}
