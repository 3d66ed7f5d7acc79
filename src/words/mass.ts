// Naming words that stand without `a`.

import { toSet } from './surroundings.ts'

/** Naming words of stuff and the like, which stand without `a`: `had fun`. Sorted; the project's own judgement. */
export const MASS: ReadonlySet<string> = toSet(
  'bed bother butter cash class cloth corn dad damage dinner dirt dust eat fire fog food football fun games gold grain gran grandad grandma grass grief grub ham harm hay help home joy junk kin land lots luck lunch meat metal milk mom money mud mum noon panic paper peace power prison rain risk rubbish sand school sickness snow soap soil stuff sun supper water wax wind wood work',
)
