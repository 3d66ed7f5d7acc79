// The files of the page itself, from dist/: the page, its worker, and the data that the worker asks for.

import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { PageFile } from '../../desk-server/index.ts'
import { DATA_FOLDER } from '../../packaged/data.ts'

const TYPES: Readonly<Record<string, string>> = {
  bin: 'application/octet-stream',
  css: 'text/css; charset=utf-8',
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  json: 'application/json',
  svg: 'image/svg+xml',
  ttf: 'font/ttf',
  woff: 'font/woff',
}

/** The only folders of dist/ that are shown, and what in them. */
const SHOWN: readonly (readonly [folder: string, name: RegExp])[] = [
  ['desk', /^[\w-]+\.(?:css|html|js|svg)$/],
  ['', /^(?:lexicon|words|lists)\.bin$|^pictures\.json$/],
  ['fonts', /^[\w-]+\.(?:ttf|woff)$/],
  ['sequences', /^[\w-]+\.json$/],
]

/** `index.html`, `app.js`; `data/lexicon.bin`, `data/fonts/andika.ttf`. Nothing else in dist/ has a name here. */
export function createPageFiles(nonce: string): PageFile {
  return (name) => {
    const path = findPath(name)
    if (path === undefined || !existsSync(path)) return undefined
    const type = TYPES[/\.(\w+)$/.exec(name)?.[1] ?? ''] ?? 'application/octet-stream'
    const bytes = readFileSync(path)
    if (name !== 'index.html') return { type, bytes }
    return { type, bytes: Buffer.from(bytes.toString('utf8').replaceAll('{{nonce}}', nonce)) }
  }
}

function findPath(name: string): string | undefined {
  const data = /^data\/(?:(fonts|sequences)\/)?([\w.-]+)$/.exec(name)
  const folder = data ? (data[1] ?? '') : 'desk'
  const file = data ? (data[2] ?? '') : name
  const isShown = SHOWN.some(([shown, pattern]) => shown === folder && pattern.test(file))
  return isShown ? join(DATA_FOLDER, folder, file) : undefined
}
