// Answers a question: the inside of the worker, without the worker, so that tests can ask in Node.

import { card } from './card.ts'
import { check } from './check.ts'
import { complete } from './complete.ts'
import { fix } from './fix.ts'
import { ALONE, type Asking } from './host.ts'
import type { Answer, Kind, Question, Questions } from './questions.ts'
import { listReaders } from './readers.ts'
import { type DeskState, forget } from './state.ts'
import { openTools } from './tools.ts'

type Handlers = {
  readonly [One in Kind]: (asked: Questions[One], state: DeskState, asking: Asking) => Promise<Answer<One>>
}

type Handler<K extends Kind> = (asked: unknown, state: DeskState, asking: Asking) => Promise<Answer<K>>

/** What is large, and not wanted by the first check, is loaded when it is first asked for. */
const HANDLERS: Handlers = {
  async open({ data }, state) {
    state.tools = await openTools(data, state.host)
    return { sequences: state.tools.builtIns.list(), letters: state.tools.letters }
  },
  async changed({ paths }, state) {
    forget(state, paths)
    return null
  },
  check: ({ story }, state) => check(story, state),
  card: ({ story, place }, state) => card(story, place, state),
  fix: ({ story, place, fix: wish }, state) => fix(story, place, wish, state),
  words: async ({ story, wish }, state) => (await import('./bank.ts')).findBank(story, wish, state),
  choices: async ({ story }, state) => (await import('./choices.ts')).listChoices(story, state),
  complete: ({ story, at }, state) => complete(story, at, state),
  about: async ({ story }, state) => (await import('./about.ts')).about(story, state),
  set: async ({ story, edit }, state) => (await import('./set.ts')).set(story, edit, state),
  readers: (_, state) => listReaders(state),
  shelf: async ({ open }, state, asking) => (await import('./shelf.ts')).readShelf(open, state, asking),
  sequence: async ({ name, text }, state) => (await import('./sequence.ts')).showSequence(name, text, state),
  'edit sequence': async ({ path, text, edit }, state) =>
    (await import('./sequence.ts')).editSequence(path, text, edit, state),
  book: async ({ story, wish }, state) => (await import('./book.ts')).layOpenBook(story, wish, state),
  print: async ({ story, wish }, state) => (await import('./print.ts')).print(story, wish, state),
  'new sequence': async ({ sequence }, state) => (await import('./sequence.ts')).makeSequence(sequence, state),
}

export function answer<K extends Kind>(question: Question<K>, state: DeskState, asking = ALONE): Promise<Answer<K>> {
  const { kind, ...asked } = question
  const handler = HANDLERS[kind as K] as unknown as Handler<K> | undefined
  if (handler === undefined) throw new RangeError(`there is no question \`${kind}\``)
  return handler(asked, state, asking)
}
