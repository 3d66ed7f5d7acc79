// What moves bytes between the page and its folder, for our own page on this machine alone.

export type { ListedFile, PageFile, Store, StoredFile } from './answer.ts'
export { type DeskServer, startDeskServer } from './listen.ts'
export { toSort } from './names.ts'
