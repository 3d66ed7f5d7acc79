// The names of the accents, for people.

import type { Accent } from '../phonics/types.ts'
import { ACCENT_NAMES } from '../sequence/vocabulary.ts'

/** `General American accent`. */
export const toAccentName = (accent: Accent): string => `${ACCENT_NAMES[accent]} accent`
