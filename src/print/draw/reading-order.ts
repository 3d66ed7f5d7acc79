// Puts what was marked while drawing into the order in which it is read aloud.

import type { ReadAs } from '../sheet.ts'

interface ReadUnit<Mark> {
  readonly readAs: ReadAs
  readonly marks: Mark[]
}

export interface ReadOrder<Mark> {
  add(readAs: ReadAs, mark: Mark): void
  /** The parts in order, each with its units in order. */
  parts(): readonly (readonly ReadUnit<Mark>[])[]
}

/** Of several marks of one unit, those drawn first are read first. */
export function createReadOrder<Mark>(): ReadOrder<Mark> {
  const units = new Map<string, ReadUnit<Mark>>()
  return {
    add(readAs, mark) {
      const key = `${readAs.part} ${readAs.at}`
      const unit = units.get(key) ?? { readAs, marks: [] }
      unit.marks.push(mark)
      units.set(key, unit)
    },
    parts() {
      const parts = new Map<number, ReadUnit<Mark>[]>()
      const inOrder = [...units.values()].sort(
        ({ readAs: one }, { readAs: other }) => one.part - other.part || one.at - other.at,
      )
      for (const unit of inOrder) {
        const { part } = unit.readAs
        parts.set(part, [...(parts.get(part) ?? []), unit])
      }
      return [...parts.values()]
    },
  }
}
