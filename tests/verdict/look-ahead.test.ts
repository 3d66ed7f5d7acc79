// Along a sequence: which step teaches what is missing, when a word becomes readable, and that it stays so.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Pronunciation, WordPronunciations } from '../../src/phonics/types.ts'
import { knowledgeAt } from '../../src/sequence/knowledge.ts'
import { createWordJudge, keepForm } from '../../src/verdict/judge-word.ts'
import { findFirstStep, findReadableAt, type JudgeOptions, judgeInSequence } from '../../src/verdict/look-ahead.ts'
import { judge } from '../../src/verdict/verdict.ts'
import { toPronunciation, toPronunciations, toSequence, toStep } from './hand-made.ts'

const sequence = toSequence([
  toStep('one', 'c=k a=æ t=t s=s n=n', {
    sightWords: ['the'],
    shapes: ['CVC'],
    contractions: ["can't"],
    limits: { letters: 3, syllables: 1 },
  }),
  toStep('two', 'sh=ʃ i=ɪ p=p', { sightWords: ['see'], limits: { letters: 4 } }),
  toStep('three', 'ee=i s=z ai=eɪ', { sightWords: ['said'], endings: ['-s'], shapes: 'any' }),
  toStep('four', 'd=d r=r bb=b', { limits: { letters: 'any', syllables: 'any' } }),
  toStep('five', '', { endings: ["'s", '-ing'], endingChanges: ['double'], contractions: 'any' }),
])

function toOutcome(pronunciations: WordPronunciations, step: string, names: readonly string[] = []): string {
  const { kind, reasons } = judgeInSequence(pronunciations, sequence, step, { names })
  return [kind, ...reasons.map(({ code, taughtAt }) => `${code}@${taughtAt ?? 'never'}`)].join(' ')
}

describe('judgeInSequence', () => {
  it.each([
    ['cat', 'c=k a=æ t=t', 'one', 'decodable'],
    [
      'ship',
      'sh=ʃ i=ɪ p=p',
      'one',
      'unreadable correspondence-later@two correspondence-later@two correspondence-later@two too-many-letters@two',
    ],
    ['ship', 'sh=ʃ i=ɪ p=p', 'two', 'decodable'],
    ['rain', 'r=r ai=eɪ n=n', 'two', 'unreadable correspondence-later@four correspondence-later@three'],
    ['put', 'p=p u=ʊ t=t', 'two', 'unreadable irregular@never'],
    ['said', 's=s ai=ɛ d=d', 'two', 'unreadable sight-word-later@three correspondence-later@four irregular@never'],
    ['said', 's=s ai=ɛ d=d', 'three', 'sight'],
    ['see', 's=s ee=i', 'one', 'unreadable sight-word-later@two correspondence-later@three shape@three'],
    ['see', 's=s ee=i', 'three', 'decodable'],
    ['cats', 'c=k a=æ t=t +s=s', 'two', 'unreadable ending@three'],
    ['tan.ning', 't=t a=æ nn<n=n +ing=ɪŋ', 'four', 'unreadable ending@five ending@five'],
    [
      'rab.bit',
      'r=r a=æ bb=b i~=ə t=t',
      'three',
      'unreadable correspondence-later@four correspondence-later@four too-many-letters@four too-many-syllables@four reduced-vowel@four',
    ],
    ["can't", "c=k a=æ n't=nt", 'one', 'sight'],
    ["isn't", "i=ɪ s=z n't=nt", 'four', 'unreadable contraction@five'],
    [
      '?drat',
      'd=d r=r a=æ t=t',
      'three',
      'unreadable correspondence-later@four correspondence-later@four unknown-word@never',
    ],
  ])('%s %s at %s: %s', (dotted, units, step, expected) => {
    expect(toOutcome(toPronunciations(dotted, units), step)).toBe(expected)
  })

  // A maker can leave the `'s` out, and cannot shorten the owner.
  it.each([
    ["cat's", "c=k a=æ t=t +'s=s", 'ending@five too-many-letters@two'],
    ['cat’s', 'c=k a=æ t=t +’s=s', 'ending@five too-many-letters@two'],
    ["tan's", "t=t a=æ n=n +'s=z", 'ending@five too-many-letters@two'],
    // Too long without it too: then the length is what there is to say.
    ["can.tat's", "c=k a=æ n=n t=t a=æ t=t +'s=s", 'too-many-letters@four too-many-syllables@four ending@five'],
  ])("the owner's ending of %s leads where it alone makes the word too long", (dotted, units, expected) => {
    expect(toOutcome(toPronunciations(dotted, units), 'one')).toBe(`unreadable ${expected}`)
  })

  it("tells when the owner's ending on a name is taught", () => {
    expect(toOutcome(toPronunciations("Roy's", "r=r oy=ɔɪ +'s=z"), 'one', ['Roy'])).toBe('unreadable ending@five')
  })

  it('takes a step in any case, and throws on a step that is not there', () => {
    expect(toOutcome(toPronunciations('cat', 'c=k a=æ t=t'), 'ONE')).toBe('decodable')
    expect(() => toOutcome(toPronunciations('cat', 'c=k a=æ t=t'), 'six')).toThrow(RangeError)
  })
})

