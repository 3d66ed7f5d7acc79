import { describe, expect, it } from 'vitest'
import { readStory } from '../../src/story/index.ts'
import { pageTexts } from './helpers.ts'

describe('pages', () => {
  it('end at an empty heading; the title belongs to the first', () => {
    expect(pageTexts('# Tip top\n\n##\nA hen\n\n##\nA pig\n')).toEqual(['Tip top A hen', 'A pig'])
  })

  it('end at a thematic break; text before the first break is page 1', () => {
    expect(pageTexts('# Tip top\n\nA hen\n\n---\n\nA pig\n\n***\n\nA cow')).toEqual(['Tip top A hen', 'A pig', 'A cow'])
  })

  it('have no empty first page when the title or a cover picture stands alone', () => {
    expect(pageTexts('# Tip top\n\n![cover](c.png)\n\n---\n\nA hen\n\n---\n\nA pig')).toEqual([
      'Tip top A hen',
      'A pig',
    ])
    expect(pageTexts('# Tip top\n\n---\n\nA hen')).toEqual(['Tip top A hen'])
    expect(pageTexts('***\n\nA hen\n\n---\n\nA pig\n\n---\n')).toEqual(['A hen', 'A pig'])
  })

  it('take a cover text into page 1 where the headings are numbered', () => {
    const numbered = '# Tip top\n\nBy Meg\n\n## Page 1\n\nA hen\n\n## Page 2\n\nA pig'
    expect(pageTexts(numbered)).toEqual(['Tip top By Meg A hen', 'A pig'])
    expect(pageTexts('# Tip top\n\nA cow\n\n##\nA hen\n\n##\nA pig')).toEqual(['Tip top A cow', 'A hen', 'A pig'])
  })

  it('keep a page without words between two others, so that the numbers match the book', () => {
    expect(pageTexts('# Tip\n\n##\nA hen\n\n##\n![a pig](p.png)\n\n##\nA cow')).toEqual(['Tip A hen', '', 'A cow'])
    expect(pageTexts('# Tip\n\n##\nA hen\n\n##\n\n##\nA cow\n\n##\n')).toEqual(['Tip A hen', '', 'A cow'])
  })

  it('start at headings of the depth that the file repeats', () => {
    expect(pageTexts('# Tip top\n\n## Hens\n\nA hen\n\n## Pigs\n\nA pig\n\n### Big pigs\n\nBig')).toEqual([
      'Tip top Hens A hen',
      'Pigs A pig Big pigs Big',
    ])
    expect(pageTexts('# Hens\n\nA hen\n\n# Pigs\n\nA pig')).toEqual(['Hens A hen', 'Pigs A pig'])
    expect(pageTexts('# Tip top\n\n## Hens\n\nA hen')).toEqual(['Tip top Hens A hen'])
  })

  it('do not start at a heading or rule in a list or a quote', () => {
    expect(pageTexts('A hen\n\n- a\n\n  ---\n\n  b\n\n> ---\n\nA pig')).toEqual(['A hen a b A pig'])
  })

  it('are cut as the option says', () => {
    const source = '# Tip\n\n##\nA hen\n\n---\n\nA pig\n\n### Cows\n\nA cow'
    expect(pageTexts(source)).toEqual(['Tip A hen', 'A pig Cows A cow'])
    expect(pageTexts(source, { pages: 'rule' })).toEqual(['Tip A hen', 'A pig Cows A cow'])
    expect(pageTexts(source, { pages: 2 })).toEqual(['Tip A hen A pig Cows A cow'])
    expect(pageTexts(source, { pages: 3 })).toEqual(['Tip A hen A pig', 'Cows A cow'])
  })

  it('leave out the title or the headings when asked', () => {
    const source = '# Tip top\n\n## Hens\n\nA hen\n\n## Pigs\n\nA pig'
    expect(pageTexts(source, { countTitle: false })).toEqual(['Hens A hen', 'Pigs A pig'])
    expect(pageTexts(source, { countHeadings: false })).toEqual(['Tip top A hen', 'A pig'])
    expect(readStory(source, { countTitle: false }).title?.text).toBe('Tip top')
  })

  it('are numbered in order and nest their blocks', () => {
    const story = readStory('# Tip\n\n##\nA hen\n\n##\nA pig\n')
    expect(story.pages.map((it) => [it.number, it.start, it.end])).toEqual([
      [1, 0, 15],
      [2, 17, 25],
    ])
  })

  it('take the title from the first heading only', () => {
    expect(readStory('***\n\n# Tip\n\nA hen').title?.text).toBe('Tip')
    expect(readStory('- # Tip\n\nA hen').title?.text).toBe('Tip')
    expect(readStory('# ![x](y)\n\nA hen').title).toBeUndefined()
    expect(readStory('![x](y)\n\nA hen\n\n# Tip').title).toBeUndefined()
    expect(readStory('![x](y)\n\n<!-- z -->\n\n# Tip *top*').title?.text).toBe('Tip top')
    expect(readStory('A hen\n\n# Tip').title).toBeUndefined()
    expect(readStory('## Tip\n\nA hen').title).toBeUndefined()
  })
})

