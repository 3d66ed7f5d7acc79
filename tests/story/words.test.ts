import { describe, expect, it } from 'vitest'
import { readStory } from '../../src/story/index.ts'
import { placesOf, sentencesOf, wordsOf, wordTexts } from './helpers.ts'

describe('words', () => {
  it.each([
    ['a hyphen stays in the word', 'A tip-top hat', ['A', 'tip-top', 'hat']],
    ['apostrophes stay, straight and curly', "Don’t! It's Tam’s hat", ['Don’t', "It's", 'Tam’s', 'hat']],
    ['a dropped letter at the start keeps its apostrophe', "'Tis wet. ’Twas hot.", ["'Tis", 'wet', '’Twas', 'hot']],
    ['quotes are not part of the word', "'Hop,' said ‘Meg’ and “Sid”", ['Hop', 'said', 'Meg', 'and', 'Sid']],
    ['a quote that opens on a short word is a quote', "'Em, yes,' said Meg", ['Em', 'yes', 'said', 'Meg']],
    ['a dropped letter without a quote to close', "Get 'em up", ['Get', "'em", 'up']],
    ['dashes part words', 'Stop--look—see - go', ['Stop', 'look', 'see', 'go']],
    ['a hyphen at the end is a mark', 'Wait- I can', ['Wait', 'I', 'can']],
    ['a full stop is not part of a title', 'Mr. Hen and Dr. Duck', ['Mr', 'Hen', 'and', 'Dr', 'Duck']],
    ['glued words are parted', 'A cat.The dog:Sid/Tam=Meg?No', ['A', 'cat', 'The', 'dog', 'Sid', 'Tam', 'Meg', 'No']],
    ['an ampersand is no letter', 'Tom &Sam', ['Tom', 'Sam']],
    ['numbers are whole', '1,000 hens at 3.5 and 9:30, 3rd', ['1,000', 'hens', 'at', '3.5', 'and', '9:30', '3rd']],
    [
      'a comma parts figures that are no thousands',
      '1,0000 1,00 a,000 12,345,678',
      ['1', '0000', '1', '00', 'a', '000', '12,345,678'],
    ],
    ['soft hyphens and zero-width marks are dropped', 'sh\u00ADee\u00ADp wi\u200Bg', ['sheep', 'wig']],
    ['soft hyphens written as references are dropped', 'sh&shy;eep', ['sheep']],
    ['combining accents belong to the word', 'cafe\u0301 ole\u0301', ['cafe\u0301', 'ole\u0301']],
    [
      'joined letters are single ones',
      'ﬁsh ﬂag oﬀ sniﬃng baﬄe ﬆop',
      ['fish', 'flag', 'off', 'sniffing', 'baffle', 'stop'],
    ],
    ['joined letters written as references are single ones', '&#xFB01;sh &fflig;', ['fish', 'ff']],
    [
      'hyphens of every kind, dots of syllables and low lines join',
      'tip‐top tip‑top o·pen o‧pen a__b tam_sid',
      [...['tip‐top', 'tip‑top', 'o·pen', 'o‧pen', 'a__b', 'tam_sid']],
    ],
    [
      'single letters are joined by an ampersand or a stop',
      'A&E and AT&T at b.c',
      ['A&E', 'and', 'AT', 'T', 'at', 'b.c'],
    ],
    [
      'figures are joined by a stop, a colon or a bar, letters are not',
      '1/2 a/b 1:2 a:b 1.5',
      [...['1/2', 'a', 'b', '1:2', 'a', 'b', '1.5']],
    ],
    ['a figure and letters with a colon or a stop are two', '7:30pm 7.30pm', ['7', '30pm', '7', '30pm']],
    ['letters dropped on both sides', "rock 'n' roll ’n’ ’90s", ['rock', "'n'", 'roll', '’n’', '’90s']],
    ['short forms with stops inside', 'e.g. U.S.A. a.m.', ['e.g', 'U.S.A', 'a.m']],
    [
      'signs part words',
      'a*b a#b a%b a=b 10% £5 hen/pig',
      [...['a', 'b', 'a', 'b', 'a', 'b', 'a', 'b', '10', '5', 'hen', 'pig']],
    ],
    ['a comma without figures on both sides parts', '3,000,000 ,000 a,b 1,b', ['3,000,000', '000', 'a', 'b', '1', 'b']],
    [
      'dashes and stops in a row part words',
      'wait--what wait---what up…up Sid..sat',
      [...['wait', 'what', 'wait', 'what', 'up', 'up', 'Sid', 'sat']],
    ],
    ['a quote closes behind dots too', "'Er, go...' said Meg", ['Er', 'go', 'said', 'Meg']],
    ['only a comma joins thousands', '1;000 1!000 1 000', ['1', '000', '1', '000', '1', '000']],
    ['an accent without its letter is a mark', 'A \u0301 hen', ['A', 'hen']],
    ['letters beyond the first plane', '𝐀bc sat', ['𝐀bc', 'sat']],
    // The last letter of Latin Extended-B, and the first of the IPA Extensions behind it.
    ['letters of every block of Latin', 'ɏɐ ɐɏ Āā ſt', ['ɏɐ', 'ɐɏ', 'Āā', 'ſt']],
    ['emoji and their joiners are no words', 'A ❤️ and 👨‍👩‍👧 🇬🇧 hat', ['A', 'and', 'hat']],
  ])('%s', (_, source, expected) => {
    expect(wordTexts(source)).toEqual(expected)
  })

  // Zero-width space and word joiner: at the start, behind a mark, behind a space, at an end.
  it.each([
    ['\u200BA hen', ['A 1-2', 'hen 3-6']],
    ['“\u2060Hop”', ['Hop 2-5']],
    ['Hop!\u200B Run', ['Hop 0-3', 'Run 6-9']],
    ['A \u200Bhen \u200B sat', ['A 0-1', 'hen 3-6', 'sat 9-12']],
    ['A\u200B hen', ['A 0-1', 'hen 3-6']],
    ['Mr\u00AD. Hen sat\u00AD.', ['Mr 0-2', 'Hen 5-8', 'sat 9-12']],
    ['a\u00AD\u00ADb re-\u00ADdo', ['ab 0-4', 're-do 5-11']],
    ['😀hen😀', ['hen 2-5']],
  ])('what nobody sees stands outside its word at an end: %j', (source, expected) => {
    expect(wordsOf(readStory(source)).map(({ text, start, end }) => `${text} ${start}-${end}`)).toEqual(expected)
  })

  it('keeps the places of what is dropped', () => {
    const source = 'A sh\u00ADee\u00ADp\u00AD hid'
    const word = wordsOf(readStory(source))[1]
    expect(word).toMatchObject({ text: 'sheep', start: 2, end: 9, textStart: 2 })
    const slices = [word?.toSource(0, 2), word?.toSource(2, 4), word?.toSource(4, 5)].map((it) =>
      source.slice(it?.start, it?.end),
    )
    expect(slices).toEqual(['sh', 'ee', 'p'])
    expect(word?.toSource(1, 1)).toEqual({ start: 3, end: 3 })
  })

  it('gives for what stands outside a word, or a block, the nearest place in it', () => {
    const source = 'A *hen* sat.'
    const [block] = readStory(source).pages[0]?.blocks ?? []
    expect([-9, 0, 2, 12, 99].map((at) => block?.toSource(at))).toEqual([0, 0, 3, 12, 12])
    const sat = wordsOf(readStory(source))[2]
    expect(sat?.toSource(0, 99)).toEqual({ start: 8, end: 12 })
    expect(sat?.toSource(99, 99)).toEqual({ start: 12, end: 12 })
    const hen = wordsOf(readStory('A h&eacute;n'))[1]
    expect([hen?.toSource(0, 99), hen?.toSource(2, 1)]).toEqual([
      { start: 2, end: 12 },
      { start: 11, end: 11 },
    ])
  })

  it('gives each of two joined letters the place of their one character', () => {
    const source = 'A big *ﬁsh* &amp; a cuﬀ&shy;link'
    const [, , fish, , cuff] = wordsOf(readStory(source))
    const sliceOf = (word: typeof fish, from: number, to: number) => {
      const range = word?.toSource(from, to)
      return source.slice(range?.start, range?.end)
    }
    expect(fish).toMatchObject({ text: 'fish', start: 7, end: 10 })
    expect([sliceOf(fish, 0, 1), sliceOf(fish, 1, 2), sliceOf(fish, 0, 2), sliceOf(fish, 2, 4)]).toEqual([
      'ﬁ',
      'ﬁ',
      'ﬁ',
      'sh',
    ])
    expect(cuff).toMatchObject({ text: 'cufflink' })
    expect([sliceOf(cuff, 1, 2), sliceOf(cuff, 2, 4), sliceOf(cuff, 4, 8)]).toEqual(['u', 'ﬀ', 'link'])
    expect(source.slice(cuff?.start, cuff?.end)).toBe('cuﬀ&shy;link')
  })

  it('says whether a word has Latin letters, digits or others', () => {
    const forms = wordsOf(readStory("Tam café 6 3rd ½ שלום мир 猫 B2 Aш '90s")).map((it) => it.form)
    expect(forms).toEqual([
      ...[
        'word',
        'word',
        'numeral',
        'numeral',
        'numeral',
        'foreign',
        'foreign',
        'foreign',
        'word',
        'foreign',
        'numeral',
      ],
    ])
  })

  it('finds right-to-left words at their places', () => {
    expect(placesOf('A שלום hat')).toEqual(['A 1:1-1:2', 'שלום 1:3-1:7', 'hat 1:8-1:11'])
  })

  it('knows its page', () => {
    expect(wordsOf(readStory('A hen\n\n---\n\nA pig')).map((it) => it.page)).toEqual([1, 1, 2, 2])
  })
})

