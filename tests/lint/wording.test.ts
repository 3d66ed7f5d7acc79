// What messages say in words that several rules share: what is taught when, what to do about a word, what else is wrong with it.

import { describe, expect, it } from 'vitest'
import { toAddition, toCorrespondenceLine } from '../../src/lint/additions.ts'
import { toByHeart } from '../../src/lint/by-heart.ts'
import { isCapitalWord } from '../../src/lint/capital-words.ts'
import { findChangeText, toEnding } from '../../src/lint/endings.ts'
import { toFurtherNote } from '../../src/lint/further.ts'
import { findNearestRule, isLikeRule, toUnknownRule } from '../../src/lint/rule-names.ts'
import type { Fault, WordFault } from '../../src/lint/types.ts'
import { toAsIn, toCount, toLimitText, toQuoted, toSilentNote, toWhen, toWordNote } from '../../src/lint/wording.ts'
import type { Unit } from '../../src/phonics/types.ts'
import { toProblemText } from '../../src/problem/index.ts'
import type { Reason, ReasonCode } from '../../src/verdict/types.ts'
import { toPronunciation } from '../verdict/hand-made.ts'
import { toContext } from './hand-made.ts'

const context = toContext(['hen ran.'], { step: 'two' })

const toUnit = (dotted: string, units: string, at: number, shown?: string): Unit => {
  const unit = toPronunciation(dotted, units).units[at] as Unit
  return shown === undefined ? unit : { ...unit, shown }
}
const toReason = (code: ReasonCode, more: Partial<Reason> = {}): Reason => ({ code, letters: [], ...more })

const EGG = toUnit('egg', 'e=ɛ gg=g', 1, 'egg')
const RUNNING = toUnit('running', 'r=r u=ʌ nn<n=n +ing=ɪŋ', 2)
const ING = toUnit('running', 'r=r u=ʌ nn<n=n +ing=ɪŋ', 3)
const BAKING = toUnit('baking', 'b=b a<a_e=eɪ k=k +ing=ɪŋ', 1)
const CRIED = toUnit('cried', 'c=k r=r ie<y=aɪ +d=d', 2)
const DYING = toUnit('dying', 'd=d y<ie=aɪ +ing=ɪŋ', 1)
const OWNER = toUnit("dog's", "d=d o=ɒ g=g +'s=z", 3)

describe('what to add so that a word can be read', () => {
  it.each<readonly [string, readonly Reason[], string | undefined]>([
    ['egg', [toReason('correspondence-untaught', { unit: EGG })], 'add `gg as in egg` to a step'],
    [
      'strap',
      [toReason('shape', { found: 'CCCVC' }), toReason('too-many-letters', { found: 5 })],
      'add `shapes: [CCCVC]` and `letters: 5` to a step',
    ],
    ['banana', [toReason('too-many-syllables', { found: 3 })], 'add `syllables: 3` to a step'],
    ["can't", [toReason('contraction')], 'add `contractions: ["can\'t"]` to a step'],
    ['Isn’t', [toReason('contraction')], 'add `contractions: ["isn\'t"]` to a step'],
    ['I’m', [toReason('contraction')], 'add `contractions: ["I\'m"]` to a step'],
    ['running', [toReason('ending', { unit: ING })], 'add `endings: [-ing]` to a step'],
    ["dog's", [toReason('ending', { unit: OWNER })], 'add `endings: ["\'s"]` to a step'],
    // The owner's ending on a name has no unit of its own.
    ["Tam's", [toReason('ending')], 'add `endings: ["\'s"]` to a step'],
    ['running', [toReason('ending', { unit: RUNNING })], 'add `ending changes: [double]` to a step'],
    ['baking', [toReason('ending', { unit: BAKING })], 'add `ending changes: [drop e]` to a step'],
    ['cried', [toReason('ending', { unit: CRIED })], 'add `ending changes: [y to i]` to a step'],
    ['dying', [toReason('ending', { unit: DYING })], 'add `ending changes: [ie to y]` to a step'],
    // Each line once; what comes by itself later is not added.
    [
      'eggs',
      [
        toReason('correspondence-untaught', { unit: EGG }),
        toReason('correspondence-untaught', { unit: EGG }),
        toReason('shape', { found: 'VCC', taughtAt: 'three' }),
        toReason('too-many-letters', { found: 4 }),
        toReason('too-many-syllables', { found: 3 }),
        toReason('unknown-word'),
      ],
      'add `gg as in egg`, `letters: 4` and `syllables: 3` to a step',
    ],
    // Nothing that a step can teach mends an exception, alone or with others.
    ['said', [toReason('irregular', { unit: EGG }), toReason('too-many-letters', { found: 4 })], undefined],
    ['egg', [toReason('correspondence-untaught', { unit: RUNNING })], undefined],
    ['egg', [toReason('contraction')], undefined],
    ['eggs', [toReason('ending', { unit: EGG })], undefined],
    ['duck', [toReason('shape', { found: 'CVC', taughtAt: 'three' })], undefined],
    ['zub', [toReason('unknown-word')], undefined],
    ['zub', [], undefined],
  ])('%s: %#', (word, reasons, addition) => {
    expect(toAddition(word, reasons)).toBe(addition)
  })

  it('names the letters as they are taught, not as an ending has changed them', () => {
    const hurry = { ...toUnit('hurry', 'h=h urr<ur=ɜː y=i', 1), shown: 'fur' }
    expect(toCorrespondenceLine({ unit: hurry })).toBe('`ur as in fur`')
    expect(toCorrespondenceLine({})).toBeUndefined()
  })
})