describe('what stands first', () => {
  it('letters that are in no dictionary and say no ordinary sounds are most likely no word', () => {
    expect(toOutcome(toPronunciations('?tuzz', 't=t u=ʊ zz=z'), 'one')).toBe(
      'unreadable unknown-word@never irregular@never irregular@never too-many-letters@two',
    )
    // What only comes later is said before it.
    expect(toOutcome(toPronunciations('?drip', 'd=d r=r i=ɪ p=p'), 'three')).toBe(
      'unreadable correspondence-later@four correspondence-later@four unknown-word@never',
    )
  })

  it('what is never taught, then what comes later, and last that the word is in no dictionary', () => {
    const guess = toPronunciations('?dup', 'd=d u=ʌ p=p')
    const [pronunciation] = guess.pronunciations as [Pronunciation]
    const units = pronunciation.units.map((unit) => (unit.vowel ? { ...unit, shown: 'cup' } : unit))
    expect(toOutcome({ ...guess, pronunciations: [{ ...pronunciation, units }] }, 'three')).toBe(
      'unreadable correspondence-untaught@never correspondence-later@four unknown-word@never',
    )
  })

  it('what no step can do anything about has none', () => {
    const guess = toPronunciations('?shap', 'sh=ʃ a=æ p=p')
    expect(toOutcome({ ...guess, unsure: true }, 'one')).toBe('unreadable unsure@never')
    expect(toOutcome({ ...guess, meant: 'shape' }, 'one')).toBe('unreadable misspelt@never')
    expect(toOutcome(toPronunciations('TV', 't=t v=v'), 'one')).toBe('unreadable abbreviation@never')
  })

  it('what no step ever mends, since the word waits for it', () => {
    expect(toOutcome(toPronunciations('shut', 'sh=ʃ u=ʌ t=t'), 'one')).toBe(
      'unreadable irregular@never correspondence-later@two too-many-letters@two',
    )
  })

  it('the pronunciation by which the child will first read the word says what is missing', () => {
    const either = (...units: readonly string[]) => toOutcome(toPronunciations('dait', ...units), 'two')
    // Nearest now is what never comes: one lack against two that do.
    expect(either('d=d ai=ɛ t=t', 'd=d ai=eɪ t=t')).toBe(
      'unreadable correspondence-later@four correspondence-later@three',
    )
    expect(either('d=d ai=eɪ t=t', 'd=d ai=ɛ t=t')).toBe(
      'unreadable correspondence-later@four correspondence-later@three',
    )
  })

  it('of a guess too, which stays unknown whichever way it is read', () => {
    // By /æ/ two letters are missing for long; by /eɪ/ one, and the last step has both.
    const guess = toPronunciations('?naips', 'n=n ai=æ p=p s=s', 'n=n ai=eɪ p=p s=z')
    const { pronunciation, reasons } = judgeInSequence(guess, sequence, 'two')
    expect(pronunciation).toBe(guess.pronunciations[1])
    expect(reasons.map(({ code, taughtAt }) => `${code}@${taughtAt}`).sort()).toEqual([
      'correspondence-later@three',
      'correspondence-later@three',
      'shape@three',
      'too-many-letters@four',
      'unknown-word@undefined',
    ])
  })
})

