// What the small words round a word say about its class, clue by clue, each with a sentence where it holds and one that lacks the same thing.
// Which class a word has in its sentence is common practice, no source: any grammar of English tells as much.

import { describe, expect, it } from 'vitest'
import { findClasses } from '../../src/phonics/heteronyms/evidence.ts'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { toBlocks } from './blocks.ts'

const toWords = (text: string): readonly string[] =>
  text.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*'?|[^\s\p{L}\p{N}]/gu) ?? []

/** The classes that are left open for the word in stars; `-` where nothing is said. */
function ask(text: string): string {
  const index = toWords(text.slice(0, text.indexOf('*'))).length
  const words = toWords(text.replaceAll('*', ''))
  return findClasses(toPlace(words, index), /[^s]s$/.test(words[index] ?? ''))?.join(' ') ?? '-'
}

// By class, then the sentences that leave it open; `-` where the small words do not tell.
const LINES = `
  to before a bare verb, and before a noun
    verb: Sid wants to *read*.
    noun adjective: We do not stoop to *insults*.
    -: The pipe lies next to *lead*.
    -: They went near to *lead*.
  a question
    verb: Do you *live* here?
    past: Have we *read* it?
    adjective past: Are they *close*?
    verb: Can Tam *bow*?
    verb: Did Meg and Sid *read* it?
    verb: Did Meg and Sid and Tam *read* it?
    verb: Did he and Tam *read* it?
    verb: Did everyone *read* it?
    -: Did Meg or Sid *read* it?
    -: He said Tam *read* it.
    verb: Did the man *read* it?
    -: Were Meg and the man *close*?
    verb: Did the man and Sid *read* it?
    past: Has she *read* it?
  somebody who lets, helps or makes
    verb: Let me *use* it.
    verb: Let Tam *use* it.
    verb: Let the men *use* it.
    verb: Sid lets him *use* it.
    verb adjective: They made it *live*.
    verb adjective: They made Tam *live*.
    verb adjective: Keep it *close* to you.
    verb noun adjective: We heard her *record* it.
    verb adjective adverb: We heard him *record* it.
    -: We heard Meg *record* it.
    noun: We met her *record* it.
    verb: Help your sister *read* it.
    verb: Help the sister *read* it.
    noun adjective past: Meet your sister *read* it.
    noun adjective: Let her old *record* play.
  a helper
    verb: Meg can *use* it.
    verb: They did not *close* the gate.
    verb: Let's *read* it.
    past: The dog has *upset* my plans.
    past: He had *aged*.
    past: He had *aged* well.
    past: He had *aged* by a year.
    past: He had *aged* slowly.
    past noun adjective: He had *aged* cheese.
    past noun adjective: They have *record* sales.
    past noun adjective: They have *records* here.
    noun: The bus *record* is old.
  a verb that helps
    verb: The mice can help *produce* cheese.
    verb: The mice want to help *produce* cheese.
    verb: The mice help *produce* the cheese.
    -: The mice help *produce* cheese.
    noun: The mice can help *objects* fall.
    verb: Try and *protest*.
    verb: Do try and *protest*.
    verb: She wants to try and *protest*.
    verb: Let them try and *protest*.
    verb: It is better than try and *protest*.
    -: The try and *protest* fell.
    -: Sit and *protest* here.
    -: Try or *protest* here.
    -: Go and *records* fall.
  somebody who lets a longer thing
    verb: Who would let those geese *lead* your sister?
    verb: We let the old grey geese *lead* them.
    -: We let the very old grey fat geese *lead* them.
    -: We met the geese *lead* them.
    noun adjective: We let the geese by *lead* them.
    verb past: We let the geese, *lead* them.
    verb: We let the geese *lead*.
    -: We make the geese *lead*.
    noun adjective: We let the *lead* them.
  all that
    verb: We saw all that *lives* here.
    verb: Take everything that *objects* here.
    verb: Take nothing that *objects* here.
    -: The man that *objects* sat.
    -: All that *live* here sat.
    -: Things and that *objects* here.
  all and both
    noun adjective: He cleaned the floor and all *objects* on it.
    noun adjective: He cleaned both *objects* here.
    -: He cleaned all *object* here.
    -: He cleaned again *objects* here.
    -: He cleaned ballads *objects* here.
  two nouns
    noun adjective: Two *record* companies have it.
    noun adjective: Two *record* companies are here.
    noun adjective: Two *record* companies can sing.
    -: Two *record* companies sing.
    -: The men *record* companies have.
    -: Two *record* company have it.
    -: Two *record* glass have it.
    noun adjective: Two *records* companies have it.
  a long question
    verb: How will the new road *impact* us?
    verb: Will the road *impact* us?
    -: The men will the road *impact* us.
    noun adjective past: How the new road *impact* us.
    -: How will new roads *impact* us?
    -: How will the road *impact* villages?
    -: How will the old new wide grey road *impact* us?
    verb: How will the road *impacts* us?
    -: How will the road *impacts* pigs?
  a small adverb
    verb: Shouting only *compounds* the trouble.
    verb: It just *upsets* her.
    past: It just *upset* her.
    verb: It only *compounds* sounds.
    verb: Shouting loud *compounds* the trouble.
  words before a noun
    noun adjective: The *record* fell.
    noun: The *record* is old.
    noun: The *record* has gone.
    noun: The *record* can go.
    noun: The *record* of it.
    noun: The *record* and the song.
    noun: The *record* to beat.
    noun: The *record*.
    noun: Five *uses* were new.
    noun: Each *record* is new.
    -: Men each *record* it.
    noun: This *use* is new.
    noun adjective past: Do this *use* well.
    noun: Any *use* is new.
    noun: These *uses* are new.
    noun adjective: Tam's *record* fell.
    noun adjective: The boys' *record* fell.
    adjective past: It's *close* here.
    -: Gas *record* fell.
  describing words
    noun adjective: An old *record* fell.
    noun adjective: Strong *winds* blew.
    noun adjective: Strong *wind* blew.
    -: The old *read* the news.
    -: The red *contrasts* with it.
    noun: The red *contrast* with it.
    -: First *read* and look.
    noun adjective: The first *record* fell.
    noun adjective: My first *record* fell.
    noun adjective: These next *record* sales fell.
    noun adjective: The big old *record* fell.
    noun adjective: Some old *record* fell.
    -: It is wrong *use*.
    -: It looked red *use*.
    -: Long *records* fell.
    noun: It is red *records*.
    noun adjective: Men old *record* fell.
  how much, and where
    adjective adverb: It is very *close*.
    adjective adverb: Too *minute* for us.
    noun adjective: He was in *tears*.
    noun adjective: It was made of *lead*.
    noun adjective: He had nothing but *abuse*.
    verb past: Hens but *use* it.
  is and are
    adjective past: It is *close*.
    adjective past: It was *read* out.
    noun adjective: These are *records* of it.
    noun adjective: There is *use* here.
    noun adjective: There's *use* here.
    -: All they do is *read*.
    -: All he does is *read*.
    -: All we did was *read*.
  who does it
    verb past: I *use* it.
    verb past: They *read* it.
    verb: She *reads* it.
    past: He *wound* it.
    past: Everyone *read* it.
    verb: Who *uses* it?
    verb past: Who *use* it?
    verb: This *uses* it.
    verb: That *uses* it.
    verb: Which *uses* it?
    -: This *uses* water.
    -: Give to you *live* fish.
    -: Fish for you *live* here.
  an order
    verb: *Wind* the wool.
    -: *Wind* wool.
    verb: *Record* how it fell.
    verb: “*Record* how it fell.”
    verb: Sit. *Wind* the wool.
    verb past: Men *record* how it fell.
    -: Hens *record* how it fell.
    -: *Records* how it fell.
    verb past: He ran up and *wound* it.
    verb past: He ran up, *wound* it.
    -: He ran up then *wound* it.
    verb past: Men *wound* it.
    verb past: Sad hens *wound* it.
    -: Sad hens *wound* soup.
    verb: And *winds* it.
    -: And *winds* wool.
  the first thing of all
    noun: *Tears* were here.
    noun: *Tears* have come.
    noun: *Tears* can fall.
    noun: *Tears* blurred it.
    noun: *Tears* blur it.
    -: *Tear* blur it.
    noun: *Lead* is soft.
    -: *Lead* sat here.
    -: Sad, *tears* blurred it.
    noun: Men *tears* were here.
  before has and is
    noun: Bus *progress* has begun.
    noun: Bus *progress* isn't here.
    noun: Bus *progress* was here.
    -: Bus *progress* wasp was here.
    -: Bus *records* has begun.
  before of
    noun: Bus *record* of it.
    noun: Bus *uses* of it.
    -: Bus *uses* off it.
  close to
    adjective adverb: Tam came *close* to it.
    adjective adverb: Tam looked *content*.
    -: Come *read* it.
    -: Tam stands *records*.
  after a verb
    noun: Tam yelled *insults* at him.
    noun: Tam keeps *records*.
    noun: Tam reads *records* in it.
    -: Tam reads *records* with it.
    -: Tam reads *records* now.
    -: Hens *records* in it.
    -: Tam reads *record* in it.
  before an object
    verb: Gran *attributes* her life to it.
    verb: A warm bath *contents* the baby.
    verb: A warm bath *contents* a baby.
    verb: A warm bath *contents* an ant.
    verb: A warm bath *contents* me.
    -: Hens *content* the baby.
    -: Now, *contents* the baby.
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})
