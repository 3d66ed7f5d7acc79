// Documents of every kind that can be brought in: their text word for word, their pages, their pictures, and what is told of the rest.

import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type BroughtStory, bringText } from '../../src/bring/index.ts'
import { readStory } from '../../src/story/index.ts'
import { docxPicture, escapeXml, makeDocx, makeOdt, PNG, paragraph, run } from './make.ts'

const bring = (bytes: Uint8Array | string, name: string) =>
  bringText({
    bytes: typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes,
    name,
    pictureFolder: 'hat-pictures',
  })

async function bringWell(bytes: Uint8Array | string, name: string): Promise<BroughtStory> {
  const brought = await bring(bytes, name)
  if ('unreadable' in brought) throw new Error(brought.unreadable)
  return brought
}

async function toMarkdown(bytes: Uint8Array | string, name: string): Promise<string> {
  return (await bringWell(bytes, name)).markdown
}

const BREAK = '<w:r><w:br w:type="page"/></w:r>'

describe('.docx', () => {
  it.each([
    ['a page break in a paragraph of its own', paragraph(run('A hat.')) + paragraph(BREAK) + paragraph(run('A cat.'))],
    ['a page break at the end of a paragraph', paragraph(run('A hat.') + BREAK) + paragraph(run('A cat.'))],
    ['a page break in the middle of a paragraph', paragraph(run('A hat.') + BREAK + run('A cat.'))],
    ['a paragraph that begins a page', paragraph(run('A hat.')) + paragraph(run('A cat.'), '<w:pageBreakBefore/>')],
    ['a style that begins a page', paragraph(run('A hat.')) + paragraph(run('A cat.'), '<w:pStyle w:val="NewPage"/>')],
    [
      'a new section',
      paragraph(run('A hat.'), '<w:sectPr><w:type w:val="nextPage"/></w:sectPr>') + paragraph(run('A cat.')),
    ],
    [
      'a section of the usual kind',
      paragraph(run('A hat.'), '<w:sectPr/>') + paragraph(run('A cat.'), '<w:spacing w:after="0"/>'),
    ],
  ])('%s', async (_, body) => {
    expect(await toMarkdown(makeDocx(body), 'hat.docx')).toBe('A hat.\n\n---\n\nA cat.\n')
  })

  it.each([
    [
      'a section on the same page',
      paragraph(run('A hat.'), '<w:sectPr><w:type w:val="continuous"/></w:sectPr>') + paragraph(run('A cat.')),
    ],
    [
      'a page break that is switched off',
      paragraph(run('A hat.')) + paragraph(run('A cat.'), '<w:pStyle w:val="NewPage"/><w:pageBreakBefore w:val="0"/>'),
    ],
  ])('%s', async (_, body) => {
    expect(await toMarkdown(makeDocx(body), 'hat.docx')).toBe('A hat.\n\nA cat.\n')
  })

  it('takes title, headings, marked letters and line ends', async () => {
    const body =
      paragraph(run('The Hat'), '<w:pStyle w:val="Title"/>') +
      paragraph(
        run('sh') + run('ee', '<w:b/>') + run('p ') + run('sat', '<w:i/>') + '<w:r><w:br/></w:r>' + run('down.'),
      ) +
      paragraph(run('Page 2'), '<w:pStyle w:val="Heading1"/>') +
      paragraph(run('A cat.'))
    expect(await toMarkdown(makeDocx(body), 'hat.docx')).toBe(
      '# The Hat\n\nsh**ee**p *sat*\\\ndown.\n\n---\n\n## Page 2\n\nA cat.\n',
    )
  })

  it('takes pictures with their words, and leaves out those that no browser shows', async () => {
    const body = paragraph(docxPicture('a red hat')) + paragraph(run('A hat.'))
    const good = await bringWell(makeDocx(body, { 'word/media/image1.png': PNG }), 'hat.docx')
    expect(good.markdown).toBe('![a red hat](hat-pictures/1.png)\n\nA hat.\n')
    expect(good.pictures).toEqual([{ path: 'hat-pictures/1.png', bytes: PNG, type: 'png' }])
    const odd = await bringWell(makeDocx(body, { 'word/media/image1.png': new Uint8Array([1, 0, 0, 0]) }), 'hat.docx')
    expect(odd.markdown).toBe('A hat.\n')
    expect(odd.notes).toEqual([{ code: 'picture-kind', count: 1 }])
  })

  it('leaves out what was deleted, remarks, and the heads of sheets', async () => {
    const W = 'xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"'
    const deleted = '<w:del w:id="1" w:author="t"><w:r><w:delText>bad </w:delText></w:r></w:del>'
    const added = `<w:ins w:id="2" w:author="t">${run('red ')}</w:ins>`
    const head = { 'word/header1.xml': `<w:hdr ${W}><w:p><w:r><w:t>Class 2</w:t></w:r></w:p></w:hdr>` }
    const brought = await bringWell(makeDocx(paragraph(run('A ') + deleted + added + run('hat.')), head), 'hat.docx')
    expect(brought.markdown).toBe('A red hat.\n')
    expect(brought.notes).toEqual([{ code: 'header', count: 1 }])
  })

  it('writes a table cell by cell, and says so', async () => {
    const cell = (text: string) => `<w:tc>${paragraph(run(text))}</w:tc>`
    const brought = await bringWell(makeDocx(`<w:tbl><w:tr>${cell('cat')}${cell('dog')}</w:tr></w:tbl>`), 'hat.docx')
    expect(brought.markdown).toBe('cat\n\ndog\n')
    expect(brought.notes).toEqual([{ code: 'table', count: 1 }])
  })

  it('puts a footnote where the grown-up reads', async () => {
    const W = 'xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"'
    const notes = {
      'word/footnotes.xml': `<w:footnotes ${W}><w:footnote w:id="2"><w:p><w:r><w:t>Say it slowly.</w:t></w:r></w:p></w:footnote></w:footnotes>`,
    }
    const body = paragraph(run('A hat') + '<w:r><w:footnoteReference w:id="2"/></w:r>' + run('.'))
    const brought = await bringWell(makeDocx(body, notes), 'hat.docx')
    expect(brought.markdown).toBe('A hat.\n\n> Say it slowly.\n')
    expect(brought.notes).toEqual([{ code: 'footnote', count: 1 }])
  })
})

