// The fonts of the package, opened for tests.

import { readFileSync } from 'node:fs'
import { type Letters, openLetters } from '../../src/print/index.ts'

const read = (name: string): Uint8Array => readFileSync(new URL(`../../dist/fonts/${name}`, import.meta.url))

export function testLetters(name: 'andika' | 'lexend' | 'abeezee' = 'andika', shapes: readonly string[] = []): Letters {
  const files = {
    abeezee: { plain: 'abeezee.woff', bold: undefined },
    andika: { plain: 'andika.ttf', bold: 'andika-bold.ttf' },
    lexend: { plain: 'lexend.woff', bold: 'lexend-bold.woff' },
  }[name]
  const opened = openLetters({ plain: read(files.plain), bold: files.bold ? read(files.bold) : undefined }, shapes)
  if (!opened.ok) throw new Error(opened.problems[0]?.message)
  return opened.value
}
