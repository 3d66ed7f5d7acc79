// What `explain` says of a word: letters over sounds, when it becomes readable, and why not before.

import { toAdditionLine } from '../lint/additions.ts'
import { findChangeText, toEnding } from '../lint/endings.ts'
import { type Taught, toUntaughtText } from '../lint/untaught.ts'
import type { Pronunciation, Unit, WordPronunciations } from '../phonics/types.ts'
import { findAbbreviation, findPlaceSign } from '../verdict/index.ts'
import type { Reason, Verdict } from '../verdict/types.ts'
import type { Paint } from './paint.ts'
import { pad, toColumns, wrap } from './text.ts'

/** A word explained: its pronunciations, and where a sequence is given, the verdict. */
export interface ExplainedWord {
  readonly word: string
  readonly pronunciations: WordPronunciations
  /** The words that may have been meant by a misspelt one, likeliest first. */
  readonly slips: readonly string[]
  readonly readableAt: string | null
  readonly verdict: Verdict | undefined
  /** The step that the verdict is for. */
  readonly step: string | undefined
  /** What the sequence teaches, and what of it is known at the step; missing where there is no step. */
  readonly taught?: Taught | undefined
  /** An example word for each unit, in order; undefined where the sequence has none. */
  readonly examples: readonly (readonly (string | undefined)[])[]
  /** The meaning of each pronunciation, for a word with several spoken forms. */
  readonly meanings: readonly (string | undefined)[]
  /** When each pronunciation's spoken form becomes readable, where the forms differ in that; missing or empty for other words. */
  readonly formsReadableAt?: readonly (string | null)[]
  /** Why each pronunciation's form is readable at no step, in order; missing or empty where some step makes it so. */
  readonly formsReasons?: readonly (readonly Reason[])[]
  /** Whether each is readable at the step, where that is known. */
  readonly formsReadable?: readonly boolean[]
  /** The spoken form that the sentence of a story asks for; `open` where there is a sentence and it does not tell. */
  readonly taken?: { readonly form: string } | 'open' | undefined
}

/** One JSON object, described by schemas/explain.schema.json. */
export function toExplainJson(word: ExplainedWord): unknown {
  return {
    word: word.word,
    source: word.pronunciations.source,
    ...(word.pronunciations.meant === undefined ? {} : { meant: word.pronunciations.meant }),
    ...(word.slips.length === 0 ? {} : { slips: word.slips }),
    ...(word.pronunciations.unsure ? { unsure: true } : {}),
    readings: word.pronunciations.pronunciations.map((pronunciation, at) => ({
      ...toPronunciationFields(pronunciation),
      ...(word.formsReadableAt?.length ? { readableAt: word.formsReadableAt[at] ?? null } : {}),
    })),
    readableAt: word.readableAt,
    ...(word.verdict ? { verdict: toVerdictFields(word.verdict) } : {}),
  }
}

const toPronunciationFields = (pronunciation: Pronunciation) => ({
  ipa: pronunciation.ipa,
  syllables: pronunciation.syllables.length,
  syllableParts: pronunciation.syllables,
  ...(pronunciation.form === undefined ? {} : { form: pronunciation.form }),
  units: pronunciation.units.map(({ letters, spans, sound, kind, base }) => ({
    letters,
    spans,
    sound,
    kind,
    ...(base === undefined ? {} : { base }),
  })),
})

const toVerdictFields = ({ readable, kind, reasons }: Verdict) => ({
  readable,
  kind,
  reasons: reasons.map(({ code, letters, taughtAt, found, allowed }) => ({
    code,
    letters,
    taughtAt: taughtAt ?? null,
    ...(found === undefined ? {} : { found }),
    ...(allowed === undefined ? {} : { allowed }),
  })),
})

export function toExplainText(word: ExplainedWord, { width, paint }: { width: number; paint: Paint }): string {
  const { pronunciations, meant, unsure } = word.pronunciations
  const isShort = word.verdict?.reasons.some(({ code }) => code === 'abbreviation')
  const abbreviation = toAbbreviationText(word.word, isShort)
  if (abbreviation !== undefined) {
    const lines = [abbreviation, ...toWhen(word)].flatMap((line) => wrap(line, width - 2))
    return `${[paint.strong(word.word), ...lines.map((line) => `  ${line}`)].join('\n')}\n`
  }
  const lines = [paint.strong(word.word) + toSourceText(word)]
  if (meant !== undefined) return `${lines[0]}\n  This is misspelt: ${meant}.\n`
  if (word.slips.length > 0) lines.push(`  Did you mean ${word.slips.join(' or ')}?`)
  if (pronunciations.length === 0) return `${lines.join('\n')}\n  This has no letters that can be sounded out.\n`
  if (unsure) lines.push('  It is not known how this is said. The letters would say:')
  pronunciations.slice(0, unsure ? 1 : undefined).forEach((pronunciation, at) => {
    const meaning = word.meanings[at]
    const parts = pronunciation.syllables.length > 1 ? `  ${pronunciation.syllables.join('-')}` : ''
    lines.push(
      ...wrap(`/${pronunciation.ipa}/${parts}${meaning ? `  ${meaning}` : ''}`, width - 2).map((line) => `  ${line}`),
    )
    lines.push(...toUnitLines(pronunciation, word.examples[at] ?? [], width))
  })
  lines.push(
    ...[...toJudgement(word), ...toInPlaceTexts(word.word)]
      .flatMap((line) => wrap(line, width - 2))
      .map((line) => `  ${line}`),
  )
  return `${lines.join('\n')}\n`
}

