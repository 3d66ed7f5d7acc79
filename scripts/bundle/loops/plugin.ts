// Loops over arrays that count, and values taken out of arrays by their place, where the sources ask an iterator.
//
// The sources say `for (const word of words)` and `const [first, second] = pair`. Until V8 has made its fastest code of a
// function, each step of such a loop calls an iterator and makes an object, and few functions of a check run so often. For
// an array a counted loop does the same. What is an array is known to TypeScript's checker.

import { readFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'esbuild'
import ts from 'typescript'
import { countLoops, FLAT_MAP_FILE } from './count.ts'

const FLAT_MAP = fileURLToPath(new URL('flat-map.ts', import.meta.url))

/** For all of our sources; other packages stay as they are. */
export function countedLoops(root: string): Plugin {
  let opened: ts.Program | undefined
  return {
    name: 'counted-loops',
    setup(plugin) {
      plugin.onResolve({ filter: new RegExp(`^${FLAT_MAP_FILE}$`) }, () => ({ path: FLAT_MAP }))
      plugin.onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, ({ path }) => {
        if (!path.startsWith(join(root, 'src') + sep)) return undefined
        opened ??= openProgram(root)
        const file = opened.getSourceFile(path)
        const contents = file ? countLoops(file, opened.getTypeChecker()) : readFileSync(path, 'utf8')
        return { contents, loader: 'ts' }
      })
    },
  }
}

function openProgram(root: string): ts.Program {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile)
  const { options, fileNames } = ts.parseJsonConfigFileContent({ ...config, include: ['src'] }, ts.sys, root)
  return ts.createProgram(fileNames, { ...options, incremental: false })
}
