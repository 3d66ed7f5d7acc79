// What a look-alike takes with it as a verb: an object, without which it is the thing, or none.

import { words } from './vocabulary.ts'

/** Always done to something, so that `presents` before no object are gifts. */
const NEEDS_OBJECT = words(
  'abuse address annex combat console contest discount excuse exploit implant insert insult misuse perfume permit present ' +
    'produce refund reject subject survey suspect torment transport update',
)
/** Done to nothing, and as a thing never without `a`, `the` or the like: `we will work and graduate`. */
export const NEEDS_NOTHING = words('converse defect graduate object rebel resume')

export const needsObject = (word: string): boolean => NEEDS_OBJECT.has(word) || NEEDS_OBJECT.has(word.replace(/s$/, ''))

/** May describe the thing behind them, so that `intimate friends` is no order. */
export const DESCRIBING = words(
  'aged alternate animate appropriate approximate articulate beloved blessed close consummate content deliberate duplicate elaborate ' +
    'intimate invalid learned live minute moderate perfect separate upset',
)

/** Lead things too, so that `Record player`, `contest day` and `and transport costs` are no orders. */
export const LEADING = words(
  'address combat combine compound conflict console contest contract discount house impact object perfume permit present produce progress ' +
    'project protest record subject survey transfer transport update',
)