/** What an abbreviation is said as; undefined for other words. */
function toAbbreviationText(word: string, inPlace?: boolean): string | undefined {
  const found = findAbbreviation(word, inPlace)
  switch (found?.kind) {
    case undefined:
      return undefined
    case 'short':
      return `Short for ${found.full.join(' or ')}; its letters do not say that.`
    case 'first letter':
      return `It begins with the name of the letter ${found.letter}, not with its sound.`
    case 'letters':
      return 'An abbreviation: its letters are said by their names.'
  }
}

/** Of `US`, which is read as a word here: what it is where its sentence shows that. */
function toInPlaceTexts(word: string): readonly string[] {
  const found = findPlaceSign(word) === undefined ? undefined : findAbbreviation(word, true)
  if (found === undefined) return []
  const how = found.kind === 'short' ? `short for ${found.full.join(' or ')}` : 'said by the names of its letters'
  return [`In a story the sentence may show that it is ${how}; then its letters do not say it.`]
}

function toSourceText({ pronunciations: { source, meant, unsure } }: ExplainedWord): string {
  if (source !== 'guess') return ''
  return `  (not in the dictionary${meant === undefined && !unsure ? ': guessed from its letters' : ''})`
}

/** Letters over sounds over example words, in columns; a long word goes on below. */
function toUnitLines({ units }: Pronunciation, examples: readonly (string | undefined)[], width: number): string[] {
  const cells = units.map((unit, at) => [unit.letters, toSoundCell(unit), examples[at] ?? ''] as const)
  const lines: string[] = []
  let row: (readonly [string, string, string])[] = []
  const flush = () => {
    if (row.length === 0) return
    const columns = toColumns(
      [0, 1, 2].map((k) => ['  ', ...row.map((cell) => cell[k] ?? '')]),
      ['left', ...row.map(() => 'left' as const)],
    )
    lines.push(...columns.filter((line) => line.trim() !== ''))
    row = []
  }
  let used = 2
  for (const cell of cells) {
    const wide = Math.max(...cell.map((text) => pad(text, 0, 'left').length)) + 2
    if (used + wide > width - 2) {
      flush()
      used = 2
    }
    row.push(cell)
    used += wide
  }
  flush()
  return lines
}

const toSoundCell = (unit: Unit): string => (unit.sound === '' ? 'silent' : unit.sound)

/** What is said below the letters. Where the forms differ there is no one step for the word, unless a sentence has told. */
function toJudgement(word: ExplainedWord): string[] {
  const { formsReadableAt = [], taken, verdict, step } = word
  if (typeof taken === 'object') return [toTakenLine(word), ...toWhen(word)]
  if (formsReadableAt.length === 0) return toWhen(word)
  const now = verdict && step !== undefined ? [toNowLine(word, step, verdict)] : []
  return [...now, toFormLine(word), ...toNeverLines(word)]
}

/** At the step, a word whose forms differ. */
function toNowLine(word: ExplainedWord, step: string, { readable, kind }: Verdict): string {
  if (!readable) return `At ${step} it is not readable.`
  const all = word.pronunciations.pronunciations
  const now = all.filter((_, at) => word.formsReadable?.[at] !== false).map(({ ipa }) => `/${ipa}/`)
  const isWhole = kind !== 'decodable' || now.length === all.length || now.length === 0
  return isWhole ? `At ${step} it is readable.` : `At ${step} only ${now.join(' and ')} is readable.`
}

/** The form that counts stands first. */
function toTakenLine({ meanings, pronunciations }: ExplainedWord): string {
  const [first] = pronunciations.pronunciations
  return `The sentence takes it as /${first?.ipa}/${meanings[0] ? ` (${meanings[0]})` : ''}.`
}

