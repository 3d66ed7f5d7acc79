// What a step says beside its sounds and words, as a teacher would say it: which words, marks and capitals, and how long.

import { toLimit } from '../../report/sequence.ts'
import { toList } from '../../report/text.ts'
import { toMarkNames } from '../../sequence/index.ts'
import type { Capitals, EndingChange, LimitChanges, Step } from '../../sequence/types.ts'

type Adds = Step['adds']

/** One sentence each, without a full stop. What is taught item by item is not among them. */
export const toStepLines = ({ adds }: Pick<Step, 'adds'>): readonly string[] => [
  ...toShapes(adds.shapes),
  ...(adds.endingChanges.length > 0
    ? [`Words that an ending changes: ${toList(adds.endingChanges.map(toChanged))}`]
    : []),
  ...(adds.contractions === 'any' ? ['All short forms, such as can’t and it’s'] : []),
  ...toMarks(adds.marks),
  ...(adds.capitals === undefined ? [] : [CAPITALS[adds.capitals]]),
  ...(adds.numerals === undefined
    ? []
    : [adds.numerals ? 'Numbers in figures, such as 7' : 'No numbers in figures yet']),
  ...toLimits(adds.limits),
]

/** A word of each build, none with an ending, which no build counts. A build without one is told by its letters alone. */
export const SHAPE_WORDS: Readonly<Record<string, string>> = {
  CCCVC: 'strap',
  CCCVCC: 'strict',
  CCV: 'fly',
  CCVC: 'frog',
  CCVCC: 'stamp',
  CCVCCC: 'glimpse',
  CV: 'go',
  CVC: 'cat',
  CVCC: 'pond',
  CVCCC: 'midst',
  VC: 'at',
  VCC: 'ant',
}

function toShapes(shapes: Adds['shapes']): readonly string[] {
  if (shapes === 'any') return ['Words of any build']
  if (shapes.length === 0) return []
  const built = shapes.map((shape) => {
    const word = SHAPE_WORDS[shape]
    return word === undefined ? shape : `\`${word}\` (${shape})`
  })
  return [`Words built like ${toList(built)}: C is a consonant sound, V a vowel sound`]
}

const CHANGED: Readonly<Record<EndingChange, string>> = {
  double: '`running` (a letter is doubled)',
  'drop-e': '`baking` (the e is dropped)',
  'ie-to-y': '`dying` (ie becomes y)',
  'y-to-i': '`cried` (y becomes i)',
}
const toChanged = (change: EndingChange): string => CHANGED[change]

function toMarks(marks: Adds['marks']): readonly string[] {
  if (marks === 'any') return ['All marks of punctuation']
  return marks.length === 0 ? [] : [`Marks: ${toList(toMarkNames(new Set(marks)))}`]
}

const CAPITALS: Readonly<Record<Capitals, string>> = {
  all: 'Words all in capitals too, such as STOP',
  first: 'Capital letters at the beginning of sentences and names',
  none: 'No capital letters yet',
}

function toLimits(limits: LimitChanges): readonly string[] {
  const all = Object.entries(limits).map(([name, limit]) => ({ limit, text: toLimit(name, limit as number | 'any') }))
  const most = all.filter(({ limit }) => limit !== 'any').map(({ text }) => text)
  const free = all.filter(({ limit }) => limit === 'any').map(({ text }) => text)
  return [...(most.length > 0 ? [`At most ${toList(most)}`] : []), ...(free.length > 0 ? [`Now ${toList(free)}`] : [])]
}
