// Modules of Node's that a plain check imports and seldom uses, loaded when something of them is asked for.
//
// Bundled, an import stands at the start of the program, and loading these takes a short run 2 ms of its processor's time:
// commander asks for child processes, the lists for the inflater, the choice of workers for the number of cores.

import { createRequire } from 'node:module'
import type { Plugin } from 'esbuild'

const LAZY = ['node:child_process', 'node:os', 'node:zlib']

const require = createRequire(import.meta.url)

/** For the program and its parts: modules that hand out the functions of Node's own, each when it is asked for. */
export const lazyBuiltIns: Plugin = {
  name: 'lazy-built-ins',
  setup(plugin) {
    const filter = new RegExp(`^(?:${LAZY.join('|')})$`)
    plugin.onResolve({ filter }, ({ path, namespace }) =>
      namespace === 'lazy-built-in' ? { path, external: true } : { path, namespace: 'lazy-built-in' },
    )
    plugin.onLoad({ filter: /.*/, namespace: 'lazy-built-in' }, ({ path }) => {
      const names = Object.keys(require(path) as object).filter((name) => /^[a-z]\w*$/.test(name))
      const getters = names.map((name) => `get ${name}() { return require('${path}').${name} }`)
      return { contents: `module.exports = { ${getters.join(', ')} }`, loader: 'js' }
    })
  },
}
