// Conditions that ask what is said or asked beside the place.

import { SUBJECTS, type Surroundings } from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'

const isOpenMark = (token: string): boolean => /^[“”"«»]+$/.test(token)

/** What somebody says ends right before the place, with this mark. */
const closesSpeech = ({ before }: Surroundings, mark: string): boolean =>
  /^["”»]$/.test(before.at(-1) ?? '') && (before.at(-2) ?? '').endsWith(mark)

export const SPEECH: Readonly<Record<string, PlaceTest>> = {
  /** Asked of somebody: it opens its sentence, or what is said, and somebody comes next: `Could you …` */
  qs: ({ before, after }) =>
    /^["“‘,]?$/.test(before.at(-1) ?? '') && SUBJECTS.has(after[0] ?? '') && after.includes('?'),
  /** Right after a cry: `“Stop!” he said`. */
  ex: (place) => closesSpeech(place, '!'),
  /** Right after a question. */
  eq: (place) => closesSpeech(place, '?'),
  /** Beside what somebody says. */
  q: ({ before, after }) => before.slice(-4).some(isOpenMark) || after.slice(0, 4).some(isOpenMark),
  /** `where` or `what` somewhere before it. */
  wq: ({ before }) => before.some((word) => /^(?:what|where|which)$/.test(word)),
}
