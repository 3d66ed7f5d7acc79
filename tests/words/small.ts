// A small lexicon for the tests of the word finder: some 8,000 words in use, built in memory as the whole one is.

import { dictionary } from 'cmu-pronouncing-dictionary'
import { loadChildWords } from '../../scripts/build/children.ts'
import { buildWords } from '../../scripts/build/words.ts'
import type { WordOrder } from '../../src/words/candidates.ts'
import { openWordData, type WordData } from '../../src/words/word-data.ts'

const READABLE = `bad bag bags bat bats bed beds beg big bin box bud bug bugs bun bus but cab cabs cap cat cats cob cod cup cut dad dads dig dog
 dogs dot fan fat fed fit fog fox fun get gin got gun had ham hat hen hens hid hit hot hug hum hut in it jam jet jets jug kid kids lab
 lad leg let lid log lot mad man map mat men met mop mud mug net nod not nut on ox pad pal pals pan pat pen pet pig pigs pin pit pop pot
 pup pups put ran rat rats red rob rod rub rug rum run sad sap sat sit sun tap ten tin top tub tubs tug tugs up van vans vet web wet win
 yam yap yell zip`
const split = (text: string): string[] => text.split(/\s+/).filter(Boolean)

export const readable: ReadonlySet<string> = new Set(split(READABLE))
const children = loadChildWords()
const isInUse = (word: string): boolean =>
  (children.rank(word) ?? Number.POSITIVE_INFINITY) <= 6_000 || children.knownGrade(word) >= 2
export const words: readonly string[] = Object.keys(dictionary)
  .filter((word) => /^[a-z']+$/.test(word) && isInUse(word))
  .sort()
const places = new Map(words.map((word, i) => [word, i]))
export const lexicon: WordOrder = { indexOf: (word) => places.get(word) ?? -1 }
export const data: WordData = openWordData(buildWords(words))
