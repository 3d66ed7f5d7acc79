// Modules of Node's that a plain check imports and seldom uses, loaded when something of them is asked for.
//
// Bundled, an import stands at the start of the program, and loading these takes a short run 2 ms of its processor's time:
// commander asks for child processes, the lists for the inflater, the choice of workers for the number of cores.

import type { Plugin } from 'esbuild'

/** What is asked of each: another name must be written here before it is there. */
const LAZY = new Map([
  ['node:child_process', ['spawn', 'spawnSync']],
  ['node:os', ['availableParallelism', 'release', 'type']],
  ['node:zlib', ['inflateSync']],
])

/** For the program and its parts: modules that hand out the functions of Node's own, each when it is asked for. */
export const lazyBuiltIns: Plugin = {
  name: 'lazy-built-ins',
  setup(plugin) {
    const filter = new RegExp(`^(?:${[...LAZY.keys()].join('|')})$`)
    plugin.onResolve({ filter }, ({ path, namespace }) =>
      namespace === 'lazy-built-in' ? { path, external: true } : { path, namespace: 'lazy-built-in' },
    )
    plugin.onLoad({ filter: /.*/, namespace: 'lazy-built-in' }, ({ path }) => {
      const getters = (LAZY.get(path) ?? []).map((name) => `get ${name}() { return require('${path}').${name} }`)
      return { contents: `module.exports = { ${getters.join(', ')} }`, loader: 'js' }
    })
  },
}