describe('an ending in words', () => {
  it.each([
    [RUNNING, 'doubles its `n`'],
    [BAKING, 'drops its `e`'],
    [CRIED, 'turns its `y` into `i`'],
    [DYING, 'turns its `ie` into `y`'],
    [ING, undefined],
    [EGG, undefined],
  ])('%#', (unit, text) => {
    expect(findChangeText(toReason('ending', { unit }))).toBe(text)
    expect(findChangeText(toReason('irregular', { unit }))).toBeUndefined()
  })

  it('is written as a sequence writes it', () => {
    expect(toEnding('jumpED', toReason('ending', { letters: [[4, 6]] }))).toBe('-ed')
    // The d of `cried` and the s of `cries` are endings that sequences write otherwise.
    expect(
      toEnding('cried', toReason('ending', { letters: [[4, 5]], unit: toUnit('cried', 'c=k r=r ie<y=aɪ +d=d', 3) })),
    ).toBe('-ed')
    expect(toEnding('dog’s', toReason('ending', { letters: [[3, 5]] }))).toBe("'s")
    expect(findChangeText(undefined)).toBeUndefined()
  })
})

describe('what else is wrong with a word', () => {
  const toNote = (...faults: readonly Fault[]) => toFurtherNote(faults, context, 'runnings')
  const of = (code: ReasonCode, more: Partial<Reason> = {}): Fault => ({ code, reason: toReason(code, more) })

  it.each<readonly [Fault, string]>([
    [of('abbreviation'), 'it is an abbreviation'],
    [{ code: 'all-capitals' }, 'it is all in capitals (no step teaches it)'],
    [{ code: 'capital' }, 'it has a capital letter (step two)'],
    [of('contraction', { taughtAt: 'three' }), 'it is a contraction (step three)'],
    [of('contraction'), 'it is a contraction (no step teaches it)'],
    [of('correspondence-later', { unit: EGG, taughtAt: 'three' }), '`gg` (step three)'],
    [of('correspondence-untaught', { unit: EGG }), '`gg` (no step teaches it)'],
    [of('ending', { unit: ING, letters: [[4, 7]], taughtAt: 'three' }), 'the ending `-ing` (step three)'],
    [of('ending', { unit: RUNNING }), 'it doubles its `n` (no step teaches it)'],
    [{ code: 'foreign' }, 'it is not written in English letters'],
    [{ code: 'guessed' }, 'it is not in the dictionary, so its sounds are guessed'],
    [of('irregular', { unit: EGG }), 'its `gg` breaks the rules'],
    [of('misspelt'), 'it is misspelt'],
    [{ code: 'numeral' }, 'it is a numeral'],
    [of('reduced-vowel', { unit: EGG }), 'its `gg` is a weak vowel'],
    [of('shape', { found: 'CVCC', taughtAt: 'three' }), 'its shape CVCC (step three)'],
    [of('sight-word-later', { taughtAt: 'three' }), 'it is a sight word (step three)'],
    [of('too-many-letters', { found: 8, allowed: 4 }), '8 letters (at most 4 allowed)'],
    [of('too-many-syllables', { found: 3, allowed: 2 }), '3 syllables (at most 2 allowed)'],
    [of('unknown-word'), 'it is not in the dictionary'],
    [{ code: 'unlisted-name' }, 'it looks like a name'],
    [{ code: 'unsettled-heteronym' }, 'it can be said in more than one way'],
    [of('unsure'), 'it is not known how it is said'],
  ])('%#: %s', (fault, phrase) => {
    expect(toNote(fault)).toBe(`Also: ${phrase}.`)
  })

  it('is one sentence, each thing in it once', () => {
    expect(toNote()).toBe('')
    expect(toNote(of('misspelt'), { code: 'numeral' }, of('misspelt'))).toBe('Also: it is misspelt; it is a numeral.')
  })
})

