// The names of characters (`&eacute;`) as text, laid out when a story has one: as an object of 2,125 names, V8 makes each of them
// anew in every run, and few stories have any.

import { pathToFileURL } from 'node:url'
import type { Plugin } from 'esbuild'

/** ASCII, so that V8 holds it in half the room. */
const toText = (table: Readonly<Record<string, string>>): string =>
  JSON.stringify(table).replace(/[^\0-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)

const toModule = (text: string): string => `
let table
const open = () => (table ??= JSON.parse(${JSON.stringify(text)}))
export const characterEntities = new Proxy({}, {
  get: (_, name) => open()[name],
  getOwnPropertyDescriptor: (_, name) =>
    Object.hasOwn(open(), name) ? { value: open()[name], configurable: true, enumerable: true, writable: true } : undefined,
})
`

/** For the program and its parts, in which one package asks whether a name stands in the table, and for what. */
export const lazyEntities: Plugin = {
  name: 'lazy-entities',
  setup(plugin) {
    plugin.onLoad({ filter: /[\\/]character-entities[\\/]index\.js$/ }, async ({ path }) => {
      const { characterEntities } = await import(pathToFileURL(path).href)
      return { contents: toModule(toText(characterEntities as Readonly<Record<string, string>>)), loader: 'js' }
    })
  },
}