describe('a reader who lacks what was taught', () => {
  const the = toPronunciations('The', 'th=ð e~=ə')
  const toReasons = (word: WordPronunciations, reader: JudgeOptions['reader'], step = 'four') =>
    judgeInSequence(word, sequence, step, { ...(reader && { reader }) }).reasons.map(
      ({ code, taughtAt, letters }) => `${code}@${taughtAt ?? 'never'} ${letters.join(' ')}`,
    )

  it('is told the step that taught the word, in any case', () => {
    expect(toReasons(the, undefined)).toEqual([])
    const [first] = toReasons(the, { sightWordsNotYet: ['THE'] })
    expect(first).toBe('sight-word-later@one 0,3')
    expect(toReasons(the, { sightWordsNotYet: ['said'] })).toEqual([])
  })

  it('is told no step for a word that none teaches', () => {
    const put = toPronunciations('put', 'p=p u=ʊ t=t')
    expect(toReasons(put, { sightWordsNotYet: ['put'] })).toEqual(['irregular@never 1,2'])
  })

  it('is told the step that taught the letters', () => {
    const rain = toPronunciations('rain', 'r=r ai=eɪ n=n')
    expect(toReasons(rain, { correspondencesNotYet: ['ai=eɪ'] })).toEqual(['correspondence-later@three 1,3'])
    expect(toReasons(rain, { correspondencesNotYet: ['ay=eɪ'] })).toEqual([])
    expect(toReasons(rain, { sightWords: ['hen'] }, 'three')).toEqual(['correspondence-later@four 0,1'])
  })

  it('is told nothing of what it knows beyond the step', () => {
    expect(
      toReasons(toPronunciations('ship', 'sh=ʃ i=ɪ p=p'), { correspondences: ['sh=ʃ', 'i=ɪ', 'p=p'] }, 'one'),
    ).toEqual(['too-many-letters@two 0,4'])
  })
})

describe('a word that can never be read', () => {
  it('has no step, and no halving finds one', () => {
    const judgeWord = createWordJudge(sequence, 'one')
    expect(judgeWord(toPronunciations('put', 'p=p u=ʊ t=t')).readableAt).toBeNull()
    expect(judgeWord(toPronunciations('rain', 'r=r ai=eɪ n=n')).readableAt).toBe('four')
    // Past the last step there is nothing to come.
    expect(findFirstStep(sequence, 5, {}, () => true)).toBeUndefined()
    expect(findFirstStep(sequence, 4, {}, () => true)).toBe('five')
    expect(findFirstStep(sequence, 0, {}, () => false)).toBeUndefined()
  })

  it.each(['one', 'two', 'three', 'four', 'five'])('the first step is found wherever it lies: %s', (id) => {
    const at = sequence.steps.findIndex((step) => step.id === id)
    const later = new Set(sequence.steps.slice(at).map((step) => knowledgeAt(sequence, step.id)))
    expect(findFirstStep(sequence, 0, {}, (knowledge) => later.has(knowledge))).toBe(id)
  })
})

