// What a program needs of sequences at run time. Loading from YAML lies apart, in `load.ts`, so that it is paid for only
// when a sequence of one's own is used.

export { type CompiledSequence, sequenceFromJson } from './compiled.ts'
export { findStep, knowledgeAt, toSightKey, toStepIndex } from './knowledge.ts'
export { type ReaderExtra, withReader } from './reader.ts'
export type {
  Knowledge,
  Sequence,
} from './types.ts'
export { toMarkNames } from './vocabulary.ts'