describe('marks', () => {
  const marks = (source: string) => sentencesOf(readStory(source)).flatMap((it) => it.marks.map((mark) => mark.text))

  it('are single, in order of place', () => {
    expect(marks('“Stop!!” said Tam; (a dog) — Zub?!')).toEqual(['“', '!', '!', '”', ';', '(', ')', '—', '?', '!'])
  })

  it('are whole where the run is the mark', () => {
    expect(marks('Tam... ran -- off … 👨‍👩‍👧 🇬🇧 ❤️')).toEqual(['...', '--', '…', '👨‍👩‍👧', '🇬🇧', '❤️'])
  })

  it('are whole where they are one picture, with its skin, its pair of letters or its joiner', () => {
    expect(marks('Tam 👍🏽 👍👎 🇬🇧 ❤️🔥 ☀️☁️ ☀☀')).toEqual(['👍🏽', '👍', '👎', '🇬🇧', '❤️', '🔥', '☀️', '☁️', '☀☀'])
  })

  // Reference: extended grapheme clusters of Unicode (UAX #29, UTS #51), as Intl.Segmenter cuts them. The first and last letters of flags and the
  // first and last colours of skin, with what stands beside them in Unicode.
  it.each([
    ...[
      '🇿🇦',
      '🇦🇿',
      '🇬🇧☀',
      '☀🇬🇧',
      '🇬🇧🐔',
      '🐔🇬🇧',
      '🇬🇧🏿',
      '🇬🇧🈀',
      '🈀🇬🇧',
      '🇬🇧🅰',
      '🅰🇬🇧',
      '👍🏻👍🏿👎',
      '👍🏼☀️',
      '👍🏺',
      '🐔🐀',
    ],
    ...['👩‍🌾', '👩🏽‍🚒🐓', '🏳️‍🌈🏴', '❤️‍🔥☀', '☀️❤️', '🐻‍❄️🐻', '✌🏿✌'],
  ])('are the pictures that a reader sees: %s', (run) => {
    const clusters = [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(run)].map((it) => it.segment)
    expect(marks(`Tam ${run}`)).toEqual(clusters)
    const found = sentencesOf(readStory(`Tam ${run}`)).flatMap((it) => it.marks)
    expect(found.map(({ start, end }) => `Tam ${run}`.slice(start, end))).toEqual(clusters)
  })

  it('are signs too, and dashes in a row', () => {
    expect(marks('10% of £5 + #7, 5° = a*b ~ c|d <')).toEqual(['%', '£', '+', '#', ',', '°', '=', '*', '~', '|', '<'])
    expect(marks('Tam.. .. sat –– at — 6---7')).toEqual(['..', '..', '–', '–', '—', '---'])
    expect(marks("'s ’ Sid")).toEqual(["'", '’'])
  })

  it('have the places of each sign in a run, without what nobody sees', () => {
    const source = 'Stop?!\u200B “Hop”!\u2060!'
    const found = sentencesOf(readStory(source)).flatMap((it) => it.marks)
    expect(found.map((it) => `${it.text} ${it.start}-${it.end}`)).toEqual([
      ...['? 4-5', '! 5-6', '“ 8-9', '” 12-13', '! 13-14', '! 15-16'],
    ])
  })

  it('are none the longer for what nobody sees behind them', () => {
    for (const [source, expected] of [
      ['Tam...\u200B!', ['... 3-6', '! 7-8']],
      ['Tam --\u2060', ['-- 4-6']],
      ['Tam.\u200B;-', ['. 3-4', '; 5-6', '- 6-7']],
    ] as const) {
      const found = sentencesOf(readStory(source)).flatMap((it) => it.marks)
      expect(found.map(({ text, start, end }) => `${text} ${start}-${end}`)).toEqual(expected)
    }
  })

  it('written as a reference at the very end have all of its place', () => {
    for (const source of ['Tam &amp;', '*Tam &amp;*', '- Tam &amp;\n  - Meg'])
      expect(sentencesOf(readStory(source))[0]?.marks).toEqual([
        { text: '&', start: source.indexOf('&'), end: source.indexOf(';') + 1 },
      ])
  })

  it('include the full stop of a title, and have places', () => {
    const source = 'Mr. Hen sat &amp; hid.'
    const found = sentencesOf(readStory(source)).flatMap((it) => it.marks)
    expect(found.map((it) => [it.text, it.start, it.end])).toEqual([
      ['.', 2, 3],
      ['&', 12, 17],
      ['.', 21, 22],
    ])
  })
})

