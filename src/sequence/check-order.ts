// Checks that teaching more never takes anything away: the search for the first readable step rests on it.

import type { Problem } from '../problem/index.ts'
import type { StepDraft } from './extend.ts'
import type { Source } from './source.ts'
import type { Capitals, Limits, Step } from './types.ts'
import { LIMITS } from './vocabulary.ts'

const CAPITALS_ORDER: readonly Capitals[] = ['none', 'first', 'all']

/** Limits that grow tighter, and capitals or numerals that are taken back. `drafts` tell where a step stands in the file. */
export function checkOrder(steps: readonly Step[], drafts: readonly StepDraft[], source: Source): Problem[] {
  const problems: Problem[] = []
  const limits = new Map<string, number | 'any'>()
  let capitals: Capitals | undefined
  let numerals: boolean | undefined
  for (const [index, { adds }] of steps.entries()) {
    const at = drafts[index]?.at
    const report = (key: string, message: string, deeper?: string) => {
      const path = ['steps', at ?? 0, key, ...(deeper === undefined ? [] : [deeper])]
      if (at !== undefined) problems.push(source.problemAt(path, { code: 'taken-back', message }))
    }
    for (const [name, limit] of Object.entries(LIMITS) as [string, keyof Limits][]) {
      const figure = adds.limits[limit]
      if (figure === undefined) continue
      const before = limits.get(limit) ?? (index === 0 ? undefined : 'any')
      if (isTighter(figure, before)) report('limits', toLimitMessage(name, figure, before), name)
      limits.set(limit, figure)
    }
    if (adds.capitals !== undefined) {
      const isLess = capitals !== undefined && CAPITALS_ORDER.indexOf(adds.capitals) < CAPITALS_ORDER.indexOf(capitals)
      if (isLess) report('capitals', 'A later step cannot take capitals back')
      capitals = adds.capitals
    }
    if (numerals === true && adds.numerals === false) report('numerals', 'A later step cannot take numerals back')
    numerals = adds.numerals ?? numerals
  }
  return problems
}

function isTighter(figure: number | 'any', before: number | 'any' | undefined): boolean {
  if (before === undefined || figure === 'any') return false
  return before === 'any' || figure < before
}

function toLimitMessage(name: string, figure: number | 'any', before: number | 'any' | undefined): string {
  const was = before === 'any' ? 'the steps before have no such limit' : `a step before allows ${before}`
  return `A later step cannot allow less: \`${name}: ${figure}\` here, but ${was}`
}
