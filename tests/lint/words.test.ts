// What is said of one word, on real words: which of its faults speaks, and what is said once.

import { describe, expect, it } from 'vitest'
import { rules } from '../../rules/index.ts'
import { createStoryContext, type ReadingSettings } from '../../src/lint/context.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { runRules } from '../../src/lint/run.ts'
import { createNameTest, findSharedJudge } from '../../src/lint/shared-judge.ts'
import type { Message, Rule, RuleSettings } from '../../src/lint/types.ts'
import { createFaultFinder, createFirstTest } from '../../src/lint/word-faults.ts'
import { readStory } from '../../src/story/index.ts'
import type { Sentence, Word } from '../../src/story/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { readSequence } from '../unified/pipeline.ts'
import { toSequence, toStep } from '../verdict/hand-made.ts'

const phonics = testPhonics('general-american')
const sequence = readSequence('series')

const open = (source: string, more: Partial<ReadingSettings> = {}) =>
  createStoryContext(readStory(source), { phonics, sequence, step: 'pink-6', ...more })

/** The faults of each word that has some: `night: correspondence-later too-many-letters`. */
function toFaults(source: string, more: Partial<ReadingSettings> = {}): readonly string[] {
  const context = open(source, more)
  const find = createFaultFinder(context, createFirstTest())
  const sentences = context.story.pages.flatMap(({ blocks }) => blocks.flatMap((block) => block.sentences))
  return sentences.flatMap((sentence) =>
    sentence.words.flatMap((word) => {
      const codes = find(word, sentence).map(({ code }) => code)
      return codes.length === 0 ? [] : [`${word.text}: ${codes.join(' ')}`]
    }),
  )
}

describe('a capital', () => {
  const capitals = (taught: 'none' | 'first' | 'all', source: string, names: readonly string[] = []) => {
    const steps = sequence.steps.map((step) => ({ ...step, adds: { ...step.adds, capitals: taught } }))
    return toFaults(source, { sequence: { ...sequence, steps }, names })
  }

  it('is told where none is taught, and of a word all in capitals where only the first letter is', () => {
    expect(capitals('none', 'Sid ran. I had a PAN.')).toEqual(['Sid: capital', 'PAN: all-capitals'])
    expect(capitals('first', 'Sid ran. I had a PAN.')).toEqual(['PAN: all-capitals'])
    expect(capitals('all', 'Sid ran. I had a PAN.')).toEqual([])
    // Nor is it where something else is wrong with the word.
    expect(capitals('all', 'I had a FISH.').join()).toMatch(/^FISH: (?!.*capital)/)
    expect(capitals('first', 'I had a FISH.').join()).toContain('all-capitals')
  })

  it('of an allowed name is no surprise', () => {
    expect(capitals('none', "Sid ran. SID sat. Sid's hat.", ['Sid'])).toEqual(["Sid's: ending"])
    expect(capitals('none', 'Sid ran. SID sat.', ['Meg'])).toEqual(['Sid: capital', 'SID: all-capitals'])
  })
})

describe('a name', () => {
  it.each<readonly [source: string, faults: readonly string[]]>([
    ['The hen met Roy.', ['Roy: unlisted-name']],
    // A day, a title and an abbreviation have their capitals anyway.
    ['The hen ran on Monday.', []],
    ['The hen met Mother.', []],
    ['The hen is on TV.', []],
    // It opens the sentence, and it stands in small letters too.
    ['Roy met the hen.', []],
    ['The hen met Roy. A roy ran.', []],
  ])('%s', (source, names) => {
    const found = toFaults(source).flatMap((line) => {
      const [word, codes = ''] = line.split(': ')
      return codes.startsWith('unlisted-name') ? [`${word}: unlisted-name`] : []
    })
    expect(found).toEqual(names)
  })

  it('that can be read is none to list, also where only its ending is not taught', () => {
    expect(toFaults('The hen met Meg.')).toEqual([])
    expect(toFaults('The hen met Meg’s pig.', { step: 'blue-4' })).toEqual(['Meg’s: ending'])
    // One letter too many, and that is the s.
    expect(toFaults('The hen met Meg’s pig.')).toEqual(['Meg’s: ending too-many-letters'])
    expect(toFaults('The hen met Roy’s pig.')[0]).toMatch(/^Roy’s: unlisted-name /)
  })

  it('of several words counts where they stand together', () => {
    const names = ['Old Roy']
    const words = (source: string) => toFaults(source, { names }).map((line) => line.split(':')[0])
    expect(words('Old Roy ran.')).toEqual([])
    expect(words('Roy ran, and Old Roy ran.')).toEqual(['Roy'])
    expect(words('Roy ran.')).toEqual(['Roy'])
  })
})

