// Input that nobody meant as a story: answered with a problem and not read, never with an exception.

import { describe, expect, it } from 'vitest'
import type { ProblemCode } from '../../src/problem/index.ts'
import { createHeldStory } from '../../src/story/held.ts'
import { maxLength, readStory, type StoryOptions } from '../../src/story/index.ts'
import { findForeignLanguage } from '../../src/story/language.ts'
import { pageTexts, wordTexts } from './helpers.ts'
import { toPlain } from './plain-story.ts'

const codes = (source: string): ProblemCode[] => readStory(source).problems.map((it) => it.code)

describe('empty sources', () => {
  it.each(['', ' \n\n ', '\uFEFF', '---\ntitle: Tip\n---\n', '<!-- a -->', '> adult', '***', '![a](b)'])(
    '%j',
    (source) => {
      expect(codes(source)).toEqual(['empty'])
      expect(wordTexts(source)).toEqual([])
    },
  )
})

describe('sources that are no text', () => {
  it('holds a NUL', () => {
    const [problem] = readStory('A hen\0 hid').problems
    expect(problem).toMatchObject({ code: 'binary', place: { start: { offset: 5 }, end: { offset: 6 } } })
  })

  it('was not UTF-8', () => {
    expect(codes('\uFFFD\uFFFDJFIF\u0001\u0002\uFFFD\u0003')).toEqual(['binary'])
    expect(codes('A hen said caf\uFFFD and hid in the den all day long')).toEqual([])
  })
})

describe('large sources', () => {
  it('are turned away above the limit', () => {
    const source = 'A hen hid.\n\n'.repeat(20_000_000 / 12)
    const {
      problems: [problem],
      pages,
    } = readStory(source)
    // Nothing of it was read.
    expect(pages).toEqual([])
    expect(problem).toMatchObject({
      code: 'too-large',
      place: { start: { offset: maxLength }, end: { offset: source.length } },
    })
    expect(problem?.message).toContain('20 million')
  })

  it('are read piece by piece without losing a word or a page', () => {
    const page = '##\nA *hen* hid in a den.\n\n- Sid &amp; Meg\n  sat\n\n<!-- a\n\nb -->\n\n'
    const source = `---\nnote: |\n  a\n\n  b\n---\n\n${page.repeat(500)}`
    const story = readStory(source)
    expect(story.pages).toHaveLength(500)
    expect(story.comments).toHaveLength(500)
    expect(new Set(pageTexts(source))).toEqual(new Set(['A hen hid in a den Sid Meg sat']))
    const slices = story.pages.flatMap((it) => it.blocks[0]?.sentences[0]?.words.slice(-1) ?? [])
    expect(new Set(slices.map((it) => source.slice(it.start, it.end)))).toEqual(new Set(['den']))
  })

  it('keep code, raw HTML and link definitions whole', () => {
    const filler = 'A hen hid.\n\n'.repeat(1000)
    expect(wordTexts(`${filler}\`\`\`\n\n${filler}\`\`\`\n\nA pig`).slice(-2)).toEqual(['A', 'pig'])
    expect(wordTexts(`${filler}\`\`\`\n\n${filler}\`\`\`\n\nA pig`)).toHaveLength(3002)
    expect(wordTexts(`${filler}<script>\n\n${filler}</script>\n\nA pig`)).toHaveLength(3002)
    expect(wordTexts(`[A pig][p]\n\n${filler}[p]: https://x.y\n`)).toHaveLength(3002)
    expect(wordTexts(`${filler}<!-- open\n\n${filler}A pig`)).toHaveLength(3000)
  })
})

