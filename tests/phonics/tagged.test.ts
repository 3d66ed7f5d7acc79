// What the tagger's parts of speech say about a word's class, clue by clue, each with a sentence where it holds and one that lacks the same
// thing. The tags are written by hand, as a careful tagger gives them; which class a word has is common practice, no source.

import { describe, expect, it } from 'vitest'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { findTaggedClasses } from '../../src/phonics/heteronyms/tagged.ts'
import { toBlocks } from './blocks.ts'

const TAGS: Readonly<Record<string, readonly string[]>> = {
  A: ['Adjective'],
  D: ['Determiner'],
  N: ['Noun'],
  NA: ['Noun', 'Adjective'],
  NS: ['Noun', 'Possessive'],
  O: ['Noun', 'Pronoun'],
  P: ['Noun', 'Plural'],
  R: ['Preposition'],
  T: ['Verb', 'Particle'],
  V: ['Verb'],
  X: ['Value'],
  XD: ['Value', 'Determiner'],
}

/** The classes that are left open for the word in stars; `-` where nothing is said. */
function ask(text: string): string {
  const parts = text.split(' ').map((part) => part.split('/') as [string, string?])
  const words = parts.map(([word]) => word.replaceAll('*', ''))
  const index = parts.findIndex(([word]) => word.startsWith('*'))
  const tags = parts.map(([, tag]) => new Set(tag === undefined ? [] : TAGS[tag]))
  return findTaggedClasses(toPlace(words, index), tags, /[^s]s$/.test(words[index] ?? ''))?.join(' ') ?? '-'
}

