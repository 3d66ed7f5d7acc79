// Modules of Node's that a plain check imports and seldom uses, loaded when something of them is asked for.
//
// Bundled, an import stands at the start of the program, and loading these takes a short run 2 ms of its processor's time:
// commander asks for child processes, the lists for the inflater, the choice of workers for the number of cores.

import type { Plugin } from 'esbuild'

/** What we and commander ask of each. A name that is missing here stops the build. */
const LAZY = new Map([
  ['node:child_process', ['spawn', 'spawnSync']],
  ['node:os', ['availableParallelism', 'tmpdir']],
  ['node:zlib', ['inflateSync']],
])

/** For the program and its parts: modules that hand out the functions of Node's own, each when it is asked for. */
export const lazyBuiltIns: Plugin = {
  name: 'lazy-built-ins',
  setup(plugin) {
    const filter = new RegExp(`^(?:${[...LAZY.keys()].join('|')})$`)
    plugin.onResolve({ filter }, ({ path, namespace, importer }) =>
      namespace === 'lazy-built-in' || isOfOthers(importer)
        ? { path, external: true }
        : { path, namespace: 'lazy-built-in' },
    )
    plugin.onLoad({ filter: /.*/, namespace: 'lazy-built-in' }, ({ path }) => {
      const getters = (LAZY.get(path) ?? []).map((name) => `get ${name}() { return require('${path}').${name} }`)
      return { contents: `module.exports = { ${getters.join(', ')} }`, loader: 'js' }
    })
    plugin.onEnd(({ outputFiles = [] }) => ({ errors: outputFiles.flatMap(({ text }) => findMissing(text)) }))
  },
}

/** Other packages may ask for whatever Node has. */
const isOfOthers = (importer: string): boolean => /node_modules(?![\\/]commander[\\/])/.test(importer)

/** Names that the bundled code takes from a lazy module, which lacks them. */
function findMissing(code: string): readonly { readonly text: string }[] {
  const lazy = [...code.matchAll(/(import_\w+)\s*=\s*__toESM\(require_(node_\w+)\(\)/g)]
  return lazy.flatMap(([, name = '', required = '']) => {
    const module = [...LAZY.keys()].find((one) => one.replace(':', '_') === required)
    const asked = [...code.matchAll(new RegExp(`\\b${name}\\.(\\w+)`, 'g'))].map(([, word = '']) => word)
    const missing = module === undefined ? [] : asked.filter((word) => !LAZY.get(module)?.includes(word))
    return missing.map((word) => ({ text: `scripts/bundle/lazy-built-ins.ts lacks \`${word}\` of \`${module}\`` }))
  })
}
