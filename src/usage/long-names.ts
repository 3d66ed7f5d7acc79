// Which names count where a word stands: a name of several words only inside itself.

import type { Sense } from './count.ts'

/** Names of several words (`Old Ned`) count only where their words stand together. */
export function isLongName(name: string): boolean {
  return /\s/u.test(name.trim())
}

export function toNamesFor({ isInName }: Pick<Sense, 'isInName'>, names: readonly string[]): readonly string[] {
  return isInName || !names.some(isLongName) ? names : names.filter((name) => !isLongName(name))
}