const LINES = `
  a plural before its verb
    verb past: Hens/P *produce*/V eggs/P .
    verb past: Hens/P *produce*/N eggs/N .
    -: Hens/P *produce*/N sat/V .
    verb past: Hens/P *produce*/N up/T .
    -: Hens/P *produce*/V sat/V .
    verb past: Hens/P *produce*/V up/T .
    -: Hens/P *winds*/V eggs/P .
    noun past: The/D hen/N *produce*/N eggs/O .
    verb past: The/D mice/N *produce*/V eggs/P .
    verb past: The/D police/N *object*/V to/R it/O .
    -: The/D sports/P *contest*/N eggs/O .
    verb past: Tam/N and Meg/N *bow*/V to/R her/O .
    verb past: Tam/N and/O old/A Meg/N *bow*/V to/R her/O .
    -: Tam/N or Meg/N *bow*/N to/R her/O .
    -: Sit/V with/R hens/P *produce*/V eggs/P .
    verb past: Sit/V , hens/P *produce*/V eggs/P .
    verb past: Sit/V because hens/P *produce*/V eggs/P .
    -: They/O *produce*/V eggs/P .
    verb past: The/D big/A sheep/N *bow*/V .
  one thing before its verb
    verb: Ned/N *winds*/V his watch/N .
    verb: Ned/N *winds*/N his watch/N .
    -: Sit/V and/O Ned/N *winds*/N his watch/N .
    past: Meg/N *wound*/V the wool/N .
    -: Meg/N *wound*/N the wool/N .
    verb: Did/V Meg/N then *wind*/V the wool/N .
    -: Did we see/V Meg/N *wound*/V the wool/N .
    verb: Will Meg/N *wound*/V the wool/N ?
    -: Will Meg/N *wound*/V the wool/N .
    -: Sat/V by/R Ned/N *winds*/V his watch/N .
    verb: By/R Ned/N *winds*/V his watch/N .
    -: By/R Meg/N *wound*/V the wool/N .
    -: Hens/P *winds*/V his watch/N .
    -: It/O *winds*/V his watch/N .
    -: Ned/N *winds*/V sat/V his watch/N .
    verb: Ned/N *winds*/V up/T his watch/N .
  a question
    verb: Did/V the/D band/N *record*/N a song/N ?
    verb: Can/V the/D big band/N *record*/N a song/N ?
    verb: Did/V the/D band/N *record*/N songs/P ?
    -: Men/P did/V the/D band/N *record*/N a song/N ?
    verb: Because did/V the/D band/N *record*/N a song/N ?
    -: Sat/V the/D band/N *record*/N a song/N ?
    -: Did/V the/D band/N , *record*/N a song/N ?
    -: The/D band/N *record*/N a song/N ?
  two things in a row
    noun past: The/D dog/N *contest*/N sank/V .
    noun past: The/D dog/N *contest*/N slow/A .
    past: The/D dog/N *contest*/V now .
    verb past: The/D dogs/P *contest*/N slow/A .
    verb: The/D dog/N *contests*/N slow/A .
    -: The/D dog/N *contest*/N a man/N .
    verb: Can the/D dog/N *contest*/N slow/A ?
    -: Can the/D dog/N *contest*/N slow/A .
    -: My old dog/N *contest*/N slow/A .
    noun: The/D old/A *contest*/N slow/A .
  two verbs joined
    verb: They can recruit/V or *recall*/N them .
    verb: He likes to sing/V and *record*/N it .
    -: He likes to sing/V then *record*/N it .
    -: He likes to song/N and *record*/N it .
    -: He did not sing/V and *record*/N it .
    -: He likes to sing/V and *records*/N it .
    -: Sing/V and *record*/N it .
  led by a small word
    noun: Tam/N spoke/V of/R insurance/N *contracts*/V .
    noun: Meg/N paid/V by/R bank/N *transfer*/V .
    noun: It/O lay/V in/R our/D parish/N *records*/V .
    noun: They/O ask/V for/R a/D pay/N *increase*/V .
    noun: They/O talk/V of/R steady/A *use*/V .
    noun: They/O talk/V of/R steady/A *use*/V only .
    noun: They/O talk/V of/R steady/A *use*/V or not .
    noun: They/O talk/V of/R steady/A *use*/V to them .
    noun: They/O talk/V of/R steady/A *use*/V for them .
    -: They/O talk/V of/R steady/A *use*/V with them .
    -: They/O talk/V of/R steady/A *use*/V them .
    -: They/O talk/V of/R slowly *use*/V .
    noun: They/O talk/V against/R steady/A *use*/V .
    noun: They/O talk/V to/R steady/A *use*/V .
    -: They/O talk/V and steady/A *use*/V .
    noun: They/O talk/V of/R ten/X pay/N *increases*/V .
    -: They/O talk/V of/R ten/XD pay/N *increases*/V .
    verb: The/D man/N in/R the/D hat/N *objects*/V .
    noun: The/D man/N in/R the/D hat/N *records*/V .
    verb past: The/D men/P in/R the/D hats/P *record*/V .
    verb past: The/D men/P in/R these/D old/A hats/P *record*/V .
    noun: The/D men/P in/R these/D old/A *records*/V .
    -: Steady/A *use*/V .
    -: *Use*/V .
    -: Of/R *use*/V .
  two things joined
    noun: It/O is/V for/R storage/N and *transport*/V .
    noun: It/O is/V great/A pain/N and *torment*/V .
    noun: It/O is/V great/A pain/N or *torment*/V .
    -: It/O is/V great/A pain/N or *recall*/V .
    -: It/O is/V great/A pain/N and *torment*/V them .
    -: It/O is/V great/A they/O and *torment*/V .
    noun: It/O is/V the pain/N and *torment*/V .
    -: It/O is/V the pain/N and *recall*/V .
    -: Go/V to pain/N and *torment*/V .
    noun: It/O is/V for/R boxes/P and *objects*/V .
    -: It/O is/V for/R box/N and *objects*/V .
    noun: Pain/N and *torment*/V .
    -: Pain/N and *recall*/V .
  described before
    noun: Ned/N gave/V them costly/A *presents*/V .
    -: Ned/N gave/V them costly/A *present*/V .
    -: Ned/N gave/V them costly/NA *presents*/V .
    -: Ned/N gave/V them costly/A *presents*/V now .
    -: Ned/N gave/V them now *presents*/V .
    noun: A/D clever/A *dove*/V sat/V .
    -: A/D clever/A *dove*/V now .
    -: Is clever/A *dove*/V sat/V .
    -: A/D now *dove*/V sat/V .
  first of two
    noun adjective: *Transport*/V rates/P are high/A .
    noun adjective: *Transport*/V rates/P have sunk/V .
    noun adjective: *Transport*/V rates/P can sink/V .
    -: *Transport*/V rates/P sink/V .
    -: *Transport*/V it/O can sink/V .
    -: *Transports*/V rates/P are high/A .
    -: Sad/A *transport*/V rates/P are high/A .
  the tagger's noun
    noun: He/O bought/V *produce*/N now .
    -: He/O bought/V *produce*/V now .
    noun: Some/D *produce*/N sank/V .
    noun: Big/A *produce*/N sank/V .
    noun: Tam's/NS *produce*/N sank/V .
    noun: Of/R *produce*/N sank/V .
    noun: Ten/X *produce*/N sank/V .
    -: He/O bought/V *produce*/N the hen/N .
    -: He/O bought/V *produce*/N Tam/N .
    -: The/D old/A *uses*/N with it/O .
    noun: He/O bought/V *use*/N with it/O .
    noun adjective: He/O bought/V *use*/N shops/P .
    -: He/O now *use*/N sat/V .
    noun: *Produce*/N sat/V .
    -: *Produce*/N now .
    noun: Meg/N , *produce*/N sat/V .
    -: Meg/N , *produce*/N now .
  the tagger's adjective
    adjective: Tam/N came *close*/A .
    -: Tam/N came *close*/N .
    adjective: Tam/N came *close*/A shops/P .
    -: Tam/N came *close*/A now .
    -: *Close*/A !
    -: Sit/V , *close*/A shops/P .
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})

// Words by list, each as any grammar has it: what leads a thing, what is plural without an s, which verbs need no object.
describe('lists', () => {
  const LEADS = 'of for from with in without into about under by on against before after between during through over'
  it.each(LEADS.split(' '))('%s leads a thing', (lead) => {
    expect(ask(`They/O talk/V ${lead}/R steady/A *use*/V .`)).toBe('noun')
  })

  it.each('children people men women mice geese sheep fish police'.split(' '))('%s are many', (many) => {
    expect(ask(`The/D ${many}/N *record*/V it/O .`)).toBe('verb past')
  })

  it.each('sports games goods clothes arms sales savings news'.split(' '))('%s may describe a thing', (plural) => {
    expect(ask(`The/D ${plural}/P *contest*/N eggs/O .`)).toBe('-')
  })

  it.each(
    'conflicts contracts contrasts decreases increases objects progresses projects protests rebels resumes'.split(' '),
  )('the man in the hat %s', (verb) => {
    expect(ask(`The/D man/N in/R the/D hat/N *${verb}*/V .`)).toBe('verb')
  })
})

describe('beyond the edge of the sentence', () => {
  it.each([
    ['-', '*Produce*/V'],
    ['-', '*Close*'],
    ['verb past', 'Hens/P *produce*'],
    ['noun', 'He/O bought/V *produce*/N'],
    ['adjective', 'It/O is/V *close*/A'],
    ['-', '*Winds*/V'],
    ['noun', 'Costly/A *presents*/V'],
    ['-', 'Sing/V and *record*/N'],
    ['-', 'And *record*/N'],
  ])('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})

// A thing joined to another is many, wherever its helper stands.
describe('two joined things', () => {
  it.each([
    ['verb past', 'Old/A Tam/N and Meg/N *bow*/V to/R her/O .'],
    ['verb past', 'Tam/N and/O the/D old/A Meg/N *bow*/V to/R her/O .'],
    ['past', 'Sad/A and old/A Meg/N *bow*/V to/R her/O .'],
    ['past', 'Tam/N sat and/O by it then Meg/N *bow*/V to/R her/O .'],
  ])('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})