describe('findReadableAt', () => {
  it.each([
    ['cat', 'c=k a=æ t=t', 'one'],
    ['the', 'th=ð e~=ə', 'one'],
    ['see', 's=s ee=i', 'two'],
    ['rain', 'r=r ai=eɪ n=n', 'four'],
    ['put', 'p=p u=ʊ t=t', undefined],
  ])('%s %s: %s', (dotted, units, step) => {
    expect(findReadableAt(toPronunciations(dotted, units), sequence)).toBe(step)
  })

  it('knows what a reader knows beyond the step, and does not know yet', () => {
    const rain = toPronunciations('rain', 'r=r ai=eɪ n=n')
    expect(findReadableAt(rain, sequence, { reader: { correspondences: ['r=r', 'ai=eɪ'] } })).toBe('two')
    expect(findReadableAt(rain, sequence, { reader: { correspondencesNotYet: ['ai=eɪ'] } })).toBeUndefined()
    expect(findReadableAt(rain, sequence, { reader: { sightWords: ['Rain'] } })).toBe('one')
    const the = toPronunciations('the', 'th=ð e~=ə')
    expect(findReadableAt(the, sequence, { reader: { sightWordsNotYet: ['the'] } })).toBeUndefined()
  })
})

describe('createWordJudge', () => {
  const read: WordPronunciations = {
    word: 'read',
    source: 'dictionary',
    pronunciations: [
      toPronunciation('read', 'r=r ea=ɛ d=d', 'past'),
      toPronunciation('read', 'r=r ea=i d=d', 'present'),
    ],
    heteronym: true,
  }
  const known = toSequence([toStep('one', 'r=r d=d ea=i'), toStep('two', 'ea=ɛ')])

  it('judges the form that the sentence asks for', () => {
    const judgeWord = createWordJudge(known, 'one')
    expect(judgeWord(read, 'present')).toMatchObject({
      verdict: { kind: 'decodable' },
      unsettled: false,
      readableAt: 'one',
    })
    expect(judgeWord(read, 'past')).toMatchObject({
      verdict: { kind: 'unreadable' },
      unsettled: false,
      readableAt: 'two',
    })
  })

  it('is unsettled where the forms are judged differently and the sentence does not tell', () => {
    expect(createWordJudge(known, 'one')(read).unsettled).toBe(true)
    expect(createWordJudge(known, 'two')(read).unsettled).toBe(false)
  })

  it('waits for the last of its forms where the sentence does not tell which is meant', () => {
    const late = toSequence([toStep('one', 'r=r d=d'), toStep('two', 'ea=i'), toStep('three', 'ea=ɛ')])
    const at = (step: string) => createWordJudge(late, step)(read)
    expect(at('one')).toMatchObject({ verdict: { readable: false }, unsettled: true, readableAt: 'three' })
    expect(at('two')).toMatchObject({ verdict: { readable: true }, unsettled: true, readableAt: 'three' })
    expect(at('three')).toMatchObject({ verdict: { readable: true }, unsettled: false, readableAt: 'three' })
    // One of its forms is never readable.
    const never = toSequence([toStep('one', 'r=r d=d'), toStep('two', 'ea=i')])
    expect(createWordJudge(never, 'one')(read)).toMatchObject({ unsettled: true, readableAt: null })
    expect(createWordJudge(never, 'one')(read, 'present')).toMatchObject({ unsettled: false, readableAt: 'two' })
  })

  it('tells apart what letters say, how an ending changes them, and that a vowel is weak', () => {
    const taught = toSequence([
      toStep('one', 'b=b k=k n=n t=t'),
      toStep('two', 'a_e=eɪ e=ɛ', { endings: ['-ing'], limits: { syllables: 1 } }),
      toStep('three', '', { endingChanges: ['drop-e'], limits: { syllables: 2 } }),
    ])
    const tell = (dotted: string, units: string) =>
      judgeInSequence(toPronunciations(dotted, units), taught, 'one').reasons.map(
        ({ code, key, taughtAt }) => `${code} ${key}@${taughtAt}`,
      )
    expect(tell('ba.king', 'b=b a<a_e=eɪ k=k +ing=ɪŋ')).toEqual([
      'correspondence-later a_e=eɪ@two',
      'ending a_e=eɪ@three',
      'ending ing=ɪŋ@two',
    ])
    expect(tell('te.net', 't=t e=ɛ n=n e~=ɪ t=t').slice(0, 2)).toEqual([
      'correspondence-later e=ɛ@two',
      'correspondence-later e=ɛ@two',
    ])
  })

  it('is settled where the word is read whole, or has one pronunciation for all that it means', () => {
    const byHeart = toSequence([toStep('one', 'r=r d=d ea=i', { sightWords: ['read'] })])
    // It can be sounded out in one form; but it is known by heart in both.
    expect(createWordJudge(byHeart, 'one')(read)).toMatchObject({ verdict: { kind: 'sight' }, unsettled: false })
    expect(createWordJudge(known, 'one')({ ...read, heteronym: false })).toMatchObject({
      verdict: { kind: 'decodable' },
      unsettled: false,
    })
    expect(createWordJudge(toSequence([toStep('one', 'd=d')]), 'one')(read)).toMatchObject({
      verdict: { kind: 'unreadable' },
      readableAt: null,
      unsettled: false,
    })
  })

  it('of a form that the word has not got, takes all that it has', () => {
    expect(keepForm(read, 'future')).toBe(read)
    expect(keepForm(read, undefined)).toBe(read)
    expect(keepForm(read, 'past').pronunciations).toEqual([read.pronunciations[0]])
  })

  it('judges each word once', () => {
    const judgeWord = createWordJudge(known, 'one')
    expect(judgeWord(read)).toBe(judgeWord(read))
    expect(judgeWord(read)).not.toBe(judgeWord(read, 'past'))
  })
})

