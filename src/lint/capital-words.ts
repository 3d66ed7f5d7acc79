// Words that are written with a capital and are no names of people: nobody need ask whether `Monday` is a name.

/** Days, months and feasts. */
const CALENDAR =
  'monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december christmas easter halloween diwali eid'

/** Titles and what children call their family; with a name after them they take a capital. */
const TITLES =
  'aunt auntie aunty captain dad daddy doctor father gran grandad grandma grandpa granny king lady lord ma mama miss mister mom mommy mother mrs mum mummy nan nana pa papa prince princess professor queen saint sir teacher uncle'

/** Lands, their people and what they speak. */
const LANDS =
  'africa african america american asia australia britain british canada china chinese england english europe france french german germany india indian ireland irish italian italy japan japanese london scotland scottish spain spanish wales welsh'

const ALL = new Set([CALENDAR, TITLES, LANDS].flatMap((words) => words.split(' ')))

/** @param word without an owner's ending */
export function isCapitalWord(word: string): boolean {
  return ALL.has(word.toLowerCase())
}

const ALWAYS = new Set([CALENDAR, LANDS].flatMap((words) => words.split(' ')))
// Who may march past is in no month.
for (const word of ['march', 'may']) ALWAYS.delete(word)

/** Whether it has its capital wherever it stands, as `Monday` has, and no title before a name. */
export function isAlwaysCapital(word: string): boolean {
  return ALWAYS.has(word.toLowerCase())
}