describe('a word in a list of sight words', () => {
  const story = { likelyNames: () => new Set(['Priya', 'Uncle']) }

  it.each([
    ['Full', 'full'],
    ['His', 'his'],
    ['STOP', 'stop'],
    ['May', 'may'],
    ['Mum', 'mum'],
    ['friend', 'friend'],
    ['I', 'I'],
    ["I'm", "I'm"],
    ['It', 'it'],
    ['Priya', 'Priya'],
    ["Priya's", "Priya's"],
    ['Uncle', 'Uncle'],
    ['Monday', 'Monday'],
    ['English', 'English'],
  ])('%s is %s', (text, listed) => {
    expect(toByHeart(text, story)).toBe(listed)
  })
})

describe('when and how much', () => {
  it('tells the step, that none teaches it, or that this reader lacks what was taught', () => {
    expect(toWhen('three', context)).toBe('taught at step three; this story is at two')
    expect(toWhen(undefined, context)).toBe('which no step of this sequence teaches')
    for (const step of ['one', 'two'])
      expect(toWhen(step, context)).toBe(`taught at step ${step}, which this reader does not know yet`)
  })

  it('tells who sets a limit, and counts in words', () => {
    expect([toLimitText(4, 'two', true), toLimitText(4, 'two', false)]).toEqual([
      'your settings allow at most 4',
      'step two allows at most 4',
    ])
    expect([0, 1, 2].map((count) => toCount(count, 'word'))).toEqual(['0 words', '1 word', '2 words'])
    expect([toAsIn('light'), toAsIn(undefined)]).toEqual([' as in `light`', ''])
    expect(toQuoted('a`b`')).toBe("`a'b'`")
  })
})

