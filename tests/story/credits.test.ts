// Which last lines of a book say who made it, and which are story. The forms are those of books with an open licence (a list of `Key: value`,
// closing lines, notices of copyright and licence): common practice, no source. Names are our own.

import { describe, expect, it } from 'vitest'
import { readStory } from '../../src/story/index.ts'
import { pageTexts } from './helpers.ts'

const STORY = '# Tip\n\n##\nA hen hid.\n\n##\n'

/** Whether nothing of the end is read by a child. */
const isCredit = (end: string): boolean => pageTexts(STORY + end).join('|') === 'Tip A hen hid'

const rows = (text: string): readonly string[] => text.trim().split(/\n\s*/)

describe('a list of keys', () => {
  // What makers call their parts of a book, as open libraries of picture books print it; common practice, no source.
  it.each(
    `Adaptation|Adapted by|Artist|Author|Authors|By|Contributors|Cover|Design|Designer|Drawings|Edited by|Editor|Font|
    Illustrated by|Illustration|Illustrations|Illustrator|Illustrators|Language|Layout|Level|Original|Photographer|
    Photographs|Photos|Pictures|Pictures by|Publisher|Published by|Retold by|Source|Story|Story by|Text|Translated by|
    Translation|Translator|Words|Words by|Writer|Written by`.split(/\|\s*/),
  )('take a list that names `%s` and a licence for credits, and one that names two', (key) => {
    const other = key === 'Text' ? 'Editor' : 'Text'
    expect(isCredit(`* ${key}: hens and pigs\n* Licence: free\n`)).toBe(true)
    expect(isCredit(`* ${key}: hens and pigs\n* ${other}: pigs and hens\n`)).toBe(true)
  })

  it.each(['Copyright: Meg Pond', 'ISBN: 978-1', 'Licence: CC-BY', 'License: CC-BY', '* License: [CC-BY](x.org)'])(
    'is one by a single line that can be nothing else: %s',
    (line) => {
      expect(isCredit(line)).toBe(true)
    },
  )

  it.each([
    ...[
      'Adaptation',
      'Adapted by',
      'Artist',
      'Author',
      'Authors',
      'By',
      'Contributors',
      'Cover',
      'Design',
      'Designer',
      'Drawings',
    ],
    ...[
      'Edited by',
      'Editor',
      'Font',
      'Illustrated by',
      'Illustration',
      'Illustrations',
      'Illustrator',
      'Illustrators',
      'Language',
    ],
    ...[
      'Layout',
      'Level',
      'Original',
      'Photographer',
      'Photographs',
      'Photos',
      'Pictures',
      'Pictures by',
      'Publisher',
      'Published by',
    ],
    ...[
      'Retold by',
      'Source',
      'Story',
      'Story by',
      'Translated by',
      'Translation',
      'Translator',
      'Words',
      'Words by',
      'Writer',
    ],
    'Written by',
  ])('is one by two lines: %s, and a text', (key) => {
    const [first, second] = [`${key}: the old hen`, 'Text: the old dog']
    expect(isCredit(`${first}\n\n${second}`)).toBe(true)
    expect(isCredit(`- ${first}\n- ${second}`)).toBe(true)
    expect(isCredit(`${first}\n${second}`)).toBe(true)
    expect(isCredit(first)).toBe(false)
  })

  it('may have spaces round its colons, and asks for what stands behind them', () => {
    expect(isCredit('Text : the hen\n\nCover : the dog')).toBe(true)
    expect(isCredit('Text:\n\nCover:')).toBe(false)
    expect(isCredit('Text the hen\n\nCover the dog')).toBe(false)
    expect(isCredit('6 Text: the hen\n\n6 Cover: the dog')).toBe(false)
  })

  it('takes with it what follows, but needs its two lines side by side', () => {
    expect(isCredit('Text: the hen\n\nCover: the dog\n\nA blurb of the book.\n\n![logo](l.png)')).toBe(true)
    expect(pageTexts(`${STORY}Text: the hen\n\nHe sat.\n\nCover: the dog`)[1]).toBe('Text the hen He sat Cover the dog')
    expect(pageTexts(`${STORY}Text: the hen\n\n![logo](l.png)\n\nCover: the dog`)[1]).toBe('Text the hen Cover the dog')
    expect(pageTexts(`${STORY}He sat.\n\nText: the hen\n\nCover: the dog`)).toEqual(['Tip A hen hid', 'He sat'])
  })

  it('is none where a line of one paragraph has no key', () => {
    expect(isCredit('Text: the hen\nHe sat.\nCover: the dog')).toBe(false)
    expect(isCredit('Text: the hen\n\nHe sat.\nCover: the dog')).toBe(false)
    expect(isCredit('Tam: yes\n\nText: the hen\n\nMeg: no\n\nCover: the dog')).toBe(true)
  })

  it('stands near the end, or it is story', () => {
    const list = 'Text: the hen\n\nCover: the dog\n\n'
    const words = (count: number) => readStory(STORY + list + 'He sat.\n\n'.repeat(count)).pages.length
    expect(words(58)).toBe(1)
    expect(words(59)).toBe(2)
  })
})