describe('page by page', () => {
  /** The source of each page, its breaks and labels with it. */
  const slicesOf = (source: string, options = {}) =>
    readStory(source, options).pages.map(({ start, end }) => source.slice(start, end))

  it('labels are not read out: Page, Page 3, 3 and their kin', () => {
    const labels = ['Page 1', '2', '3.', 'page 4:', 'PAGE5', 'Page', ' 7 ']
    const source = `# Tip\n\n${labels.map((it, at) => `## ${it}\n\nhen ${at}`).join('\n\n')}`
    expect(pageTexts(source)).toEqual(['Tip hen 0', 'hen 1', 'hen 2', 'hen 3', 'hen 4', 'hen 5', 'hen 6'])
    expect(pageTexts('# Tip\n\n## 3 hens\n\nA hen\n\n## Page two\n\nA pig')).toEqual([
      'Tip 3 hens A hen',
      'Page two A pig',
    ])
    expect(pageTexts('# Tip\n\n## Page 1;\n\nA\n\n## My page 2\n\nB')).toEqual(['Tip Page 1 A', 'My page 2 B'])
  })

  it.each([
    ['two empty headings of one', '#\n\nA hen\n\n#\n\nA pig', ['A hen', 'A pig']],
    ['an empty heading before the title', '# \n\n# Tip\n\nA hen', ['', 'Tip A hen']],
    ['a second heading of one', '# Tip\n\n# Top\n\nA hen', ['Tip Top A hen']],
    [
      'headings of one, with others',
      '# Tip\n\n## A\n\nhen\n\n# Top\n\npig\n\n## B\n\ncow',
      ['Tip A hen', 'Top pig B cow'],
    ],
    [
      'a cover before page 1',
      '# Tip\n\nBy Meg\n\n## 1. Hens\n\nhen\n\n## 2. Pigs\n\npig',
      ['Tip By Meg 1 Hens hen', '2 Pigs pig'],
    ],
    [
      'a cover before page 10',
      '# Tip\n\nBy Meg\n\n## Page 10\n\nhen\n\n## Page 11\n\npig',
      ['Tip By Meg', 'hen', 'pig'],
    ],
    ['a cover before a rule', '# Tip\n\nBy Meg\n\n---\n\nhen\n\n---\n\npig', ['Tip By Meg', 'hen', 'pig']],
    ['labels without text at the end', '# Tip\n\n## Page 1\n\nhen\n\n## Page 2\n\n## Page 3', ['Tip hen']],
    ['a picture alone at the end', '# Tip\n\n## Page 1\n\nhen\n\n## Page 2\n\n![x](y)', ['Tip hen', '']],
    ['a title and a label', '# Tip\n\n## Page 1', ['Tip']],
    ['two rules at the end', '# Tip\n\nhen\n\n---\n\n---\n', ['Tip hen']],
    ['two rules in the middle', '# Tip\n\nhen\n\n---\n\n---\n\npig', ['Tip hen', '', 'pig']],
    ['an empty heading in a list', '- ##\n- A hen\n\n##\nA pig', ['A hen', 'A pig']],
    ['a heading in a list', '## A\n\nx\n\n- ## A\n\ny\n\n## B\n\nz', ['A x A y', 'B z']],
    [
      'the least depth that repeats',
      '# Tip\n\n### A\n\nhen\n\n### B\n\npig\n\n## C\n\ncow\n\n## D\n\ndog',
      ['Tip A hen B pig', 'C cow', 'D dog'],
    ],
    ['empty headings of two depths', '# Tip\n\n###\nhen\n\n##\npig\n\n###\ncow', ['Tip hen', 'pig', 'cow']],
    ['a rule among headings', '# Tip\n\n## A\n\nhen\n\n---\n\npig\n\n## B\n\ncow', ['Tip A hen', 'pig B cow']],
    ['headings of six', '###### A\n\nhen\n\n###### B\n\npig', ['A hen', 'B pig']],
  ])('%s', (_, source, expected) => {
    expect(pageTexts(source)).toEqual(expected)
  })

  it('a page of pictures alone has its place, as long as its break', () => {
    const toPlaces = (source: string) => readStory(source).pages.map(({ number, start, end }) => [number, start, end])
    expect(toPlaces('A\n\n---\n\n![x](y)\n\n---\n\nB')).toEqual([
      [1, 0, 1],
      [2, 3, 6],
      [3, 17, 23],
    ])
    expect(toPlaces('\n![x](y)')).toEqual([[1, 1, 1]])
    expect(toPlaces('')).toEqual([])
  })

  it('options cut at headings of a depth, at the top only, and never at the title', () => {
    expect(pageTexts('# Tip\n\n# A\n\nhen', { pages: 1 })).toEqual(['Tip A hen'])
    expect(pageTexts('# Tip\n\n## A\n\nhen\n\n## B\n\npig', { pages: 1 })).toEqual(['Tip A hen B pig'])
    expect(pageTexts('hen\n\n## A\n\npig\n\n### B\n\ncow\n\n- ## C', { pages: 2 })).toEqual(['hen', 'A pig B cow C'])
    expect(pageTexts('# Tip\n\nhen\n\n# B\n\npig', { pages: 'rule' })).toEqual(['Tip hen B pig'])
  })

  it('a page reaches from its break, or its picture, to its last block', () => {
    expect(
      slicesOf('![c](c.png)\n\n# Tip\n\n![d](d.png)\n\n##\n\n![e](e.png)\n\nA hen\n\n##\n\nA pig ![f](f.png)\n'),
    ).toEqual(['![c](c.png)\n\n# Tip\n\n![d](d.png)\n\n##\n\n![e](e.png)\n\nA hen', '##\n\nA pig ![f](f.png)'])
    expect(slicesOf('# Tip\n\nhen\n\n---\n\n---\n\npig')).toEqual(['# Tip\n\nhen', '---', '---\n\npig'])
    expect(slicesOf('# Tip\n\n## Page 1\n\nhen\n\n## Page 2\n\n![x](y)')).toEqual([
      '# Tip\n\n## Page 1\n\nhen',
      '## Page 2',
    ])
    expect(slicesOf('A ![d](d.png) hen\n\n![e](e.png)')).toEqual(['A ![d](d.png) hen'])
    expect(slicesOf('## Page 1\n\nhen\n\n## Page 2\n\npig')).toEqual(['## Page 1\n\nhen', '## Page 2\n\npig'])
  })
})

