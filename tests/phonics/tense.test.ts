// Whether `read` is present or past, told by times, by other clauses, by a verb joined to it and by the sentences before; and whether `used` is
// the verb or the old habit. Common practice, no source: any grammar of English tells as much.

import { describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { findContextTense, findJoinedTense, findTense } from '../../src/phonics/heteronyms/tense.ts'
import { findTaggedUsed, findUsed } from '../../src/phonics/heteronyms/used.ts'
import { toBlocks } from './blocks.ts'
import { type TagsOf, toTagged } from './tagged-words.ts'

const VERBS: TagsOf = {
  G: ['Verb', 'Gerund'],
  I: ['Verb', 'Infinitive'],
  N: ['Noun'],
  P: ['Verb', 'PastTense'],
  V: ['Verb'],
}

function ask(asked: string): string {
  const [, kind = '', text = ''] = /^(\w+) \| (.*)$/.exec(asked) ?? []
  if (kind === 'before') return findContextTense(text.split(' / ').map(cutWords)) ?? '-'
  const { sentence, tags } = toTagged(text, VERBS)
  const place = toPlace(sentence, toTagged(text.slice(0, text.indexOf('*')), VERBS).sentence.length)
  if (kind === 'time') return findTense(place) ?? '-'
  if (kind === 'joined') return findJoinedTense(place) ?? '-'
  if (kind === 'tagged') return findJoinedTense(place, tags) ?? '-'
  return (kind === 'used' ? findUsed(place) : findTaggedUsed(place, tags)) ?? '-'
}

const LINES = `
  times
    past: time | Yesterday we *read* it.
    past: time | We *read* it a year ago.
    past: time | We *read* it last night.
    past: time | We *read* it last Monday.
    -: time | We *read* the last page.
    -: time | We *read* the last nightmare.
    -: time | We *read* the last midnight.
    -: time | Now we *read* it.
    present: time | We *read* it now.
    present: time | We usually *read* it.
    present: time | We *read* it every day.
    present: time | We *read* it each evening.
    -: time | We *read* every page.
    -: time | We *read* every daybook.
    -: time | We *read* every today.
    -: time | We *read* some day.
    -: time | We *read* it.
    -: time | Yesterday we *read* it every day.
  other clauses
    past: time | We *read* until it got dark.
    past: time | We sat. We *read* it.
    past: time | We sat then *read* it.
    -: time | We got up *read* it.
    -: time | We *read* the book that got wet and old.
    past: time | We *read* to him until it got dark.
    -: time | We *read* it, “He got wet.”
    -: time | “We *read* it,” he said.
    past: time | “We *read* it and he sat,” says Tam.
    present: time | When it is wet we *read*.
    present: time | Whenever it is wet we *read*.
    present: time | If it is wet we *read*.
    present: time | It is wet when we *read*.
    present: time | We *read* it before I eat.
    -: time | We *read* it before I could eat.
    present: time | I *read* because she likes it.
    present: time | I *read* and she reads too.
    past: time | When it is wet, and it was, we *read*.
    -: time | It is wet, we *read*.
    -: time | We *read* whose hat it was and then we.
    -: time | We *read* who came, and then.
    -: time | We *read* which cake fell, and then.
  a verb joined to it
    past: joined | We sat and *read* it.
    past: joined | We sat or *read* it.
    past: joined | We sat then *read* it.
    -: joined | We sat but *read* it.
    present: joined | We will sit and *read* it.
    present: joined | We want to sit and *read* it.
    past: joined | We went to the pond and *read* it.
    past: joined | We went to bed and *read* it.
    past: joined | We went to town and *read* it.
    past: joined | We went to school and *read* it.
    past: joined | We went to a pond and *read* it.
    past: joined | We had sat and *read* it.
    past: joined | The boy who sat and *read* it.
    past: joined | The boy that ran and *read* it.
    past: joined | The toy which fell and *read* it.
    past: joined | The boy whose hat fell and *read* it.
    past: joined | We saw what fell and *read* it.
    -: joined | We sat. Then hens and *read* it.
    -: joined | We sat! Hens and *read* it.
    -: joined | We sat; hens and *read* it.
    past: joined | We sat, hens and *read* it.
    past: joined | Sat and *read* it.
    -: joined | Hens and *read* it.
    present: tagged | We sit/V and *read* it.
    past: tagged | We hop/P and *read* it.
    -: tagged | We put/V it and *read* it.
    past: tagged | We hop/P sitting/G and *read* it.
    present: tagged | Sit/V and *read* it.
    -: tagged | We hen/N and *read* it.
  the sentences before
    past: before | The sun was hot. / Meg sat by the pond.
    present: before | It is wet. / Meg likes the rain.
    -: before | It was wet. / Meg likes the rain.
    -: before | It was wet.
    -: before | It is wet.
    -: before | It was wet and Meg sat and Tam likes it.
    -: before | It is wet and Meg likes it and Tam sat.
    past: before | It was wet. / “It is,” said Tam.
    past: before | The sun WAS hot. / Meg SAT by the pond.
    -: before | Zub.
  used
    verb: used | We *used* a net.
    used-to: used | We *used* to swim.
    used-to: used | I got *used* to it.
    used-to: used | It is quite *used* to it.
    used-to: used | He is *used* to swimming.
    used-to: used | He is *used* to the cold.
    -: used | He is *used* to dig.
    used-to: used | He is *used* to
    used-to: used | A noise that he was *used* to.
    used-to: used | The song she *used* to sing.
    verb: used | They had *used* it to dig.
    used-to: used | Are you *used* to it?
    used-to: used | Are you *used* to swimming?
    -: used | Are you *used* to dig?
    used-to: used | There *used* to dig.
    used-to: used | The net we *used* to be.
    -: used | The net we *used* to dig.
    used-to: used | The hen *used* to dig.
    used-to: used | The old red hen *used* to dig.
    used-to: used | Old hens *used* to dig.
    used-to: used | Hens *used* to dig.
    used-to: used | When Tam *used* to dig.
    used-to: used | Men who *used* to dig.
    -: used | The men and *used* to dig.
    used-to: used | So, the hen *used* to dig.
    used-to: used | Because my hen *used* to dig.
    -: used | Net the hen *used* to dig.
    used-to: used | Net old hen *used* to dig.
    -: used | Net, *used* to dig.
    -: used | *Used* to dig.
    -: used | He saw Tam *used* to dig.
    -: used | I saw her then *used* to dig.
    verb: tags | It is *used* to dig/I holes.
    used-to: tags | It is *used* to noise/N here.
    -: tags | It is *used* to sat/P here.
    -: tags | It sat *used* to noise/N here.
    -: tags | *Used* to noise/N here.
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})
