// What the tagger makes of its word lists whenever it is loaded, made once: half of what loading it costs.
//
// compromise packs its lexicon, and at each start unpacks it and forms plurals, tenses and degrees of all that is in it. The
// lexicon as it is after that goes into a file beside the program's part, in pieces that are opened when a sentence asks for
// them, and the steps that made it are left out.

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import nlp from 'compromise/two'
import type { Plugin } from 'esbuild'
import { type Tags, toPieces } from './open-words.ts'

const FILE = 'tagger-words.json'
const OPENER = fileURLToPath(new URL('open-words.ts', import.meta.url))

/** How it merges what it has none of yet, and the same without copying. */
const EACH_KEY = 'if (!model[key]) Object.assign(model, { [key]: {} })'
const TAKEN_WHOLE = `if (!model[key]) {
          model[key] = plugin[key]
          continue
        }`

/** The fields of the tagger's model that its loading forms. */
interface Model {
  readonly one: {
    readonly lexicon: Readonly<Record<string, Tags>>
    readonly frozenLex: object
    readonly _multiCache: object
  }
  readonly two: { readonly switches: object; readonly uncountable: object }
}

/** Leaves the words in the folder of the parts, and makes the tagger of the bundle read them. */
export function taggerWords(parts: string): Plugin {
  return {
    name: 'tagger-words',
    setup(plugin) {
      const { one, two } = nlp.model() as unknown as Model
      const { lexicon, frozenLex, _multiCache } = one
      const { switches, uncountable } = two
      const words = { pieces: toPieces(lexicon), one: { frozenLex, _multiCache }, two: { switches, uncountable } }
      plugin.onEnd(() => {
        mkdirSync(parts, { recursive: true })
        writeFileSync(join(parts, FILE), JSON.stringify(words))
      })
      plugin.onResolve({ filter: /\/tagger-words\.json$/ }, () => ({ path: `./${FILE}`, external: true }))
      // What other plugins of the tagger add to its model stays.
      plugin.onLoad({ filter: /compromise\/src\/two\.js$/ }, ({ path }) => ({
        contents: [
          `import words from './${FILE}'`,
          `import { openPieces } from ${JSON.stringify(OPENER)}`,
          readFileSync(path, 'utf8'),
          'for (const part of ["one", "two"]) Object.assign(nlp.model()[part], words[part])',
          'nlp.model().one.lexicon = openPieces(words.pieces)',
        ].join('\n'),
      }))
      // Copied key by key, the models of a plugin cost more than to read them.
      plugin.onLoad({ filter: /compromise\/src\/API\/extend\.js$/ }, ({ path }) => ({
        contents: readFileSync(path, 'utf8').replace(EACH_KEY, TAKEN_WHOLE),
      }))
      const unpacked = 'export const lexicon = {}, switches = {}, frozenLex = {}'
      plugin.onLoad({ filter: /preTagger\/model\/lexicon\/index\.js$/ }, () => ({ contents: unpacked }))
      const expanded = 'export default (model) => model'
      plugin.onLoad({ filter: /preTagger\/model\/_expand\/index\.js$/ }, () => ({ contents: expanded }))
    },
  }
}
