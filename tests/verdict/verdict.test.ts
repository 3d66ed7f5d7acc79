// The verdict by table: a word, what the child knows, and what comes out.

import { describe, expect, it } from 'vitest'
import type { WordPronunciations } from '../../src/phonics/types.ts'
import type { Ending, EndingChange, Knowledge } from '../../src/sequence/types.ts'
import { ENDINGS } from '../../src/sequence/vocabulary.ts'
import { isMended } from '../../src/verdict/faults.ts'
import type { Reason } from '../../src/verdict/types.ts'
import { isReadable, judge } from '../../src/verdict/verdict.ts'
import { toKnowledge, toPronunciation, toPronunciations } from './hand-made.ts'

const SINGLE =
  'a=æ b=b c=k d=d e=ɛ f=f g=ɡ h=h i=ɪ j=dʒ k=k l=l m=m n=n o=ɑ p=p qu=kw r=r s=s t=t u=ʌ v=v w=w x=ks y=j z=z'

/** Three letters, each with its own short or plain sound, in the shapes VC and CVC: the pink rules. */
const pink = toKnowledge(SINGLE, {
  sightWords: new Set(['the', 'a', 'I', 'is', 'one', 'cow']),
  shapes: new Set(['VC', 'CVC']),
  limits: { letters: 3, syllables: 1 },
})

const blue = toKnowledge(`${SINGLE} ll=l ck=k bb=b nn=n`, {
  sightWords: pink.sightWords,
  shapes: new Set(['VC', 'CVC', 'VCC', 'CCVC', 'CVCC']),
  endings: new Set(['-s'] as const),
  limits: { letters: 6, syllables: 2 },
})

const LATER = 'sh=ʃ th=θ th=ð ng=ŋ n=ŋ ai=eɪ a_e=eɪ i_e=aɪ igh=aɪ ee=i ea=i ar=ɑr er=ɚ y=aɪ y=i tt=t ss=s'
const green = toKnowledge(`${SINGLE} ${LATER} ll=l ck=k bb=b`, {
  sightWords: pink.sightWords,
  endings: new Set(['-s', '-es', '-ed', '-ing', '-er', '-est', "'s"] as const),
  endingChanges: new Set(['double', 'drop-e', 'y-to-i'] as const),
  contractions: 'any',
})

type Row = readonly [dotted: string, units: string | readonly string[], expected: string]

function toOutcome(pronunciations: WordPronunciations, knowledge: Knowledge, names: readonly string[] = []): string {
  const verdict = judge(pronunciations, knowledge, names)
  const blamed = verdict.reasons.map(
    ({ code, letters }) => `${code}:${letters.map(([start, end]) => pronunciations.word.slice(start, end)).join('_')}`,
  )
  return [verdict.kind, ...(verdict.guessed ? ['guessed'] : []), ...blamed].join(' ')
}

function runTable(knowledge: Knowledge, rows: readonly Row[], names: readonly string[] = []): void {
  it.each(rows)('%s  %s  →  %s', (dotted, units, expected) => {
    expect(toOutcome(toPronunciations(dotted, ...[units].flat()), knowledge, names)).toBe(expected)
  })
}

describe('three letters, each with its own sound', () => {
  runTable(pink, [
    ['cat', 'c=k a=æ t=t', 'decodable'],
    ['Cat', 'c=k a=æ t=t', 'decodable'],
    ['at', 'a=æ t=t', 'decodable'],
    ['can', 'c=k a=æ n=n', 'decodable'],
    ['him', 'h=h i=ɪ m=m', 'decodable'],
    ['but', 'b=b u=ʌ t=t', 'decodable'],
    ['fox', 'f=f o=ɑ x=ks', 'decodable'],
    ['won', 'w=w o=ʌ n=n', 'unreadable irregular:o'],
    ['his', 'h=h i=ɪ s=z', 'unreadable irregular:s'],
    ['put', 'p=p u=ʊ t=t', 'unreadable irregular:u'],
    ['day', 'd=d ay=eɪ', 'unreadable irregular:ay shape:day'],
    ['car', 'c=k ar=ɑr', 'unreadable irregular:ar shape:car'],
    ['ape', 'a_e=eɪ p=p', 'unreadable irregular:a_e'],
    ['go', 'g=ɡ o=oʊ', 'unreadable irregular:o shape:go'],
    ['and', 'a=æ n=n d=d', 'unreadable shape:nd'],
    ['frog', 'f=f r=r o=ɑ g=ɡ', 'unreadable too-many-letters:frog shape:fr'],
    ['bell', 'b=b e=ɛ ll=l', 'unreadable irregular:ll too-many-letters:bell'],
    ['quit', 'qu=kw i=ɪ t=t', 'unreadable too-many-letters:quit'],
    ['ship', 'sh=ʃ i=ɪ p=p', 'unreadable irregular:sh too-many-letters:ship'],
    ['rab.bit', 'r=r a=æ bb=b i=ɪ t=t', 'unreadable irregular:bb too-many-letters:rabbit too-many-syllables:rabbit'],
    ['pig-.pen', 'p=p i=ɪ g=ɡ p=p e=ɛ n=n', 'unreadable too-many-syllables:pig-pen'],
    [
      'hen-.coop',
      'h=h e=ɛ n=n c=k oo=u p=p',
      'unreadable irregular:oo too-many-letters:coop too-many-syllables:hen-coop',
    ],
    ['ads', 'a=æ d=d +s=z', 'unreadable ending:s'],
  ])
})

