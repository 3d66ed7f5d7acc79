// A problem as the maker reads it: what is wrong, and where if that is another file, what was probably meant, what to do.

import type { Told } from './page.ts'

export const toTold = (problem: Told): string => {
  const { message, note, expected } = problem
  return [
    toWhere(problem) + (/[.!?]$/.test(message) ? message : `${message}.`),
    ...(expected.length > 0 ? [`Did you mean ${expected.map((word) => `\`${word}\``).join(' or ')}?`] : []),
    ...(note === undefined ? [] : [note]),
  ].join(' ')
}

/** Of a sequence, a reader or the settings of the folder; the lines of a story are folded, and no maker counts them. */
function toWhere({ path, place }: Told): string {
  if (path === undefined || place === undefined || !/\.ya?ml$/i.test(path)) return ''
  return `${path}, line ${place.start.line}: `
}

export const toAllTold = (problems: readonly Told[]): string => problems.map(toTold).join(' ')

/** Of what was thrown. The worker speaks to the maker itself. */
export const toFaultText = (error: unknown): string => (error instanceof Error ? error.message : String(error))

/** What came in the way, in one line; undefined where it is done. Nothing that is thrown is passed over. */
export async function tryOut(job: () => Promise<string | undefined>): Promise<string | undefined> {
  try {
    return await job()
  } catch (error) {
    return toFaultText(error)
  }
}
