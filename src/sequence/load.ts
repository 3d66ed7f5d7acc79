// Loads a sequence from YAML: reads it, checks it, finds the sounds of its examples, and says what is wrong where.

import { findNearest } from '../nearest.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import { type Found, inOrder, isError, type Problem, toExpected, toProblemText } from '../problem/index.ts'
import { buildStep, mergeAdds, NOTHING } from './build-step.ts'
import { checkOrder } from './check-order.ts'
import { type StepDraft, toDrafts } from './extend.ts'
import { type SequenceFile, sequenceSchema } from './schema.ts'
import { type Parsed, parseBy } from './schema-problems.ts'
import { findMisspelt } from './slips.ts'
import { type Source, toSource } from './source.ts'
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
  /** Of the file, as shown to people. */
  readonly path?: string
  /** The accent to read the examples in, instead of the file's own. */
  readonly accent?: Accent | undefined
  /** The file is written for every accent: two lines may say one sound in one of them. */
  readonly isForEveryAccent?: true
}

/** `sequence` is undefined where the file is too broken to use; else it holds all that could be read. */
export interface LoadedSequence {
  readonly sequence: Sequence | undefined
  /** In order of place. */
  readonly problems: readonly Problem[]
}

/** Never throws on bad input. */
export function loadSequence(yaml: string, tools: LoadTools): LoadedSequence {
  return load(yaml, tools, [])
}

function load(yaml: string, tools: LoadTools, extending: readonly string[]): LoadedSequence {
  const source = toSource(yaml, extending.length === 0 ? tools.path : extending.at(-1))
  if (source.problems.length > 0) return { sequence: undefined, problems: source.problems }
  const { value: file, problems } = readFile(source)
  if (file === undefined) return { sequence: undefined, problems: inOrder(problems) }
  const base = loadBase(file, source, tools, extending)
  const built = build(file, base.sequence, source, tools)
  return { sequence: built.sequence, problems: inOrder([...problems, ...base.problems, ...built.problems]) }
}

function readFile(source: Source): Parsed<SequenceFile> {
  if (!Array.isArray(source.value)) return parseBy(sequenceSchema, source)
  const message = 'Write a sequence as `name: …` and `steps: …`'
  return { value: undefined, problems: [source.problemAt([], { code: 'bad-value', message })] }
}

function loadBase(file: SequenceFile, source: Source, tools: LoadTools, extending: readonly string[]): LoadedSequence {
  const name = file.extends
  if (name === undefined) return { sequence: undefined, problems: [] }
  const fail = (found: Found) => ({ sequence: undefined, problems: [source.problemAt(['extends'], found)] })
  if (extending.includes(name)) {
    const way = [...extending, name].join(' → ')
    return fail({ code: 'circle', message: `\`${name}\` extends itself, by way of ${way}` })
  }
  const found = tools.resolve?.(name, tools.accent ?? (file.accent as Accent | undefined))
  if (found === undefined) return fail(toUnknownBase(name, tools.names?.() ?? []))
  if (typeof found !== 'string') return { sequence: found, problems: [] }
  const base = load(found, tools, [...extending, name])
  const first = base.problems.find(isError)
  // What is doubtful there is told of that file, not of this one.
  if (first === undefined) return { ...base, problems: [] }
  const message = `\`${name}\` has a mistake on line ${first.place?.start.line ?? 1}: ${toProblemText(first)}`
  return { ...base, ...fail({ code: first.code, message }) }
}

function toUnknownBase(name: string, names: readonly string[]): Found {
  const nearest = findNearest(name, names)
  const isListed = nearest === undefined && names.length > 0
  return {
    code: 'unknown-name',
    message: `There is no sequence \`${name}\` to extend`,
    expected: toExpected(nearest),
    ...(isListed && { note: `Those to extend are ${names.join(', ')}.` }),
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
    isAccentChosen: file.accent !== undefined || tools.accent !== undefined,
    isForEveryAccent: tools.isForEveryAccent === true,
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
  // What a step follows, and what the steps before it allow, cannot be told without those of the extended sequence.
  const isBaseLost = file.extends !== undefined && base === undefined
  const inFile = built.flatMap((one) => one.problems)
  if (isBaseLost) return { sequence, problems: inFile }
  return { sequence, problems: [...problems, ...inFile, ...checkOrder(steps, drafts, source)] }
}

function buildDraft(
  draft: StepDraft,
  context: TeachTools,
): { readonly step: Step; readonly problems: readonly Problem[] } {
  const { id, base, own, at } = draft
  const under = base?.adds ?? NOTHING
  remember(under, id, context.soFar)
  if (own === undefined || at === undefined)
    return { step: { id, title: base?.title ?? id, adds: under }, problems: [] }
  const path = ['steps', at]
  const { adds, problems } = buildStep(own, path, context.source)
  const { taught, problems: untaught } = readTeach(own.teach ?? [], id, path, context)
  const repeats = findRepeats(adds, id, path, context.source, context.soFar)
  const misspelt = context.isOwnAccent ? findMisspelt(own, path, context.source, context.phonics) : []
  const step = {
    id,
    title: own.title ?? base?.title ?? id,
    adds: mergeAdds(under, { ...adds, correspondences: taught }),
  }
  return { step, problems: [...problems, ...untaught, ...repeats, ...misspelt] }
}
