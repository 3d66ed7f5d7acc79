// A problem as the maker reads it: what is wrong, what was probably meant, what to do.

import type { Told } from './page.ts'

export const toTold = ({ message, note, expected }: Told): string =>
  [
    /[.!?]$/.test(message) ? message : `${message}.`,
    ...(expected.length > 0 ? [`Did you mean ${expected.map((word) => `\`${word}\``).join(' or ')}?`] : []),
    ...(note === undefined ? [] : [note]),
  ].join(' ')
