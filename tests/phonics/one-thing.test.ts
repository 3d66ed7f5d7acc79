// Where no bare verb can stand: right behind one thing, which takes its verb with an -s. And what a word lets or helps, clue by clue. Common practice, no
// source: any grammar of English tells as much.

import { describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import type { Clue } from '../../src/phonics/heteronyms/clue.ts'
import * as governed from '../../src/phonics/heteronyms/governed.ts'
import { isBehindOneThing, isThing } from '../../src/phonics/heteronyms/one-thing.ts'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { toBlocks } from './blocks.ts'

/** The word in stars, in its sentence. */
const at = (text: string) =>
  toPlace(cutWords(text.replaceAll('*', '')), cutWords(text.slice(0, text.indexOf('*'))).length)

const LINES = `
  one thing by its article
    one: A hen *use* was there.
    one: An ant *use* was there.
    one: Another hen *use* was there.
    one: Each hen *use* was there.
    one: Every hen *use* was there.
    one: This hen *use* was there.
    one: The hen *use* was there.
    one: My hen *use* was there.
    one: Your hen *use* was there.
    one: His hen *use* was there.
    one: Her hen *use* was there.
    one: Its hen *use* was there.
    one: Our hen *use* was there.
    one: Their hen *use* was there.
    -: No hen *use* was there.
    -: Some hen *use* was there.
    -: Hen *use* was there.
  this and what
    one: We know this *house*.
    one: We know what *excuse* she made.
    -: We saw that *house*.
    -: We know this that *read* so.
    -: *Use* it.
    -: Now, *use* it.
  a clause about one thing
    one: There was a sign that *read* so.
    one: There was a sign which *read* so.
    one: There was a boy who *read* so.
    one: They met the boy who *read* so.
    one: Let a sign that *read* so fall.
    -: There were signs that *read* so.
    -: There was a sign where *read* so.
  words between
    one: Our own sober *present* fell.
    one: A big old hen *use* was there.
    one: A very big hen *use* was there.
    one: The cleverest hen *use* was there.
    one: An old *present* was there.
    -: The old *live* here.
    -: The zubby hen *live* here.
    one: A test hen *use* was there.
    -: The test hen *live* here.
  many in the form of one
    -: A family *live* there.
    -: The police *record* it.
    -: The men *live* there.
    -: The hens *live* there.
    one: The glass *use* was there.
    -: The singing *use* was there.
    one: The king *use* was there.
    -: The jelly *use* was there.
    -: The two *live* here.
    -: The first *read* it.
    -: A can *lead* fell.
    -: Our Tam *live* here.
  joined to another
    -: A cat and a dog *live* here.
    -: A cat or a dog *live* here.
    -: Nor a cat nor a dog *live* here.
    one: A cat met a dog *use* there.
    -: And by its aid *transport* your uncle.
    one: And by its aid *transport* came.
    one: And take its aid *transport* your uncle.
  what lets or helps it
    -: Let a dog *lead* us.
    -: We made this *lead* us.
    -: We saw this *close* to us.
    -: They had this hen *lead* us.
    -: Help the hen *lead* us.
    -: Did this *lead* us?
    -: How can a dog *lead* us?
    -: They sat but can a dog *lead* us?
    -: Soon will the dog *lead* us.
    one: They will not know this *house*.
    one: They can sing a hen *use* there.
    one: Let it go, this *house* is old.
    one: Let it go but this *house* is old.
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, text) => {
    expect(isBehindOneThing(at(text)) ? 'one' : '-').toBe(expected)
  })
})

it.each([
  ['hen', true],
  ['glass', true],
  ['king', true],
  ['hens', false],
  ['digging', false],
  ['jelly', false],
  ['flock', false],
  ['my', false],
  ['they', false],
  ['them', false],
  ['of', false],
  ['can', false],
  ['is', false],
  ['had', false],
  ['because', false],
  ['please', false],
  ['two', false],
  ['second', false],
])('%s may be one thing: %s', (word, expected) => {
  expect(isThing(word)).toBe(expected)
})

const CLUES: Readonly<Record<string, Clue>> = {
  helped: governed.helped,
  letLong: governed.letLong,
  causative: governed.causative,
  pluralInversion: governed.pluralInversion,
  longInversion: governed.longInversion,
}

const GOVERNED = `
  helped
    verb: Why not *use* it?
    -: But not *use* it.
    -: Why they *use* it.
    -: Why not *records*?
    verb: They can help *use* cheese.
    verb: Try and *protest*.
    -: We try and *protest*.
    -: Try or *protest*.
  letLong
    verb: We let the men *lead* them.
    verb: We let those men *lead* them.
    verb: We make the men *lead* them.
    verb: He makes the men *lead* them.
    verb: We keep making the men *lead* them.
    verb: We made the men *lead* them.
    -: We remade the men *lead* them.
    -: We saw the makings the men *lead* them.
    -: We remake the men *lead* them.
    -: We let the *lead* them.
    -: We let men *lead* them.
    -: The men *lead* them.
    -: We let the men *lead* hens.
    -: We let the men *leads* them.
    verb: Let the old grey men *lead* them.
    -: Let the very old grey men *lead* them.
    -: Let the men, old men *lead* them.
    -: Let the men of old *lead* them.
  causative
    verb: Let him *lead* hens.
    verb: We let Tam *lead* hens.
    verb: They made it *lead* us.
    verb adjective: They made it *live*.
    verb noun adjective: We saw her *record* it.
    verb noun adjective: We had her *record* it.
    -: We met her *record* it.
    verb adjective adverb: We heard him *record* it.
    verb adjective adverb: We heard me *record* it.
    verb adjective adverb: We heard us *record* it.
    verb adjective adverb: We heard them *record* it.
    -: We heard it *record* us.
    -: We heard bus *record* it.
    -: We heard usher *record* it.
    -: We met them *record* it.
    -: We heard them *records* it.
    verb: Help your sister *read* hens.
    -: Help your old *record* play.
    -: Help a sister *read* hens.
    -: Met your sister *read* hens.
  pluralInversion
    verb: Can hens *use* it?
    verb: Where do bears *live*?
    verb: How long do bears *live*?
    -: Can hens *uses* it?
    -: Can hen *use* it?
    -: Can glass *use* it?
    -: Met hens *use* it.
    -: They can hens *use* it.
    -: So long do bears *live*.
  longInversion
    verb: Where does the fairy *live*?
    verb: Where does the fairy *live*
    verb: Will the road *lead* us?
    -: Where does the fairy *live* now?
    -: Where does the fairy *lives*?
    -: Where does fairy *live*?
    -: They met does the fairy *live*?
    -: Where met the fairy *live*?
    -: Where does the *live*?
`

describe.each(toBlocks(GOVERNED))('$heading', ({ heading, lines }) => {
  it.each(lines)('%s: %s', (expected, text) => {
    const place = at(text)
    const found = CLUES[heading]?.(place, /[^s]s$/.test(place.words[place.index] ?? ''))
    expect(found?.join(' ') ?? '-').toBe(expected)
  })
})
