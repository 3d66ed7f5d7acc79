// The word bank for writing, on one sheet of paper.

import { DATA_FOLDER, loadLexicon } from '../../packaged/data.ts'
import { type Bank, fitsBank, layBank } from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { toBankText, type WordBank } from '../../report/bank.ts'
import { toStepName } from '../../report/step.ts'
import { findStep } from '../../sequence/index.ts'
import { findMissingLetters, type Prepared, toAskedFor } from '../../sheets/index.ts'
import type { Io } from '../io.ts'
import { findBank } from '../words/run.ts'
import type { PrintContext } from './context.ts'

export async function layBankPage({ options, reader, ask }: PrintContext, io: Io): Promise<Result<Prepared>> {
  const { words, wordsFrom, set } = options
  const other = words !== undefined ? '--words' : wordsFrom !== undefined ? '--words-from' : set && '--set'
  if (other)
    return fail({ code: 'bad-value', message: `${other} is for other sheets: \`print bank\` finds its words itself` })
  const { id, title: own } = findStep(reader.sequence, reader.step) ?? { id: reader.step, title: reader.step }
  const who = reader.name === undefined ? '' : `${reader.name}, `
  const title = `A word bank for writing: ${who}step ${toStepName({ id, title: own })} of ${reader.sequence.title}`
  const tools = { ...reader, lexicon: loadLexicon(), folder: DATA_FOLDER, width: 80 }
  const bank = await findBank({ ...options, format: 'plain' }, tools, (one) => fitsBank(toBank(title, one), ask), io)
  if ('problem' in bank) return fail({ code: 'bad-value', message: bank.problem.replace(/\.$/, '') })
  if (bank.parts.every((part) => part.words.length === 0))
    return fail({
      code: 'no-words',
      message: 'There is no word to print',
      note: 'Ask for less at once, or for a later step.',
    })
  const missing = findMissingLetters(ask, listTexts(bank))
  if (missing) return missing
  const laid = layBank(toBank(title, bank), ask)
  if (laid === undefined)
    return fail({
      code: 'does-not-fit',
      message: 'So many words do not go on one page',
      note: 'Ask for fewer with --count.',
    })
  return succeed({ laid, title, name: ['bank', reader.step, ...toAskedFor(options)], notices: [] })
}

const toBank = (title: string, bank: WordBank): Bank => ({ title, ...toBankText(bank) })

const listTexts = ({ names, parts }: WordBank): readonly string[] => [
  ...names,
  ...parts.flatMap(({ words }) => words.map(({ word }) => word)),
]
