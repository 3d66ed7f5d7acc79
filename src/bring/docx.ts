// A .docx file → pieces. mammoth reads it; where pages begin, which mammoth leaves out, is marked for it first.

import { zipSync } from 'fflate'
import { type Archive, toText } from './archive.ts'
import { readHtml } from './html.ts'
import { toPictureType } from './picture.ts'
import type { Brought, Note, NoteCode, Unreadable } from './types.ts'

const STYLES = [
  "p[style-name='Title'] => h1:fresh",
  "p[style-name='Subtitle'] => p:fresh",
  "br[type='page'] => hr:fresh",
]

const MAIN = 'word/document.xml'

export async function readDocx(files: Archive): Promise<Brought | Unreadable> {
  if (files[MAIN] === undefined) return { unreadable: 'is broken: its text is missing.' }
  const { default: mammoth } = await import('mammoth')
  const marked = zipSync(
    { ...files, [MAIN]: new TextEncoder().encode(markPages(toText(files[MAIN]), toText(files['word/styles.xml']))) },
    { level: 0 },
  )
  try {
    // In Node mammoth asks for `buffer`, in a browser for `arrayBuffer`.
    const input = { buffer: marked, arrayBuffer: marked } as unknown as { arrayBuffer: ArrayBuffer }
    const { value } = await mammoth.convertToHtml(input, {
      styleMap: STYLES,
      ignoreEmptyParagraphs: false,
      externalFileAccess: false,
      convertImage: mammoth.images.imgElement(async (image) => {
        const bytes = new Uint8Array(await image.readAsArrayBuffer())
        if (toPictureType(bytes) !== undefined) {
          return { src: `data:${image.contentType};base64,${await image.readAsBase64String()}` }
        }
        return { src: 'data:,' }
      }),
    })
    const read = readHtml(value)
    return { ...read, title: undefined, notes: [...read.notes, ...toNotes(findHeaders(files))] }
  } catch {
    return { unreadable: 'is broken: its text cannot be read. Open it in your writing program and save it anew.' }
  }
}

/** Puts a page break, as a writer types one, wherever a paragraph or a section begins a page by its settings. */
function markPages(xml: string, styles: string): string {
  const breaking = findBreakingStyles(styles)
  const BREAK = '<w:r><w:br w:type="page"/></w:r>'
  let isNewSection = false
  return xml.replace(
    /<w:pPr(?:\s[^>]*)?>([\s\S]*?)<\/w:pPr>|<w:p(?:\s[^>]*)?>(?!\s*<w:pPr)/g,
    (all, settings?: string) => {
      const begins = isNewSection || (settings !== undefined && startsPage(settings, breaking))
      isNewSection =
        settings !== undefined && /<w:sectPr/.test(settings) && !/<w:type\s+w:val="continuous"/.test(settings)
      return begins ? all + BREAK : all
    },
  )
}

const ON = String.raw`(?:\s+w:val="(?:1|true|on)")?\s*/>`

function startsPage(settings: string, breaking: ReadonlySet<string>): boolean {
  if (/<w:pageBreakBefore\b/.test(settings)) return new RegExp(`<w:pageBreakBefore${ON}`).test(settings)
  const style = /<w:pStyle\s+w:val="([^"]*)"/.exec(settings)?.[1]
  return style !== undefined && breaking.has(style)
}

function findBreakingStyles(styles: string): ReadonlySet<string> {
  const found = [...styles.matchAll(/<w:style\s[^>]*w:styleId="([^"]*)"[^>]*>([\s\S]*?)<\/w:style>/g)]
  const breaks = new RegExp(`<w:pageBreakBefore${ON}`)
  return new Set(found.filter(([, , body = '']) => breaks.test(body)).map(([, id = '']) => id))
}

/** What stands at the head or foot of each sheet is no part of the story. */
const findHeaders = (files: Archive): NoteCode[] =>
  Object.entries(files)
    .filter(([name, bytes]) => /^word\/(?:header|footer)\d*\.xml$/.test(name) && /<w:t[\s>]/.test(toText(bytes)))
    .map(() => 'header')

function toNotes(codes: readonly NoteCode[]): readonly Note[] {
  const counts = new Map<NoteCode, number>()
  for (const code of codes) counts.set(code, (counts.get(code) ?? 0) + 1)
  return [...counts].map(([code, count]) => ({ code, count }))
}
