// The fonts that are printed with, each with the text of its licence beside it.

import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { create } from 'fontkit'

/** As they come: the licence of Andika reserves its name for the unchanged file, and asks for the text beside it. */
const SOURCES: Readonly<Record<string, string>> = {
  'abeezee-OFL.txt': '@fontsource/abeezee/LICENSE',
  'abeezee.woff': '@fontsource/abeezee/files/abeezee-latin-400-normal.woff',
  'andika-bold.ttf': '@expo-google-fonts/andika/Andika_700Bold.ttf',
  'andika.ttf': '@expo-google-fonts/andika/Andika_400Regular.ttf',
  'lexend-OFL.txt': '@fontsource/lexend/LICENSE',
  'lexend-bold.woff': '@fontsource/lexend/files/lexend-latin-700-normal.woff',
  'lexend.woff': '@fontsource/lexend/files/lexend-latin-400-normal.woff',
}

/** The package has no file of it: the font itself carries the text, with its notice and its reserved names. */
const ANDIKA_LICENCE = 'andika-OFL.txt'

export const FONT_FILES: readonly string[] = [...Object.keys(SOURCES), ANDIKA_LICENCE]

export function writeFonts(folder: string, modules: string): void {
  mkdirSync(folder, { recursive: true })
  for (const [name, source] of Object.entries(SOURCES)) copyFileSync(join(modules, source), join(folder, name))
  const { license } = create(readFileSync(join(folder, 'andika.ttf'))).name.records
  const text = license?.['en'] ?? ''
  if (!text.includes('SIL OPEN FONT LICENSE')) throw new Error('Andika no longer carries the text of its licence')
  writeFileSync(join(folder, ANDIKA_LICENCE), `${text}\n`)
}
