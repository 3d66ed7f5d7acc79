// Makes small .docx and .odt files, part by part, as the standards ECMA-376 and OpenDocument 1.3 describe them.

import { strToU8, zipSync } from 'fflate'

const toBytes = (parts: Readonly<Record<string, string | Uint8Array>>): Uint8Array =>
  zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, part]) => [name, typeof part === 'string' ? strToU8(part) : part]),
    ),
  )

const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>'
const W = 'xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"'
const MAIN = 'application/vnd.openxmlformats-officedocument.wordprocessingml'
const REL = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'

export const escapeXml = (text: string): string =>
  text.replace(/[&<>"]/g, (mark) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[mark] ?? mark)

/** A run of letters in a .docx paragraph. */
export const run = (text: string, look = ''): string =>
  `<w:r><w:rPr>${look}</w:rPr><w:t xml:space="preserve">${escapeXml(text)}</w:t></w:r>`

export const paragraph = (inner: string, settings = ''): string =>
  `<w:p>${settings === '' ? '' : `<w:pPr>${settings}</w:pPr>`}${inner}</w:p>`

const STYLES = `${XML}<w:styles ${W}>
<w:style w:type="paragraph" w:styleId="Title"><w:name w:val="Title"/></w:style>
<w:style w:type="paragraph" w:styleId="Heading1"><w:name w:val="heading 1"/></w:style>
<w:style w:type="paragraph" w:styleId="NewPage"><w:name w:val="New page"/><w:pPr><w:pageBreakBefore/></w:pPr></w:style>
</w:styles>`

export function makeDocx(body: string, more: Readonly<Record<string, string | Uint8Array>> = {}): Uint8Array {
  return toBytes({
    '[Content_Types].xml': `${XML}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="png" ContentType="image/png"/><Default Extension="emf" ContentType="image/x-emf"/><Override PartName="/word/document.xml" ContentType="${MAIN}.document.main+xml"/><Override PartName="/word/styles.xml" ContentType="${MAIN}.styles+xml"/><Override PartName="/word/footnotes.xml" ContentType="${MAIN}.footnotes+xml"/></Types>`,
    '_rels/.rels': `${XML}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${REL}/officeDocument" Target="word/document.xml"/></Relationships>`,
    'word/_rels/document.xml.rels': `${XML}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${REL}/styles" Target="styles.xml"/><Relationship Id="rId2" Type="${REL}/image" Target="media/image1.png"/><Relationship Id="rId3" Type="${REL}/footnotes" Target="footnotes.xml"/></Relationships>`,
    'word/styles.xml': STYLES,
    'word/document.xml': `${XML}<w:document ${W} xmlns:r="${REL}" xmlns:wp="http://schemas.openxmlformats.org/drawingml/2006/wordprocessingDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" xmlns:pic="http://schemas.openxmlformats.org/drawingml/2006/picture"><w:body>${body}<w:sectPr/></w:body></w:document>`,
    ...more,
  })
}

/** The picture of `word/media/image1.png`, in a run. */
export const docxPicture = (alt: string): string =>
  `<w:r><w:drawing><wp:inline><wp:docPr id="1" name="p" descr="${escapeXml(alt)}"/><a:graphic><a:graphicData uri="http://schemas.openxmlformats.org/drawingml/2006/picture"><pic:pic><pic:blipFill><a:blip r:embed="rId2"/></pic:blipFill></pic:pic></a:graphicData></a:graphic></wp:inline></w:drawing></w:r>`

export function makeOdt(
  body: string,
  automatic = '',
  more: Readonly<Record<string, string | Uint8Array>> = {},
): Uint8Array {
  const names = ['office', 'text', 'style', 'table', 'drawing', 'xsl-fo-compatible', 'svg-compatible']
    .map(
      (name) =>
        `xmlns:${{ drawing: 'draw', 'xsl-fo-compatible': 'fo', 'svg-compatible': 'svg' }[name] ?? name}="urn:oasis:names:tc:opendocument:xmlns:${name}:1.0"`,
    )
    .join(' ')
  return toBytes({
    mimetype: 'application/vnd.oasis.opendocument.text',
    'content.xml': `${XML}<office:document-content ${names} xmlns:xlink="http://www.w3.org/1999/xlink" office:version="1.3"><office:automatic-styles>${automatic}</office:automatic-styles><office:body><office:text>${body}</office:text></office:body></office:document-content>`,
    'META-INF/manifest.xml': `${XML}<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"/>`,
    ...more,
  })
}

/** The smallest picture there is: one clear point. */
export const PNG: Uint8Array = Uint8Array.from(
  atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg=='),
  (letter) => letter.charCodeAt(0),
)
