// The tagger that is shipped reads its words from a file that the bundle made. It must say what the package itself says.

import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import type { default as Tagger } from 'compromise/two'
import { expect, test } from 'vitest'
import { ROOT } from '../../scripts/root.ts'

const require = createRequire(import.meta.url)
// Not by import: another test of the same thread may have loaded the whole package, which adds to the same model.
const nlp = require('compromise/two') as typeof Tagger
const shipped = require(join(ROOT, 'dist', 'parts', 'compromise.cjs')).default as typeof Tagger

const tagsOf = (tagger: typeof Tagger, text: string) =>
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
