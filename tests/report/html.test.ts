// The HTML report in a real browser: what is seen, what a screen reader is told, and that nothing is loaded or run.

import { pathToFileURL } from 'node:url'
import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../cli/io.ts'
import { describeWith } from '../tools.ts'

const STORY = `---
step: pink-3
---

# The n**igh**t

Meg sat. A night, \\<b>bold\\</b> & a light.

---

Sid sat. Sid sat. Sid sat. Sid sat.

The   hen
is at the &lt;script>pit.
`
// Starting Chromium as root in a closed network needs these.
const ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

let world: TestWorld
beforeAll(async () => {
  world = createWorld({
    'battledore.yaml': 'names: [Meg, Sid]\n',
    'night <img src=x onerror=alert(1)>.md': STORY,
    'good.md': '---\nstep: pink-4\n---\n\nSid sat.\n',
    'bad.md': '\u0000',
  })
  await main(['check', '.', '--format', 'html=out.html', '--format', 'json=out.json'], world.io)
})
afterAll(() => world.remove())

describeWith('chromium', 'the HTML report in Chromium', () => {
  let browser: Browser
  let page: Page
  const loaded: string[] = []
  const said: string[] = []
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ARGS })
    page = await browser.newPage({ viewport: { width: 900, height: 1200 } })
    page.on('request', (request) => loaded.push(request.url()))
    page.on('console', (message) => said.push(message.text()))
    page.on('dialog', (dialog) => void dialog.dismiss().then(() => said.push('a dialog')))
    await page.goto(pathToFileURL(`${world.cwd}/out.html`).href)
  })
  afterAll(() => browser?.close())

  it('loads nothing but itself, runs nothing, complains of nothing', () => {
    expect(loaded).toEqual([pathToFileURL(`${world.cwd}/out.html`).href])
    expect(said).toEqual([])
  })

  it('shows each page as a child sees it, without Markdown and without what adults read', async () => {
    const texts = await page.locator('#story-2 .page').evaluateAll((pages) =>
      pages.map((one) => {
        const copy = one.cloneNode(true) as Element
        for (const note of copy.querySelectorAll('a.note')) note.remove()
        return [...copy.querySelectorAll('p')].map((line) =>
          line.innerHTML
            .replaceAll('<br>', '\n')
            .replace(/<[^>]*>/g, '')
            .replaceAll('&lt;', '<')
            .replaceAll('&gt;', '>')
            .replaceAll('&amp;', '&'),
        )
      }),
    )
    expect(await page.locator('#story-2 .page b').evaluateAll((all) => all.map(({ innerHTML }) => innerHTML))).toEqual([
      'igh',
    ])
    expect(texts).toEqual([
      ['The night', 'Meg sat. A night, <b>bold</b> & a light.'],
      ['Sid sat. Sid sat. Sid sat. Sid sat.', 'The hen\nis at the <script>pit.'].map((text) =>
        expect.stringMatching(new RegExp(text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', ' +'))),
      ),
    ])
  })

  it('marks the word, underlines its letters, and leads to the note', async () => {
    const night = page.locator('#story-2 .page mark', { hasText: 'night' })
    expect(await night.count()).toBe(2)
    expect(await night.first().locator('u').allTextContents()).toEqual(['igh'])
    const line = await night
      .first()
      .locator('u')
      .evaluate((letters) => getComputedStyle(letters).textDecorationLine)
    expect(line).toBe('underline')
    const note = page.locator('#story-2 .page mark:has-text("night") + a.note').first()
    expect(await note.getAttribute('aria-label')).toMatch(/^note \d+$/)
    await note.click()
    const target = page.locator('li:target')
    expect(await target.textContent()).toContain('night')
    expect(await target.isVisible()).toBe(true)
  })

  it('has in its table the figures of the JSON report, and a bar a page', async () => {
    const [, story] = JSON.parse(world.read('out.json')).files
    const rows = await page
      .locator('#story-2 tbody tr')
      .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent)))
    expect(rows).toEqual(
      story.pages.map((one: Record<string, number>) => [
        ...[one['page'], one['words'], one['decodable'], one['sight'], one['names'], one['unreadable']].map(String),
        expect.stringMatching(/^\d+ %$/),
      ]),
    )
    expect(await page.locator('#story-2 rect.readable').count()).toBe(story.pages.length)
    const [words] = await page
      .locator('#story-2 .chart text')
      .allTextContents()
      .then((texts) => texts.filter((text) => text.includes(' of ')))
    expect(words).toBe(`${story.pages[0].words - story.pages[0].unreadable} of ${story.pages[0].words}`)
  })

  it('reads well aloud: one main, headings in order, named regions, no picture without words', async () => {
    const levels = await page.locator('h1, h2, h3').evaluateAll((all) => all.map((one) => Number(one.tagName[1])))
    for (const [at, level] of levels.entries()) expect(level - (levels[at - 1] ?? 0)).toBeLessThanOrEqual(1)
    expect(await page.locator('main').count()).toBe(1)
    expect(await page.locator('html').getAttribute('lang')).toBe('en')
    expect(await page.locator('svg:not([aria-hidden])').count()).toBe(0)
    const told = await page.locator('#story-2').ariaSnapshot()
    expect(told).toContain('link "note 1"')
    expect(told).toMatch(/- table "Words on each page"/)
    const ids = await page.locator('[id]').evaluateAll((all) => all.map(({ id }) => id))
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('prints small, and the pages alone where that is ticked, without a script', async () => {
    await page.emulateMedia({ media: 'print' })
    const toSeen = async () => ({
      codes: await page.locator('ol.notes li:visible, a.note:visible, .scroll:visible, header:visible').count(),
      pages: await page.locator('.page:visible').count(),
      box: await page.locator('#alone:visible, label:visible').count(),
      size: await page
        .locator('.page')
        .first()
        .evaluate((one) => getComputedStyle(one).fontSize),
    })
    const before = await toSeen()
    expect(before.codes).toBeGreaterThan(5)
    expect([before.box, before.size]).toEqual([0, `${(13 * 4) / 3}px`.replace(/(\.\d{4}).*/, '$1px')])
    await page.emulateMedia({ media: 'screen' })
    await page.getByLabel('The pages alone').check()
    await page.emulateMedia({ media: 'print' })
    expect(await toSeen()).toMatchObject({ codes: 0, pages: before.pages, box: 0 })
    const mark = await page
      .locator('mark u')
      .first()
      .evaluate((one) => getComputedStyle(one).textDecorationLine)
    expect(mark).toBe('none')
    // The letters that the maker has set in bold are the child's.
    expect(await page.locator('.page b:visible').count()).toBe(1)
    await page.emulateMedia({ media: 'screen' })
    await page.getByLabel('The pages alone').uncheck()
  })

  it.each(['light', 'dark'] as const)('has enough contrast in %s', async (colorScheme) => {
    await page.emulateMedia({ colorScheme })
    const ratios = await page.evaluate(() => {
      const toRgb = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number)
      // WCAG 2.2, relative luminance and contrast ratio.
      const toLight = (colour: string): number => {
        const [red = 0, green = 0, blue = 0] = toRgb(colour).map((value) =>
          value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4,
        )
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue
      }
      const toGround = (element: Element | null): string => {
        for (let at = element; at; at = at.parentElement) {
          const { backgroundColor } = getComputedStyle(at)
          if (backgroundColor !== 'rgba(0, 0, 0, 0)') return backgroundColor
        }
        return 'rgb(255, 255, 255)'
      }
      return [
        ...document.querySelectorAll(
          'p, li, h1, h2, h3, h2 span, mark, mark u, a.note, .quiet, .kind, td, th, caption, figcaption',
        ),
      ].map((element) => {
        const [one, other] = [toLight(getComputedStyle(element).color), toLight(toGround(element))]
        return [element.tagName, (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05)] as const
      })
    })
    expect(ratios.length).toBeGreaterThan(30)
    for (const [tag, ratio] of ratios) expect(ratio, tag).toBeGreaterThanOrEqual(4.5)
  })

  it('fits a phone: nothing but the table scrolls sideways', async () => {
    await page.setViewportSize({ width: 360, height: 740 })
    const [wide, seen] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ])
    expect(wide).toBeLessThanOrEqual(seen ?? 0)
  })
})

