// Builds what one step adds from the words in the file, and reports the words that mean nothing.

import { findNearest } from '../nearest.ts'
import { type Problem, toExpected } from '../problem/index.ts'
import type { StepFile } from './schema.ts'
import type { Path, Source } from './source.ts'
import type { LimitChanges, StepAdds } from './types.ts'
import {
  CAPITALS,
  ENDING_CHANGES,
  ENDINGS,
  findChangeName,
  findEndingName,
  findMarks,
  findShape,
  LIMITS,
  MARK_NAMES,
} from './vocabulary.ts'

export const NOTHING: StepAdds = {
  correspondences: [],
  sightWords: [],
  shapes: [],
  endings: [],
  endingChanges: [],
  contractions: [],
  marks: [],
  capitals: undefined,
  numerals: undefined,
  limits: {},
}

/** All that a step adds except its correspondences, which need the example words read. */
export function buildStep(
  file: StepFile,
  path: Path,
  source: Source,
): { readonly adds: StepAdds; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const readList = <Item>(
    key: keyof StepFile,
    find: (written: string) => Item | undefined,
    names: readonly string[],
  ) => {
    const written = (file[key] ?? []) as readonly string[]
    return written.flatMap((word, at) => {
      const item = find(word)
      if (item !== undefined) return [item]
      const message = `\`${word}\` is none of the ${key} known here: ${names.join(', ')}`
      const expected = toExpected(findNearest(word, names))
      problems.push(source.problemAt([...path, key, at], { code: 'unknown-name', message, expected }))
      return []
    })
  }
  const adds: StepAdds = {
    ...NOTHING,
    sightWords: file['sight words'] ?? [],
    shapes: file.shapes === 'any' ? 'any' : readList('shapes', findShape, ['VC', 'CVC', 'CCVC', 'CVCC']),
    endings: readList('endings', findEndingName, ENDINGS),
    endingChanges: readList('ending changes', findChangeName, Object.keys(ENDING_CHANGES)),
    contractions: file.contractions ?? [],
    marks: file.marks === 'any' ? 'any' : readList('marks', findMarks, MARK_NAMES).flat(),
    capitals: file.capitals === undefined ? undefined : CAPITALS[file.capitals as keyof typeof CAPITALS],
    numerals: file.numerals === undefined ? undefined : file.numerals === true || file.numerals === 'yes',
    limits: toLimits(file.limits ?? {}),
  }
  return { adds, problems }
}

function toLimits(written: Readonly<Record<string, number | 'any' | undefined>>): LimitChanges {
  const named = LIMITS as Readonly<Record<string, string>>
  const moved = Object.entries(written).filter(([, figure]) => figure !== undefined)
  return Object.fromEntries(moved.map(([name, figure]) => [named[name] ?? name, figure])) as LimitChanges
}

/** What two layers of one step add together; the second layer has the last word on limits, capitals and numerals. */
export function mergeAdds(under: StepAdds, over: StepAdds): StepAdds {
  return {
    correspondences: [...under.correspondences, ...over.correspondences],
    sightWords: [...under.sightWords, ...over.sightWords],
    shapes: joinOrAny(under.shapes, over.shapes),
    endings: [...under.endings, ...over.endings],
    endingChanges: [...under.endingChanges, ...over.endingChanges],
    contractions: joinOrAny(under.contractions, over.contractions),
    marks: joinOrAny(under.marks, over.marks),
    capitals: over.capitals ?? under.capitals,
    numerals: over.numerals ?? under.numerals,
    limits: { ...under.limits, ...over.limits },
  }
}

function joinOrAny(under: readonly string[] | 'any', over: readonly string[] | 'any'): readonly string[] | 'any' {
  return under === 'any' || over === 'any' ? 'any' : [...under, ...over]
}
