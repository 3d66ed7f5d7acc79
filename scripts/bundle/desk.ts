// Bundles the desk: the page that `battledore desk` serves, and the same page as one HTML file that needs no server.

import { createHash } from 'node:crypto'
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { type BuildResult, build } from 'esbuild'
import { toNotices } from '../notices/notices.ts'
import { findBundled, findData } from '../notices/packages.ts'
import { bundleWorker } from './desk-worker.ts'

/** From the root: what the two pages took in, for the notices of the package. */
export const DESK_INSIDE = 'dist/.desk-packages.json'
/** What is compiled in of the data, so that a change of it is seen: see scripts/compile.ts. */
export const DESK_OUTPUTS = [
  ...['app.js', 'index.html', 'style.css', 'worker.js'].map((name) => `desk/${name}`),
  ...['battledore-desk.html', '.desk-packages.json'],
]

export async function bundleDesk(root: string): Promise<void> {
  const dist = join(root, 'dist')
  const desk = join(dist, 'desk')
  rmSync(desk, { recursive: true, force: true })
  mkdirSync(desk, { recursive: true })
  const worker = await bundleWorker(root, 'dist/desk/worker.js')
  const app = await bundlePage(root, 'src/desk/served-page.ts', 'dist/desk/app.js')
  const one = await bundlePage(root, 'src/desk/one-file-page.ts', 'dist/desk/one-file.js')
  const start = await bundlePage(root, 'src/desk/one-file-start.ts', 'dist/desk/one-file-start.js')
  const style = readFileSync(join(root, 'src', 'desk', 'style.css'), 'utf8')
  writeFileSync(join(desk, 'style.css'), style)
  writeFileSync(join(desk, 'index.html'), readFileSync(join(root, 'src', 'desk', 'page.html')))
  const inside = [...new Set([worker, app, one, start].flatMap(({ metafile }) => findBundled(metafile)))].sort()
  writeFileSync(join(root, DESK_INSIDE), JSON.stringify(inside))
  const read = (name: string): string => readFileSync(join(desk, name), 'utf8')
  writeFileSync(
    join(dist, 'battledore-desk.html'),
    toOneFile({
      start: read('one-file-start.js'),
      style,
      data: [
        ...listData(dist),
        pack('app.js', read('one-file.js')),
        pack('worker.js', read('worker.js')),
        pack('notices.md', toNotices(root, [...new Set([...inside, ...findData(root)])].sort())),
      ],
    }),
  )
  for (const name of ['one-file.js', 'one-file-start.js']) rmSync(join(desk, name))
}

function bundlePage(root: string, entry: string, outfile: string): Promise<BuildResult<{ metafile: true }>> {
  const list = (folder: string, pattern: RegExp): string =>
    JSON.stringify(
      readdirSync(join(root, 'dist', folder))
        .filter((name) => pattern.test(name))
        .map((name) => name.replace(/\.json$/, ''))
        .sort(),
    )
  return build({
    absWorkingDir: root,
    entryPoints: [entry],
    outfile,
    bundle: true,
    format: 'iife',
    platform: 'browser',
    target: ['es2022'],
    conditions: ['browser', 'module'],
    mainFields: ['browser', 'module', 'main'],
    define: { DESK_FONTS: list('fonts', /\.(?:ttf|woff)$/), DESK_SEQUENCES: list('sequences', /\.json$/) },
    minify: true,
    metafile: true,
    logLevel: 'warning',
    legalComments: 'none',
  })
}

interface Packed {
  /** As `DeskData` names it. */
  readonly name: string
  readonly packed: 'gzip' | 'deflate'
  readonly bytes: Uint8Array
}

const pack = (name: string, content: Uint8Array | string): Packed => ({
  name,
  packed: 'gzip',
  bytes: gzipSync(content, { level: 9 }),
})

function listData(dist: string): readonly Packed[] {
  const gzip = (name: string): Packed => pack(name, readFileSync(join(dist, name)))
  const below = (folder: string, pattern: RegExp): readonly string[] =>
    readdirSync(join(dist, folder))
      .filter((name) => pattern.test(name))
      .sort()
      .map((name) => `${folder}/${name}`)
  return [
    gzip('lexicon.bin'),
    gzip('words.bin'),
    { name: 'lists.bin', packed: 'deflate', bytes: readFileSync(join(dist, 'lists.bin')) },
    gzip('pictures.json'),
    ...below('sequences', /\.json$/).map(gzip),
    ...below('fonts', /\.(?:ttf|woff)$/).map(gzip),
  ]
}

interface OneFile {
  /** Runs `app.js` of the data. */
  readonly start: string
  readonly style: string
  readonly data: readonly Packed[]
}

/** Nothing is fetched: the policy forbids it, but for what the page makes itself. */
function toOneFile({ start, style, data }: OneFile): string {
  const script = toInline(start)
  const hash = createHash('sha256').update(script).digest('base64')
  const policy = [
    "default-src 'none'",
    `script-src 'sha256-${hash}' blob:`,
    "style-src 'unsafe-inline'",
    'img-src data: blob:',
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  const blocks = data.map(
    ({ name, packed, bytes }) =>
      `<script type="text/plain" data-name="${name}" data-packed="${packed}">${Buffer.from(bytes).toString('base64')}</script>`,
  )
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="content-security-policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<title>The writing desk</title>',
    '<link rel="icon" href="data:,">',
    `<style>${style}</style>`,
    '</head>',
    '<body>',
    `<noscript>${NO_SCRIPT}</noscript>`,
    '<div id="desk"></div>',
    ...blocks,
    '<!-- settings -->',
    `<script>${script}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n')
}

const NO_SCRIPT =
  'The writing desk needs JavaScript. It is switched off in this browser, or somebody who looks after this computer has forbidden it for pages that are opened as files.'

/** What would end a script in HTML, or begin one within it. */
const toInline = (text: string): string =>
  text.replace(/<(?=\/script|script|!--)/gi, (sign, at: number) => (text[at - 1] === '\\' ? sign : '\\x3C'))