describe('credits', () => {
  const story = '# Tip\n\n##\nA hen hid.\n\n##\n'

  it.each([
    ['a list with a licence', '* License: [CC-BY]\n* Text: Meg Pond\n* Illustration: Old Ned\n* Language: en\n'],
    ['a list and a blurb', '* License: [CC-BY]\n* Text: Meg Pond\n\nThe first readers sat on Tansy Lane.\n'],
    ['lines of one paragraph', 'Text: Meg Pond  \nPictures: Old Ned\n'],
    ['a heading that says so', '\n## Credits\n\nWe thank Old Ned.\n'],
    ['closing lines', 'Written by Meg Pond\n\n© 2024 Tansy Lane\n'],
    ['two on one line', 'Written by Ann Bell. Pictures by Tom T. Hill.\n'],
    ['two people of one line', 'Written by Ann Bell and illustrated by Tom Hill\n'],
    ['a lone author', 'Author: Ann Bell\n'],
    ['a lone author of one name', 'Illustrator: Meg'],
    ['a lone text', 'Text: Ann Bell, Tom van der Hill and Dr. Meg Pond'],
    ['a lone name', 'By Ann Bell\n'],
    ['a lone name in small print', '*by A. B. Bell & Tom Hill, 2020*\n'],
    ['a lone name and more', 'By Ann Bell. Pictures by Tom Hill.\n'],
    ['a lone name and a notice', 'By Ann Bell.\n\n© 2024. All rights reserved.\n'],
    ['whose text it is', 'Text © Ann Bell 2020\n'],
    ['whose text it is, without the sign', 'Text and pictures copyright Ann Bell, 2020.\n'],
    ['a licence', 'Licensed under CC BY 4.0.\n'],
    ['a licence in a sentence', 'This book is released under a Creative Commons Attribution licence.\n'],
    ['a licence as an address', 'Licensed under https://tansy.org/licence.\n'],
    ['a lone address', 'www.tansy.org\n'],
    ['a maker with an address', 'Story by Ann Bell (ann@tansy.org). www.tansy.org'],
  ])('%s', (_, credits) => {
    expect(pageTexts(story + credits)).toEqual(['Tip A hen hid'])
  })

  it('are found after a rule, which then cuts no pages', () => {
    const source = '# Tip\n\n## Hens\n\nA hen\n\n## Pigs\n\nA pig\n\n---\n\nText: Meg Pond\n\nPictures: Old Ned'
    expect(pageTexts(source)).toEqual(['Tip Hens A hen', 'Pigs A pig'])
  })

  it('are found at the end of a story of one page', () => {
    expect(pageTexts('# Tip\n\nA hen hid.\n\n- Text: Meg Pond\n- Pictures: Old Ned')).toEqual(['Tip A hen hid'])
  })

  it.each([
    ['a list with other keys', '* Tam: yes\n* Meg: no\n', 'Tam yes Meg no'],
    ['one line with a colon', 'Text: he had no text.\n', 'Text he had no text'],
    ['a list without keys', '* A hen\n* A pig\n', 'A hen A pig'],
    ['a sentence that starts with By', 'By the pond sat Meg.\n', 'By the pond sat Meg'],
    ['a sentence of capitals', 'By The Pond\n', 'By The Pond'],
    ['an answer', 'By Meg.\n\nBy Big Ben.\n', 'By Meg By Big Ben'],
    ['an answer and a smile', 'By Big Ben.\n\n:)\n', 'By Big Ben'],
    ['a short answer', 'By Meg\n', 'By Meg'],
    ['a sentence that ends in a maker', 'The hat was made by Meg.\n', 'The hat was made by Meg'],
    ['a maker without a name', 'Drawn by the hens.\n', 'Drawn by the hens'],
    ['a maker, and story', 'Written by Ann Bell. He sat.\n', 'Written by Ann Bell He sat'],
    ['story, and a notice', 'Tam sat. © Ann Bell 2020\n', 'Tam sat Ann Bell 2020'],
    ['story, and a licence', 'Tam sat. Licensed under CC BY 4.0.\n', 'Tam sat Licensed under CC BY 4.0'],
    ['a story by somebody', 'The story by Meg is fun.\n', 'The story by Meg is fun'],
    ['an author who speaks', 'Author: I am Ann Bell.\n', 'Author I am Ann Bell'],
    ['a cat under a bed', 'The cat hid under a bed by Meg.\n', 'The cat hid under a bed by Meg'],
    ['a sentence with an address', 'Meg sat at www.tansy.org.\n', 'Meg sat at'],
    ['speech', 'Story by Tam. “A pig hid.”\n', 'Story by Tam A pig hid'],
  ])('are not %s', (_, end, words) => {
    expect(pageTexts(story + end)).toEqual(['Tip A hen hid', words])
  })

  it('are not the whole story', () => {
    expect(pageTexts('# Tip\n\nWritten by Ann Bell')).toEqual(['Tip Written by Ann Bell'])
    expect(pageTexts('![x](y)\n\n# Tip\n\n---\n\n© 2024 Ann Bell')).toEqual(['Tip 2024 Ann Bell'])
    expect(pageTexts('Text: Meg Pond\n\nPictures: Old Ned')).toEqual(['Text Meg Pond Pictures Old Ned'])
  })
})
