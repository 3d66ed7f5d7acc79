// The licence text of a package, from the package itself wherever it carries one.

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { ROOT } from '../root.ts'

interface Manifest {
  readonly name: string
  readonly version: string
  readonly license?: string
  readonly author?: string | { readonly name: string }
}

export interface Licensed {
  readonly name: string
  readonly version: string
  readonly text: string
}

/** Texts for packages that carry none and do not say enough of themselves: NAME.txt, a scope's slash as a dash. */
const OWN = join(ROOT, 'scripts', 'notices', 'texts')
const LICENCE_FILE = /^(?:licen[cs]e|copying|notice|mit-licen[cs]e)(?:[.-](?!.*\.(?:[cm]?[jt]s|json)$).*)?$/i

/** @throws where the package says too little: then its text belongs into scripts/notices/texts/ */
export function readLicence(folder: string, ownTexts = OWN): Licensed {
  const manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest
  const { name, version } = manifest
  const text = readOwn(name, ownTexts) ?? readFiles(folder) ?? toStandardText(manifest, readHolder(folder))
  if (text === undefined)
    throw new Error(`${name} carries no licence text: put it into scripts/notices/texts/${toFileName(name)}`)
  return {
    name,
    version,
    text: text
      .replaceAll('\r\n', '\n')
      .replaceAll(/[ \t]+$/gm, '')
      .trim(),
  }
}

const toFileName = (name: string): string => `${name.replace(/^@/, '').replaceAll('/', '-')}.txt`

function readOwn(name: string, folder: string): string | undefined {
  const file = join(folder, toFileName(name))
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

function readFiles(folder: string): string | undefined {
  const names = readdirSync(folder).filter((name) => LICENCE_FILE.test(name))
  if (names.length === 0) return undefined
  return names
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8').trim())
    .join('\n\n')
}

/** A set of pictures names its holder beside it. */
function readHolder(folder: string): string | undefined {
  const file = join(folder, 'info.json')
  if (!existsSync(file)) return undefined
  const { author } = JSON.parse(readFileSync(file, 'utf8')) as { author?: { name?: string } }
  return author?.name
}

function toStandardText({ license, author }: Manifest, holder: string | undefined): string | undefined {
  const name = holder ?? (typeof author === 'string' ? author : author?.name)
  if (license !== 'MIT' || name === undefined) return undefined
  return `(The package carries no licence file. It says that it is under the MIT License; this is its usual text.)

Copyright (c) ${name}

${MIT}`
}

const MIT = `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation
files (the "Software"), to deal in the Software without restriction, including without limitation the rights to use,
copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom
the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the
Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE
WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR
COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR
OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`
