// Turns a text that exists already into a story: which kind of file it is, what stands in it, and what could not be taken.

import { type Archive, isCompound, isZip, openArchive, toText } from './archive.ts'
import { decodeText } from './decode.ts'
import { readDocx } from './docx.ts'
import { readHtml } from './html.ts'
import { toStory } from './markdown.ts'
import { readOdt } from './odt.ts'
import { cutPages, type PagesBy } from './pages.ts'
import { readPlainText } from './plain-text.ts'
import type { Brought, BroughtPicture, Note, PictureType, Unreadable } from './types.ts'

export type { PagesBy } from './pages.ts'
export type { Note, NoteCode, Unreadable } from './types.ts'

export interface BringInput {
  readonly bytes: Uint8Array
  /** The file's name, whose ending tells HTML from plain text. */
  readonly name: string
  readonly pages?: PagesBy
  /** Written at the story's top, where they are given. */
  readonly step?: string | undefined
  readonly sequence?: string | undefined
  /** The folder of the pictures, as the story names it: `tam-pictures`. */
  readonly pictureFolder: string
}

export interface BroughtStory {
  readonly markdown: string
  readonly pages: number
  readonly notes: readonly Note[]
  readonly pictures: readonly { readonly path: string; readonly bytes: Uint8Array; readonly type: PictureType }[]
}

/** Never throws on what stands in a file. */
export async function bringText(input: BringInput): Promise<BroughtStory | Unreadable> {
  const brought = await read(input)
  if ('unreadable' in brought) return brought
  const { pages, notes } = cutPages(brought.pieces, input.pages)
  if (!pages.flat().some((piece) => 'runs' in piece)) return { unreadable: 'holds no text to bring in.' }
  const pictures = new Map<BroughtPicture, { path: string; bytes: Uint8Array; type: PictureType }>()
  const toPath = (picture: BroughtPicture): string => {
    const { content } = picture
    if (!content) return picture.source ?? ''
    const path = `${input.pictureFolder}/${pictures.size + 1}.${content.type}`
    pictures.set(picture, { path, ...content })
    return path
  }
  const isTitled = pages.flat().some(({ kind }) => kind === 'title' || kind === 'heading')
  const head = { title: isTitled ? undefined : brought.title, sequence: input.sequence, step: input.step }
  return {
    markdown: toStory(pages, head, toPath),
    pages: pages.length,
    notes: [...brought.notes, ...notes],
    pictures: [...pictures.values()],
  }
}

const SAVE_AS = 'Open it in your writing program and save it as .docx, .odt or .txt.'

async function read({ bytes, name }: BringInput): Promise<Brought | Unreadable> {
  if (bytes.length === 0) return { unreadable: 'is empty.' }
  if (isZip(bytes)) {
    const files = openArchive(bytes)
    return 'unreadable' in files ? (files as Unreadable) : readArchive(files)
  }
  if (isCompound(bytes)) return { unreadable: toCompoundMessage(bytes) }
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 1024))
  if (head.startsWith('%PDF'))
    return { unreadable: `is a PDF, and those keep no words, only places of letters. ${SAVE_AS}` }
  if (head.startsWith('{\\rtf')) return { unreadable: `is in the Rich Text Format. ${SAVE_AS}` }
  const decoded = decodeText(bytes)
  if ('unreadable' in decoded) return decoded
  const isHtml = /\.x?html?$/i.test(name) || /^\s*(?:<!doctype html|<html[\s>])/i.test(decoded.text.slice(0, 1024))
  const brought = isHtml ? readHtml(decoded.text) : readPlainText(decoded.text)
  return decoded.isGuessed ? { ...brought, notes: [...brought.notes, { code: 'encoding', count: 1 }] } : brought
}

function readArchive(files: Archive): Brought | Unreadable | Promise<Brought | Unreadable> {
  if (files['word/document.xml'] !== undefined) return readDocx(files)
  const type = toText(files['mimetype']).trim()
  if (type === 'application/vnd.oasis.opendocument.text') return readOdt(files)
  return { unreadable: `is not a text of a kind that can be brought in. ${SAVE_AS}` }
}

function toCompoundMessage(bytes: Uint8Array): string {
  // The names in such a file are written in two bytes a letter.
  const names = new TextDecoder('utf-16le').decode(bytes.subarray(0, 65_536))
  return names.includes('EncryptedPackage')
    ? 'is protected by a password. Open it in your writing program and save it without one.'
    : `is in the old .doc format or one like it. ${SAVE_AS}`
}
