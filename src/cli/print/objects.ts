// Small objects for a box: what a set for a lesson asks the maker to find.

import { DATA_FOLDER, loadLexicon } from '../../packaged/data.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import type { Io } from '../io.ts'
import { makeList } from '../words/run.ts'
import type { PrintContext } from './context.ts'

/** A box for one vowel where one is asked for, else of mixed vowels; none where no object fits. */
export async function findObjects({ options, reader }: PrintContext, io: Io): Promise<Result<readonly string[]>> {
  const asked = {
    ...options,
    picture: false,
    count: options.count ?? '6',
    set: options.vowel === undefined ? ('mixed' as const) : ('box' as const),
    format: 'plain' as const,
  }
  const list = await makeList(asked, { ...reader, lexicon: loadLexicon(), folder: DATA_FOLDER, width: 80 }, io)
  if ('problem' in list) return fail({ code: 'bad-value', message: list.problem.replace(/\.$/, '') })
  return succeed(list.words.map(({ word }) => word))
}
