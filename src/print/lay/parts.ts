// Moves the reading order of some sheets behind that of others, where several kinds of sheets are one print.

import type { Item, Sheet } from '../sheet.ts'

/** @param by more than any part of the sheets before */
export const moveParts = (sheets: readonly Sheet[], by: number): readonly Sheet[] =>
  sheets.map((sheet) => ({ ...sheet, items: sheet.items.map((item) => moveItem(item, by)) }))

function moveItem(item: Item, by: number): Item {
  if (item.kind === 'group') return { ...item, items: item.items.map((own) => moveItem(own, by)) }
  if (item.kind === 'line' || item.readAs === undefined) return item
  return { ...item, readAs: { ...item.readAs, part: item.readAs.part + by } }
}