describe('a heading', () => {
  it.each(
    rows(`Credits
      Credit
      CREDITS
      Acknowledgements
      Acknowledgments
      Acknowledgement
      About the author
      About the authors
      About this book
      About the story
      About the stories
      About the artist
      about the illustrators`),
  )('%s begins them', (heading) => {
    expect(isCredit(`A pig.\n\n## ${heading}\n\nWe like hens.`)).toBe(false)
    expect(pageTexts(`# Tip\n\nA hen hid.\n\n## ${heading}\n\nWe like hens.`)).toEqual(['Tip A hen hid'])
  })

  it.each(['Credits and more', 'My credits', 'About a book', 'About the hen', 'About books'])(
    '%s does not',
    (heading) => {
      expect(pageTexts(`# Tip\n\nA hen hid.\n\n## ${heading}\n\nWe like hens.`).join(' ')).toContain('We like hens')
    },
  )

  it('counts as the last heading only, and outside a list', () => {
    expect(pageTexts('# Tip\n\nA hen.\n\n## Credits\n\nMeg.\n\n## Hens\n\nA pig.').join(' ')).toContain('Meg')
    expect(pageTexts('# Tip\n\nA hen.\n\n- ## Credits\n\nMeg.').join(' ')).toContain('Meg')
  })

  it('that says something else is read, though credits follow', () => {
    expect(pageTexts('# Tip\n\nA hen.\n\n## The end\n\nText: a\n\nCover: b')).toEqual(['Tip A hen The end'])
  })

  it('is the break that sets credits apart, as is a rule: neither makes a page', () => {
    for (const gap of ['---', '##', '---\n\n---', '##\n\n---\n\n##'])
      expect(pageTexts(`# Tip\n\n##\nA hen.\n\n##\nA pig.\n\n${gap}\n\nText: a\n\nCover: b`)).toEqual([
        'Tip A hen',
        'A pig',
      ])
  })
})

