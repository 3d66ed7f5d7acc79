// Readers: who reads, as a teacher writes it down.

export { loadReader } from './load.ts'
export type { Reader } from './types.ts'
