// Loads a sequence from YAML: reads it, checks it, finds the sounds of its examples, and says what is wrong where.

import * as v from 'valibot'
import { findNearest } from '../nearest.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import { buildStep, mergeAdds, NOTHING } from './build-step.ts'
import { checkOrder } from './check-order.ts'
import { type StepDraft, toDrafts } from './extend.ts'
import { type SequenceFile, sequenceSchema } from './schema.ts'
import { isUnknownKey, toPath, toSchemaProblem } from './schema-problems.ts'
import { type SequenceProblem, type Source, toSource } from './source.ts'
import { findRepeats, readTeach, remember, type TeachTools, toTaughtSoFar } from './teach.ts'
import type { Sequence, Step } from './types.ts'
import { ACCENTS } from './vocabulary.ts'

/** What loading needs from outside; nothing here touches a file. */
export interface LoadTools {
  phonicsFor(accent: Accent): Phonics
  /** The YAML of a sequence that another extends, or that sequence ready-made; undefined where there is none. */
  resolve?(name: string, accent: Accent | undefined): string | Sequence | undefined
  /** The names that can be resolved, to offer the nearest. */
  names?(): readonly string[]
  /** The accent to read the examples in, instead of the file's own. */
  readonly accent?: Accent | undefined
}

/** `sequence` is undefined where the file is too broken to use; else it holds all that could be read. */
export interface LoadedSequence {
  readonly sequence: Sequence | undefined
  /** In order of place. */
  readonly problems: readonly SequenceProblem[]
}

/** Never throws on bad input. */
export function loadSequence(yaml: string, tools: LoadTools): LoadedSequence {
  return load(yaml, tools, [])
}

function load(yaml: string, tools: LoadTools, extending: readonly string[]): LoadedSequence {
  const source = toSource(yaml)
  if (source.problems.length > 0) return { sequence: undefined, problems: source.problems }
  const { file, problems } = readFile(source)
  if (file === undefined) return { sequence: undefined, problems }
  const base = loadBase(file, source, tools, extending)
  const built = build(file, base.sequence, source, tools)
  const all = [...problems, ...base.problems, ...built.problems]
  return { sequence: built.sequence, problems: all.sort((a, b) => a.line - b.line || a.column - b.column) }
}

// A key that does not exist is left out, so that the rest of the file is still checked.
function readFile(source: Source): { file: SequenceFile | undefined; problems: readonly SequenceProblem[] } {
  if (Array.isArray(source.value)) {
    return { file: undefined, problems: [source.problemAt([], 'Write a sequence as `name: …` and `steps: …`')] }
  }
  const first = v.safeParse(sequenceSchema, source.value)
  if (first.success) return { file: first.output, problems: [] }
  const problems = first.issues.map((issue) => toSchemaProblem(issue, source))
  const value = structuredClone(source.value)
  for (const issue of first.issues.filter(isUnknownKey)) {
    const path = toPath(issue)
    const holder = path
      .slice(0, -1)
      .reduce<unknown>((node, key) => (node as Record<string | number, unknown>)?.[key], value)
    delete (holder as Record<string | number, unknown>)[path.at(-1) ?? '']
  }
  const again = v.safeParse(sequenceSchema, value)
  return { file: again.success ? again.output : undefined, problems }
}

function loadBase(file: SequenceFile, source: Source, tools: LoadTools, extending: readonly string[]): LoadedSequence {
  const name = file.extends
  if (name === undefined) return { sequence: undefined, problems: [] }
  const fail = (message: string, suggestion?: string) => ({
    sequence: undefined,
    problems: [source.problemAt(['extends'], message, { suggestion })],
  })
  if (extending.includes(name)) return fail(`\`${name}\` extends itself, by way of ${[...extending, name].join(' → ')}`)
  const found = tools.resolve?.(name, tools.accent ?? (file.accent as Accent | undefined))
  if (found === undefined) {
    const names = tools.names?.() ?? []
    const nearest = findNearest(name, names)
    const hint = nearest !== undefined || names.length === 0 ? '' : `. Those to extend are ${names.join(', ')}`
    return fail(`There is no sequence \`${name}\` to extend${hint}`, nearest)
  }
  if (typeof found !== 'string') return { sequence: found, problems: [] }
  const base = load(found, tools, [...extending, name])
  if (base.problems.length === 0) return base
  const [first] = base.problems
  return {
    ...base,
    problems: [source.problemAt(['extends'], `\`${name}\` has a mistake on line ${first?.line}: ${first?.message}`)],
  }
}

function build(file: SequenceFile, base: Sequence | undefined, source: Source, tools: LoadTools): LoadedSequence {
  const ownAccent = (file.accent as Accent | undefined) ?? base?.accent ?? 'general-american'
  const accent = tools.accent ?? ownAccent
  const { drafts, problems } = toDrafts(base?.steps ?? [], file.steps, source)
  const context = {
    source,
    phonics: tools.phonicsFor(accent),
    others: () => ACCENTS.filter((other) => other !== accent).map((other) => tools.phonicsFor(other)),
    isOwnAccent: accent === ownAccent,
    soFar: toTaughtSoFar(),
  }
  const built = drafts.map((draft) => buildDraft(draft, context))
  const steps = built.map(({ step }) => step)
  const settings = file.settings
  const sequence: Sequence = {
    name: file.name,
    title: file.title ?? file.name,
    accent,
    steps,
    lookAlikes: [...(base?.lookAlikes ?? []), ...(file['look-alikes'] ?? [])],
    endings: (settings?.endings as Sequence['endings'] | undefined) ?? base?.endings ?? 'named',
    reducedVowels:
      (settings?.['reduced vowels'] as Sequence['reducedVowels'] | undefined) ?? base?.reducedVowels ?? 'accept',
  }
  const found = [...problems, ...built.flatMap((one) => one.problems), ...checkOrder(steps, drafts, source)]
  return { sequence, problems: found }
}

function buildDraft(
  draft: StepDraft,
  context: TeachTools,
): { readonly step: Step; readonly problems: readonly SequenceProblem[] } {
  const { id, base, own, at } = draft
  const under = base?.adds ?? NOTHING
  remember(under, id, context.soFar)
  if (own === undefined || at === undefined)
    return { step: { id, title: base?.title ?? id, adds: under }, problems: [] }
  const path = ['steps', at]
  const { adds, problems } = buildStep(own, path, context.source)
  const { taught, problems: untaught } = readTeach(own.teach ?? [], id, path, context)
  const repeats = findRepeats(adds, id, path, context.source, context.soFar)
  const step = {
    id,
    title: own.title ?? base?.title ?? id,
    adds: mergeAdds(under, { ...adds, correspondences: taught }),
  }
  return { step, problems: [...problems, ...untaught, ...repeats] }
}
