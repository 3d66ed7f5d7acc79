// Slips of a maker's own file that are no mistake of form: each is told with the nearest right thing.

import { describe, expect, it } from 'vitest'
import { type Problem, toProblemText } from '../../src/problem/index.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { readBuiltIn } from './engine.ts'

const load = (steps: string): readonly string[] =>
  loadSequence(`name: ours\nextends: series\nsteps:\n${steps}`, {
    phonicsFor: testPhonics,
    resolve: () => readBuiltIn('series'),
  }).problems.map((problem) => toProblemText(problem))

it.each([
  ['a step that is another but for a dash', '  - id: pink1\n', '`pink-1`?'],
  ['the same with a nought', '  - id: Pink_01\n', '`pink-1`?'],
  ['a step that cannot move', '  - id: pink-2\n    after: pink-5\n', 'Leave out `after`'],
  ['a sight word with two letters swapped', '  - id: more\n    sight words: [thier]\n', '`their`?'],
  ['a contraction without its apostrophe', '  - id: more\n    contractions: [dont]\n', "`don't`?"],
  ['a sound taught twice', '  - id: more\n    teach: [sh as in fish]\n', 'taught already, at step `green-1`'],
  ['an example that is another step’s', '  - id: more\n    teach: [n in net]\n', 'taught already, at step `pink-1`'],
  ['a contraction taught twice', '  - id: more\n    contractions: ["it\'s"]\n', 'taught already, at step `green-4`'],
  ['a step with a letter too few', '  - id: geen-3\n', '`green-3`?'],
  ['a step with two letters swapped', '  - id: pnik-2\n', '`pink-2`?'],
  ['the next step of a series', '  - id: green-16\n', '`after: green-15`'],
])('%s', (_, steps, told) => {
  const problems = load(steps)
  expect(problems).toHaveLength(1)
  expect(problems[0]).toContain(told)
})

it('a word that is most likely misspelt is told, and taught all the same', () => {
  const { sequence, problems } = loadSequence('name: ours\nsteps:\n  - id: one\n    sight words: [thier]\n', {
    phonicsFor: testPhonics,
  })
  expect(problems.map(({ severity }) => severity)).toEqual(['warning'])
  expect(sequence?.steps[0]?.adds.sightWords).toEqual(['thier'])
})

// Common practice, no source: misspellings of children and of hasty adults.
const MISSPELT = `siad said,litle little,coud could,shoud should,whent went,sed said,wos was,woz was,frend friend,ov of,cuz because,
hav have,wer were,wot what,everone everyone,beatiful beautiful,pritty pretty,comming coming,peeple people,bizzy busy,wimen women,
definately definitely,whitch which,thay they,wich which,thier their,wnet went,becuase because,yuor your,waht what,oen one,doesnt doesn't,
cant can't,wont won't,hes he's,im I'm`

it.each(MISSPELT.split(/,\s*/).map((row) => row.split(' ') as [string, string]))(
  'the sight word %s is told: %s',
  (word, meant) => {
    const [problem, ...more] = load(`  - id: more\n    sight words: [${word}]\n`)
    expect(more).toEqual([])
    expect(problem).toContain(`\`${meant}\`?`)
  },
)

it.each([
  ['cant', "`can't`?"],
  ['wont', "`won't`?"],
  ['hes', "`he's`?"],
  ['its', "`it's`?"],
  ["its'", "`it's`?"],
  ['im', "`I'm`?"],
  ['ill', "`I'll`?"],
  ['ca nt', "`can't`?"],
  ["cann't", "`can't`?"],
  ["is'nt", "`isn't`?"],
  ['dog', 'goes under `sight words`'],
])('the contraction %s is told: %s', (word, told) => {
  const problems = load(`  - id: more\n    contractions: ["${word}"]\n`)
  expect(problems.filter((text) => text.includes(told))).toHaveLength(1)
})