describe('sight words', () => {
  runTable(pink, [
    ['the', 'th=ð e~=ə', 'sight'],
    ['The', 'th=ð e~=ə', 'sight'],
    ['THE', 'th=ð e~=ə', 'sight'],
    ['a', 'a~=ə', 'sight'],
    ['I', 'i=aɪ', 'sight'],
    ['i', 'i=aɪ', 'unreadable irregular:i shape:i'],
    ['is', 'i=ɪ s=z', 'sight'],
    ['cows', 'c=k ow=aʊ +s=z', 'unreadable irregular:ow too-many-letters:cows shape:cow ending:s'],
    ["one's", "o=w n=ʌn e= +'s=z", "unreadable irregular:o irregular:n ending:'s too-many-letters:one's shape:one"],
  ])
  runTable(blue, [
    ['cows', 'c=k ow=aʊ +s=z', 'sight'],
    ['Cows', 'c=k ow=aʊ +s=z', 'sight'],
    ['as', 'a=æ s=z', 'unreadable irregular:s'],
    ["cow's", "c=k ow=aʊ +'s=z", "unreadable irregular:ow ending:'s shape:cow"],
  ])
  runTable(green, [
    ["cow's", "c=k ow=aʊ +'s=z", 'sight'],
    ["cows'", "c=k ow=aʊ +s=z '=", 'sight'],
    ['cowed', 'c=k ow=aʊ +ed=d', 'sight'],
    ['coward', 'c=k ow=aʊ ar=ərr d=d', 'unreadable irregular:ow irregular:ar'],
    ['cow’s', 'c=k ow=aʊ +s=z', 'sight'],
  ])
})

describe('a sight word that can be sounded out', () => {
  const known = (before: string) =>
    toKnowledge(`${SINGLE} ay=eɪ`, {
      sightWords: new Set(['today']),
      knownWithSightWord: new Map([['today', toKnowledge(before)]]),
    })
  const today = toPronunciations('to.day', 't=t o~=ə d=d ay=eɪ')

  it('is decodable where the letters were taught later than the word', () => {
    expect(toOutcome(today, known(SINGLE))).toBe('decodable')
    expect(toOutcome(today, toKnowledge(`${SINGLE} ay=eɪ`, { sightWords: new Set(['today']) }))).toBe('decodable')
  })

  it('stays a sight word where it was taught by heart although its letters were known', () => {
    expect(toOutcome(today, known(`${SINGLE} ay=eɪ`))).toBe('sight')
  })
})

describe('names that the story allows', () => {
  const names = ['Zub', 'Old Ned', 'plop', 'Roy']
  runTable(
    pink,
    [
      ['?Zub', 'z=z u=ʌ b=b', 'decodable guessed'],
      ['Roy', 'r=r oy=ɔɪ', 'name'],
      ['ROY', 'r=r oy=ɔɪ', 'name'],
      ['roy', 'r=r oy=ɔɪ', 'unreadable irregular:oy shape:roy'],
      ['Old', 'o=oʊ l=l d=d', 'name'],
      ['old', 'o=oʊ l=l d=d', 'unreadable irregular:o shape:ld'],
      ['?Plop', 'p=p l=l o=ɑ p=p', 'name guessed'],
      ["Roy's", "r=r oy=ɔɪ +'s=z", "unreadable ending:'s"],
      [
        'Roy.al',
        'r=r oy=ɔɪ a~=ə l=l',
        'unreadable irregular:oy too-many-letters:Royal too-many-syllables:Royal shape:Roy reduced-vowel:a',
      ],
    ],
    names,
  )
  runTable(green, [["Roy's", "r=r oy=ɔɪ +'s=z", 'name']], names)
})

describe('longer words', () => {
  runTable(blue, [
    ['bell', 'b=b e=ɛ ll=l', 'decodable'],
    ['duck', 'd=d u=ʌ ck=k', 'decodable'],
    ['quick', 'qu=kw i=ɪ ck=k', 'decodable'],
    ['frog', 'f=f r=r o=ɑ g=ɡ', 'decodable'],
    ['pond', 'p=p o=ɑ n=n d=d', 'decodable'],
    ['stamp', 's=s t=t a=æ m=m p=p', 'unreadable shape:st_mp'],
    ['hats', 'h=h a=æ t=t +s=s', 'decodable'],
    ["dogs'", "d=d o=ɑ g=ɡ +s=z '=", "unreadable ending:'"],
    ['frogs', 'f=f r=r o=ɑ g=ɡ +s=z', 'decodable'],
    ['hat.ted', 'h=h a=æ tt<t=t +ed=ɪd', 'unreadable ending:tt ending:ed'],
    ['kit.ten', 'k=k i=ɪ tt=t e~=ə n=n', 'unreadable irregular:tt'],
    ['rab.bit', 'r=r a=æ bb=b i~=ə t=t', 'decodable'],
    ['run.ning', 'r=r u=ʌ nn<n=n +ing=ɪŋ', 'unreadable too-many-letters:running ending:nn ending:ing'],
    ['hen-.pen', 'h=h e=ɛ n=n p=p e=ɛ n=n', 'decodable'],
    ['as', ['a~=ə s=z', 'a=æ s=z'], 'unreadable irregular:s'],
  ])
})

