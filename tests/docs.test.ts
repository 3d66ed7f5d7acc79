// The documentation shows what the program really prints, and its links lead somewhere.
// After a change that is meant: npm run docs, and read the difference.

import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, it } from 'vitest'
import { main } from '../src/cli/main.ts'
import { createWorld } from './cli/io.ts'
import { listPages, ROOT, readShown, withOutputs } from './console.ts'

const UPDATE = process.env['UPDATE_DOCS'] !== undefined

async function run(argv: readonly string[]): Promise<string> {
  const world = createWorld({}, { cwd: ROOT, env: { COLUMNS: '80' } })
  try {
    await main(argv, world.io)
    return world.err() + world.out()
  } finally {
    world.remove()
  }
}

for (const page of listPages()) {
  it(`${page} shows real output`, async () => {
    const shown = readShown(page)
    const outputs: string[] = []
    for (const { argv } of shown) outputs.push(await run(argv))
    if (UPDATE) writeFileSync(join(ROOT, page), withOutputs(page, outputs))
    else for (const [at, { place, output }] of shown.entries()) expect(outputs[at], place).toBe(output)
  })

  it(`${page} links to files that are there`, () => {
    const links = [...readFileSync(join(ROOT, page), 'utf8').matchAll(/\]\((?!https?:|#)([^)#]+)(?:#[^)]*)?\)/g)].map(
      (match) => match[1] ?? '',
    )
    const missing = links.filter((link) => !existsSync(join(ROOT, dirname(page), link)))
    expect(missing).toEqual([])
  })
}
