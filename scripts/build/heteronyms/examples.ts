// The sentences that the model of look-alikes learns from: judged ones of real texts, and ones written to teach it.

import { readFileSync } from 'node:fs'
import { toPlace } from '../../../src/phonics/heteronyms/place.ts'
import type { Heteronyms } from '../../../src/phonics/heteronyms/types.ts'
import type { Example } from './teach.ts'

const ACCURACY = new URL('../../accuracy/data/', import.meta.url)

/** Judged sentences that faults were mended by; the last draws and the encyclopedia stay unseen. */
const JUDGED = [
  'blind',
  'books',
  'books-fifth',
  'books-fourth',
  'books-last',
  'books-sixth',
  'books-third',
  'later',
  'modern',
  'open',
  'public',
  'sentences',
].map((name) => new URL(`heteronym-${name}.tsv`, ACCURACY))

const OWN = new URL('../../../tests/phonics/data/heteronym-sentences.tsv', import.meta.url)
const TAUGHT = new URL('taught.txt', import.meta.url)

interface Judged {
  readonly sentence: string
  readonly word: string
  readonly form: string
}

/** In the order of the files. */
export function readExamples(table: Heteronyms): readonly Example[] {
  return [
    ...[...JUDGED, OWN].flatMap(readTable).flatMap((one) => toExample(table, one) ?? []),
    ...readTaught()
      .flatMap((one) => toExample(table, one) ?? [])
      .map((one) => ({ ...one, isMade: true })),
  ]
}

function toExample(table: Heteronyms, { sentence, word, form }: Judged): Example | undefined {
  const words = cutWords(sentence)
  const row = table.find(word)
  const index = words.findIndex((one) => one.toLowerCase() === word)
  return index >= 0 && row?.forms.some((one) => one.form === form)
    ? { row, place: toPlace(words, index), form }
    : undefined
}

/** Words and marks, as the sentences of a story have them. */
export function cutWords(sentence: string): readonly string[] {
  return sentence.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*|[^\s\p{L}\p{N}]/gu) ?? []
}

function readTable(file: URL): readonly Judged[] {
  const [, ...lines] = readFileSync(file, 'utf8').trimEnd().split('\n')
  return lines.map((line) => {
    const [sentence = '', word = '', form = ''] = line.split('\t')
    return { sentence, word, form }
  })
}

/** `## word form`, then a sentence a line. */
function readTaught(): readonly Judged[] {
  let [word, form] = ['', '']
  return readFileSync(TAUGHT, 'utf8')
    .split('\n')
    .flatMap((line) => {
      if (line.startsWith('## ')) {
        ;[word = '', form = ''] = line.slice(3).split(' ')
        return []
      }
      return line === '' || line.startsWith('#') ? [] : [{ sentence: line, word, form }]
    })
}
