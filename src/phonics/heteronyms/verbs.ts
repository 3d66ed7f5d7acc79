// Verbs whose spelling shows their tense, so that they can date the verb next to them.

import { BE, HAVE, has, MODALS, words } from './vocabulary.ts'

const PAST = words(
  'was were had did went sat ran came saw said got took made gave told found fell ate began thought knew felt left kept ' +
    'heard stood slept wrote brought held met led grew flew drew swam sang sent spoke woke wore won lost bought caught ' +
    'taught fed hid chose drank rang rode sold shook stole threw understood blew broke built crept dug drove forgot froze ' +
    'lit lay paid rose shone swept swung tore became burnt clung dealt dreamt flung fought forgave hung knelt leapt learnt lent ' +
    "meant sank slid sought sped spun sprang stank stuck stung strode struck swore wept wove wasn't weren't didn't hadn't couldn't",
)
const PRESENT = words(
  "be is are am i'm it's we're they're you're isn't aren't has hasn't do does don't doesn't can cannot can't will won't like likes " +
    'want wants love loves know knows say says go goes sit sits get gets come comes keep keeps make makes rains reads snows',
)
/** Past, and no participle: `sang`, and not `found`. */
const ONLY_PAST = words(
  'ate began blew broke came chose drew drove fell flew forgot froze gave grew knew ran rang rode rose sang sank saw shook spoke stole swam threw took ' +
    'tore went woke wore wrote',
)
/** The same in the present and the past. */
const BOTH = words('put let hit cut shut set hurt split spread cost bid burst beat quit shed read')
const NOT_ED = words('indeed hundred naked wicked speed weed reed breed bleed greed sled shed shred')

export function isPast(word: string | undefined): boolean {
  return (
    word !== undefined && (PAST.has(word) || (/[a-z]{2}ed$/.test(word) && !/^..?eed$/.test(word) && !NOT_ED.has(word)))
  )
}

export const isOnlyPast = (word: string | undefined): boolean => has(ONLY_PAST, word)

const BEFORE_PARTICIPLES = words(
  "am are be been being get gets has have i'm i've is it's they're they've we're we've you're you've",
)
const LEADS_DESCRIBED = words('a an by from her his in its my of our the their with your')

/** Past in form, and tells no past: `get dressed`, `you are lost`, `the cracked screen`. */
export function isParticiple(all: readonly string[], at: number): boolean {
  const before = all[at - 1]
  if (BEFORE_PARTICIPLES.has(before ?? '')) return true
  return /ed$/.test(all[at] ?? '') && LEADS_DESCRIBED.has(before ?? '')
}

export function isPresent(word: string | undefined): boolean {
  return has(PRESENT, word)
}

export function isTenseless(word: string | undefined): boolean {
  return has(BOTH, word)
}

/** A helper, or a verb that shows its tense. */
export const isVerbal = (word: string | undefined): boolean =>
  [MODALS, BE, HAVE].some((group) => has(group, word)) || isPast(word) || isPresent(word)
