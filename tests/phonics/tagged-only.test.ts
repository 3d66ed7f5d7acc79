// What the tagger's verbs say of a word beside them, clue by clue, each with a sentence where it holds and one that lacks the same thing. The
// tags are written by hand, as a careful tagger gives them; which class a word has is common practice, no source.

import { describe, expect, it } from 'vitest'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { findTaggedClasses } from '../../src/phonics/heteronyms/tagged.ts'
import { isInflected } from '../../src/phonics/heteronyms/types.ts'
import { toBlocks } from './blocks.ts'
import { type TagsOf, toTagged } from './tagged-words.ts'

const TAGS: TagsOf = {
  A: ['Adjective'],
  C: ['Verb', 'Copula'],
  D: ['Determiner'],
  I: ['Verb', 'Infinitive', 'PresentTense'],
  N: ['Noun', 'Singular'],
  O: ['Noun', 'Pronoun'],
  P: ['Noun', 'Plural'],
  R: ['Preposition'],
  V: ['Verb', 'PresentTense'],
}

/** The classes that are left open for the word in stars; `-` where nothing is said. */
function ask(text: string): string {
  const { sentence, tags } = toTagged(text, TAGS)
  const parts = text.split(' ')
  const place = toPlace(
    sentence,
    parts.findIndex((part) => part.startsWith('*')),
  )
  return findTaggedClasses(place, tags, isInflected(place.words[place.index] ?? ''))?.join(' ') ?? '-'
}

const LINES = `
  what a verb takes
    noun: Did you/O bring/I *presents*/V ?
    noun: The/D scene where Tam/N exchanges/V *insults*/V with/R Sid/N .
    noun: Bring/I *presents*/V .
    noun: Bring/I *presents*/V for/R Tam/N .
    -: Bring/I *presents*/V up .
    -: Did you/O bring/I *present*/V ?
    -: The/D play/V *presents*/V .
    -: The/D old/A guard/V *permits*/V .
    -: Tam's guard/V *permits*/V .
    -: Tam/N is/C *presents*/V .
    verb: Tam/N guard/N *presents*/V the hen/N .
  what a verb takes, with what leads it
    noun: We/O do/V art/N *projects*/V .
    -: How do/V art/N *projects*/V go .
    noun: We/O make/I art/N *projects*/V .
    noun: We/O want to make/I odd/A *projects*/V now .
    noun: Hens/P pull/I metal/N *objects*/V .
    -: A/D cat/N pull/I metal/N *objects*/V now .
    -: We/O pull/I metal/N *objects*/V the hen/N .
  a title
    -: The Three/A Bears/P *Project*/N .
    -: The Egg/N and Spoon/N *Contest*/N .
    verb past: The three/A bears/P *project*/N .
  joined to a bare verb
    verb: They can see/I , hear/I and *use*/I tools/P .
    verb past: They/O sing/I and *record*/I songs/P .
    -: Men/P sing/I and *record*/I songs/P .
    verb: Trees/P give/I shade/N and *produce*/I air/N .
    verb: Trees/P give/I shade/N or *produce*/I good/A air/N .
    -: Trees/P give/I shade/N and *produce*/I up .
    -: They/O like/I art/N and *transport*/I shops/P .
    -: Gold/N and *produce*/I air/N .
    -: Trees/P give/I , shade/N and *produce*/I air/N .
  the only verb
    verb: *Extract*/N facts/P .
    verb: Sit/V ! *Extract*/N facts/P from/R it/O .
    noun adjective: *Extract*/N facts/P sank/V .
    -: *Intimate*/A friends/P .
    verb: When you/O end/V it/O , *progress*/N to/R it/O .
    -: The/D end/N of/R it/O , *progress*/N to/R it/O .
    -: When you/O end/V it/O , *progress*/N in/R it/O was/C bad/A .
    verb: Do those screen/N games/P *addict*/N people/P ?
    noun adjective: Do those screen/N games/P see/V *addict*/N people/P ?
    noun adjective: In those screen/N games/P *addict*/N people/P ?
    verb: Our/D dog/N *graduates*/P from/R it/O today .
    verb: Our/D dog/N *objects*/P when/R you/O eat/V .
    -: Our/D dog/N *graduates*/P sat/V .
    -: Our/D dog/N *graduates*/P .
    verb past: Mum/N and/O Dad/N *alternate*/A : first/A him/O .
    verb past: The/D toys/P *rebel*/N when/R it/O is/C dark/A .
    -: Keep/V Mum/N and/O Dad/N *separate*/N .
    verb past: Fish/N and crabs/P in/R the/D sea/N *produce*/N a light/N .
    verb past: Fish/P in/R the/D old/A grey/A wide/A sea/N *produce*/N a light/N .
    -: Crab/N in/R the/D old/A grey/A wide/A sea/N *produce*/N a light/N .
    -: Fish/P see/V in/R the/D old/A wide/A grey/A sea/N *produce*/N a light/N .
    verb: Store/I and *transport*/N it with/R care/N .
    verb: How many watts/P does this kettle/N *use*/N per day/N ?
  with no object for what needs one
    noun adjective: There were/C enough members/P *present*/V to help/I .
    noun adjective: Is/C any mail/N *address*/V as a name/N good/A ?
    past: Play/N which school/N *present*/V to him/O .
    verb past: Now members/P *survey*/V to him/O .
  before a past
    noun: *Refuse*/V lay in/R heaps/P .
    noun: Water/N *use*/V went up/T .
    -: *Use*/V cooked rice/N .
  taken by a verb, behind what leads a thing
    noun: We/O pinned/V our space/N *projects*/V up/T .
    noun: We/O like/I the/D old/A space/N *projects*/V now .
    -: I/O know/I my/D mother/N *objects*/V .
  one of several orders
    verb: Reduce/I , *reuse*/N and recycle/I !
    -: Bottles/P , *reuse*/N and recycle/I !
    -: Reduce/I , *reuse*/N and bottles/P !
    noun: Reduce/I , *reuse*/N recycle/I !
  what makes it so
    verb: Air/N makes/V metal/N *contract*/I .
    verb: Air/N makes/V metals/P *contract*/I .
    -: Air/N makes/V metal/N *contract* .
    -: Air/N makes/V it/O *contract*/I .
  a plural with its place
    verb past: People/P here/N *use*/I bikes/P .
    verb past: People/P *use*/I bikes/P .
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})