describe('deep nesting', () => {
  const n = 10_000
  it.each([
    ['quotes', `${'>'.repeat(n)} a hen`],
    ['quotes with spaces', `${'> '.repeat(n)} a hen`],
    ['emphasis', `${'*'.repeat(n)}a${'*'.repeat(n)}`],
    ['underscores', `${'_'.repeat(n)}a${'_'.repeat(n)}`],
    ['brackets', '['.repeat(n)],
    ['closed brackets', `${'['.repeat(n)}a${']'.repeat(n)}`],
    ['links', '[a]('.repeat(n)],
    ['pictures', `${'!['.repeat(n)}a${'](b)'.repeat(n)}`],
    ['lists on one line', `${'- '.repeat(n)}a`],
    ['numbered lists', `${'1. '.repeat(n)}a`],
    ['emphasis in emphasis', '*a **b '.repeat(n) + 'b** a*'.repeat(n)],
    ['lists line by line', Array.from({ length: 1000 }, (_, i) => `${'  '.repeat(i)}- a`).join('\n')],
  ])('%s', (_, source) => {
    // Turned away before the parser, which would take minutes or break: nothing of it was read.
    const { problems, pages } = readStory(`A hen hid.\n\n${source}\n`)
    expect(problems.map(({ code }) => code)).toEqual(['too-deep'])
    expect(pages).toEqual([])
  })

  it.each([
    ['a quote of many lines', Array.from({ length: 500 }, () => '> a').join('\n')],
    ['many brackets', '[a] '.repeat(500)],
    ['many links', '[a](b) '.repeat(200)],
    ['a rule', `${'* '.repeat(500)}`],
    ['blanks to fill in', `My name is ${'_'.repeat(80)}. I am ${'_'.repeat(80)}.`],
    ['a picture of stars', '*'.repeat(1000)],
    ['much emphasis', 'A *big* sh**ee**p **hid** _in_ a \\*den. '.repeat(300)],
    ['many smiles', ':( :) '.repeat(300)],
  ])('is not %s', (_, source) => {
    expect(codes(`A hen hid.\n\n${source}\n`)).toEqual([])
  })

  // What the guard lets through and is deeper in the tree: a list and its item are two, as are the marks of bold in italics.
  it('is told once, at the first of its places, and what stands beside it is read', () => {
    const lists = `${'- '.repeat(51)}a`
    for (const read of [readStory, createHeldStory().read]) {
      const { problems, pages } = read(`A hen\n\n${lists}\n\nhid.\n\n${lists}\n\nIt ran.`)
      expect(problems.map(({ code, place }) => [code, place?.start.line])).toEqual([['too-deep', 3]])
      expect(pages[0]?.blocks.map(({ text }) => text)).toEqual(['A hen', 'hid.', 'It ran.'])
      expect(read(`A hen\n\n${'- '.repeat(50)}a`).problems).toEqual([])
    }
  })

  it.each([
    ['51 times bold in italics', 51, ['too-deep']],
    ['50 times', 50, []],
  ])('is counted in emphasis as well: %s', (_, count, expected) => {
    const { problems } = readStory(`A hen. ${'***a '.repeat(count)}${'b*** '.repeat(count)}hid.`)
    expect(problems.map(({ code }) => code)).toEqual(expected)
  })

  it('has a place', () => {
    expect(readStory(`A hen\n\n${'>'.repeat(n)}`).problems[0]).toMatchObject({
      place: { start: { line: 3, column: 1, offset: 7 }, end: { offset: 7 + n } },
    })
  })

  it.each([
    ['tags', '<b>'.repeat(n)],
    ['ticks', Array.from({ length: 100 }, (_, i) => `${'`'.repeat(i)}a`).join('')],
    ['references', '&amp;'.repeat(n)],
    ['backslashes', '\\'.repeat(n)],
    ['comments', '<!-- a -->'.repeat(2000)],
    ['addresses', 'https://'.repeat(n)],
    ['one long address', `https://${'a.('.repeat(n)}${')'.repeat(n)}`],
    ['at signs', 'a@a.'.repeat(n)],
    ['joined letters among references', 'ﬁ&amp;'.repeat(n)],
  ])('of other kinds does not throw: %s', (_, source) => {
    expect(() => readStory(source)).not.toThrow()
  })
})

describe('a failure while a story is read', () => {
  const source = 'A *hen* sat.\n\n- a\n\nA pig hid.'
  const endless = (): never => endless()
  const failing = (fail: () => never): StoryOptions => Object.defineProperty({}, 'pages', { get: fail })
  const held = createHeldStory()

  it.each([
    ['of a story', readStory],
    ['of a story that is held', held.read],
  ])('is told where the stack is used up, and breaks nothing: %s', (_, read) => {
    const whole = read(source)
    expect(whole.problems).toEqual([])
    const { problems, pages } = read(`${source}!`, failing(endless))
    expect(pages).toEqual([])
    expect(problems).toMatchObject([
      { code: 'too-deep', place: { start: { offset: 0 }, end: { offset: source.length + 1 } } },
    ])
    expect(JSON.stringify(toPlain(read(source)))).toBe(JSON.stringify(toPlain(whole)))
  })

  it.each([
    ['of a story', readStory],
    ['of a story that is held', held.read],
  ])('is not hidden where it is another: %s', (_, read) => {
    const fail = () => {
      throw new TypeError('a mistake of whoever asks')
    }
    expect(() => read(`${source}?`, failing(fail))).toThrow(TypeError)
    expect(read(`${source}?`).pages).toHaveLength(1)
  })
})

describe('other languages', () => {
  it('are noticed by their letters', () => {
    expect(codes('Кот сидит на окне. The end.')).toEqual(['other-language'])
    expect(codes('The cat said привет.')).toEqual([])
  })

  // Sentences of our own, so that no book is quoted.
  it.each([
    ['French', 'Le chat est dans le sac. Elle a une pomme et des noix. Les filles sont avec le chien dans la rue.'],
    ['German', 'Der Hund ist nicht im Haus. Das Kind und die Katze sind mit der Oma im Garten. Ich bin ein Kind.'],
    [
      'Spanish',
      'El gato es muy grande. Los patos y las ranas son amigos por siempre. El sol sale con una nube que pasa.',
    ],
    [
      'Afrikaans',
      'Die kat sit en die hond slaap. Hulle wil nie eet nie. Ons gaan vir die eend kyk wat ek nou hier het.',
    ],
    ['Dutch', 'De kat zit in het huis en de hond niet. Het is een mooie dag maar hij wordt ook nat van de regen.'],
    ['Italian', 'Il gatto corre nel sacco che sta nella casa della nonna. Anche il cane e una gallina sono di qui.'],
    [
      'Portuguese',
      'O gato corre com uma bola e ele quer ir para os patos. Ela tem um burro muito grande mas os ovos caem.',
    ],
    [
      'Swahili',
      'Paka alikuwa katika nyumba ya bibi. Mbwa wa babu ni mkubwa sana. Watoto na wazazi wake wa kijiji ni wazuri.',
    ],
  ])('are noticed by their small words: %s', (language, text) => {
    expect(readStory(text).problems).toMatchObject([{ code: 'other-language' }])
    expect(readStory(text).problems[0]?.message).toContain(language)
  })

  // Small words of each language, as any grammar of it lists them among the articles, pronouns and prepositions; from memory.
  it.each(
    Object.entries({
      Afrikaans: 'die en nie sy hulle vir wat ons ek het',
      Dutch: 'de een niet van zijn maar naar ook wordt het',
      French: 'le les des une est dans pas avec elle et',
      German: 'der das und ist nicht ein eine mit sie ich',
      Italian: 'il che di sono della nel gli anche una e',
      Portuguese: 'os uma um com ele ela mas muito para e',
      Spanish: 'el los las que y es con por muy una',
      Swahili: 'na ya wa kwa ni la alikuwa katika sana yake',
    }).flatMap(([language, words]) => words.split(' ').map((word) => [word, language, words.split(' ')] as const)),
  )('are told by %s: %s', (word, language, all) => {
    // Three of twenty-four are enough, two are not; the two beside it are of this language alone.
    const [first, second] = all.filter((one) => one !== word)
    const words = [word, first ?? '', second ?? '', ...Array.from({ length: 21 }, () => 'zub')]
    expect(findForeignLanguage(() => words, { words: 24, foreign: 0 })).toBe(language)
    const without = ['zub', ...words.slice(1)]
    expect(findForeignLanguage(() => without, { words: 24, foreign: 0 })).toBeUndefined()
  })

  it('are told from 20 words on, and only where enough of them are small words of one language', () => {
    const find = (text: string) =>
      findForeignLanguage(() => text.split(' '), { words: text.split(' ').length, foreign: 0 })
    const french = 'le chat est dans le sac et elle danse'
    const filler = (count: number) => Array.from({ length: count }, () => 'zub').join(' ')
    expect(find(`${french} ${filler(10)}`)).toBeUndefined()
    expect(find(`${french} ${filler(11)}`)).toBe('French')
    // Six of fifty are 12 of a hundred.
    expect(find(`${french} ${filler(41)}`)).toBe('French')
    expect(find(`le chat est dans le sac ${filler(28)}`)).toBeUndefined()
    expect(find(`le chat est dans le sac ${filler(27)}`)).toBe('French')
    expect(find(`LE chat EST dans Le sac ${filler(14)}`)).toBe('French')
  })

  it('are not told where English shows as much, at once or in the sample', () => {
    const find = (words: readonly string[], all = words.length) =>
      findForeignLanguage(() => words, { words: all, foreign: 0 })
    const fill = (count: number, word = 'zub') => Array.from({ length: count }, () => word)
    expect(find([...fill(5, 'el'), ...fill(2, 'The'), ...fill(13)])).toBe('Spanish')
    expect(find([...fill(5, 'el'), ...fill(3, 'The'), ...fill(12)])).toBeUndefined()
    // Of the first sixty words eight are English.
    expect(find([...fill(8, 'the'), ...fill(12, 'el'), ...fill(60)])).toBeUndefined()
    expect(find([...fill(7, 'the'), ...fill(12, 'el'), ...fill(60)])).toBe('Spanish')
    expect(find([...fill(60), ...fill(12, 'the'), ...fill(12, 'el'), ...fill(10)])).toBeUndefined()
    expect(find([...fill(60), ...fill(12, 'the'), ...fill(13, 'el'), ...fill(10)])).toBe('Spanish')
  })

  it.each('the and is in it he she to of was you they this had'.split(' '))(
    'are not told where %s stands often enough',
    (word) => {
      const fill = (count: number, one: string) => Array.from({ length: count }, () => one)
      const words = [...fill(5, 'el'), ...fill(3, word), ...fill(12, 'zub')]
      expect(findForeignLanguage(() => words, { words: 20, foreign: 0 })).toBeUndefined()
    },
  )

  it('are told by letters where more than half of the words have others', () => {
    const find = (words: number, foreign: number) => findForeignLanguage(() => [], { words, foreign })
    expect(find(4, 3)).toBe('another language')
    expect(find(4, 2)).toBeUndefined()
  })

  it('are looked for in the first 300 words', () => {
    const start = 'Zub zub zub zub zub. '.repeat(60)
    expect(codes(`${start}${'Le chat est dans le sac. '.repeat(80)}`)).toEqual([])
    expect(codes(`${'Le chat est dans le sac. '.repeat(20)}${start.repeat(9)}`)).toEqual(['other-language'])
    const source = `A hen.\n\n${'Le chat est dans le sac. '.repeat(20)}`.trimEnd()
    const [problem] = readStory(source).problems
    expect(problem?.message).toBe('This looks like French, not English.')
    expect([problem?.place?.start.offset, problem?.place?.end.offset]).toEqual([0, source.length])
  })

  it('are not seen in a first reader without small words', () => {
    expect(
      codes('Tap tap tap. Pat sat. Sam sat. Sit, Sid, sit! Nip nap. Tip tap top. Dad dug. Dan did dig. Pop! Mum ran.'),
    ).toEqual([])
    expect(
      findForeignLanguage(() => Array.from({ length: 40 }, (_, i) => (i % 2 ? 'Tam' : 'sat')), {
        words: 40,
        foreign: 0,
      }),
    ).toBeUndefined()
  })
})
