// Whether the letters of a font can write all that stands on a sheet.

import type { Ask } from '../print/index.ts'
import { fail, type Result } from '../problem/index.ts'

/** @param where what the texts belong to, before the sentence: `tam.md: ` */
export function findMissingLetters(
  { letters }: Pick<Ask, 'letters'>,
  texts: readonly string[],
  where = '',
): Result<never> | undefined {
  const missing = letters.findMissing(texts)
  if (missing.length === 0) return undefined
  return fail({
    code: 'missing-letter',
    message: `${where}${letters.family} has no ${missing.map((letter) => `\`${letter}\``).join(', ')}`,
    note: 'Take another font with --letters.',
  })
}
