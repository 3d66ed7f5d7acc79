// The questions of `fix`, one place after the other, with every step back that a person wants.

import { toStraight } from '../../apostrophe.ts'
import { type Answer, type Decision, type Finding, parseAnswer, shapeTyped, toQuestion } from '../../fix/index.ts'
import { toPrintable, wrap } from '../../report/text.ts'
import { toCaseOf } from '../../words/index.ts'
import type { LineReader } from '../lines-of-input.ts'
import type { Session } from './session.ts'

export interface Asked {
  readonly decisions: readonly Decision[]
  /** Where a person stopped; undefined at the end of the story. */
  readonly stoppedAt: Finding | undefined
  /** The input ended there (Ctrl D, a terminal that was closed): nothing more can be asked. */
  readonly isCutOff: boolean
}

interface State {
  readonly at: number
  readonly decisions: readonly Decision[]
  /** What was said of a word for the whole story; undefined to leave it. */
  readonly everywhere: ReadonlyMap<string, string | undefined>
}

export async function ask(open: readonly Finding[], session: Session, lines: LineReader): Promise<Asked> {
  let state: State = { at: 0, decisions: [], everywhere: new Map() }
  const history: State[] = []
  for (;;) {
    const finding = open[state.at]
    if (finding === undefined) return { decisions: state.decisions, stoppedAt: undefined, isCutOff: false }
    const passed = passBy(finding, state)
    if (passed !== undefined) {
      state = passed
      continue
    }
    const answer = await askOne(finding, `${state.at + 1} of ${open.length}, line ${finding.line}`, session, lines)
    if (answer === undefined || answer.kind === 'quit')
      return { decisions: state.decisions, stoppedAt: finding, isCutOff: answer === undefined }
    if (answer.kind === 'undo') {
      const last = history.pop()
      if (last === undefined) session.io.stdout.write('  There is nothing to undo.\n')
      else state = last
      continue
    }
    history.push(state)
    state = decide(finding, answer, state)
  }
}

/** Where what was said before settles this place too. */
function passBy(finding: Finding, state: State): State | undefined {
  const { at, decisions, everywhere } = state
  const key = finding.word.toLowerCase()
  const isListed = decisions.some(
    (one) =>
      (one.kind === 'name' && one.word === finding.name) || (one.kind === 'heart' && one.word === toHeart(finding)),
  )
  if (isListed) return { ...state, at: at + 1 }
  if (!everywhere.has(key)) return undefined
  const word = everywhere.get(key)
  if (word === undefined || finding.slot === undefined) return word === undefined ? { ...state, at: at + 1 } : undefined
  const decision: Decision = { kind: 'replace', finding, word: toCaseOf(finding.word, word) }
  return { ...state, at: at + 1, decisions: [...decisions, decision] }
}

/** A word as it is listed among those known by heart. */
const toHeart = ({ word }: Finding): string => toStraight(word.toLowerCase())

/** An answer with all that it asks for. */
type Settled =
  | { readonly kind: 'replace'; readonly word: string; readonly everywhere: boolean }
  | { readonly kind: 'leave'; readonly everywhere: boolean }
  | { readonly kind: 'keep'; readonly reason: string }
  | { readonly kind: 'heart' | 'name' | 'out' | 'quit' | 'undo' }

function decide(finding: Finding, answer: Settled, { at, decisions, everywhere }: State): State {
  const made = toDecision(finding, answer)
  const word = answer.kind === 'replace' ? answer.word.toLowerCase() : undefined
  const isWhole = 'everywhere' in answer && answer.everywhere
  return {
    at: at + 1,
    decisions: made ? [...decisions, made] : decisions,
    everywhere: isWhole ? new Map([...everywhere, [finding.word.toLowerCase(), word]]) : everywhere,
  }
}

function toDecision(finding: Finding, answer: Settled): Decision | undefined {
  if (answer.kind === 'replace') return { kind: 'replace', finding, word: answer.word }
  if (answer.kind === 'keep') return { kind: 'keep', finding, reason: answer.reason }
  if (answer.kind === 'out') return { kind: 'out', finding }
  if (answer.kind === 'heart') return { kind: 'heart', word: toHeart(finding) }
  return answer.kind === 'name' && finding.name !== undefined ? { kind: 'name', word: finding.name } : undefined
}

/** Asks until there is an answer that holds. Undefined where the input ended. */
async function askOne(
  finding: Finding,
  place: string,
  session: Session,
  lines: LineReader,
): Promise<Settled | undefined> {
  const { view, io } = session
  io.stdout.write(`\n${view.paint.strong(place)}\n${toQuestion(finding, view)}\n`)
  let refused: string | undefined
  for (;;) {
    io.stdout.write('> ')
    const line = await lines.next()
    if (line === undefined) return undefined
    const answer = parseAnswer(line, finding)
    if (answer === undefined) write('That is none of the choices.', session)
    else if (answer.kind === 'keep') {
      const reason = await askReason(session, lines)
      if (reason === undefined) return undefined
      if (reason !== '') return { kind: 'keep', reason }
      write('Without a reason the word is not kept.', session)
    } else if (answer.kind === 'typed') {
      const word = shapeTyped(finding.word, answer.word, session.factsOf)
      if (await isTaken(finding, word, refused, session)) return { kind: 'replace', word, everywhere: false }
      refused = word
    } else return answer satisfies Exclude<Answer, { kind: 'typed' | 'keep' }>
  }
}

async function askReason({ io }: Session, lines: LineReader): Promise<string | undefined> {
  io.stdout.write('  Why is it kept? One line, for whoever reads the story next: ')
  return (await lines.next())?.trim()
}

/** A word that cannot be read is taken when it is typed a second time. */
async function isTaken(
  finding: Finding,
  word: string,
  refused: string | undefined,
  session: Session,
): Promise<boolean> {
  const why = word === refused ? undefined : await session.judge(finding, word)
  if (why === undefined) {
    write(`\`${word}\` is put in${word === refused ? ', though it cannot be read' : ''}.`, session)
    return true
  }
  write(`${why}. Try another word, or type it again to put it in all the same.`, session)
  return false
}

function write(text: string, { view, io }: Session): void {
  const lines = wrap(toPrintable(text), view.width - 2).map((line) => `  ${line}\n`)
  io.stdout.write(lines.join(''))
}
