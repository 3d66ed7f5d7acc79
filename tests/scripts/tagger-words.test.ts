// The tagger that is shipped reads its words from a file that the bundle made. It must say what the package itself says.

import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import nlp from 'compromise/two'
import { expect, test } from 'vitest'
import { ROOT } from '../../scripts/root.ts'

const shipped = createRequire(import.meta.url)(join(ROOT, 'dist', 'parts', 'compromise.cjs')).default as typeof nlp

const tagsOf = (tagger: typeof nlp, text: string) =>
  tagger(text).document.map((sentence) => sentence.map((term) => [term.text, [...(term.tags ?? [])].sort()]))

const texts = ['stories', 'shelf', 'texts'].flatMap((name) => {
  const folder = join(ROOT, 'fixtures', name)
  return readdirSync(folder)
    .filter((file) => file.endsWith('.md'))
    .map((file) => readFileSync(join(folder, file), 'utf8'))
})

test('the model of the shipped tagger is that of the package', () => {
  const [own, ours] = [nlp.model(), shipped.model()] as unknown as Record<'one' | 'two', object>[]
  expect(ours?.one).toEqual(own?.one)
  expect(ours?.two).toEqual(own?.two)
})

test('every story is tagged alike', () => {
  expect(texts.length).toBeGreaterThan(10)
  for (const text of texts) expect(tagsOf(shipped, text)).toEqual(tagsOf(nlp, text))
})
