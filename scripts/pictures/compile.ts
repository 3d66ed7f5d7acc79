// The reviewed table of pictures and the drawings that it names, as one file.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { readTable, type TableRow } from '../../src/print/pictures/rows.ts'
import type { PictureFile } from '../../src/print/pictures/table.ts'

interface IconSet {
  readonly icons: Readonly<Record<string, { readonly body: string; readonly width?: number; readonly height?: number }>>
  readonly width?: number
  readonly height?: number
}

const require = createRequire(import.meta.url)
const readSet = (name: string): IconSet =>
  JSON.parse(readFileSync(require.resolve(`@iconify-json/${name}/icons.json`), 'utf8')) as IconSet

/** Only reviewed rows: names and keywords of the set are never looked through. Throws where the set has no such picture. */
export function buildPictures(table: string): PictureFile {
  const [colour, grey] = [readSet('fluent-emoji-flat'), readSet('fluent-emoji-high-contrast')]
  const { rows, problems } = readTable(table)
  if (problems.length > 0) throw new Error(`src/print/pictures.tsv: ${problems.join('; ')}`)
  return Object.fromEntries(
    rows.map(({ word, picture, alt }: TableRow) => {
      const icon = colour.icons[picture]
      if (!icon) throw new Error(`src/print/pictures.tsv: the set has no picture \`${picture}\` for \`${word}\``)
      const body = grey.icons[picture]?.body.replaceAll('currentColor', '#000')
      const size = { width: icon.width ?? colour.width ?? 16, height: icon.height ?? colour.height ?? 16 }
      return [word, { alt, ...size, body: icon.body, ...(body !== undefined && { grey: body }) }]
    }),
  )
}
