// Naming words that stand without `a`.

import { toSet } from './surroundings.ts'

/** Naming words of stuff and the like, which stand without `a`: `had fun`. Sorted; the project's own judgement. */
export const MASS: ReadonlySet<string> = toSet(
  'bed cash class corn dad damage dinner dirt dust eat fire fog food football fun gold grain games gran grandad grandma grass grief grub ham harm hay home joy junk kin land lots luck lunch meat milk mom mud mum noon paper prison rain risk rubbish sand school sickness snow soil sun supper water wind wood work',
)
