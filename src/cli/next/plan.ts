// The plan for one lesson, from the finder's words and the sentences of the shelf.

import { createPool, findSpelling } from '../../finder/index.ts'
import { createSentenceKeeper, type LessonPlan, planWords } from '../../next/plan.ts'
import { DATA_FOLDER, isBuiltIn, loadLexicon } from '../../packaged/data.ts'
import { readWordFiles } from '../../packaged/word-files.ts'
import type { Reader } from '../../readers/index.ts'
import type { Resources } from '../../resources/types.ts'
import { openWordFiles } from '../../resources/word-files.ts'
import type { TaughtItem } from '../../sequence/item.ts'
import { type ReaderExtra, withReader } from '../../sequence/reader.ts'
import { findGapOf, type ReaderJudge, toShareOf } from '../../shelf/index.ts'
import type { Sentence } from '../../story/types.ts'
import { judge } from '../../verdict/index.ts'
import { createBookCounter } from '../book-counter.ts'
import type { Io } from '../io.ts'
import { findOwnFitness } from '../own-fitness.ts'
import { createTextRun } from '../texts.ts'
import { countUses, isUse } from './uses.ts'

export interface Wanted {
  readonly reader: Reader
  readonly item: TaughtItem
  readonly given: readonly string[]
  readonly share: number
  readonly folderRun: { readonly config?: string }
  readonly resources: Resources
}

const SENTENCES = 3

export async function planLesson(
  { reader, item, given, share: ready, folderRun, resources }: Wanted,
  io: Io,
): Promise<LessonPlan> {
  const { sequence, step } = reader
  const phonics = resources.phonicsFor(sequence.accent)
  const extra = teach(reader.extra, item)
  const knowledge = withReader(reader.knowledge, toOwn(item))
  const keeper = createSentenceKeeper(SENTENCES)
  const counter = createBookCounter([{ sequence, knowledge }], resources)
  const [judges] = counter.judges as readonly [ReaderJudge]
  let book: LessonPlan['book']
  let most = -1
  const run = createTextRun(io, folderRun.config === undefined ? {} : { config: folderRun.config })
  await run?.each(given, async (text) => {
    const { path, own, story, names, sightWords } = text
    const known = sightWords.length === 0 ? knowledge : withReader(knowledge, { sightWords })
    const isReadable = ({ words }: Sentence): boolean =>
      words.every(({ text, form }) => form === 'word' && judge(phonics.read(text), known, names).readable)
    for (const { blocks, number } of story.pages)
      for (const { sentences, text: whole, kind } of blocks)
        for (const sentence of kind === 'paragraph' ? sentences : []) {
          const hits = sentence.words.filter(({ text }) => isUse(text, item, phonics)).length
          if (hits === 0 || !isReadable(sentence)) continue
          const text = whole.slice(sentence.textStart, sentence.textEnd).replace(/\s+/g, ' ').trim()
          keeper.add({ text, path, page: number }, hits, sentence.words.length)
        }
    const { count, book: counted } = await counter.count(text)
    const gap = findGapOf(counted, judges, sequence)
    const uses = countUses(count, item, phonics)
    const share = toShareOf(gap)
    // Of the books that can be read, the one that uses the new thing most; else the one nearest to it.
    const worth = share >= ready && uses > 0 ? 1 + uses : share
    if (worth > most) {
      most = worth
      book = { path, title: own.title?.value, share, uses }
    }
  })
  const lexicon = loadLexicon()
  const { data, table } = openWordFiles(readWordFiles(DATA_FOLDER), lexicon.size)
  const builtIn = isBuiltIn(sequence) ? sequence.name : undefined
  const fitness = await findOwnFitness(data, io)
  const pool = createPool({ table, facts: data.facts, lexicon, phonics, fitness }, { sequence, step, builtIn, extra })
  const found = item.kind === 'word' ? undefined : findSpelling(item.written, sequence, phonics)
  const spelling = found && 'spelling' in found ? found.spelling : undefined
  return { item, words: planWords(pool, spelling), sentences: keeper.kept, book }
}

/** What the lesson adds, by itself. */
function toOwn(item: TaughtItem): ReaderExtra {
  if (item.kind === 'word') return { sightWords: [item.written] }
  return item.kind === 'ending' ? { endings: [item.ending] } : { correspondences: item.keys }
}

/** The reader's own, as it is after the lesson. */
function teach(before: ReaderExtra, item: TaughtItem): ReaderExtra {
  const more = toOwn(item)
  const without = <Item>(all: readonly Item[] = [], gone: readonly Item[] = []) =>
    all.filter((one) => !gone.includes(one))
  return {
    ...before,
    sightWords: [...(before.sightWords ?? []), ...(more.sightWords ?? [])],
    sightWordsNotYet: without(before.sightWordsNotYet, more.sightWords),
    correspondences: [...(before.correspondences ?? []), ...(more.correspondences ?? [])],
    correspondencesNotYet: without(before.correspondencesNotYet, more.correspondences),
    endings: [...(before.endings ?? []), ...(more.endings ?? [])],
    endingsNotYet: without(before.endingsNotYet, more.endings),
  }
}
