// The YAML between `---` lines at the top of a file: found in a source, and taught to remark-parse for a pipeline of one's own.

import type { Yaml } from 'mdast'
import { frontmatterFromMarkdown } from 'mdast-util-frontmatter'
import { frontmatter } from 'micromark-extension-frontmatter'
import type { Processor } from 'unified'
import type { FrontMatter } from './types.ts'

/** A unified plugin: `unified().use(remarkParse).use(remarkFrontmatter)`. */
export function remarkFrontmatter(this: Processor): void {
  const data = this.data()
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), frontmatter(['yaml'])]
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), frontmatterFromMarkdown(['yaml'])]
}

const opening = /^\uFEFF?---[ \t]*(?:\r\n|\n|\r)/
const closing = /(?<![^\r\n])---[ \t]*(?![^\r\n])/g

/** The front-matter node that remark-parse would make of a source, and how much of the source it takes. */
export function readYamlNode(source: string): { readonly node: Yaml; readonly end: number } | undefined {
  const valueStart = opening.exec(source)?.[0].length
  if (valueStart === undefined) return undefined
  closing.lastIndex = valueStart
  const fence = closing.exec(source)
  if (fence === null) return undefined
  const value = source.slice(valueStart, fence.index).replace(/(?:\r\n|\n|\r)$/, '')
  const end = fence.index + fence[0].length
  const line = source.slice(0, fence.index).split(/\r\n|\n|\r/).length
  const position = {
    start: { line: 1, column: 1, offset: source.startsWith('\uFEFF') ? 1 : 0 },
    end: { line, column: fence[0].length + 1, offset: end },
  }
  return { node: { type: 'yaml', value, position }, end }
}

const lineEnd = /\r\n?|\n/g

/** The front matter that stands at these offsets, fences and all. */
export function toFrontMatter(source: string, value: string, start: number, end: number): FrontMatter {
  lineEnd.lastIndex = start
  lineEnd.test(source)
  return { value, valueStart: lineEnd.lastIndex, start, end }
}
