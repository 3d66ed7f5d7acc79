// The names of the accents, for people.

import type { Accent } from '../phonics/types.ts'

const NAMES: Readonly<Record<Accent, string>> = {
  'general-american': 'General American',
  'southern-british': 'Southern British',
}

/** `General American accent`. */
export const toAccentName = (accent: Accent): string => `${NAMES[accent]} accent`