const P =
  '<style:style style:name="P1" style:family="paragraph"><style:paragraph-properties fo:break-before="page"/></style:style>'
const B =
  '<style:style style:name="T1" style:family="text"><style:text-properties fo:font-weight="bold"/></style:style>'

describe('.odt', () => {
  it('takes pages, headings, marked letters, spaces and line ends', async () => {
    const body =
      '<text:h text:outline-level="1">The Hat</text:h><text:p>sh<text:span text:style-name="T1">ee</text:span>p<text:s text:c="3"/>sat<text:line-break/>down.<text:tab/></text:p>' +
      '<text:p text:style-name="P1">A <text:soft-page-break/>cat.</text:p>'
    expect(await toMarkdown(makeOdt(body, P + B), 'hat.odt')).toBe(
      '# The Hat\n\nsh**ee**p sat\\\ndown.\n\n---\n\nA cat.\n',
    )
  })

  it('leaves out what was deleted and remarks, and takes pictures, notes and boxes', async () => {
    const body =
      '<text:tracked-changes><text:changed-region><text:deletion><text:p>bad</text:p></text:deletion></text:changed-region></text:tracked-changes>' +
      '<text:p>A <office:annotation><text:p>no</text:p></office:annotation>hat<text:note text:note-class="footnote"><text:note-citation>1</text:note-citation><text:note-body><text:p>Say it slowly.</text:p></text:note-body></text:note>.' +
      '<draw:frame><draw:image xlink:href="Pictures/a.png"/><svg:title>a red hat</svg:title></draw:frame><draw:frame><draw:text-box><text:p>In a box.</text:p></draw:text-box></draw:frame></text:p>'
    const brought = await bringWell(makeOdt(body, '', { 'Pictures/a.png': PNG }), 'hat.odt')
    expect(brought.markdown).toBe('A hat.\n\n> Say it slowly.\n\n![a red hat](hat-pictures/1.png)\n\nIn a box.\n')
    expect(brought.notes).toEqual([{ code: 'footnote', count: 1 }])
  })
})

describe('.html and .txt', () => {
  it('reads what a browser shows', async () => {
    const html =
      '<title>A  Hat</title><style>p{}</style><p>A <b>h</b>at &amp;\n a&nbsp;cat.<p hidden>no<script>no</script><p>Yes.<br>It is.<hr><img src="my%20cat.png" alt="a cat"><img src="https://example.org/dog.png"><p style="page-break-before: always">Three.'
    const brought = await bringWell(html, 'hat.html')
    expect(brought.markdown).toBe(
      '---\ntitle: A Hat\n---\n\nA **h**at & a\u00a0cat.\n\nYes.\\\nIt is.\n\n---\n\n![a cat](<my cat.png>)\n\n---\n\nThree.\n',
    )
    expect(brought.notes).toEqual([{ code: 'picture-on-web', count: 1 }])
  })

  it.each([
    ['paragraphs and lines', 'A hat.\r\nA cat.\r\n\r\nA dog.', 'A hat.\\\nA cat.\n\nA dog.\n'],
    ['a form feed', 'A hat.\fA cat.', 'A hat.\n\n---\n\nA cat.\n'],
    ['a line of dashes', 'A hat.\n-----\nA cat.', 'A hat.\n\n---\n\nA cat.\n'],
    [
      'lines that say the page',
      'Page 1\nA hat.\n\nPage 2\nA cat.',
      '## Page 1\n\nA hat.\n\n---\n\n## Page 2\n\nA cat.\n',
    ],
  ])('%s', async (_, text, wanted) => {
    expect(await toMarkdown(text, 'hat.txt')).toBe(wanted)
  })

  it('reads letters in the usual ways of writing them', async () => {
    const utf16 = Uint8Array.from([0xff, 0xfe, ...[...'Zoé'].flatMap((letter) => [letter.charCodeAt(0), 0])])
    expect(await toMarkdown(utf16, 'a.txt')).toBe('Zoé\n')
    const old = await bringWell(Uint8Array.from([0x5a, 0x6f, 0xe9, 0x92, 0x73]), 'a.txt')
    expect(old.markdown).toBe('Zoé’s\n')
    expect(old.notes).toEqual([{ code: 'encoding', count: 1 }])
  })
})

