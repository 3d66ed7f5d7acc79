// Reads a file of heteronyms, and tells each mistake at its line and column.

import { findNearest } from '../../../src/nearest.ts'
import type { WrittenForm, WrittenHeteronym } from '../../../src/phonics/heteronyms/types.ts'
import { type Found, inOrder, type Problem, toExpected } from '../../../src/problem/index.ts'
import { parseBy } from '../../../src/sequence/schema-problems.ts'
import { type Path, type Source, toSource } from '../../../src/sequence/source.ts'
import { GROUPS, type HeteronymFile, heteronymsSchema } from './schema.ts'

type Row = HeteronymFile[number]
type Form = Row['forms'][number]

/** @param path of the file, as shown to people */
export function readHeteronyms(
  yaml: string,
  path: string,
): { readonly rows: readonly WrittenHeteronym[]; readonly problems: readonly Problem[] } {
  const source = toSource(yaml, path)
  if (source.problems.length > 0) return { rows: [], problems: source.problems }
  const { value, problems } = parseBy(heteronymsSchema, source)
  const further = (value ?? []).flatMap((row, at) => [
    ...findOutOfOrder(value ?? [], at, source),
    ...findInRow(row, at, source),
  ])
  return { rows: (value ?? []).map(toRow), problems: inOrder([...problems, ...further]) }
}

const bad = (source: Source, path: Path, found: Omit<Found, 'code'>): Problem =>
  source.problemAt(path, { code: 'bad-value', ...found })

function findOutOfOrder(rows: readonly Row[], at: number, source: Source): readonly Problem[] {
  const [before, word] = [rows[at - 1]?.word ?? '', rows[at]?.word ?? '']
  if (before < word) return []
  const message = before === word ? `\`${word}\` is here twice` : `\`${word}\` belongs before \`${before}\``
  return [bad(source, [at, 'word'], { message })]
}

function findInRow({ word, otherwise, fallback, thing, forms }: Row, at: number, source: Source): readonly Problem[] {
  const keys = forms.map(({ form }) => form)
  const [first, second] = forms
  const problems = forms.flatMap((form, k) => findInForm(word, form, [at, 'forms', k], source))
  for (const [field, named] of Object.entries({ otherwise, fallback, thing })) {
    if (named === undefined || keys.includes(named)) continue
    const message = `\`${word}\` has no form \`${named}\``
    problems.push(bad(source, [at, field], { message, expected: toExpected(findNearest(named, keys)) }))
  }
  for (const key of ['form', 'sounds'] as const) {
    if (first?.[key] !== second?.[key]) continue
    const message = `Both forms of \`${word}\` have the ${key === 'form' ? 'key' : 'sounds'} \`${first?.[key]}\``
    problems.push(bad(source, [at, 'forms', 1, key], { message }))
  }
  return problems
}

function findInForm(word: string, form: Form, path: Path, source: Source): Problem[] {
  const problems: Problem[] = []
  if (
    !form.example
      .toLowerCase()
      .split(/[^a-z]+/)
      .includes(word)
  )
    problems.push(bad(source, [...path, 'example'], { message: `The example does not hold \`${word}\`` }))
  for (const [k, phrase] of (form.phrases ?? []).entries()) {
    const at = [...path, 'phrases', k]
    const parts = phrase.split(' ')
    const count = parts.filter((part) => part === '_').length
    const message = `A phrase has one \`_\` for the word, and \`${phrase}\` has ${count}`
    if (count !== 1) problems.push(bad(source, at, { message }))
    for (const group of parts.flatMap((part) => part.split('/')).filter((part) => part.startsWith('@'))) {
      if ((GROUPS as readonly string[]).includes(group)) continue
      const expected = toExpected(findNearest(group, GROUPS))
      problems.push(bad(source, at, { message: `There is no group \`${group}\``, expected }))
    }
  }
  return problems
}

function toRow({ forms, ...row }: Row): WrittenHeteronym {
  const toForm = ({ 'by hand': byHand, ...form }: Form): WrittenForm =>
    ({ ...form, ...(byHand && { byHand }) }) as WrittenForm
  return { ...row, forms: forms.map(toForm) } as WrittenHeteronym
}