describe('what is said of a word', () => {
  it('that is short for two and taught by name is that it is a contraction, and nothing of its sounds by heart', () => {
    // `they` and all contractions are taught at green-9.
    const found = toFaults("Yes, they're in. It can't.")
    expect(found).toContain("they're: contraction correspondence-later irregular too-many-letters")
    expect(found).toContain("can't: too-many-letters contraction")
    expect(toFaults('She said so.').find((line) => line.startsWith('said'))).toMatch(/^said: sight-word-later/)
  })

  it('that is no word of the story in English', () => {
    expect(toFaults('The hen had 6 дом.')).toEqual(['6: numeral', 'дом: foreign'])
    expect(toFaults('The hen had 6.', { step: sequence.steps.at(-1)?.id ?? '' })).toEqual([])
  })

  it('that is a guess is told once, whatever its case', () => {
    expect(toFaults('A zub ran. Zub sat. A vib ran. A zub hid.')).toEqual(['zub: guessed', 'vib: guessed'])
    expect(toFaults('A zub ran.', { names: ['zub'] })).toEqual(['zub: guessed'])
  })

  it('that has two forms which differ is told where the sentence leaves it open', () => {
    const small = toSequence([toStep('one', 'r=r d=d ea=iː'), toStep('two', 'ea=ɛ')])
    const at = (step: string, source: string) =>
      toFaults(source, { sequence: small, step }).find((line) => line.startsWith('read'))
    expect(at('one', 'They read it.')).toBe('read: unsettled-heteronym')
    expect(at('one', 'A read.')).toBeUndefined()
    expect(at('two', 'They read it.')).toBeUndefined()
    // Where none of its ways can be read yet, that comes first.
    const late = toSequence([toStep('none', 'r=r d=d'), ...small.steps])
    expect(toFaults('They read it.', { sequence: late, step: 'none' })).toContain(
      'read: correspondence-later unsettled-heteronym',
    )
  })
})

/** Says each fault of the codes, and counts how often it is asked. */
function createAsked(codes: Rule['claims'], more: Partial<Rule> = {}) {
  const asked: string[] = []
  const rule = defineRule({
    id: 'no-asking',
    summary: '',
    severity: 'warning',
    claims: codes ?? [],
    options: { loud: { type: 'boolean', default: false, description: '' } },
    messages: { told: '{word} has {code}, {missing}' },
    create: ({ report }) => ({
      fault: ({ word, code, reason }) => {
        asked.push(word.text)
        const letters = reason?.letters ?? []
        report({ at: word, word, letters, messageId: 'told', data: { word: word.text, code } as never })
      },
    }),
    ...(more as object),
  })
  return { asked, rule }
}

const run = (context: ReturnType<typeof open>, own: readonly Rule[], settings: RuleSettings = {}): readonly Message[] =>
  runRules(context, own, settings)

