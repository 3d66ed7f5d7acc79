// How early-reader text parts into sentences. Common practice, no source; `|` marks where a sentence ends.

import { describe, expect, it } from 'vitest'
import { sentenceTexts } from './helpers.ts'

const splits = [
  // Days, months, units and other short forms that the parser takes for abbreviations.
  'The cat sat. | The dog ran.',
  'It is hot in the sun. | Tam has a hat.',
  'Come in. | Sit on the mat.',
  'The hen is wet. | Sid is not.',
  'A red mark can mar. | Rub it off.',
  'Wait a min. | Meg is here.',
  'Tam is my gal. | She can run.',
  'I am Jan. | He is Al.',
  'This is Ed. | Pa is not in.',
  'I met Ken. | He met Ida.',
  'Go on, Mo. | Get it, Tex.',
  'It is on my id. | Zub can see.',
  'Ned is ill. | Get him a cup.',
  'Fill it to the pt. | Stop.',
  'A foot is a ft. | It is long.',
  'He sat in the car. | Did he go? | No.',
  'The van is from Mass. | It is red.',
  'Look at the oct. | It has eight legs.',
  // Numbers below a thousand, and numbers that start a sentence.
  'I am 6. | She is 7.',
  'I am 6. | 7 is more.',
  'He has 10. | I have 100. | 100 is a lot.',
  'Six hens ran. | 6 men came.',
  '“Run!” | 6 men came.',
  // Titles do not end a sentence.
  'Mr. Hen met Mrs. Duck.',
  'Ms. Pond and Dr. Hill ran. | They sat.',
  'We went to St. Ives. | It was hot.',
  'Prof. Duck and Capt. Hen ran.',
  'I saw Mr. and Mrs. Duck. | Mr. Duck sat.',
  'Tom T. Hen ran. | A. A. Hen sat.',
  'She got an A. | Tam got a B. | Well done.',
  'It is I. | It is me.',
  // Short forms inside a sentence and at its end.
  'We had figs, nuts, etc. and a bun.',
  'We had figs, nuts, etc. | Then we sat.',
  'Get up at 6 a.m. on Sunday.',
  'I got up at 6 a.m. | The sun was up.',
  // Speech.
  '“Stop!” said Tam.',
  '"Can I?" she said. | "No," said Meg.',
  'Tam said, “Sit. | Stay.” | Zub sat.',
  "'Get up,' said Tam. | 'Er, yes,' said Meg.",
  '“I can,” he said. | “Can you?” | “Yes!”',
  // Marks.
  'Hop! hop! hop! | The frog is off.',
  'Tam ran... | Meg ran too.',
  'Tell me...now! | Yes.',
  'Tell me… then go. | Yes.',
  'What?! | It is a pig!',
  'Stop — look! | A big pig — in a wig.',
  'It is red. | 😀 Meg is glad.',
  // Slips that writers make.
  'The cat sat. | the dog ran.',
  'The cat sat.|The dog ran.',
  'Did Sid sit?|Yes.|No.',
  // Things that look like ends.
  '1\\. Get a pan. | 2\\. Get an egg.',
  'It is 3.5 long. | It is 9:30 now.',
  'The U.S. flag is up.',
  'The U.S.A. is big. | It is far.',
  '12\\. Get a pan. | 123\\. Get an egg.',
  'a\\. Get a pan. | b\\. Get an egg.',
  'I sat. | 12. Get a pan.',
  'Bus 12. | Get on.',
  'Go in. | It is 6.30 now.',
  // Initials of names, after a name, at the start of a sentence and in speech.
  'Look. | T. Hen ran.',
  'Tam Hen B. Duck ran.',
  '“T. Hen ran.”',
  'Look, A. Hen ran.',
  'I saw a T. | Tam ran.',
  'Tam has a B. | it is red.',
  'Mr Hen sat. | Mr. Hen ran.',
  'We met Dr. and Mrs. Hen.',
  // What opens the next sentence after a short form, and what only goes on.
  'We had figs, etc. | “Yum!” said Tam.',
  'We had figs, etc. | ‘Yum!’ said Tam.',
  "We had figs, etc. | 'Yum!' said Tam.",
  'We had figs, etc. | «Yum!» said Tam.',
  'We had figs, etc. | (It was hot.)',
  'We had figs, etc. | [It was hot.]',
  'We had figs, etc. | 6 men sat.',
  "We had figs, etc. 'tis hot.",
  'We had figs, etc., and a bun.',
  'We had figs, etc. - and a bun.',
  'We had figs, etc.',
  'We like pets, e.g. Hens and pigs.',
  'We like pets, i.e. Zub.',
  // Brackets and quotes that close with the sentence.
  '(He sat.) | Tam ran.',
  '[He sat.] | Tam ran.',
  '«Stop!» | Tam ran.',
  '‹Stop!› | He ran.',
  "'Stop.' | Tam ran.",
  '"Stop." | Tam ran.',
  '“Sit!” the hen ran.',
  '“Stop!”, said Tam.',
  // The parser's lists of units, months and counties hold `in`, `sat` and `sun`.
  'He ran in. | “Go!” said Tam.',
  'He ran in.|“Go!” said Tam.',
  'Meg sat.|“Go!” said Tam.',
  // A dash between speech and who says it, as it is set in Britain and on the continent; one before a capital begins anew.
  '“Stop!” – said Tam. | Meg ran.',
  '“Is it Tam?” — said Meg.',
  '“Stop!” - said Tam.',
  '“Stop!” -- said Tam.',
  'Stop! – said Tam.',
  'Wait... – said Meg.',
  '“Stop!” –said Tam.',
  '“Stop!” | – Tam sat.',
  '“Stop!” | – “No!” said Tam.',
  'Tam sat. | – the hen ran.',
  'Tam sat! | – 6 hens ran.',
  // More marks.
  'Wait… | Zub is here.',
  'Wait … | Zub is here.',
  'Really‽ | Yes.',
  'Hop!! | Hop!!',
  'Hop! | Hop',
  // What has no word is no sentence.
  'Tam sat. 😀',
  'Run! 🐔🐔',
  'Tam sat. | 😀 Meg ran.',
  // A dropped letter.
  "He ran! | 'tis wet.",
  "He ran. | 'tis wet.",
  "'Im? | Yes!' said Meg.",
  // An apostrophe further on says nothing of the first letter.
  'He ran! | It’s hot.',
  "“Stop!” | It's hot.",
  // More slips.
  'Hop. | hop. | hop.',
  'Tam ran!|Meg ran.',
  'Tam ran...|Meg ran.',
  'Tam ran.|“Stop!” he said.',
  'Tam ran!”|Meg sat.',
  'Tam ran.|6 hens sat.',
  'Tam ran?meg ran.',
  'Stop! , he said.',
  'Stop! ; he said.',
]