function toWhen({ verdict, readableAt, step, word, taught }: ExplainedWord): string[] {
  const earliest =
    readableAt === null ? 'No step of this sequence makes it readable.' : `Readable from step ${readableAt}.`
  if (!verdict || step === undefined) return [earliest]
  if (verdict.readable) {
    const how = {
      decodable: 'it can be sounded out',
      sight: 'it is a sight word taught by then',
      name: 'it is an allowed name',
      unreadable: '',
    }[verdict.kind]
    return [`At ${step} it is readable: ${how}. ${earliest}`]
  }
  return [`At ${step} it is not readable: ${toReasonTexts(verdict.reasons, word, taught).join('; ')}. ${earliest}`]
}

/** `the ending -ed is`, `that it drops its e before its ending is` */
function toEndingText(reason: Reason, word: string): string {
  const change = findChangeText(reason)
  return change === undefined ? `the ending \`${toEnding(word, reason)}\` is` : `that it ${change} before its ending is`
}

/** A word with several spoken forms: in a story the sentence tells which is meant, and that one counts. */
function toFormLine({ formsReadableAt = [], meanings, pronunciations, taken }: ExplainedWord): string {
  const forms = pronunciations.pronunciations.map((pronunciation, at) => {
    const step = formsReadableAt[at]
    return `/${pronunciation.ipa}/ (${meanings[at] ?? 'another word'}) ${step === null ? 'at no step' : `from step ${step} on`}`
  })
  const who =
    taken === 'open' ? 'The sentence does not settle which is meant' : 'In a story the sentence tells which is meant'
  return `${who}. Readable: ${[...new Set(forms)].join('; ')}.`
}

/** What a form lacks that no step makes readable: `Of /lɪv/, ...`. */
function toNeverLines({
  formsReadableAt = [],
  formsReasons = [],
  pronunciations,
  word,
  taught,
}: ExplainedWord): string[] {
  const lines = pronunciations.pronunciations.flatMap(({ ipa }, at) => {
    const reasons = formsReadableAt[at] === null ? (formsReasons[at] ?? []) : []
    return reasons.length === 0 ? [] : [`Of /${ipa}/, ${toReasonTexts(reasons, word, taught).join('; ')}.`]
  })
  return [...new Set(lines)]
}

/** Each reason once, in a teacher's words; of `Dad` not for D and d. */
function toReasonTexts(reasons: readonly Reason[], word: string, taught: Taught | undefined): readonly string[] {
  const texts = new Map<string, string>()
  for (const text of reasons.map((reason) => toReasonText(reason, word, taught))) {
    const small = text.toLowerCase()
    if (!texts.has(small)) texts.set(small, text)
  }
  return [...texts.values()]
}

/** Named as a check names them: where the sound is taught, it is by the other letters that say it. */
function toUntaughtLetters(reason: Reason, word: string, taught: Taught | undefined): string | undefined {
  return reason.unit && taught && toUntaughtText(word, reason.unit, reason, taught)
}

/** A reason in a teacher's words. */
function toReasonText(reason: Reason, word: string, taught: Taught | undefined): string {
  const letters = `\`${reason.letters.map(([from, to]) => word.slice(from, to)).join('…')}\``
  const line = reason.taughtAt === undefined ? toAdditionLine(word, reason) : undefined
  const later = reason.taughtAt
    ? ` (from step ${reason.taughtAt} on)`
    : line
      ? ` (to teach it, add ${line} to a step)`
      : ''
  const untaught = reason.taughtAt ? 'not taught yet' : 'not taught in this sequence'
  switch (reason.code) {
    case 'sight-word-later':
      return `it is a sight word of a later step${later}`
    case 'correspondence-later':
      return `it has ${toUntaughtLetters(reason, word, taught) ?? letters}, which is taught later${later}`
    case 'irregular':
      return reason.unit?.kind === 'silent'
        ? `${letters} breaks the rules: it says nothing here`
        : `${letters} breaks the rules: it says a sound that it seldom says`
    case 'correspondence-untaught':
      return `it has ${toUntaughtLetters(reason, word, taught) ?? letters}, which no step of this sequence teaches${later}`
    case 'too-many-letters':
      return `it has ${reason.found} letters, and at most ${reason.allowed} ${reason.allowed === 1 ? 'is' : 'are'} allowed${later}`
    case 'too-many-syllables':
      return `it has ${reason.found} syllables, and at most ${reason.allowed} ${reason.allowed === 1 ? 'is' : 'are'} allowed${later}`
    case 'shape':
      return `its shape ${reason.found} is ${untaught}${later}`
    case 'ending':
      return `${toEndingText(reason, word)} ${untaught}${later}`
    case 'contraction':
      return `contractions such as this are ${untaught}${later}`
    case 'reduced-vowel':
      return `${letters} is a weak vowel`
    case 'abbreviation':
      return 'it is an abbreviation, which is not said by the sounds of its letters'
    case 'misspelt':
      return 'it is misspelt'
    case 'unknown-word':
      return 'it is not in the dictionary and cannot be sounded out'
    case 'unsure':
      return 'it is not known how it is said'
  }
}
