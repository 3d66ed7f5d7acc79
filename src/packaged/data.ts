// The files that the package is built with, read where they lie: the lexicon and the built-in sequences.

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { createBuiltIns } from '../resources/built-ins.ts'
import { createEngines } from '../resources/engines.ts'

const here = import.meta.dirname ?? dirname(fileURLToPath(import.meta.url))

/** Beside the bundle, a folder above a part of it, or in dist/ when the program runs from its sources. */
export const DATA_FOLDER: string =
  [here, dirname(here)].find((folder) => existsSync(join(folder, 'lexicon.bin'))) ?? join(here, '..', '..', 'dist')

const engines = createEngines(() => readFileSync(join(DATA_FOLDER, 'lexicon.bin')))

const builtIns = createBuiltIns({
  list: () => readdirSync(join(DATA_FOLDER, 'sequences')).map((file) => file.replace(/\.json$/, '')),
  read(name) {
    const path = join(DATA_FOLDER, 'sequences', `${name}.json`)
    return /^[\w-]+$/.test(name) && existsSync(path) ? readFileSync(path, 'utf8') : undefined
  },
})

export const { lexicon: loadLexicon, spelling: loadSpelling, phonicsFor: loadPhonics } = engines
export const { list: listBuiltIns, load: loadBuiltIn, findNearest: findBuiltInNearest, has: isBuiltIn } = builtIns
