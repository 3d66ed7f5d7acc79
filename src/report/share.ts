// A share beside the one that is wanted: one that falls short never looks as if it were reached.

import { toPercent } from './text.ts'

/** @param share and @param wanted from 0 to 1 */
export function toPercentOf(share: number, wanted: number): string {
  const text = toPercent(share)
  return share < wanted && text === toPercent(wanted) ? `${Math.floor(share * 100)} %` : text
}