describe('spellings of more than one letter, endings, contractions', () => {
  runTable(green, [
    ['ship', 'sh=ʃ i=ɪ p=p', 'decodable'],
    ['cake', 'c=k a_e=eɪ k=k', 'decodable'],
    ['night', 'n=n igh=aɪ t=t', 'decodable'],
    ['bread', 'b=b r=r ea=ɛ d=d', 'unreadable irregular:ea'],
    ['rained', 'r=r ai=eɪ n=n +ed=d', 'decodable'],
    ["dogs'", "d=d o=ɑ g=ɡ +s=z '=", 'decodable'],
    ['run.ning', 'r=r u=ʌ nn<n=n +ing=ɪŋ', 'decodable'],
    ['ba.king', 'b=b a<a_e=eɪ k=k +ing=ɪŋ', 'decodable'],
    ['cried', 'c=k r=r i<y=aɪ +ed=d', 'decodable'],
    ['baked', 'b=b a<a_e=eɪ k=k e= +d=t', 'decodable'],
    ['said', 's=s ai=ɛ d=d', 'unreadable irregular:ai'],
    ['knee', 'kn=n ee=i', 'unreadable irregular:kn'],
    ['lamb', 'l=l a=æ m=m b=', 'unreadable irregular:b'],
    ["can't", "c=k a=æ n't=nt", 'decodable'],
    ['didn’t', 'd=d i=ɪ d=d n’t=ənt', 'decodable'],
    ["o'clock", "o=ə '= c=k l=l o=ɑ ck=k", 'unreadable irregular:o'],
    ["it's", "i=ɪ t=t +'s=s", 'decodable'],
    ['so.fa', 's=s o=oʊ f=f a~=ə', 'unreadable irregular:o'],
    ['le.mon', 'l=l e=ɛ m=m o~=ə n=n', 'decodable'],
    ['cap.tain', 'c=k a=æ p=p t=t ai~=ə n=n', 'unreadable irregular:ai'],
    ['read', ['r=r ea=ɛ d=d', 'r=r ea=i d=d'], 'decodable'],
    ['?glim', 'g=ɡ l=l i=ɪ m=m', 'decodable guessed'],
    ['?glimph', 'g=ɡ l=l i=ɪ m=m ph=f', 'unreadable guessed irregular:ph unknown-word:glimph'],
    ['???', [], 'unreadable guessed unknown-word:??'],
  ])
})

