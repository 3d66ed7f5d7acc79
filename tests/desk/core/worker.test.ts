// The built worker in Chromium and Firefox: the same verdicts as `battledore check --format json`, and a PDF that reads the same.

import { afterAll, expect, it } from 'vitest'
import { type BrowserName, openBrowser } from '../../../scripts/browser/browsers.ts'
import { askInPage, serveWorker, startInPage } from '../../../scripts/browser/worker.ts'
import { main } from '../../../src/cli/main.ts'
import { createWorld } from '../../cli/io.ts'
import { readPdf } from '../../print/read-back.ts'
import { describeWith } from '../../tools.ts'
import { pickShown, sayByDesk } from './as-json.ts'
import { filesInMemory, openDesk, readFixtures } from './host.ts'

const files = readFixtures()
const stories = Object.keys(files).filter((name) => name.endsWith('.md'))

const served = await serveWorker()
const world = createWorld(files)
afterAll(async () => {
  world.remove()
  await served.stop()
})
await main(['check', ...stories, '--format', 'json'], world.io)
const report = JSON.parse(world.out())

const NAMES = { chromium: 'Chromium', 'firefox-esr': 'Firefox' } as const satisfies Record<BrowserName, string>

for (const [program, name] of Object.entries(NAMES) as [BrowserName, string][])
  describeWith(program, `the worker in ${name}`, () => {
    it('says of all fixtures what the command says, opens what is large on need, and prints', {
      timeout: 120_000,
    }, async () => {
      const { browser } = await openBrowser(program)
      try {
        const page = await browser.newPage()
        const asked: string[] = []
        page.on('request', (request) => asked.push(request.url().replace(served.address, '')))
        await startInPage(page, served, files)
        const ask: Parameters<typeof sayByDesk>[0] = (question) => askInPage(page, question)
        for (const file of report.files)
          expect(await sayByDesk(ask, file.path, files[file.path] ?? '')).toEqual(pickShown(file))
        expect(asked.filter((path) => /lists|fonts|pictures/.test(path))).toEqual([])

        const tub = { path: 'print/none.md', text: (files['print/tub.md'] ?? '').replace(/!\[.*\)/g, ''), version: 1 }
        const bank = await ask({ kind: 'words', story: tub, wish: { rhymesWith: 'hat', count: 5 } })
        const here = await openDesk(filesInMemory(files))
        expect(bank).toEqual(await here.ask({ kind: 'words', story: tub, wish: { rhymesWith: 'hat', count: 5 } }))

        const wish = { kind: 'booklet', paper: 'a4', letters: 'andika', size: 'usual', mark: 'practised' } as const
        const [printed, inNode] = [
          await ask({ kind: 'print', story: tub, wish }),
          await here.ask({ kind: 'print', story: tub, wish }),
        ]
        if (!printed.ok || !inNode.ok) throw new Error('it can be printed')
        const [read, readInNode] = [await readPdf(new Uint8Array(printed.value.pdf)), await readPdf(inNode.value.pdf)]
        expect(read.units).toEqual(readInNode.units)
        expect(read.sheets).toEqual(readInNode.sheets)
        const book = await ask({ kind: 'book', story: tub, wish: { ...wish, fold: 'staple' } })
        expect(book).toEqual(await here.ask({ kind: 'book', story: tub, wish: { ...wish, fold: 'staple' } }))
      } finally {
        await browser.close()
      }
    })
  })
