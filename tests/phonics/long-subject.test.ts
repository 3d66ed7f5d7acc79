// Look-alikes behind a long subject, in a clause about the thing before, behind small words such as `either` and `what`, and `read` in what is so
// at any time. Sentences of our own; common practice, no source.

import { beforeAll, describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import { rules, table } from '../../scripts/build/heteronyms/table.ts'
import { settle } from '../../src/phonics/heteronyms/settle.ts'
import { loadTagger, type Tagger } from '../../src/phonics/heteronyms/tagger.ts'
import type { Heteronyms } from '../../src/phonics/heteronyms/types.ts'

let tagger: Tagger
beforeAll(async () => {
  tagger = await loadTagger()
})

/** The form that the rules settle for the word in stars; `unsettled` where they are silent. */
function ask(text: string, from: Heteronyms = rules): string {
  const index = cutWords(text.slice(0, text.indexOf('*'))).length
  const answer = settle(from, cutWords(text.replaceAll('*', '')), index, { tagger })
  return answer.kind === 'settled' ? answer.form : answer.kind
}

const check = (text: string, form: string): void => expect(ask(text)).toBe(form)

describe('a clause about the thing before', () => {
  it.each([
    ['This is the rake that the farmer *uses* for digging.', 'verb'],
    ['A jug has many *uses* for a cook.', 'noun'],
    ['The stick the giant *uses* is a whole tree.', 'verb'],
    ['All the tools that the farmer *uses* are in the shed.', 'verb'],
    ['The tools Ned *uses* are old.', 'verb'],
    ['The play my class *presents* is long.', 'verb'],
    ['The news that the birthday *presents* are here made us hop.', 'noun'],
    ['One of the birthday *presents* is mine.', 'unsettled'],
    ['Red Hill *Objects* is a shop for old spoons.', 'unsettled'],
    ['They have machines which *extract* and clean the oil.', 'verb'],
    ['We have hens which *produce* and hatch eggs.', 'verb'],
    ['Poles that *incline* too far fall over.', 'verb'],
    ['Nails that *project* are dangerous.', 'verb'],
    ['You get more than your hens *produce*.', 'verb'],
    ['That is more wool than the sheep *produce*.', 'verb'],
    ['The crate holds more than the farm *produce*.', 'noun'],
    ['This is the stone the giants *use* for cutting trees.', 'verb'],
    ['It seems that ducks in our park *use* the bridge.', 'verb'],
    ['Men and women alike *use* the well.', 'verb'],
    ['The brave knights that *present* themselves at the gate are fed.', 'verb'],
  ])('%s → %s', check)
})

describe('what grows, and what a place names', () => {
  it.each([
    ['The length of his tail *increases*, which makes him proud.', 'verb'],
    ['The size of the hole *increases* while they watch.', 'verb'],
    ['They say that the noise of the crowd *increases*.', 'verb'],
    ['There was no end of price *increases*.', 'noun'],
    ['As noise *increases*, the cat hides.', 'verb'],
    ['The cold *increases*.', 'verb'],
    ['They say that her fear *increases* with every step.', 'verb'],
    ['They say that the old lock *rejects* every key but one.', 'verb'],
    ['Every year the number of frogs *increases*.', 'verb'],
    ['No more *increases*!', 'noun'],
    ['Foxes and mice make *deserts* their home.', 'sand'],
    ['A night in the shed was no more than his *deserts*.', 'leave'],
    ['The more he eats, the more his tummy *increases*, until pop!', 'verb'],
    ['There were more price *increases*.', 'noun'],
    ['They stood at the edge of the Tansy Lane *protests*.', 'noun'],
    ['It is over, and the White Hen *protests*.', 'verb'],
    ['Our heart expands and *contracts*.', 'verb'],
  ])('%s → %s', check)
})

describe('small words before', () => {
  it.each([
    ['We could either *use* glue or tape.', 'verb'],
    ['The top is not of *use*, and neither is the lid.', 'noun'],
    ['Let us see what *uses* you can find for an old sock.', 'noun'],
    ['I wonder what *uses* he will find for it.', 'noun'],
    ['See what *uses* you or your sister might find for it.', 'noun'],
    ['String has multiple *uses* in a boat.', 'noun'],
    ['A spoon has countless *uses* in our den.', 'noun'],
    ['Because *increases* in it are rare, the goat is thin.', 'noun'],
    ['When *presents* come by post, the house wakes.', 'noun'],
    ['Here are some *uses* that are not well known.', 'noun'],
    ['The goat *objects* that we never feed her.', 'verb'],
    ['The shed is for storage and *use* by the hens.', 'noun'],
    ['The old lamp is in common *use* among the elves.', 'noun'],
    ['*Produce* at least six eggs, or you are no hen of mine!', 'verb'],
    ['I have to do *combat* training.', 'noun'],
    ['She asked the knight to do *combat* with the dragon.', 'noun'],
    ['We do *combat* the slugs.', 'verb'],
  ])('%s → %s', check)
})

describe('with what the model holds likely', () => {
  it.each([
    ['Toys that *approximate* real tools are fun.', 'verb'],
    ['For ten years that *record* stood.', 'noun'],
    ['They know that the price *increases* made Gran cross.', 'noun'],
    ['Every night *close* the shutters.', 'shut'],
    ['One day please *close* that gate.', 'shut'],
    ['Those who fear the king *use* the back door.', 'verb'],
    ['Then the men on the farm *use* big forks.', 'unsettled'],
    ['Every day the goats on the hill *produce* milk.', 'unsettled'],
    ['Then the boys in the boat *use* their hats.', 'verb'],
    ['She told the boys that *combat* was over.', 'unsettled'],
  ])('%s → %s', (text, form) => {
    expect(ask(text, table)).toBe(form)
  })
})

describe('content and learned', () => {
  it.each([
    ['He was not the *content* kind of pig.', 'happy'],
    ['The cat ate the cream, to her great *content*.', 'happy'],
    ['A full bowl makes any dog more *content*.', 'happy'],
    ['The hen clucked in *content*.', 'happy'],
    ['We need more *content* for our page.', 'contained'],
    ['The absence of *content* on the page made us laugh.', 'contained'],
    ['This ancient and *learned* owl knew every star.', 'adjective'],
    ['This is a puzzle for the *learned*.', 'adjective'],
    ['The old woman was *learned* in the use of herbs.', 'adjective'],
    ['Whistling is a *learned* skill.', 'verb'],
    ['She met the goat and *learned* to climb.', 'verb'],
  ])('%s → %s', check)
})

describe('read', () => {
  it.each([
    ['That was the funniest book I’d ever *read*.', 'past'],
    ['She must’ve *read* the map upside down.', 'past'],
    ['It is ten years since I last *read* it.', 'past'],
    ['If you are lost, *read* the map.', 'present'],
    ['When all else fails, *read* the map.', 'present'],
    ['When you’ve finished, *read* the last line.', 'present'],
    ['Every path is different, and it was a muddy one, so *read* the map well.', 'present'],
    ['The bridge is old, so *read* the sign first.', 'present'],
    ['We can sing, *read*, or play cards.', 'present'],
    ['He wanted to sing, *read* his book, and left.', 'past'],
    ['You can hand him the letter, *read* it to him, or post it.', 'present'],
    ['Have a friend *read* it to you.', 'present'],
    ['Have the boys *read* it?', 'unsettled'],
    ['While you *read*, I will cook.', 'present'],
    ['Before we *read* the last page, let us guess.', 'present'],
    ['Children who *read* a lot know many words.', 'present'],
    ['Those who *read* the letter were glad.', 'past'],
    ['He was the only one who *read* the rules.', 'past'],
    ['Anyone who *read* the sign turned back.', 'past'],
    ['In those days few people *read*.', 'past'],
    ['He found out what the note *read*.', 'past'],
    ['I never *read* the end of it.', 'unsettled'],
    ['I never *read* letters.', 'present'],
    // Read once, though the news is of now.
    ['I *read* the book, so I know how it ends.', 'unsettled'],
    ['They *read* the letter, but nobody knows what it means.', 'unsettled'],
    ['We *read* books because we love stories.', 'present'],
    ['If they *read* it, they would laugh.', 'past'],
    ['I would be glad if you *read* it.', 'unsettled'],
    ['I *read* the note that the witch had left.', 'past'],
    ['We *read* the words she had written.', 'past'],
    // No past: a screen that is cracked, one who is lost.
    ['They *read* the news on the cracked screen and laugh.', 'unsettled'],
    ['They *read* the news when it came.', 'past'],
    // Read once, though what it says is so now.
    ['The card I *read* says that we must wait, but I will not.', 'unsettled'],
  ])('%s → %s', check)
})