describe('words known by heart', () => {
  const heart = (words: readonly string[], more: Partial<Knowledge> = {}) =>
    toKnowledge(SINGLE, { sightWords: new Set(words), ...more })
  const someone: WordPronunciations = {
    ...toPronunciations('some.one', 's=s o=ʌ m=m e= o=w n=ʌn e='),
    parts: [toPronunciations('some', 's=s o=ʌ m=m e='), toPronunciations('one', 'o=w n=ʌn e=')],
  }
  const ours: WordPronunciations = {
    ...toPronunciations('ours', 'our=aʊɚ s=z'),
    parts: [toPronunciations('our', 'our=aʊɚ'), '-s'],
  }

  it('two that are put together are read by who can read both, within the limits of the step', () => {
    expect(toOutcome(someone, heart(['some', 'one']))).toBe('sight')
    expect(toOutcome(someone, heart(['some']))).toMatch(/^unreadable/)
    expect(toOutcome(someone, heart(['some', 'one'], { limits: { syllables: 1 } }))).toMatch(/^unreadable/)
    expect(toOutcome(someone, heart(['some', 'one'], { limits: { letters: 6 } }))).toMatch(/^unreadable/)
    expect(toOutcome(someone, heart(['some', 'one'], { limits: { letters: 7, syllables: 2 } }))).toBe('sight')
  })

  it('ours is our and -s', () => {
    expect(toOutcome(ours, heart(['our'], { endings: new Set(['-s'] as const) }))).toBe('sight')
    expect(toOutcome(ours, heart(['our']))).toMatch(/^unreadable/)
  })

  it('one that is shortened needs its kind taught, and its whole word known', () => {
    const theyve = toPronunciations("they've", "th=ð ey=eɪ 've=v")
    expect(toOutcome(theyve, heart(['they'], { contractions: 'any' }))).toBe('sight')
    expect(toOutcome(theyve, heart(['they'], { contractions: new Set(["they've"]) }))).toBe('sight')
    expect(toOutcome(theyve, heart(['they']))).toMatch(/^unreadable/)
    expect(toOutcome(theyve, heart(['the'], { contractions: 'any' }))).toMatch(/^unreadable/)
  })

  it("he's has no owner, though 's is taught and he is known", () => {
    const hes = toPronunciations("he's", "h=h e=i +'s=z")
    expect(toOutcome(hes, heart(['he'], { endings: new Set(["'s"] as const) }))).toMatch(/^unreadable/)
  })

  it('a guess that is known by heart is no guess', () => {
    expect(judge(toPronunciations('?zuth', 'z=z u=ʌ th=θ'), heart(['zuth']))).toMatchObject({
      kind: 'sight',
      guessed: false,
      readable: true,
    })
  })

  it('an ending on one must be taught, and its change where it makes one', () => {
    const endings = new Set(['-ed'] as const)
    expect(toOutcome(toPronunciations('wanted', 'w=w a=ɑ n=n t=t +ed=ɪd'), heart(['want'], { endings }))).toBe('sight')
    expect(toOutcome(toPronunciations('wanted', 'w=w a=ɑ n=n t=t +ed=ɪd'), heart(['want']))).toMatch(/^unreadable/)
    expect(toOutcome(toPronunciations('tried', 't=t r=r i<y=aɪ +ed=d'), heart(['try'], { endings }))).toMatch(
      /^unreadable/,
    )
  })

  it.each([
    ['cried', 'c=k r=r ie<y=aɪ +d=d', 'cry', 'y-to-i'],
    ['pret.ti.er', 'p=p r=r e=ɪ tt=t i<y=i +er=ɚ', 'pretty', 'y-to-i'],
    ['co.ming', 'c=k o<o_e=ʌ m=m +ing=ɪŋ', 'come', 'drop-e'],
    ['put.ting', 'p=p u=ʊ tt<t=t +ing=ɪŋ', 'put', 'double'],
    ['dy.ing', 'd=d y<ie=aɪ +ing=ɪŋ', 'die', 'ie-to-y'],
  ] as const)('%s %s is read by who knows %s and %s', (dotted, units, stem, change) => {
    const word = toPronunciations(dotted, units)
    const endings = new Set(ENDINGS)
    const endingChanges = new Set([change])
    expect(toOutcome(word, heart([stem], { endings, endingChanges }))).toBe('sight')
    expect(toOutcome(word, heart([stem], { endings }))).toMatch(/^unreadable/)
    expect(toOutcome(word, heart([stem], { endingChanges }))).toMatch(/^unreadable/)
    expect(toOutcome(word, heart(['other'], { endings, endingChanges }))).toMatch(/^unreadable/)
  })

  it('promises is promise with an s: nothing is dropped before it', () => {
    const word = toPronunciations('pro.mi.ses', 'p=p r=r o=ɑ m=m i<i_e=ə s=s +es=ɪz')
    expect(toOutcome(word, heart(['promise'], { endings: new Set(['-es'] as const) }))).toBe('sight')
  })
  it('one that was taught when its letters were not known yet is sounded out as soon as they are', () => {
    const before = toKnowledge('t=t')
    const at = toPronunciations('at', 'a=æ t=t')
    const knownWithSightWord = new Map([['at', before]])
    expect(toOutcome(at, heart(['at'], { knownWithSightWord }))).toBe('decodable')
    expect(toOutcome(at, heart(['at'], { knownWithSightWord: new Map([['at', toKnowledge('a=æ t=t')]]) }))).toBe(
      'sight',
    )
    // Held for an exception by any of its pronunciations.
    const two = toPronunciations('at', 'a~=ə t=t', 'a=æ t=t')
    expect(toOutcome(two, heart(['at'], { knownWithSightWord: new Map([['at', toKnowledge('a=æ t=t')]]) }))).toBe(
      'sight',
    )
  })
})

describe('of several pronunciations', () => {
  it('the nearest is told: an exception is further off than what can be taught, and of two as near the first', () => {
    const [rule, exception] = ['m=m ea=i d=d', 'm=m ea=ɛ d=d'].map((units) => toPronunciation('mead', units))
    const shown = { ...rule, units: rule?.units.map((unit) => ({ ...unit, ...(unit.vowel && { shown: 'sea' }) })) }
    const word = { ...toPronunciations('mead'), pronunciations: [exception, shown] } as WordPronunciations
    expect(judge(word, pink).pronunciation).toBe(shown)
    expect(judge({ ...word, pronunciations: [...word.pronunciations].reverse() }, pink).pronunciation).toBe(shown)
    const alike = toPronunciations('mead', 'm=m ea=i d=d', 'm=m ea=ɛ d=d')
    expect(judge(alike, pink).pronunciation).toBe(alike.pronunciations[0])
  })

  it('the first is told of words that are spelt alike, and where nothing is sure', () => {
    const does = toPronunciations('does', 'd=d oe=ʌ s=z', 'd=d oe=ʌ s=s')
    expect(judge(does, pink).pronunciation).toBe(does.pronunciations[1])
    expect(judge({ ...does, heteronym: true }, pink).pronunciation).toBe(does.pronunciations[0])
    expect(judge({ ...does, unsure: true }, pink).pronunciation).toBe(does.pronunciations[0])
  })

  it('a word that is not sure is not sounded out, and may be a name or known by heart', () => {
    const word = { ...toPronunciations('?Zub', 'z=z u=ʌ b=b'), unsure: true as const }
    expect(toOutcome(word, toKnowledge(SINGLE))).toBe('unreadable guessed unsure:Zub')
    expect(toOutcome(word, toKnowledge(SINGLE), ['Zub'])).toBe('name guessed')
    expect(toOutcome(word, toKnowledge(SINGLE, { sightWords: new Set(['zub']) }))).toBe('sight')
  })
})