describe('what a child does not read', () => {
  it.each([
    ['block quotes', 'A hen\n\n> For the adult\n\nA pig'],
    ['comments', 'A hen <!-- adult --> <!-- more -->\n\n<!-- adult -->\n\nA pig'],
    ['tags', '<div class="adult">\n\nA hen\n\n</div>\n\nA pig'],
    ['front matter', '---\ntitle: Adult\n---\nA hen\n\nA pig'],
    ['pictures', '![adult](adult.png "adult")\n\nA hen ![adult][a] A pig\n\n[a]: adult.png'],
    ['code', 'A hen `adult`\n\n```\nadult\n```\n\n    adult\n\nA pig'],
    [
      'link targets',
      '[A hen](https://adult.org "adult") <https://adult.org>\n\n[A pig][adult]\n\n[adult]: https://adult.org "adult"',
    ],
    ['page labels', '## Page 1\n\nA hen\n\n## Page 2\n\nA pig'],
  ])('%s', (_, source) => {
    expect(wordTexts(source)).toEqual(['A', 'hen', 'A', 'pig'])
  })

  it.each([
    ['web', 'A hen https://adult.org/adult?adult=1#adult A pig'],
    ['web, in brackets', 'A hen (http://adult.org/adult_(adult)). A pig'],
    ['web, without a scheme', 'A hen, WWW.adult.co.uk/~adult. A pig'],
    ['web, in a quote and in bold', 'A hen “https://adult.org”, **www.adult.org**! A pig'],
    ['web, on a line', 'A hen\nhttps://adult.org\nA pig\n\nwww.adult.org\n'],
    ['web, before a dash', 'A hen https://adult.org—A pig… https://adult.org…'],
    ['web, with what Markdown decodes', 'A hen https://adult.org/a\\_b?c&amp;d A pig'],
    ['web, as the text of a link', 'A hen [www.adult.org](https://adult.org/adult) A pig'],
    ['e-mail', 'A hen ann.adult+x@adult-x.co.uk. A pig (mailto:adult@adult.org)'],
  ])('addresses in the text: %s', (_, source) => {
    expect(wordTexts(source)).toEqual(['A', 'hen', 'A', 'pig'])
    for (const word of wordsOf(readStory(source))) expect(source.slice(word.start, word.end)).toBe(word.text)
  })

  it('leave out the brackets and quotes that hold only an address', () => {
    const source = 'A hen (www.adult.org). “adult@adult.org” (see http://adult.org)'
    const marks = sentencesOf(readStory(source)).flatMap((it) => it.marks.map((mark) => mark.text))
    expect(marks).toEqual(['.', '(', ')'])
  })

  it.each(['()', '[]', '“”', '‘’', '""', "''", '«»'])('leave out the %s that hold only an address', ([open, close]) => {
    const marks = (source: string) => sentencesOf(readStory(source)).flatMap((it) => it.marks.map((mark) => mark.text))
    expect(marks(`A hen ${open}www.adult.org/a${close} sat`)).toEqual([])
    expect(marks(`A hen ${open}a@adult.org${close} sat`)).toEqual([])
    expect(marks(`A hen ${open}see a@adult.org${close} sat`)).toEqual([open, close])
  })

  it('take no mark for two addresses side by side', () => {
    const source = 'A "www.a.org"www.b.org" sat'
    const [sentence] = sentencesOf(readStory(source))
    expect(sentence?.marks).toEqual([{ text: '"', start: 22, end: 23 }])
    expect(sentence?.words.map(({ text, start, end }) => `${text} ${start}-${end}`)).toEqual(['A 0-1', 'sat 24-27'])
  })

  it('read text that is no address', () => {
    expect(wordTexts('Awww.Tam sat at www. Tam @ Meg: a//b, tam@home http://')).toEqual([
      ...['Awww', 'Tam', 'sat', 'at', 'www', 'Tam', 'Meg', 'a', 'b', 'tam@home', 'http'],
    ])
  })

  it('still reads the text after a comment on one line', () => {
    expect(wordTexts('<!-- note --> A hen <!-- b --> hid')).toEqual(['A', 'hen', 'hid'])
    expect(placesOf('A\n\n<!-- x --> *hen*')).toEqual(['A 1:1-1:2', 'hen 3:13-3:16'])
  })

  it('parts the words on both sides of what it leaves out', () => {
    expect(wordTexts('A`x`hen![y](z)hid<br>up')).toEqual(['A', 'hen', 'hid', 'up'])
  })
})
