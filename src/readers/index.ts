// Readers: who reads, as a teacher writes it down.

export { type FoundReaders, findReaderFiles, type ReaderFileTools, type ReadReader, readReaderFile } from './files.ts'
export { looksLikeReader } from './is-reader.ts'
export { loadReader } from './load.ts'
export type { Reader } from './types.ts'
