// Sentences of Wikipedia whose look-alike other people judged: the evaluation half of an open set, see heteronym-open-sources.tsv.

import { readFile } from 'node:fs/promises'
import type { HeteronymCase } from './heteronym-case.ts'

const FILE = new URL('data/heteronym-wikipedia.tsv', import.meta.url)

/** The set's own labels, where the words after its `_` are not our form: `adj` and so on are told by `CLASSES`. */
const LABELS: Readonly<Record<string, string>> = {
  'bow_nou-knot': 'knot',
  'bow_nou-ship': 'bend',
  'close_adj-nou': 'near',
  close_vrb: 'shut',
  'content_adj-nou-vrb': 'happy',
  content_nou: 'contained',
  desert_nou: 'sand',
  dove: 'bird',
  dove_vrb: 'dived',
  entrance_nou: 'door',
  lead_nou: 'metal',
  'lead_nou-vrb': 'guide',
  live_adj: 'adjective',
  minute: 'time',
  minute_adj: 'tiny',
  perfect_adj: 'adjective',
  read_past: 'past',
  read_present: 'present',
  row_1: 'line',
  separate_adj: 'adjective',
  sow: 'plant',
  sow_nou: 'pig',
  tear_nou: 'eye',
  tear_vrb: 'rip',
  wind_nou: 'air',
  'wound_nou-vrb': 'injury',
  wound_vrb: 'turned',
}
const CLASSES: Readonly<Record<string, string>> = { 'adj-nou': 'noun', nou: 'noun', vrb: 'verb' }

/** Where a word stands twice in its sentence, `at` tells which of the two was judged. */
export async function readWikipediaCases(): Promise<readonly HeteronymCase[]> {
  const [, ...lines] = (await readFile(FILE, 'utf8')).trimEnd().split('\n')
  return lines.map((line) => {
    const [word = '', label = '', at = '', sentence = ''] = line.split('\t')
    const form = LABELS[label] ?? CLASSES[label.slice(word.length + 1)]
    if (form === undefined) throw new Error(`No form stands for \`${label}\``)
    return { sentence, word, form, at: Number(at), set: 'held-out', from: 'wikipedia' }
  })
}
