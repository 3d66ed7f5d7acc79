// Compiles the built-in sequences to JSON, with every sound found.

import { readdirSync, readFileSync } from 'node:fs'
import { loadPhonics } from '../../src/packaged/data.ts'
import { toProblemLine } from '../../src/problem/index.ts'
import { compileSequence } from '../../src/sequence/compile.ts'
import type { CompiledSequence } from '../../src/sequence/compiled.ts'

const folder = new URL('../../src/sequence/built-in/', import.meta.url)

/** By name. Throws with every mistake of a built-in file: such a file must not ship. */
export function compileBuiltIns(): Record<string, CompiledSequence> {
  const read = (name: string) => readFileSync(new URL(`${name}.yaml`, folder), 'utf8')
  const names = readdirSync(folder)
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => file.replace('.yaml', ''))
  return Object.fromEntries(
    names.map((name) => {
      const { compiled, problems } = compileSequence(read(name), {
        path: `src/sequence/built-in/${name}.yaml`,
        phonicsFor: loadPhonics,
        resolve: (other) => (names.includes(other) ? read(other) : undefined),
      })
      if (!compiled || problems.length > 0) {
        throw new Error(problems.map(toProblemLine).join('\n'))
      }
      return [name, compiled]
    }),
  )
}