describe('settings', () => {
  const hatted = toPronunciations('hat.ted', 'h=h a=æ tt<t=t +ed=ɪd')
  const rabbit = toPronunciations('rab.bit', 'r=r a=æ bb=b i~=ə t=t')
  const cant = toPronunciations("can't", 'c=k a=æ n=n t=t')
  const dont = toPronunciations("don't", 'd=d o=oʊ n=n t=t')

  const soundedChanges = new Set(['double'] as const)

  it('an ending may be sounded out where the sequence says so', () => {
    const sounded = toKnowledge(`${SINGLE} tt=t s=z`, { soundedEndings: new Set(ENDINGS), soundedChanges })
    expect(toOutcome(hatted, sounded)).toBe('decodable')
    expect(toOutcome(toPronunciations('dogs', 'd=d o=ɑ g=ɡ +s=z'), sounded)).toBe('decodable')
    expect(toOutcome(toPronunciations('hummed', 'h=h u=ʌ mm<m=m +ed=d'), sounded)).toBe(
      'unreadable ending:mm ending:ed',
    )
    expect(toOutcome(toPronunciations("Roy's", "r=r oy=ɔɪ +'s=z"), sounded, ['Roy'])).toBe('name')
  })

  it('a changed spelling needs its change, or a taught double letter where no step names the change', () => {
    const endings = new Set(['-ed'] as const)
    expect(toOutcome(hatted, toKnowledge(SINGLE, { endings }))).toBe('unreadable ending:tt')
    expect(toOutcome(hatted, toKnowledge(SINGLE, { endings, endingChanges: new Set(['drop-e'] as const) }))).toBe(
      'unreadable ending:tt',
    )
    expect(toOutcome(hatted, toKnowledge(SINGLE, { endings, endingChanges: new Set(['double'] as const) }))).toBe(
      'decodable',
    )
    expect(toOutcome(hatted, toKnowledge(`${SINGLE} tt=t`, { endings }))).toBe('unreadable ending:tt')
    expect(toOutcome(hatted, toKnowledge(`${SINGLE} tt=t`, { endings, soundedChanges }))).toBe('decodable')
  })

  it('nothing is dropped before -s, and ie stands for y as it stands for itself', () => {
    const endings = new Set(['-s', '-es', '-ed'] as const)
    const faces = toPronunciations('fac.es', 'f=f a<a_e=eɪ c=s +es=ɪz')
    expect(toOutcome(faces, toKnowledge(`${SINGLE} a_e=eɪ c=s`, { endings }))).toBe('decodable')
    const cried = toPronunciations('cried', 'c=k r=r ie<y=aɪ +d=d')
    expect(toOutcome(cried, toKnowledge(`${SINGLE} ie=aɪ`, { endings }))).toBe('unreadable ending:ie')
    const endingChanges = new Set(['y-to-i'] as const)
    expect(toOutcome(cried, toKnowledge(`${SINGLE} ie=aɪ`, { endings, endingChanges }))).toBe('decodable')
    expect(toOutcome(cried, toKnowledge(`${SINGLE} y=aɪ`, { endings, endingChanges }))).toBe('decodable')
  })

  it('a worn-down vowel is accepted only in long words, where two syllables are taught and the setting says so', () => {
    const known = `${SINGLE} bb=b`
    expect(toOutcome(rabbit, toKnowledge(known))).toBe('decodable')
    expect(toOutcome(rabbit, toKnowledge(known, { reducedVowels: 'flag' }))).toBe('unreadable reduced-vowel:i')
    expect(toOutcome(rabbit, toKnowledge(known, { limits: { syllables: 1 } }))).toBe(
      'unreadable too-many-syllables:rabbit reduced-vowel:i',
    )
    expect(toOutcome(rabbit, toKnowledge(`${known} i=ə`, { reducedVowels: 'flag' }))).toBe('decodable')
    expect(toOutcome(toPronunciations('the', 'th=ð e~=ə'), toKnowledge(`${SINGLE} th=ð`))).toBe(
      'unreadable reduced-vowel:e',
    )
  })

  // The letters called short, each worn down in an unstressed syllable: KIT, DRESS, TRAP, LOT and STRUT in Wells, Accents of English (1982).
  it.each([
    ['so.fa', 's=s o=oʊ f=f a~=ə', 'a=æ'],
    ['chick.en', 'ch=tʃ i=ɪ ck=k e~=ə n=n', 'e=ɛ'],
    ['pen.cil', 'p=p e=ɛ n=n c=s i~=ə l=l', 'i=ɪ'],
    ['le.mon', 'l=l e=ɛ m=m o~=ə n=n', 'o=ɑ'],
    ['le.mon', 'l=l e=ɛ m=m o~=ə n=n', 'o=ɒ'],
    ['cir.cus', 'c=s ir=ɝ c=k u~=ə s=s', 'u=ʌ'],
    ['vin.yl', 'v=v i=ɪ n=n y~=ə l=l', 'y=ɪ'],
  ])('the weak vowel of %s %s is read by who knows %s', (dotted, units, short) => {
    const others = units.replace(/\S+~=ə ?/, '').replaceAll(/<\w+/g, '')
    const word = toPronunciations(dotted, units)
    expect(toOutcome(word, toKnowledge(`${others} ${short}`))).toBe('decodable')
    const letter = short.slice(0, 1)
    expect(toOutcome(word, toKnowledge(`${others} ${letter}=oʊ`))).toBe(`unreadable irregular:${letter}`)
    expect(isReadable(word, toKnowledge(`${others} ${short}`, { reducedVowels: 'flag' }))).toBe(false)
  })

  it('a weak vowel asks for two syllables in the limits, or none', () => {
    const known = `${SINGLE} bb=b`
    for (const syllables of [2, 3])
      expect(toOutcome(rabbit, toKnowledge(known, { limits: { syllables } }))).toBe('decodable')
    expect(toOutcome(rabbit, toKnowledge(known, { limits: { letters: 6 } }))).toBe('decodable')
  })

  // How each ending is spelt after the word as it stands: national curriculum for England, English Appendix 1 (2013).
  it.each([
    ['hats', 'h=h a=æ t=t +s=s', '-s'],
    ['bus.es', 'b=b u=ʌ s=s +es=ɪz', '-es'],
    ['hunt.ed', 'h=h u=ʌ n=n t=t +ed=ɪd', '-ed'],
    ['cried', 'c=k r=r ie=aɪ +d=d', '-ed'],
    ['jump.ing', 'j=dʒ u=ʌ m=m p=p +ing=ɪŋ', '-ing'],
    ['fast.er', 'f=f a=æ s=s t=t +er=ɚ', '-er'],
    ['fast.est', 'f=f a=æ s=s t=t +est=ɪst', '-est'],
    ["dog's", "d=d o=ɑ g=ɡ +'s=z", "'s"],
    ['dog’s', 'd=d o=ɑ g=ɡ +’s=z', "'s"],
    ["dogs'", "d=d o=ɑ g=ɡ +s=z '=", "'s"],
  ] as const)('%s is read by who was taught its ending, and by nobody else', (dotted, units, ending) => {
    const word = toPronunciations(dotted, units)
    const plural = dotted.endsWith("s'") ? (['-s'] as const) : []
    const others = ENDINGS.filter((one) => one !== ending)
    const withEndings = (...endings: readonly Ending[]) =>
      toKnowledge(`${SINGLE} ie=aɪ`, { endings: new Set([...plural, ...endings]) })
    expect(toOutcome(word, withEndings(ending))).toBe('decodable')
    expect(toOutcome(word, withEndings(...others))).toMatch(/^unreadable ending:\S+$/)
  })

  // Letter by letter: the sounds of the short vowels, and of `ng`, that other words have.
  it.each([
    ['jump.ing', 'j=dʒ u=ʌ m=m p=p +ing=ɪŋ', 'i=ɪ ng=ŋ'],
    ['fast.est', 'f=f a=æ s=s t=t +est=ɪst', 'e=ɛ s=s t=t'],
    ['hunt.ed', 'h=h u=ʌ n=n t=t +ed=ɪd', 'e=ɛ d=d'],
    ['bus.es', 'b=b u=ʌ s=s +es=ɪz', 'e=ɛ s=z'],
    ["dog's", "d=d o=ɑ g=ɡ +'s=z", 's=z'],
    ["cat's", "c=k a=æ t=t +'s=s", 's=s'],
    ['dogs', 'd=d o=ɑ g=ɡ +s=z', 's=z'],
    ['fast.er', 'f=f a=æ s=s t=t +er=ɚ', 'er=ɚ'],
  ])('%s is sounded out by who knows its stem and %s', (dotted, units, parts) => {
    const word = toPronunciations(dotted, units)
    const stem = units.replace(/ \+.*/, '')
    const soundedEndings = new Set(ENDINGS)
    expect(isReadable(word, toKnowledge(`${stem} ${parts}`, { soundedEndings }))).toBe(true)
    expect(isReadable(word, toKnowledge(`${stem} ${parts}`))).toBe(false)
    for (const part of parts.split(' ').filter((one) => !stem.includes(one))) {
      const less = `${stem} ${parts.replace(part, '')}`
      expect(toOutcome(word, toKnowledge(less, { soundedEndings }))).toMatch(/^unreadable ending:\S+$/)
    }
  })

  // The same source: double the consonant, drop the e, change y to i; ie becomes y before -ing (common practice, no source).
  it.each([
    ['run.ning', 'r=r u=ʌ nn<n=n +ing=ɪŋ', 'double', 'nn'],
    ['ba.king', 'b=b a<a_e=eɪ k=k +ing=ɪŋ', 'drop-e', 'a'],
    ['baked', 'b=b a<a_e=eɪ k=k +ed=t', 'drop-e', 'a'],
    ['hap.pi.er', 'h=h a=æ pp=p i<y=i +er=ɚ', 'y-to-i', 'i'],
    ['cried', 'c=k r=r ie<y=aɪ +d=d', 'y-to-i', 'ie'],
    ['dy.ing', 'd=d y<ie=aɪ +ing=ɪŋ', 'ie-to-y', 'y'],
  ] as const)('%s %s needs %s to be taught', (dotted, units, change, letters) => {
    const word = toPronunciations(dotted, units)
    const CHANGES = ['double', 'drop-e', 'ie-to-y', 'y-to-i'] as const
    const keys = `${SINGLE} a_e=eɪ pp=p y=i y=aɪ ie=aɪ`
    const withChanges = (endingChanges: readonly EndingChange[]) =>
      toKnowledge(keys, { endings: new Set(ENDINGS), endingChanges: new Set(endingChanges) })
    expect(toOutcome(word, withChanges([change]))).toBe('decodable')
    expect(toOutcome(word, withChanges(CHANGES.filter((one) => one !== change)))).toBe(`unreadable ending:${letters}`)
    // And who does not know the letters at all lacks these first.
    const [, base, sound] = /<(\w+)=(\S+)/.exec(units) ?? []
    const unknown = toKnowledge(keys.replaceAll(`${base}=${sound}`, '').replace(`${letters}=${sound}`, ''), {
      endings: new Set(ENDINGS),
      endingChanges: new Set(CHANGES),
    })
    expect(toOutcome(word, unknown)).toBe(`unreadable irregular:${letters}`)
  })

  it('letters that are drawn out ask for nothing more', () => {
    expect(toOutcome(toPronunciations('?Nooo', 'n=n ooo<o=oʊ'), toKnowledge('n=n o=oʊ'))).toBe('decodable guessed')
    expect(toOutcome(toPronunciations('?Shh', 'shh<sh=ʃ'), toKnowledge('sh=ʃ'))).toBe('decodable guessed')
    expect(toOutcome(toPronunciations('?Shhh', 'shhh<sh=ʃ'), toKnowledge('sh=ʃ'))).toBe('decodable guessed')
    // Two are a spelling of their own, and another letter is no longer one.
    expect(toOutcome(toPronunciations('?Noo', 'n=n oo<o=oʊ'), toKnowledge('n=n o=oʊ'))).toBe(
      'unreadable guessed ending:oo unknown-word:Noo',
    )
    expect(toOutcome(toPronunciations('?Nooow', 'n=n ooow<o=oʊ'), toKnowledge('n=n o=oʊ'))).toBe(
      'unreadable guessed ending:ooow unknown-word:Nooow',
    )
  })

  it('the r that Southern British drops is read by who knows r, and a silent letter of an ending by all', () => {
    const dinosaur = toPronunciations('saur', 's=s au=ɔː r=')
    expect(toOutcome(dinosaur, toKnowledge('s=s au=ɔː r=r'))).toBe('decodable')
    expect(judge(dinosaur, toKnowledge('s=s au=ɔː')).reasons).toMatchObject([
      { code: 'correspondence-untaught', key: 'r=r', letters: [[3, 4]] },
    ])
    const endings = new Set(['-ed'] as const)
    expect(toOutcome(toPronunciations('hoped', 'h=h o=oʊ p=p e= +d=t'), toKnowledge('h=h o=oʊ p=p', { endings }))).toBe(
      'decodable',
    )
    expect(toOutcome(toPronunciations('hope', 'h=h o=oʊ p=p e='), toKnowledge('h=h o=oʊ p=p', { endings }))).toBe(
      'unreadable irregular:e',
    )
  })

  it('an ending counts in the shape of its syllable where it is sounded out, and not where it is taught', () => {
    const hats = toPronunciations('hats', 'h=h a=æ t=t +s=s')
    const shapes = new Set(['CVC'])
    const soundedEndings = new Set(['-s'] as const)
    expect(toOutcome(hats, toKnowledge(SINGLE, { shapes, soundedEndings }))).toBe('unreadable shape:ts')
    expect(toOutcome(hats, toKnowledge(SINGLE, { shapes, soundedEndings, endings: soundedEndings }))).toBe('decodable')
    expect(toOutcome(hats, toKnowledge(SINGLE, { shapes }))).toBe('unreadable ending:s')
  })

  it.each(['-', '‐', '‑'])('each part of a word with %s has the whole limit of letters', (hyphen) => {
    const word = toPronunciations(`hen${hyphen}.pen`, 'h=h e=ɛ n=n p=p e=ɛ n=n')
    expect(toOutcome(word, toKnowledge(SINGLE, { limits: { letters: 3 } }))).toBe('decodable')
    expect(toOutcome(word, toKnowledge(SINGLE, { limits: { letters: 2 } }))).toBe(
      'unreadable too-many-letters:hen too-many-letters:pen',
    )
  })

  it('an apostrophe is no letter', () => {
    expect(toOutcome(cant, toKnowledge(SINGLE, { contractions: 'any', limits: { letters: 4 } }))).toBe('decodable')
  })

  it('a contraction is taught by name, or all are', () => {
    expect(toOutcome(cant, toKnowledge(SINGLE))).toBe("unreadable contraction:'")
    expect(toOutcome(cant, toKnowledge(SINGLE, { contractions: 'any' }))).toBe('decodable')
    expect(toOutcome(cant, toKnowledge(SINGLE, { contractions: new Set(["can't"]) }))).toBe('decodable')
    expect(toOutcome(dont, toKnowledge(SINGLE, { contractions: new Set(["can't"]) }))).toBe(
      "unreadable irregular:o contraction:'",
    )
    expect(toOutcome(dont, toKnowledge(SINGLE, { sightWords: new Set(["don't"]) }))).toBe('sight')
    expect(
      toOutcome(toPronunciations("dog's", "d=d o=ɑ g=ɡ +'s=z"), toKnowledge(SINGLE, { contractions: 'any' })),
    ).toBe("unreadable ending:'s")
  })

  it('says which figure was found and which is allowed', () => {
    const [letters, shape] = judge(toPronunciations('frog', 'f=f r=r o=ɑ g=ɡ'), pink).reasons
    expect(letters).toMatchObject({ found: 4, allowed: 3 })
    expect(shape).toMatchObject({ found: 'CCVC', allowed: 'VC, CVC' })
  })

  it('names the correspondence that is missing, and keeps the pronunciation nearest to readable', () => {
    const tear = toPronunciations('tear', 't=t ea=ɛ r=R', 't=t ea=i r=r')
    const verdict = judge(tear, pink)
    expect(verdict.pronunciation).toBe(tear.pronunciations[1])
    expect(verdict.reasons[0]).toMatchObject({ key: 'ea=i', unit: { letters: 'ea' } })
  })
})

