// What the styles of an .odt file say that matters to a story: bold, italic, where a page begins, which is the title.

import { XmlElement } from '@rgrove/parse-xml'
import type { Run } from './types.ts'

type Look = Pick<Run, 'bold' | 'italic'>

export interface OdtStyles {
  look(style: string, outer: Look): Look
  breaks(style: string, side: 'before' | 'after'): boolean
  kind(style: string): 'title' | 'heading' | 'text'
}

interface Style {
  readonly parent: string | undefined
  /** A style that another master page begins with begins a page too. */
  readonly master: string | undefined
  readonly text: Readonly<Record<string, string>>
  readonly paragraph: Readonly<Record<string, string>>
}

export function readOdtStyles(roots: readonly (XmlElement | undefined)[]): OdtStyles {
  const styles = new Map<string, Style>()
  for (const root of roots) if (root) collect(root, styles)
  const look = (style: string, outer: Look): Look => {
    const weight = inherit(styles, style, ({ text }) => text['fo:font-weight'])
    const slant = inherit(styles, style, ({ text }) => text['fo:font-style'])
    return {
      bold: weight === undefined ? outer.bold : /bold|[6-9]00/.test(weight),
      italic: slant === undefined ? outer.italic : /italic|oblique/.test(slant),
    }
  }
  return {
    look,
    breaks: (style, side) =>
      inherit(styles, style, ({ paragraph }) => paragraph[`fo:break-${side}`]) === 'page' ||
      (side === 'before' && (styles.get(style)?.master ?? '') !== ''),
    kind: (style) => findKind(styles, style),
  }
}

function collect(root: XmlElement, styles: Map<string, Style>): void {
  for (const child of root.children) {
    if (!(child instanceof XmlElement)) continue
    const name = child.attributes['style:name']
    if (child.name === 'style:style' && name !== undefined) styles.set(name, toStyle(child))
    else if (/^office:(?:automatic-)?styles$/.test(child.name)) collect(child, styles)
  }
}

function toStyle(node: XmlElement): Style {
  const properties = (name: string) =>
    node.children.find((child): child is XmlElement => child instanceof XmlElement && child.name === name)
      ?.attributes ?? {}
  return {
    parent: node.attributes['style:parent-style-name'],
    master: node.attributes['style:master-page-name'],
    text: properties('style:text-properties'),
    paragraph: properties('style:paragraph-properties'),
  }
}

const MOST_PARENTS = 20

function inherit(
  styles: ReadonlyMap<string, Style>,
  style: string,
  ask: (style: Style) => string | undefined,
): string | undefined {
  let name: string | undefined = style
  for (let depth = 0; name !== undefined && depth < MOST_PARENTS; depth++) {
    const found: Style | undefined = styles.get(name)
    const value = found && ask(found)
    if (value !== undefined) return value
    name = found?.parent
  }
  return undefined
}

/** By the program's own names for these styles; the nearest in the line of parents counts. */
function findKind(styles: ReadonlyMap<string, Style>, style: string): 'title' | 'heading' | 'text' {
  let name: string | undefined = style
  for (let depth = 0; name !== undefined && depth < MOST_PARENTS; depth++) {
    if (name === 'Title') return 'title'
    if (name === 'Subtitle') return 'text'
    if (/^Heading(?:_20_\d+)?$/.test(name)) return 'heading'
    name = styles.get(name)?.parent
  }
  return 'text'
}