describe('closing lines', () => {
  it.each(
    rows(`© Ann
      Text and pictures (c) 2020 Ann Bell
      (c) Ann Bell 2020
      The red fat hens © Ann
      Copyright Ann Bell 2020
      Copyright 2020 by the hens.
      All rights reserved
      ISBN 978 0 00
      CC0
      CC BY 4.0
      CC-BY
      Creative Commons
      Licensed under X
      Licenced under X
      This book is published under a CC licence
      This book is released under an open license.
      It is shared under the public domain mark
      It is available under Commons
      Written by Ann Bell
      Illustrated by Ann Bell
      Drawn by Ann Bell
      Photographed by Ann Bell
      Designed by Ann Bell
      Created by Ann Bell
      Translated by Ann Bell
      Adapted by Ann Bell
      Edited by Ann Bell
      Retold by Ann Bell
      Published by Ann Bell
      Written and illustrated by Ann Bell
      Cover art by Ann
      Cover story by: Ann
      Story by Ann
      Words and music by Ann
      Text by Ann
      Pictures by Ann
      Illustrations by Ann
      Photos by Ann
      Photographs by Ann
      Drawings by Ann
      Artwork by Ann
      Design by Ann
      Layout by Ann
      Drawn by Old Ned and his hens.
      Written by A. A. Bell
      Written by A. A. Bell.
      By Ann Bell
      by Ann Bell
      By Ann Bell and Tom Hill
      By Ann Bell, Tom Hill & Meg Pond
      By Ann Bell, 2020
      By Ann Bell (2020)
      By Ann Bell 2020
      By A. Bell
      By Dr. Ann Bell
      By Mrs Hill
      By Mr. Hill
      By Ms. Hill
      By St. Ives
      By Ann O’Neil
      By Ann Bell-Hill
      By Then Hill
      By Ann al Hill
      By Ann bin Hill
      By Ann da Hill
      By Ann de la Hill
      By Ann den Hill
      By Ann der Hill
      By Ann di Hill
      By Ann du Hill
      By Ann le Hill
      By Ann van den Hill
      By Ann von Hill
      By: Ann Bell
      Illustration: Ann Bell
      Illustrations: Ann Bell
      Photographs: Ann Bell
      Photos: Ann Bell
      Text: Ann Bell
      Author: Ann
      Authors: Ann Bell, Tom Hill
      Artist: Ann
      Contributor: Ann
      Designer: Ann
      Editor: Ann
      Illustrator: Ann.
      Photographer: Ann
      Publisher: Ann
      Translator: Ann
      Writer: Ann
      ann@tansy.org
      www.tansy.org ©
      By Ann Bell www.tansy.org
      All rights reserved. Written by Ann Bell. © Tom T. Hen. All rights reserved.`),
  )('%s', (line) => {
    expect(isCredit(line)).toBe(true)
  })

  it.each(
    rows(`(c) Ann Bell
      The five red fat hens © Ann
      Copyright Ann
      It is available under the bed
      It is not under a licence
      He hid. It is shared under a licence
      Tom said by Ann
      Written by Ann! He sat
      Written by ann
      Rewritten by Ann Bell
      It was written by Ann Bell
      Walked by Ann Bell
      By Ann bell
      By Ann Bell sat Tom
      By The Hill
      By A Bell
      By An Bell
      By My Hill
      By His Bell
      By Her Bell
      By Our Bell
      By Your Bell
      By Their Bell
      By This Bell
      By That Bell
      By It Bell
      By Its Bell
      By al Hill Ann
      By Ann van den von Hill
      By Ann Bell, 20
      Baby Ann Bell
      Author Ann
      Author: ann
      The Author: Ann
      Text: Ann
      Photos: Ann
      By: Ann
      By Ann
      Text: Ann Bell.
      See www.tansy.org`),
  )('are not: %s', (line) => {
    expect(isCredit(line)).toBe(false)
  })

  it('are all of a kind: what may be story is a credit beside a sure one, and story spoils all', () => {
    expect(isCredit('By Ann Bell.\n\nBy Tom Hill')).toBe(true)
    expect(isCredit('By Ann Bell.\n\nBy Tom Hill.')).toBe(false)
    expect(isCredit('By Ann Bell\n\nHe sat.')).toBe(false)
    expect(isCredit('By Ann Bell\nHe sat.')).toBe(false)
    expect(isCredit('★\nBy Ann Bell\n★')).toBe(true)
    expect(isCredit('By Ann Bell\n\n![x](y)')).toBe(true)
    expect(isCredit('By Ann Bell. ©')).toBe(true)
  })

  it('are no long text', () => {
    expect(isCredit(`© ${'A'.repeat(1998)}`)).toBe(true)
    expect(isCredit(`© ${'A'.repeat(1999)}`)).toBe(false)
  })
})

describe('a page break behind the last line of the credits', () => {
  const ends = ['***', '---', '***\n\n***', '##', '---\n\n##\n']
  it.each(ends)('cuts no page: %j', (end) => {
    expect(isCredit(`Written by Ann Bell\n\n${end}`)).toBe(true)
    expect(isCredit(`- Text: Ann Bell\n- Pictures: Tom Hill\n\n${end}`)).toBe(true)
    expect(pageTexts(`${STORY}Tam sat.\n\n${end}`)).toEqual(['Tip A hen hid', 'Tam sat'])
  })

  it('leaves a heading that names the credits, and a story of one page, what they are', () => {
    expect(isCredit('## Credits\n\nWe thank Old Ned.\n\n***')).toBe(true)
    expect(pageTexts('A hen hid.\n\nWritten by Ann Bell\n\n***\n')).toEqual(['A hen hid'])
    expect(pageTexts('Written by Ann Bell\n\n***\n')).toEqual(['Written by Ann Bell'])
    expect(readStory('A hen hid.\n\nWritten by Ann Bell\n\n***\n').notes.map(({ text }) => text)).toEqual([
      'Written by Ann Bell',
    ])
  })

  it('is one that ends a page where something follows it', () => {
    expect(pageTexts(`${STORY}Written by Ann Bell\n\n***\n\nTam sat.`)).toEqual([
      ...['Tip A hen hid', 'Written by Ann Bell', 'Tam sat'],
    ])
  })
})

it('what stands for the adult among the credits is told in order of place', () => {
  const { notes } = readStory('# Tip\n\nA hen.\n\n> One.\n\n---\n\nText: a\n\n> Two.\n\nCover: b\n\n> Three.')
  expect(notes.map(({ kind, text }) => `${kind} ${text}`)).toEqual([
    ...['quote One.', 'credits Text: a', 'quote Two.', 'credits Cover: b', 'quote Three.'],
  ])
})

it('a picture with which the credits begin is for the adult', () => {
  const { pictures } = readStory('A hen.\n\n![h](h.png)\n\n![l](l.png) By Ann Bell')
  expect(pictures.map(({ source, inNote }) => `${source} ${inNote}`)).toEqual(['h.png false', 'l.png true'])
})