it('words that are right are not told, be they as rare as they may', () => {
  const words = `ill its well were shed shell mum mummy wanna yawn litter frond wont-to whit ova tub stile moan glade vixen newt moth curd
  ooze zip zap zig zebra fern gnome sprout wellies nan nana teddy`
  const right = words.split(/\s+/).filter((word) => !word.includes('-'))
  const told = load(`  - id: more\n    sight words: [${right.join(', ')}]\n`)
  expect(told.filter((text) => !text.includes('taught already'))).toEqual([])
})

it.each([
  ['a new step with a number of its own', '  - id: pink-7\n    after: pink-6\n'],
  ['an invented word and a name', '  - id: more\n    sight words: [zog, Tansy]\n'],
  ['what the series teaches later', '  - id: pink-2\n    sight words: [my]\n'],
])('%s is right', (_, steps) => {
  expect(load(steps)).toEqual([])
})

describe('a sound that is taught twice in the accent of the file', () => {
  const read = (accent: string, one: string, two: string) => {
    const yaml = `name: ours\naccent: ${accent}\nsteps:\n  - id: one\n    teach: [${one}]\n  - id: two\n    teach: [${two}]\n`
    return loadSequence(yaml, { phonicsFor: testPhonics }).problems
  }

  it.each([
    ['southern-british', 'a as in bath', 'a as in father'],
    ['southern-british', 'u_e as in tube', 'u_e as in cube'],
    ['southern-british', 'ew as in new', 'ew as in few'],
    ['general-american', 'er as in fern', 'er as in sister'],
    ['general-american', 'ew as in new', 'ew as in grew'],
  ])('is told: %s %s, %s', (accent, one, two) => {
    const told = read(accent, one, two).filter(({ code }) => code === 'repeated')
    expect(told.map(({ severity }) => severity)).toEqual(['warning'])
    expect(toProblemText(told[0] as Problem)).toContain(`of \`${one}\`, taught already at step \`one\``)
  })

  it.each([
    ['southern-british', 'er as in fern', 'er as in sister'],
    ['southern-british', 'a as in cat', 'a as in bath'],
    ['general-american', 'ew as in few', 'ew as in grew'],
  ])('is not told where they are two there: %s %s, %s', (accent, one, two) => {
    expect(read(accent, one, two)).toEqual([])
  })
})

it.each([
  ['d', '`d as in d'],
  ['sh', '`sh as in sh'],
  ['ai', '`ai as in '],
  ['b as in bta', '`b as in bat`?'],
])('a line that cannot be read is told with its own letters: %s', (line, told) => {
  const [problem] = load(`  - id: more\n    teach: [${line}]\n`)
  expect(problem).toContain(told)
})

describe('an example that Britain says otherwise, in an American file,', () => {
  const read = (head: string, line: string) => {
    const yaml = `name: ours\n${head}steps:\n  - id: one\n    teach: [a as in cat, ${line}]\n`
    return loadSequence(yaml, { phonicsFor: testPhonics }).problems
  }

  it.each([
    ['', 'a as in bath', '`a as in cat`'],
    ['accent: general-american\n', 'a as in bath', '`a as in cat`'],
    ['accent: general-american\n', 'a as in plant', '`a as in cat`'],
    // /ɑ/ in America, the vowel of GOAT in Britain.
    ['accent: general-american\n', 'o as in process', '`o as in hot`'],
    ['', 'ew as in new', '`ew as in grew`'],
  ])('is told with the nearest right thing: %j %s', (head, line, told) => {
    const problems = read(head, line)
    expect(problems.map(({ severity }) => severity)).toEqual(['warning'])
    expect(toProblemText(problems[0] as Problem)).toContain(told)
    expect(toProblemText(problems[0] as Problem)).toContain('`accent: southern-british`')
  })

  it.each([
    ['accent: southern-british\n', 'a as in bath'],
    ['accent: general-american\n', 'ew as in new'],
    ['', 'o as in dog'],
    ['', 'er as in sister'],
    // Strong or worn down is no other sound in America: any word of the spelling shows it.
    ['', 'er as in her'],
    ['', 'er as in fern'],
    ['', 'ir as in bird'],
    ['', 'or as in word'],
    ['', 'or as in fork'],
    ['', 'ew as in few'],
  ])('and nothing else is: %j %s', (head, line) => {
    expect(read(head, line)).toEqual([])
  })
})
