// Whether `used to` tells of a habit, by what stands before it in its clause; and some classes that small words leave open. Common practice, no
// source: any grammar of English tells as much. A dash stands where the clause may as well speak of a thing that is used.

import { describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import { findClasses } from '../../src/phonics/heteronyms/evidence.ts'
import { isHabit } from '../../src/phonics/heteronyms/habit.ts'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { toBlocks } from './blocks.ts'

/** The word in stars, in its sentence. */
const at = (text: string) =>
  toPlace(cutWords(text.replaceAll('*', '')), cutWords(text.slice(0, text.indexOf('*'))).length)

const HABITS = `
  nothing was used
    habit: Men *used* to dig.
    habit: The men *used* to dig.
    habit: Old men *used* to dig.
    habit: Who *used* to dig?
    habit: Men of the town *used* to dig.
    habit: In winter the men *used* to dig.
    habit: But my Meg *used* to dig.
    habit: But Tam Hill *used* to dig.
    habit: Men made it but boys *used* to dig.
    habit: Men made it, boys *used* to dig.
  somebody does something with it
    -: Men can wave sticks *used* to dig.
    -: Sticks being wood *used* to dig.
    -: Men having sticks *used* to dig.
    -: Men made sticks *used* to dig.
    -: Tam wants sticks *used* to dig.
  a thing before its user
    -: The stick the boys *used* to dig.
    -: The stick he *used* to dig.
    -: The stick Tam *used* to dig.
    -: It was a stick that people *used* to dig.
  a clause about who does it
    habit: The bird that sang *used* to hide.
    habit: The bird that had come out of the book *used* to sing.
    habit: The bird that had a red tail *used* to sing.
    -: The bird that sang songs the boys *used* to sing.
  after a time
    habit: When the sun came up he *used* to hide.
    habit: Before the war he *used* to dig.
    -: When the sun came up boys *used* to hide.
    -: Because the sun came up he *used* to hide.
    -: When the men made it he *used* to hide.
    -: The war he *used* to dig.
  what follows from it, and where
    habit: He was so skilful that people *used* to stare.
    habit: It was such fun that people *used* to stare.
    habit: It was here that people *used* to meet.
    -: There was here a stick boys *used* to dig.
    -: He was so sad, it was a hat that men *used* to wear.
  joined to what a person is
    habit: He was careless, and *used* to cut himself.
    habit: He sat, cold and *used* to dig.
    -: It was cold, and *used* to hide.
    -: Sit here. Men and *used* to dig.
    -: He sat; cold and *used* to dig.
    -: She saw sticks that were long and *used* to dig.
    -: She sat on it and *used* to sing.
`

describe.each(toBlocks(HABITS))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(isHabit(at(asked)) ? 'habit' : '-').toBe(expected)
  })
})

const CLASSES = `
  close behind a verb, a particle or somebody
    adjective adverb: The mouse will snuggle down *close* under it.
    adjective adverb: They ran along *close* under it.
    adjective adverb: They go together *close* under it.
    adjective adverb: They go up *close* under it.
    adjective adverb: He ran *close* under it.
    adjective adverb: He went running *close* under it.
    adjective adverb: Wrap me *close*.
    adjective adverb: Wrap them *close* now.
    noun adjective past: The king *close* by.
    noun adjective past: The finger *close* by.
    -: Him *close*.
    -: Wrap me *close* the box.
    -: He ran *close* the box.
    -: Wrap me *record*.
  a plural that opens a clause
    verb past: The voice that dogs *use*.
    verb past: The voice that dogs *use* it.
    verb past: The voice that dogs *use* for it.
    verb past: The voice that dogs *use* and it.
    verb past: The voice when dogs *use* it.
    -: The voice that dogs *house* now.
    -: The voice that wants *use* it.
    -: The voice that bus *use* it.
    -: The voice that dogsled *use* it.
    verb: The voice that dogs *uses* it.
    -: The voice dogs *house* it.
  a minute behind no article
    noun: Wait one *minute*.
    noun: Wait that *minute* he sang.
    noun: He went that *minute* Tam came.
    noun: He went that *minute* and sat.
    noun: He went that *minute* the hen sat.
    noun: He went that *minute* can he sit.
    noun: He went that *minute* is he here.
    noun: He went that *minute* has he sat.
    noun: He went that *minute* with it.
    -: He went that *minute* hen.
    noun adjective: He went that *record* with it.
    -: Bus that *record* with it.
    -: Sit, *minute* with it.
    -: *Minute* with it.
  so close
    adjective adverb: It is so *close*.
    adjective adverb: It grew so *close*.
    -: Ran so *close*.
  only, before what happens to something
    verb: Shouting only *compounds* it.
    verb: Shouting *compounds* it.
    -: Shouting *compounds* fear.
    -: Shouting only *compound* it.
    -: Shouting only *compounds* far.
  before something that is somebody's
    verb: Then *close* Ned's gate.
    -: Then *close* Ned sat.
    -: Then *close* mum's gate.
  before an object
    verb: A warm bath *contents* an ant.
    verb: A warm bath *contents* a baby.
    verb: A warm bath *contents* his baby.
    verb: A warm bath *contents* the baby.
`

describe.each(toBlocks(CLASSES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    const place = at(asked)
    expect(findClasses(place, /[^s]s$/.test(place.words[place.index] ?? ''))?.join(' ') ?? '-').toBe(expected)
  })
})