describe('the HTML report', () => {
  it('names each story by its title, by that at its top where it has no heading', async () => {
    const own = createWorld({
      'a.md': '---\ntitle: A <wet> hen\nstep: pink-4\n---\n\nSid sat.\n',
      'b.md': '---\nstep: pink-4\n---\n\n# The hat\n\nSid sat in a h**a**t. *Sid **sat** in it.*\n',
      'c.md': '---\nstep: pink-4\n---\n\nSid sat.\n',
    })
    await main(['check', '.', '--format', 'html'], own.io)
    const [, nav = ''] = /<nav[^>]*>(.*)<\/nav>/.exec(own.out()) ?? []
    expect([...nav.matchAll(/<a [^>]*>(.*?)<\/a>/g)].map(([, name]) => name)).toEqual([
      'A &lt;wet&gt; hen',
      'The hat',
      'c.md',
    ])
    expect(own.out()).toContain('>A &lt;wet&gt; hen <span class="quiet">a.md</span></h2>')
    // Letters that are practised stay bold in a word.
    expect(own.out()).toContain('h<b>a</b>t. ')
    expect(own.out()).toContain('<i><b>sat</b></i><i> in it.</i></p>')
    own.remove()
  })

  it('lists what could not be checked', () => {
    expect(world.read('out.html')).toContain('is not a text')
  })

  it('names no outside address', () => {
    expect(world.read('out.html')).not.toMatch(/(?:src|href)="(?!#)|https?:|url\((?!#)/)
  })
})