describe('sentences', () => {
  it('has fifty and more to try', () => {
    expect(splits.length).toBeGreaterThanOrEqual(50)
  })

  it.each(splits)('%s', (marked) => {
    const source = marked.replaceAll(' | ', ' ').replaceAll('|', '')
    const expected = marked.split('|').map((it) => it.trim().replaceAll('\\', ''))
    expect(sentenceTexts(source)).toEqual(expected)
  })

  // Titles as style guides list them (New Hart's Rules, The Chicago Manual of Style), from memory.
  it('part a very long paragraph as they part a short one', () => {
    const words = 'The hen and the pig sat in the hut with a red hat on its peg'.split(' ')
    // Of one to fifteen words, in an order that does not come again: 20,000 letters.
    const sentences = Array.from({ length: 900 }, (_, at) => `${words.slice(0, 1 + ((at * at) % 15)).join(' ')}.`)
    expect(sentences.join(' ').length).toBeGreaterThan(18_000)
    expect(sentenceTexts(sentences.join(' '))).toEqual(sentences)
  })

  it.each('Capt Dr Lt Messrs Mlle Mme Mr Mrs Ms Mt Mx Prof Rev Sgt St Ste'.split(' '))(
    'goes on after the title %s, and ends after the word in small letters',
    (title) => {
      expect(sentenceTexts(`We met ${title}. Hen. It was hot.`)).toEqual([`We met ${title}. Hen.`, 'It was hot.'])
      const word = title.toLowerCase()
      expect(sentenceTexts(`We met ${word}. Hens ran.`)).toEqual([`We met ${word}.`, 'Hens ran.'])
    },
  )

  it.each('a.m approx co etc inc jr ltd p.m sr vs'.split(' '))('may end after %s, and may go on', (short) => {
    expect(sentenceTexts(`It is ${short}. The sun is up.`)).toEqual([`It is ${short}.`, 'The sun is up.'])
    expect(sentenceTexts(`It is ${short}. or so.`)).toEqual([`It is ${short}. or so.`])
  })

  it.each(['e.g', 'eg', 'E.g', 'i.e', 'ie', 'viz'])('never ends after %s', (lead) => {
    expect(sentenceTexts(`We like pets, ${lead}. Hens and pigs.`)).toEqual([`We like pets, ${lead}. Hens and pigs.`])
  })

  it('ends with the block, whatever its last mark', () => {
    expect(sentenceTexts('# The cat\n\nsat and\n\n- ran')).toEqual(['The cat', 'sat and', 'ran'])
  })

  it('goes on over a line break', () => {
    expect(sentenceTexts('One hen sat\nin the sun\\\nall day. It was  \nhot.')).toEqual([
      'One hen sat\nin the sun\nall day.',
      'It was\nhot.',
    ])
  })

  it('is found in one long paragraph, part by part', () => {
    const sentence = 'Mr. Hen sat on a mat and Sid ran to the pond.'
    const texts = sentenceTexts(Array.from({ length: 2000 }, () => sentence).join(' '))
    expect(texts).toHaveLength(2000)
    expect(new Set(texts)).toEqual(new Set([sentence]))
  })
})
