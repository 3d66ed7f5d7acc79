// The rows of the table for classes of words and of a class's own sequences, each by material made or drawn for it.

import { measureEndedWords } from './ended-words.ts'
import type { Engine } from './engine.ts'
import type { Row } from './rows.ts'
import { measureContractions, measureToldLines } from './told-lines.ts'
import {
  type Judged,
  measureAbbreviations,
  measureBritishSpellings,
  measureByHeart,
  measureCapitals,
  measureOfTwo,
  measureSequenceSlips,
} from './word-kinds.ts'

const OWN = "the project's own list, from memory"
const DRAWN = 'words in use, drawn by a seed'
const SMALL = 'words in use and small sequences, drawn by a seed'

const toNote = (words: readonly string[]): Pick<Row, 'note'> =>
  words.length === 0 ? {} : { note: `otherwise: ${words.slice(0, 5).join('; ')}` }

const toRow = (what: string, { asked, wrong }: Judged, source: string): Row => ({
  what,
  published: `${asked}`,
  ours: `${asked - wrong.length}`,
  source,
  ...toNote(wrong),
})

const toNone = (what: string, asked: number, wrong: readonly string[], source: string): Row => ({
  what,
  published: `0 of ${asked}`,
  ours: `${wrong.length}`,
  source,
  ...toNote(wrong),
})

export function classRows(engine: Engine): readonly Row[] {
  const { asked, told, exceptions, stillUnread, wrongLead } = measureToldLines(engine)
  const contractions = measureContractions(engine)
  const heart = measureByHeart(engine)
  return [
    toRow(
      'words that no step makes readable, readable once the lines that are told are added',
      { asked: told, wrong: stillUnread },
      `${SMALL}; ${exceptions} more are exceptions`,
    ),
    toNone('such words of which first something is told that is taught later', asked, wrongLead, SMALL),
    toNone(
      'contractions readable where no step teaches them, though their first part is known by heart',
      contractions.asked,
      contractions.readUntaught,
      OWN,
    ),
    toRow(
      'contractions readable at the step that teaches them by name',
      { asked: contractions.asked, wrong: contractions.unreadTaught },
      OWN,
    ),
    toNone('words learnt by heart that count as practice of a sound', heart.asked, heart.wrong, 'the three series'),
    toRow('slips in a sequence file told with the nearest right thing', measureSequenceSlips(engine), OWN),
    toRow('British spellings and American ones known in a British accent', measureBritishSpellings(engine), OWN),
    toRow(
      'abbreviations told as what they are, and words in capitals that are none',
      measureAbbreviations(engine),
      OWN,
    ),
    toRow('words in capitals judged as in small letters, half of them made', measureCapitals(engine), DRAWN),
    toRow(
      'words with an ending readable with their stem, their ending and its change',
      measureEndedWords(engine),
      DRAWN,
    ),
    toRow('words of two little ones readable where both are, three sequences, both accents', measureOfTwo(engine), OWN),
  ]
}