const words = fc.array(fc.constantFrom('Zub', 'had', 'a', '"hat"', "isn't", 'R&B', '<b>', '*', '1.', '# x', 'é'), {
  minLength: 1,
  maxLength: 6,
})
const sheets = fc.array(
  fc.array(
    words.map((all) => `Zub ${all.join(' ')}`),
    { minLength: 1, maxLength: 3 },
  ),
  {
    minLength: 1,
    maxLength: 4,
  },
)

describe('generated documents', () => {
  const readBack = async (bytes: Uint8Array, name: string): Promise<string[][]> =>
    readStory(await toMarkdown(bytes, name)).pages.map((page) => page.blocks.map(({ text }) => text))

  it('.docx come out word for word, page for page', async () => {
    await fc.assert(
      fc.asyncProperty(sheets, async (wanted) => {
        const body = wanted.map((sheet, at) =>
          sheet.map((text, line) => paragraph(run(text), at > 0 && line === 0 ? '<w:pageBreakBefore/>' : '')).join(''),
        )
        expect(await readBack(makeDocx(body.join('')), 'a.docx')).toEqual(wanted)
      }),
      { numRuns: 25 },
    )
  })

  it('.odt come out word for word, page for page', async () => {
    await fc.assert(
      fc.asyncProperty(sheets, async (wanted) => {
        const body = wanted.map((sheet, at) =>
          sheet
            .map(
              (text, line) =>
                `<text:p text:style-name="${at > 0 && line === 0 ? 'P1' : ''}">${escapeXml(text)}</text:p>`,
            )
            .join(''),
        )
        expect(await readBack(makeOdt(body.join(''), P), 'a.odt')).toEqual(wanted)
      }),
      { numRuns: 100 },
    )
  })
})

describe('what cannot be read is told in one sentence', () => {
  const OLD = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]
  const wide = (text: string) => [...text].flatMap((letter) => [letter.charCodeAt(0), 0])
  const locked = { 'META-INF/manifest.xml': '<m xmlns:manifest="x"><manifest:encryption-data /></m>' }
  it.each<readonly [string, Uint8Array | string, RegExp]>([
    ['nothing', '', /^is empty\.$/],
    ['no letters', ' \n ', /^holds no text/],
    ['a broken .docx', makeDocx(paragraph(run('A hat.'))).subarray(0, 300), /^is broken: .* save it anew\.$/],
    ['a .docx with broken text', makeDocx('<w:p><w:r>'), /^is broken: its text cannot be read/],
    ['a broken .odt', makeOdt('<text:p>'), /^is broken: its text cannot be read/],
    ['a locked .docx', Uint8Array.from([...OLD, ...wide('EncryptedPackage')]), /^is protected by a password/],
    ['a locked .odt', makeOdt('<text:p>x</text:p>', '', locked), /^is protected by a password/],
    ['an old .doc', Uint8Array.from([...OLD, ...wide('WordDocument')]), /^is in the old \.doc format/],
    ['a PDF', '%PDF-1.7\n', /^is a PDF/],
    ['RTF', '{\\rtf1 hat}', /^is in the Rich Text Format/],
    [
      'a table document',
      makeOdt('', '', { mimetype: 'application/vnd.oasis.opendocument.spreadsheet' }),
      /^is not a text of a kind/,
    ],
    ['bytes', Uint8Array.from([1, 2, 0, 3]), /^is not a text/],
  ])('%s', async (_, bytes, message) => {
    const brought = await bring(bytes, 'hat.docx')
    expect('unreadable' in brought && brought.unreadable).toMatch(message)
  })

  it('does not unpack what would fill the memory', async () => {
    const bomb = makeDocx(paragraph(run('A hat.')), { 'word/media/a.bin': new Uint8Array(210 * 1024 * 1024) })
    expect(bomb.length).toBeLessThan(1024 * 1024)
    expect(await bring(bomb, 'hat.docx')).toEqual({ unreadable: expect.stringMatching(/^is too large/) })
  })

  it('never throws, whatever the bytes', async () => {
    const whole = makeDocx(paragraph(run('A hat.')))
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.nat(255), async (at, byte) => {
        const changed = Uint8Array.from(whole)
        changed[at] = byte
        expect(await bring(changed, 'hat.docx')).toBeTypeOf('object')
      }),
      { numRuns: 60 },
    )
  })
})
