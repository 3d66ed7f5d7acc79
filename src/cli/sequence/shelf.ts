// One run of `sequence --shelf`: counts the words that each step has for a book, and the books that are there for it.

import { createPool, type Pool } from '../../finder/index.ts'
import { countStepWords } from '../../finder/step-words.ts'
import { DATA_FOLDER, isBuiltIn, loadLexicon, loadPhonics } from '../../packaged/data.ts'
import { readWordFiles } from '../../packaged/word-files.ts'
import { toStepWordsJson, toStepWordsText } from '../../report/step-words.ts'
import { openWordFiles } from '../../resources/word-files.ts'
import { findStep } from '../../sequence/knowledge.ts'
import type { Sequence } from '../../sequence/types.ts'
import { type ExitCode, toPaint, toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { findOwnFitness } from '../own-fitness.ts'
import { createResources } from '../resources.ts'
import { createTextRun } from '../texts.ts'

/** @param shelf a folder of books; true where none was given */
export async function runShelf(
  sequence: Sequence,
  shelf: string | true,
  format: 'pretty' | 'json',
  io: Io,
): Promise<ExitCode> {
  const counted = shelf === true ? undefined : await countBooks(shelf, sequence, io)
  const steps = countStepWords(await openPool(sequence, io), sequence)
  const report = { sequence, steps, books: counted?.books }
  io.stdout.write(
    format === 'json'
      ? `${JSON.stringify(toStepWordsJson(report), null, 2)}\n`
      : toStepWordsText(report, { width: toWidth(io), paint: await toPaint(io) }),
  )
  return counted?.hasFailed ? 2 : 0
}

async function openPool(sequence: Sequence, io: Io): Promise<Pool> {
  const lexicon = loadLexicon()
  const { data, table } = openWordFiles(readWordFiles(DATA_FOLDER), lexicon.size)
  const step = sequence.steps.at(-1)?.id ?? ''
  const builtIn = isBuiltIn(sequence) ? sequence.name : undefined
  const fitness = await findOwnFitness(data, io)
  const sources = { table, facts: data.facts, lexicon, phonics: loadPhonics(sequence.accent), fitness }
  return createPool(sources, { sequence, step, builtIn })
}

/** Books whose own settings name another sequence are not for a step of this one. */
async function countBooks(
  shelf: string,
  sequence: Sequence,
  io: Io,
): Promise<{ readonly books: ReadonlyMap<string, number>; readonly hasFailed: boolean }> {
  const books = new Map<string, number>()
  const resources = createResources(io)
  const run = createTextRun(io, {})
  await run?.each([shelf], async ({ settings }) => {
    const named = await resources.sequence(settings.sequence.value, undefined)
    const step = findStep(sequence, settings.step.value ?? '')
    if (!named.ok || named.value.name !== sequence.name || step === undefined) return
    books.set(step.id, (books.get(step.id) ?? 0) + 1)
  })
  return { books, hasFailed: run?.hasFailed() ?? true }
}
