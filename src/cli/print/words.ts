// Sheets of words by the command: finds the words and their pictures, and has them laid out.

import { type Result, succeed } from '../../problem/index.ts'
import { layWords as layOut, type Prepared, type WordSheetKind } from '../../sheets/index.ts'
import type { Io } from '../io.ts'
import type { PrintContext } from './context.ts'
import { createPictureFinder } from './pictures.ts'
import { findWanted } from './wanted.ts'

export async function layWords(context: PrintContext, io: Io): Promise<Result<Prepared>> {
  const { options, wishes, ask, reader } = context
  const kind = context.kind as WordSheetKind
  const finder = createPictureFinder({ folder: options.pictures, isSetUsed: options.ownSet, isGrey: wishes.isGrey }, io)
  if (!finder.ok) return finder
  const wanted = await findWanted({ kind, options, reader, hasPicture: finder.value.has }, io)
  if (!wanted.ok) return wanted
  const { words, notices } = wanted.value
  const { mark } = wishes
  const { group } = options
  const laid = layOut({ kind, words, asked: options, mark, group, reader, ask, findPicture: finder.value.find })
  return laid.ok ? succeed({ ...laid.value, notices: [...notices, ...laid.value.notices] }) : laid
}
