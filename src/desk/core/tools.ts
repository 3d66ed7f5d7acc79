// Engines, sequences and words from the data that was handed in: each opened when a question first needs it.

import { loadTagger, type Tagger } from '../../phonics/heteronyms/tagger.ts'
import type { Lexicon } from '../../phonics/index.ts'
import type { Accent, Phonics } from '../../phonics/types.ts'
import { LETTER_FILES } from '../../print/letter-files.ts'
import { type BuiltIns, createBuiltIns } from '../../resources/built-ins.ts'
import { createEngines } from '../../resources/engines.ts'
import type { OpenedWords } from '../../resources/word-help.ts'
import type { DeskHost } from './host.ts'
import { createOpener, type Opener, unpack } from './parts.ts'
import type { DeskData } from './questions/data.ts'

export interface Tools {
  readonly lexicon: Lexicon
  phonicsFor(accent: Accent): Phonics
  readonly builtIns: BuiltIns
  tagger(): Promise<Tagger>
  /** What is known of words, for what could stand there. */
  words(): Promise<OpenedWords>
  /** The same with the lists open, for the bank. */
  lists(): Promise<OpenedWords>
  /** Files of fonts by name; undefined where the page has none. */
  font(name: string): Promise<Uint8Array> | undefined
  /** Names of letters whose files the page has. */
  readonly letters: readonly string[]
  readonly pictures: Opener | undefined
}

export async function openTools(data: DeskData, host: Pick<DeskHost, 'fetch'>): Promise<Tools> {
  const names = Object.keys(data.sequences)
  const [bytes, ...texts] = await Promise.all([
    createOpener(data.lexicon, host)(),
    ...names.map((name) => createOpener(data.sequences[name] as DeskData['lexicon'], host)()),
  ])
  const engines = createEngines(() => bytes)
  const decoder = new TextDecoder()
  const sequences = new Map(names.map((name, at) => [name, decoder.decode(texts[at])]))
  const builtIns = createBuiltIns({ list: () => names, read: (name) => sequences.get(name) })
  let tagger: Promise<Tagger> | undefined
  const fonts = new Map(Object.entries(data.fonts ?? {}).map(([name, part]) => [name, createOpener(part, host)]))
  return {
    lexicon: engines.lexicon(),
    phonicsFor: engines.phonicsFor,
    builtIns,
    tagger: () => (tagger ??= loadTagger()),
    ...openWords(data, host, { engines, builtIns }),
    font: (name) => fonts.get(name)?.(),
    letters: Object.entries(LETTER_FILES).flatMap(([name, { plain }]) => (fonts.has(plain) ? [name] : [])),
    pictures: data.pictures && createOpener(data.pictures, host),
  }
}

interface WordTools {
  readonly engines: ReturnType<typeof createEngines>
  readonly builtIns: BuiltIns
}

function openWords(data: DeskData, host: Pick<DeskHost, 'fetch'>, { engines, builtIns }: WordTools) {
  const readWords = createOpener(data.words, host)
  const readLists = createOpener(data.lists, host)
  let inflated: Uint8Array | undefined
  let opened: Promise<OpenedWords> | undefined
  const open = async (): Promise<OpenedWords> => {
    const [bytes, { openWordHelp }] = await Promise.all([readWords(), import('../../resources/word-help.ts')])
    return openWordHelp({
      files: { words: bytes, lists: () => inflated as Uint8Array },
      lexicon: engines.lexicon(),
      phonicsFor: engines.phonicsFor,
      isBuiltIn: builtIns.has,
    })
  }
  const words = (): Promise<OpenedWords> => (opened ??= open())
  return {
    words,
    async lists(): Promise<OpenedWords> {
      const [help, packed] = await Promise.all([words(), readLists()])
      inflated ??= data.lists.packed === 'deflate' ? packed : await unpack(packed, 'deflate')
      return help
    },
  }
}
