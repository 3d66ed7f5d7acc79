// What moves bytes between the page and its folder, for our own page on this machine alone.

export type { PageFile, Store, StoredFile } from './answer.ts'
export { type DeskServer, startDeskServer } from './listen.ts'
export { type Sort, toSort } from './names.ts'