describe('a rule', () => {
  const SOURCE = 'A fish and a fish.\n\n---\n\nThe fish.\n'

  it('is asked once for a word, and what it said is said again in each place, with its letters and page', () => {
    const { asked, rule } = createAsked(['correspondence-later'])
    const messages = run(open(SOURCE), [rule]).filter(({ word }) => word === 'fish')
    expect(asked.filter((word) => word === 'fish')).toEqual(['fish'])
    const starts = [...SOURCE.matchAll(/fish/g)].map(({ index }) => index)
    expect(messages.map(({ start, end, page, letterRanges }) => [start, end, page, letterRanges])).toEqual(
      starts.map((start, at) => [start, start + 4, at === 2 ? 2 : 1, [{ start: start + 2, end: start + 4 }]]),
    )
  })

  it('is asked once for all stories, as long as rules, settings and names are the same', () => {
    const { asked, rule } = createAsked(['correspondence-later'])
    const own = [rule]
    const ask = (more: Partial<ReadingSettings> = {}, settings: RuleSettings = {}) => {
      asked.length = 0
      const messages = run(open('Fish. fish', more), own, settings)
      return [asked.join(' '), messages.length]
    }
    expect(ask()).toEqual(['Fish fish', 2])
    expect(ask()).toEqual(['', 2])
    expect(ask({ names: ['Tam'] })).toEqual(['Fish fish', 2])
    expect(ask()).toEqual(['Fish fish', 2])
    expect(ask({}, { 'no-asking': { options: { loud: true } } })).toEqual(['Fish fish', 2])
    expect(ask({ step: 'pink-5' }, { 'no-asking': { options: { loud: true } } })).toEqual(['Fish fish', 2])
    expect(ask({ reader: { sightWords: ['zub'] } }, { 'no-asking': { options: { loud: true } } })[1]).toBe(2)
    expect(ask({ reader: { sightWords: ['fish'] } }, { 'no-asking': { options: { loud: true } } })).toEqual(['', 0])
  })

  it('that says nothing of a fault leaves the word to the next fault, and the note names those that are left', () => {
    const silent = createAsked(['correspondence-later'], {
      id: 'no-silence',
      create: () => ({ fault: () => undefined }),
    })
    const { rule } = createAsked(['too-many-letters', 'shape'])
    const [message, ...others] = run(open('shrimp'), [silent.rule, rule])
    expect(others).toEqual([])
    expect(message?.message).toBe('shrimp has too-many-letters, {missing}')
    expect(message?.note).toMatch(/^Also: its shape \S+ \(step \S+\)\.$/)
  })

  it('is an error where it says so, and once a story where it says so', () => {
    const rule = defineRule({
      id: 'no-word',
      summary: '',
      severity: 'warning',
      options: {},
      messages: { once: 'a  {text}\t', always: ' b\n{text} {text}' },
      create: ({ report }) => ({
        word: (word) => {
          report({ at: word, word, messageId: 'once', data: { text: word.text }, isOnce: true })
          report({
            at: { start: word.start, end: word.end + 1 },
            messageId: 'always',
            data: { text: word.text },
            isError: true,
          })
        },
      }),
    })
    const messages = run(open('hen hen'), [rule])
    // Of two at one place the wider comes first.
    expect(messages.map(({ message, severity, word, page }) => [message, severity, word, page])).toEqual([
      ['b hen hen', 'error', undefined, 1],
      ['a hen', 'warning', 'hen', 1],
      ['b hen hen', 'error', undefined, 1],
    ])
  })

  it('speaks in the order of the names of rules where two speak at one place', () => {
    const say = (id: string) =>
      defineRule({
        id,
        summary: '',
        severity: 'error',
        options: {},
        messages: { told: id },
        create: ({ report }) => ({ word: (word) => report({ at: word, messageId: 'told' }) }),
      })
    const ids = ['no-b', 'no-c', 'no-a']
    expect(run(open('hen'), ids.map(say)).map(({ rule }) => rule)).toEqual(['no-a', 'no-b', 'no-c'])
  })

  it('that only adds what a step could teach tells it once', () => {
    // Nothing of it is ever taught: the note says what to add, and names no fault of which that is the answer.
    const bare = { ...sequence, steps: sequence.steps.slice(0, 6) }
    const messages = runRules(open('A shrimp.', { sequence: bare }), rules, {
      'min-readable-share': { severity: 'off' },
    })
    const [message] = messages.filter(({ word }) => word === 'shrimp')
    expect(message?.note).toMatch(
      /^Use another word, add .*`letters: 6` and `shapes: \[CCVCC\]` to a step, or list `shrimp`/,
    )
    expect(message?.note).not.toContain('Also')
  })
})

