// Cuts the program into one file that a plain check needs, and files that are read only when they are reached.
//
// esbuild finds the cuts: every dynamic import of the sources begins a part, and what parts share lies in chunks that
// stand once. It makes many small files, and each costs a short run its opening; so a second pass joins those that the
// program needs at once, and the parts take their pieces from it. No code stands twice: a module has one state.

import { mkdirSync, writeFileSync } from 'node:fs'
import { basename, dirname, resolve } from 'node:path'
import { type BuildOptions, build, type Metafile, type Plugin } from 'esbuild'
import { toAscii } from './ascii.ts'

export interface Split {
  /** The source whose exports the program has. */
  readonly entry: string
  /** Sources that are imported dynamically but belong in the program all the same. */
  readonly kept: ReadonlySet<string>
}

/** A file that the first pass made. */
interface Chunk {
  readonly path: string
  readonly text: string
  /** Its name among the parts, and as a piece of the program. */
  readonly name: string
  readonly entryPoint: string | undefined
  readonly exports: readonly string[]
  /** The paths of chunks that it needs at once. */
  readonly needs: readonly string[]
}

type Chunks = ReadonlyMap<string, Chunk>

interface Cut {
  readonly chunks: Chunks
  /** What a plain check needs at once. */
  readonly eager: ReadonlySet<Chunk>
  /** What lies in the program besides, run only when it is reached. */
  readonly kept: ReadonlySet<Chunk>
}

/** Writes dist/program.cjs and dist/parts/, as CommonJS by the second options; gives what went in, for the notices. */
export async function splitProgram(options: BuildOptions, cjs: BuildOptions, split: Split): Promise<Metafile> {
  const { metafile, outputFiles } = await build({
    ...options,
    format: 'esm',
    splitting: true,
    metafile: true,
    write: false,
    entryPoints: [split.entry],
    outdir: 'dist',
    chunkNames: '[name]-[hash]',
  })
  const texts = new Map(outputFiles.map(({ path, text }) => [path, text]))
  const cut = toCut(toChunks(metafile, texts, options.absWorkingDir ?? '.'), split)
  await buildProgram(cjs, split, cut)
  const parts = [...cut.chunks.values()].filter((chunk) => !isInProgram(chunk, cut))
  await Promise.all(parts.map((part) => buildPart(cjs, part, cut)))
  return metafile
}

function toChunks(metafile: Metafile, texts: ReadonlyMap<string, string>, root: string): Chunks {
  const chunks = Object.entries(metafile.outputs).map(([file, { entryPoint, exports, imports }]): Chunk => {
    const needs = imports.filter(({ kind, external }) => kind === 'import-statement' && !external)
    const path = resolve(root, file)
    return {
      ...{ path, entryPoint, exports },
      text: texts.get(path) ?? '',
      name: entryPoint ? toPartName(entryPoint) : basename(file, '.js').toLowerCase(),
      needs: needs.map((one) => resolve(root, one.path)),
    }
  })
  const names = chunks.map(({ name }) => name)
  const twice = names.find((name, at) => names.indexOf(name) !== at)
  if (twice !== undefined) throw new Error(`two parts would be called ${twice}`)
  return new Map(chunks.map((chunk) => [chunk.path, chunk]))
}

/** `src/cli/words/run.ts` → `cli-words-run`; a file of a package → the package's name. */
export function toPartName(path: string): string {
  const [, name] = /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path) ?? []
  return (name ?? path.replace(/^src\/|(?:\/index)?\.[cm]?[jt]s$/g, '')).replace(/^@/, '').replaceAll('/', '-')
}

function toCut(chunks: Chunks, { entry, kept }: Split): Cut {
  const all = [...chunks.values()]
  const reach = (isStart: (source: string) => boolean): Set<Chunk> => {
    const found = new Set(all.filter(({ entryPoint }) => entryPoint !== undefined && isStart(entryPoint)))
    for (const chunk of found) for (const path of chunk.needs) found.add(chunks.get(path) as Chunk)
    return found
  }
  const eager = reach((source) => source === entry)
  const reached = [...reach((source) => kept.has(source))]
  return { chunks, eager, kept: new Set(reached.filter((chunk) => !eager.has(chunk))) }
}

const isInProgram = (chunk: Chunk, { eager, kept }: Cut): boolean => eager.has(chunk) || kept.has(chunk)

/** Loads the chunks from memory; what is not taken in is resolved by `toOther`. */
const fromMemory = (
  { chunks }: Cut,
  entry: { readonly text: string; readonly path: string },
  toOther: (chunk: Chunk) => ReturnType<Parameters<Parameters<Plugin['setup']>[0]['onResolve']>[1]>,
): Plugin => ({
  name: 'from-memory',
  setup(plugin) {
    plugin.onResolve({ filter: /.*/ }, ({ path, kind, importer }) => {
      if (kind === 'entry-point') return { path: entry.path, namespace: 'chunk' }
      const chunk = path.startsWith('.') ? chunks.get(resolve(importer, '..', path)) : undefined
      return chunk ? toOther(chunk) : { path, external: true }
    })
    plugin.onLoad({ filter: /.*/, namespace: 'chunk' }, ({ path }) => ({
      contents: path === entry.path ? entry.text : (chunks.get(path)?.text ?? ''),
      loader: 'js',
    }))
    plugin.onLoad({ filter: /.*/, namespace: 'piece' }, ({ path }) => ({ contents: path, loader: 'js' }))
  },
})

/** The name under which the program hands out a chunk. */
const toPiece = ({ name }: Chunk): string => `piece_${name.replaceAll('-', '_')}`

async function buildProgram(options: BuildOptions, { entry }: Split, cut: Cut): Promise<void> {
  const all = [...cut.chunks.values()]
  const wanted = new Set(all.filter((chunk) => !isInProgram(chunk, cut)).flatMap(({ needs }) => needs))
  const lines = all.flatMap((chunk) => {
    const from = JSON.stringify(`./${basename(chunk.path)}`)
    if (chunk.entryPoint === entry) return [`export * from ${from}`]
    if (cut.kept.has(chunk)) return [`export const ${toPiece(chunk)} = () => require(${from})`]
    if (!cut.eager.has(chunk) || !wanted.has(chunk.path)) return []
    if (chunk.exports.includes('default')) throw new Error(`${chunk.name} has a default export, which no part can take`)
    return [`export * as ${toPiece(chunk)} from ${from}`]
  })
  const { outputFiles } = await build({
    ...options,
    write: false,
    entryPoints: ['program'],
    outfile: 'dist/program.cjs',
    plugins: [
      fromMemory(cut, { text: lines.join('\n'), path: resolve(options.absWorkingDir ?? '.', 'dist', '-') }, (chunk) =>
        isInProgram(chunk, cut)
          ? { path: chunk.path, namespace: 'chunk' }
          : { path: `./parts/${chunk.name}.cjs`, external: true },
      ),
    ],
  })
  for (const { path, text } of outputFiles) {
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, toAscii(text))
  }
}

async function buildPart(options: BuildOptions, part: Chunk, cut: Cut): Promise<void> {
  const toOther = (chunk: Chunk) => {
    if (!isInProgram(chunk, cut)) return { path: `./${chunk.name}.cjs`, external: true }
    const piece = `require('../program.cjs').${toPiece(chunk)}${cut.kept.has(chunk) ? '()' : ''}`
    return { path: `module.exports = ${piece}`, namespace: 'piece' }
  }
  await build({
    ...options,
    entryPoints: ['part'],
    outfile: `dist/parts/${part.name}.cjs`,
    plugins: [fromMemory(cut, part, toOther)],
  })
}