describe('what to do about a word', () => {
  const WORD = { text: 'duck' } as WordFault['word']
  const toNote = (
    readableAt: string | null | undefined,
    reason?: Reason,
    reasons: readonly Reason[] = [],
    slips: readonly string[] = [],
  ) => {
    const pronunciations = { source: slips.length > 0 ? 'guess' : 'dictionary' }
    const judged = { readableAt, pronunciations, verdict: { reasons } } as unknown as WordFault['judged']
    const fault = { code: 'shape', word: WORD, judged: readableAt === undefined ? undefined : judged } as const
    return toWordNote({ ...fault, ...(reason && { reason }) } as WordFault, { ...context, findSlips: () => slips })
  }

  it.each<readonly [string, string]>([
    [toNote('three', toReason('shape', { taughtAt: 'three' })), 'Use another word, or keep this one for step three.'],
    [
      toNote('three', toReason('shape')),
      'Use another word, or keep this one for step three, where all of it is readable.',
    ],
    [toNote('two'), ''],
    [toNote('three', toReason('shape', { taughtAt: 'one' })), 'Teach it again first, or use another word.'],
    [toNote('three', toReason('shape', { taughtAt: 'two' })), 'Teach it again first, or use another word.'],
    [
      toNote(null, undefined, [toReason('too-many-letters', { found: 4 })]),
      'Use another word, add `letters: 4` to a step, or list `duck` under `sight words`.',
    ],
    [
      toNote(null, undefined, [toReason('irregular')]),
      'No step of this sequence makes the word readable: use another word, or teach it as a sight word.',
    ],
    [
      toNote(null, toReason('shape'), [toReason('too-many-letters', { found: 4 })], ['dock', 'duke']),
      'Did you mean `dock` or `duke`? If not, use another word, or list `duck` under `sight words`.',
    ],
    [
      toNote(undefined),
      'No step of this sequence makes the word readable: use another word, or teach it as a sight word.',
    ],
  ])('%s', (note, expected) => {
    expect(note).toBe(expected)
  })

  // Each note above that offers another word, where there is none.
  it.each([
    [
      'Use another word, or keep this one for step three.',
      'No word fits here: word it anew, keep it for step three, or teach it (it comes twice in this story).',
    ],
    [
      'Use another word, or keep this one for step green-3, where all of it is readable. Also: it is misspelt.',
      'No word fits here: word it anew, keep it for step green-3, where all of it is readable, or teach it (it comes twice in this story). Also: it is misspelt.',
    ],
    [
      'Use another word, or teach `duck` by heart. Also: 4 letters.',
      'No word fits here: word it anew, or teach `duck` by heart (it comes twice in this story). Also: 4 letters.',
    ],
    [
      'No step of this sequence makes the word readable: use another word, or teach it as a sight word.',
      'No step of this sequence makes the word readable. No word fits here: word it anew, or teach it as a sight word (it comes twice in this story).',
    ],
    ['Teach it again first, or use another word.', 'Teach it again first, or use another word.'],
    ['', ''],
  ])('%j, where no other word fits', (note, expected) => {
    const said = (count: number, isLittle: boolean, canGo: boolean) => toSilentNote(note, { count, isLittle, canGo })
    expect(said(2, false, false)).toBe(expected.replace('twice', '2 times'))
    expect(said(1, true, false)).toBe(
      expected.replace('No word fits here', 'No other word does what this little one does').replace('twice', 'once'),
    )
    expect(said(1, true, true)).toBe(
      expected
        .replace('No word fits here: word it anew', 'The sentence does without it: leave it out')
        .replace('use another word.', 'leave this one out: the sentence does without it.')
        .replace('twice', 'once'),
    )
  })
})

describe('names of rules', () => {
  const IDS = ['max-word-letters', 'max-word-syllables', 'no-irregular-word', 'no-numeral']

  it.each([
    ['no-numerals', 'no-numeral'],
    ['no-irr', 'no-irregular-word'],
    // Two begin so; and a word of the story begins like none.
    ['max-word', undefined],
    ['numer', undefined],
    ['no-swans', undefined],
  ])('%s is meant as %s', (written, meant) => {
    expect(findNearestRule(written, IDS)).toBe(meant)
    expect(toProblemText(toUnknownRule(written, IDS))).toBe(
      meant === undefined
        ? `There is no rule \`${written}\`. \`battledore check --print-config STORY\` shows all rules.`
        : `There is no rule \`${written}\`. Did you mean \`${meant}\`?`,
    )
    expect(toUnknownRule(written, IDS).code).toBe('unknown-name')
  })

  it.each([
    ['max-x', true],
    ['min-x', true],
    ['no-x', true],
    ['no-', false],
    ['nobody', false],
    ['piano-x', false],
  ])('%s is like one: %s', (written, isLike) => {
    expect(isLikeRule(written)).toBe(isLike)
  })
})

it.each([
  ['Monday', true],
  ['december', true],
  ['DIWALI', true],
  ['Mum', true],
  ['Uncle', true],
  ['Scottish', true],
  ['Africa', true],
  ['Meg', false],
  ['monda', false],
  ['', false],
])('%j has its capital whether or not it names somebody: %s', (word, isCapital) => {
  expect(isCapitalWord(word)).toBe(isCapital)
})