describe('abbreviations', () => {
  const units = ['t=t v=v']
  const tv = toPronunciations('TV', ...units)

  it('are told as what they are, whatever letters are known', () => {
    expect(toOutcome(tv, pink)).toBe('unreadable abbreviation:TV')
    expect(isReadable(tv, pink)).toBe(false)
    expect(judge(tv, pink)).toMatchObject({ guessed: false, pronunciation: tv.pronunciations[0] })
  })

  it('are read where they are known by heart, or are an allowed name', () => {
    const byHeart = toKnowledge(SINGLE, { sightWords: new Set(['tv']) })
    expect(toOutcome(tv, byHeart)).toBe('sight')
    expect(isReadable(tv, byHeart)).toBe(true)
    expect(toOutcome(tv, pink, ['TV'])).toBe('name')
    expect(isReadable(tv, pink, ['TV'])).toBe(true)
    expect(isReadable(tv, pink, ['Tam'])).toBe(false)
  })

  it("that own something need the owner's ending taught, as names do", () => {
    const owner = toPronunciations("TV's", "t=t v=v +'s=z")
    expect(toOutcome(owner, pink, ['TV'])).toBe("unreadable ending:'s")
    expect(toOutcome(owner, toKnowledge(SINGLE, { endings: new Set(["'s"] as const) }), ['TV'])).toBe('name')
  })
})