describe('teaching more never makes a readable word unreadable', () => {
  const KEYS = ['c=k', 'a=æ', 't=t', 'sh=ʃ', 'n=n', 'nn=n', 'ee=i', 'y=i', 'r=r'] as const
  const WORDS = [
    toPronunciations('cat', 'c=k a=æ t=t'),
    toPronunciations('nan.ny', 'n=n a=æ nn=n y~=i'),
    toPronunciations('can.ning', 'c=k a=æ nn<n=n +ing=ɪŋ'),
    toPronunciations('trees', 't=t r=r ee=i +s=z'),
    toPronunciations("can't", 'c=k a=æ n=n t=t'),
    toPronunciations("Tan's", "t=t a=æ n=n +'s=z"),
    toPronunciations('sha.tra', 'sh=ʃ a~=ə t=t r=r a~=ə', 'sh=ʃ a=æ t=t r=r a~=ə'),
  ]
  const adds = fc.record({
    keys: fc.subarray([...KEYS]),
    sightWords: fc.subarray(['cat', 'tree', "can't"]),
    shapes: fc.oneof(fc.constant('any' as const), fc.subarray(['CVC', 'CV', 'VC', 'CCV', 'CVCC'])),
    endings: fc.subarray(['-s', '-ing', "'s"] as const),
    endingChanges: fc.subarray(['double'] as const),
    contractions: fc.oneof(fc.constant('any' as const), fc.subarray(["can't"])),
  })
  const settings = fc.record({
    endings: fc.constantFrom('taught' as const, 'sounded' as const),
    reducedVowels: fc.constantFrom('accept' as const, 'flag' as const),
  })

  it('holds for any sequence whose limits only widen', () => {
    fc.assert(
      fc.property(fc.array(adds, { minLength: 2, maxLength: 6 }), settings, (drafts, more) => {
        const steps = drafts.map(({ keys, ...rest }, index) =>
          toStep(`s${index}`, keys.join(' '), {
            ...rest,
            limits: { letters: index + 3, syllables: Math.ceil((index + 1) / 2) },
          }),
        )
        const drawn = toSequence(steps, more)
        for (const word of WORDS) {
          const readable = steps.map(({ id }) => judge(word, knowledgeAt(drawn, id), ['Tan']).readable)
          const first = readable.indexOf(true)
          expect(readable.slice(first === -1 ? readable.length : first)).not.toContain(false)
          expect(findReadableAt(word, drawn, { names: ['Tan'] })).toBe(steps[first]?.id)
        }
      }),
      { numRuns: 300 },
    )
  })
})
