import remarkParse from 'remark-parse'
import retextEnglish from 'retext-english'
import { unified } from 'unified'
import { VFile } from 'vfile'
import { describe, expect, test } from 'vitest'
import { rules } from '../../rules/index.ts'
import { maxSentenceWords, noIrregularWord, noUntaughtCorrespondence, preset } from '../../rules/plugins.ts'
import { createStoryContext } from '../../src/lint/context.ts'
import { runRules } from '../../src/lint/run.ts'
import { readStory, remarkFrontmatter, storyPlugin } from '../../src/story/index.ts'
import { readingPlugin } from '../../src/unified/plugin.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { readSequence } from './pipeline.ts'

const SOURCE = '> For the adult: night.\n\nMeg sat in the r**ai**n.\n\nSid can sew.\n'
const reading = { phonics: testPhonics('general-american'), sequence: readSequence('series'), step: 'pink-6' }

const pipeline = () => unified().use(remarkParse).use(remarkFrontmatter).use(storyPlugin)

describe('a rule as a plugin', () => {
  test('puts a whole message on the file', () => {
    const file = new VFile(SOURCE)
    const processor = pipeline().use(noIrregularWord, { reading })
    processor.runSync(processor.parse(file), file)
    expect(file.messages).toHaveLength(1)
    expect(file.messages[0]).toMatchObject({
      reason: '`sew` breaks the rules: its `ew` sounds like the `oa` in `boat`, and no step teaches that',
      place: { start: { line: 5, column: 9, offset: SOURCE.indexOf('sew') }, end: { line: 5, column: 12 } },
      source: 'battledore',
      ruleId: 'no-irregular-word',
      url: 'rules/no-irregular-word/README.md',
      actual: 'sew',
      expected: [],
      fatal: true,
    })
    expect(file.messages[0]?.note).toContain('by heart')
  })

  test('takes the reading from the plugin before it, its options and its severity', () => {
    const file = new VFile(SOURCE)
    const processor = pipeline().use(readingPlugin, reading).use(maxSentenceWords, { words: 3, severity: 'warning' })
    processor.runSync(processor.parse(file), file)
    expect(file.messages.map(({ line, fatal, reason }) => [line, fatal, reason])).toEqual([
      [3, false, 'The sentence has 5 words; your settings allow at most 3'],
    ])
  })

  test('marks a word whose letters are bold as one word', () => {
    const file = new VFile(SOURCE)
    const processor = pipeline().use(noUntaughtCorrespondence, { reading })
    processor.runSync(processor.parse(file), file)
    const [message, ...others] = file.messages
    expect(others).toEqual([])
    expect(SOURCE.slice(SOURCE.indexOf('r**'), SOURCE.indexOf('.\n\nSid'))).toBe('r**ai**n')
    expect(message?.place).toMatchObject({
      start: { offset: SOURCE.indexOf('r**') },
      end: { offset: SOURCE.indexOf('.\n\nSid') },
    })
  })

  test('reads a tree of sentences that another parser made', () => {
    const file = new VFile('Sid can sew.')
    const processor = unified().use(retextEnglish).use(noIrregularWord, { reading })
    processor.runSync(processor.parse(file), file)
    expect(file.messages.map(({ line, column, actual }) => [line, column, actual])).toEqual([[1, 9, 'sew']])
  })

  test('says what is missing where nobody said who reads', () => {
    const file = new VFile(SOURCE)
    const processor = pipeline().use(noIrregularWord)
    expect(() => processor.runSync(processor.parse(file), file)).toThrow('put `readingPlugin` before the rules')
  })
})

describe('the preset', () => {
  test('says in one walk what the run says', () => {
    const file = new VFile(SOURCE)
    const processor = pipeline().use(readingPlugin, reading).use(preset)
    processor.runSync(processor.parse(file), file)
    const expected = runRules(createStoryContext(readStory(SOURCE), reading), rules)
    expect(file.messages.map(({ ruleId, reason }) => [ruleId, reason])).toEqual(
      expected.map(({ rule, message }) => [rule, message]),
    )
    expect(file.messages.length).toBeGreaterThan(1)
  })

  test('takes settings of rules', () => {
    const file = new VFile(SOURCE)
    const off = Object.fromEntries(rules.map(({ id }) => [id, { severity: 'off' as const }]))
    const settings = { ...off, 'no-irregular-word': { severity: 'warning' as const } }
    const processor = pipeline().use(preset, { reading, rules: settings })
    processor.runSync(processor.parse(file), file)
    expect(file.messages.map(({ ruleId, fatal }) => [ruleId, fatal])).toEqual([['no-irregular-word', false]])
  })
})

describe('options that do not exist', () => {
  const freeze = (use: () => { freeze(): unknown }) => () => use().freeze()

  test.each([
    [{ wrds: 3 }, '`max-sentence-words` has no option `wrds`. Did you mean `words`?'],
    [{ words: 'many' }, '`words` of `max-sentence-words` is a number, 0 or more; this is `many`'],
    [{ severity: 'loud' }, '`severity` of `max-sentence-words` is `off`, `warning` or `error`; this is `loud`'],
    [{ readng: reading }, '`max-sentence-words` has no option `readng`. Did you mean `reading`?'],
  ])('of one rule are told: %#', (options, message) => {
    expect(freeze(() => pipeline().use(maxSentenceWords, options as never))).toThrow(message)
  })

  test.each([
    [{ rulse: {} }, 'The preset has no option `rulse`. Did you mean `rules`?'],
    [{ colour: 1 }, 'The preset has no option `colour`. It takes `reading` and `rules`.'],
    [{ rules: { 'no-iregular-word': {} } }, 'There is no rule `no-iregular-word`. Did you mean `no-irregular-word`?'],
    [
      { rules: { 'max-sentence-words': { words: 3 } } },
      '`max-sentence-words` is set by `severity` and `options`, not by `words`.',
    ],
    [
      { rules: { 'max-sentence-words': { options: { wrds: 3 } } } },
      '`max-sentence-words` has no option `wrds`. Did you mean `words`?',
    ],
    [
      { rules: { 'no-irregular-word': { severity: 'loud' } } },
      '`severity` of `no-irregular-word` is `off`, `warning` or `error`',
    ],
    [
      { rules: { 'no-irregular-word': 'off' } },
      '`no-irregular-word` is set by `severity` and `options`, not by `off`.',
    ],
  ])('of the preset are told: %#', (options, message) => {
    expect(freeze(() => pipeline().use(preset, options as never))).toThrow(message)
  })

  test('are no matter where they are left undefined', () => {
    const options = { reading, words: undefined, wrds: undefined }
    expect(freeze(() => pipeline().use(maxSentenceWords, options))).not.toThrow()
    expect(freeze(() => pipeline().use(preset, { reading, rules: { 'no-irregular-word': {} } }))).not.toThrow()
  })
})
