// Teaches remark-parse the YAML between `---` lines at the top of a file.

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

/** The front matter that stands at these offsets, fences and all. */
export function toFrontMatter(source: string, value: string, start: number, end: number): FrontMatter {
  const line = source.indexOf('\n', start)
  const cr = source.indexOf('\r', start)
  const fenceEnd = line === -1 || (cr !== -1 && cr < line - 1) ? cr : line
  return { value, valueStart: fenceEnd === -1 ? end : Math.min(fenceEnd + 1, end), start, end }
}
