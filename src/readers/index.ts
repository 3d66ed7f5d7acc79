// Readers: who reads, as a teacher writes it down.

export { loadReader, type ReaderTools } from './load.ts'
export type { Reader } from './types.ts'