describe('the context', () => {
  it('counts and finds what it is asked for once', () => {
    const context = open('The hen met Roy. Roy ran.\n\n---\n\nfish\n')
    expect(context.count()).toBe(context.count())
    expect(context.figures()).toBe(context.figures())
    expect(context.likelyNames()).toBe(context.likelyNames())
    expect([...context.likelyNames()]).toEqual(['Roy'])
    expect(context.countIn(context.story.pages.slice(1)).words).toBe(1)
    expect(context.accent).toBe('general-american')
  })

  it('counts running and different words, on each page and in all', () => {
    const { pages, total, different } = open('The hen met Roy. Roy ran.\n\n---\n\nfish, hen, 6\n').figures()
    const toCounts = ({ words, decodable, sight, unreadable }: typeof total) => [words, decodable, sight, unreadable]
    expect(pages.map(toCounts)).toEqual([
      [6, 3, 1, 2],
      [2, 1, 0, 1],
    ])
    expect(toCounts(total)).toEqual([8, 4, 1, 3])
    expect(toCounts(different)).toEqual([6, 3, 1, 2])
  })

  it('finds the slip in a word that the dictionary lacks, one that can be read before others', () => {
    const context = open('hen')
    expect(context.findSlips('thier')).toEqual(['their'])
    expect(context.findSlips('hen')).toEqual([])
    // Heard once, remembered.
    expect(context.findSlips('thier')).toEqual(['their'])
  })

  it('judges an allowed name too by what the reader knows', () => {
    const kindOf = (reader: ReadingSettings['reader']) => {
      const context = open('The Fish ran.', { step: 'blue-4', names: ['Fish'], ...(reader && { reader }) })
      const sentence = context.story.pages[0]?.blocks[0]?.sentences[0] as Sentence
      return context.judge(sentence.words[1] as Word, sentence).verdict.kind
    }
    expect([kindOf(undefined), kindOf({ correspondences: ['sh=ʃ'] })]).toEqual(['name', 'decodable'])
  })

  it('knows what a reader knows beyond the step', () => {
    expect(open('hen').knowledge.sightWords.has('zub')).toBe(false)
    expect(open('hen', { reader: { sightWords: ['zub'] } }).knowledge.sightWords.has('zub')).toBe(true)
  })
})

describe('the memory of verdicts', () => {
  it('is one for each engine, sequence, step and reader', () => {
    const judge = findSharedJudge(phonics, sequence, 'pink-6')
    expect(findSharedJudge(phonics, sequence, 'pink-6')).toBe(judge)
    expect(findSharedJudge(phonics, sequence, 'pink-6', { sightWords: ['a'] })).toBe(
      findSharedJudge(phonics, sequence, 'pink-6', { sightWords: ['a'] }),
    )
    const others = [
      findSharedJudge(phonics, sequence, 'pink-5'),
      findSharedJudge(phonics, { ...sequence }, 'pink-6'),
      findSharedJudge(testPhonics('southern-british'), sequence, 'pink-6'),
      findSharedJudge(phonics, sequence, 'pink-6', { sightWords: ['a'] }),
      findSharedJudge(phonics, sequence, 'pink-6', { sightWords: ['b'] }),
    ]
    expect(new Set([judge, ...others]).size).toBe(6)
  })

  it('asks whether a word is a name, its owner among them', () => {
    const isName = createNameTest(['Tam', 'zub'])
    expect(['Tam', 'Tam’s', "ZUB's", 'tam', 'Tams', 'Tam'].map(isName)).toEqual([true, true, true, false, false, true])
    expect(createNameTest([])('Tam')).toBe(false)
  })
})

// The letters of a name help nobody who does not know how it is said.
it.each(['Moises ran.', 'Ned met Moises.'])(
  'what nobody knows how to say is told in the same words wherever it stands: %s',
  (text) => {
    const said = runRules(open(text), rules).flatMap(({ word, message }) => (word === 'Moises' ? [message] : []))
    expect(said).toEqual(['it is not known how `Moises` is said; is it a name?'])
  },
)
