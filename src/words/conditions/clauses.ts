// Conditions that ask where a clause or a sentence opens and ends.

import { hasLetter } from '../../letter-kinds.ts'
import { DETERMINERS, endsClause, isEdge, isMark, nextOf, opensObject, prevOf, SUBJECTS } from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'

export const CLAUSES: Readonly<Record<string, PlaceTest>> = {
  /** The end of its sentence, or a mark. */
  E: (place) => isEdge(nextOf(place)),
  /** The end of its clause after it. */
  e: (place) => endsClause(nextOf(place)),
  /** The beginning of its sentence. */
  s: ({ before }) => before.every(isMark),
  /** A comma before it. */
  cm: (place) => prevOf(place) === ',',
  /** Inside its sentence, and a clause after it: `for he was sad`. */
  fr: ({ before, after }) =>
    (before.at(-1) === ',' || hasLetter(before.at(-1) ?? '')) &&
    !/^(?:and|is|just|not|only|or|was)$/.test(before.at(-1) ?? '') &&
    (SUBJECTS.has(after[0] ?? '') || DETERMINERS.has(after[0] ?? '')),
  /** A clause after it: he, they, we … */
  c: ({ after }) => SUBJECTS.has(after[0] ?? '') && after[0] !== 'who',
  /** A clause after it that opens with what it is about: `felt the hens were sad`. */
  cc: (place, factsOf) =>
    opensObject(nextOf(place), factsOf) &&
    place.after.slice(1, 5).some((word) => /^(?:are|can|could|had|has|is|must|was|were|will|would)$/.test(word)),
  /** A mark before it, and a clause of its own after it: `, so he ran`. */
  cl: ({ before, after }) =>
    before.at(-1) === ',' && /^(?:he|i|it|she|the|they|we|you)$/.test(after[0] ?? '') && after[1] !== 'that',
  /** Opens its sentence, and what was done comes next: `Everybody ran`. */
  sp: ({ before, after }, factsOf) =>
    (before.every(isMark) || /^(?:and|but)$/.test(before.at(-1) ?? '')) &&
    factsOf(after[0] ?? '')?.inflection === 'past' &&
    !/^(?:did|had|was)$/.test(after[0] ?? ''),
  /** Opens a clause that tells what was so then: `while she sat`. */
  wc: (place) => SUBJECTS.has(nextOf(place) ?? '') && !/^(?:a|for|little|long|once|the)$/.test(prevOf(place) ?? ''),
  /** Opens a clause of its own that tells what happened then: `as she went`. */
  ac: ({ before, after }, factsOf) =>
    !/^(?:as|just|same|so|such)$/.test(before.at(-1) ?? '') &&
    SUBJECTS.has(after[0] ?? '') &&
    factsOf(after[1] ?? '')?.inflection === 'past' &&
    !/^(?:did|had|was|were)$/.test(after[1] ?? ''),
  /** `that` after it. */
  t: (place) => nextOf(place) === 'that',
  /** `there` before it and one thing after it: `there lived a man`. */
  th: (place) => prevOf(place) === 'there' && /^(?:a|an|another|one)$/.test(nextOf(place) ?? ''),
  /** how, what, where … after it, and a clause: not `where to`. */
  w: ({ after }) => /^(?:how|what|where|which|who|why)$/.test(after[0] ?? '') && after[1] !== 'to',
}