describe('isReadable says what judge says', () => {
  it.each([
    [green, toPronunciations('night', 'n=n igh=aɪ t=t')],
    [green, toPronunciations('said', 's=s ai=ɛ d=d')],
    [pink, toPronunciations('the', 'th=ð e~=ə')],
    [pink, { ...toPronunciations('?zub', 'z=z u=ʌ b=b'), unsure: true as const }],
    [pink, { ...toPronunciations('?makeing', 'm=m a=æ k=k ing=ɪŋ'), meant: 'making' }],
  ])('%#', (knowledge, pronunciations) => {
    expect(isReadable(pronunciations, knowledge)).toBe(judge(pronunciations, knowledge).readable)
  })
})

describe('a word that nobody can be sure of', () => {
  it('is told as misspelt, or as unsure, and as nothing else', () => {
    const unsure = { ...toPronunciations('?makeing', 'm=m a=æ k=k e=ɛ ing=ɪŋ'), unsure: true as const }
    expect(toOutcome({ ...unsure, meant: 'making' }, pink)).toBe('unreadable guessed misspelt:makeing')
    expect(toOutcome(unsure, pink)).toBe('unreadable guessed unsure:makeing')
  })
})

describe('a fault is mended', () => {
  const cried = toPronunciation('cried', 'c=k r=r ie<y=aɪ +d=d')
  const endings = new Set(['-ed'] as const)
  const withLetters = toKnowledge(`${SINGLE} ie=aɪ y=aɪ`, { endings })
  const withChange = toKnowledge(`${SINGLE} ie=aɪ y=aɪ`, { endings, endingChanges: new Set(['y-to-i'] as const) })
  const faultsOf = (knowledge: Knowledge) => judge(toPronunciations('cried', 'c=k r=r ie<y=aɪ +d=d'), knowledge).reasons

  it('by the letters, though how an ending changes them comes later', () => {
    const [letters] = faultsOf(toKnowledge(SINGLE, { endings }))
    expect(letters).toMatchObject({ code: 'irregular', key: 'y=aɪ' })
    expect(isMended(letters as Reason, 'cried', cried, withLetters)).toBe(true)
  })

  it('by the change, where that is what lacked', () => {
    const [change] = faultsOf(withLetters)
    expect(change).toMatchObject({ code: 'ending' })
    expect(isMended(change as Reason, 'cried', cried, withLetters)).toBe(false)
    expect(isMended(change as Reason, 'cried', cried, withChange)).toBe(true)
  })

  it('of the whole word only where the same is no fault at the same letters', () => {
    const pen = toPronunciation('stamp-.pond', 's=s t=t a=æ m=m p=p p=p o=ɑ n=n d=d')
    const one = judge(toPronunciations('stamp-.pond', 's=s t=t a=æ m=m p=p p=p o=ɑ n=n d=d'), pink).reasons
    const shapes = one.filter(({ code }) => code === 'shape')
    expect(shapes).toHaveLength(2)
    const knowing = toKnowledge(SINGLE, { shapes: new Set(['CVCC']), limits: { letters: 9, syllables: 2 } })
    expect(shapes.map((fault) => isMended(fault, 'stamp-pond', pen, knowing))).toEqual([false, true])
  })
})
