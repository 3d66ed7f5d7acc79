// What a picture in Markdown says of itself; where it is named by a reference, the definition tells.

import type { Definition, Image, ImageReference, Nodes, Root } from 'mdast'
import { maxDepth } from './guard.ts'
import type { Picture } from './types.ts'

export type PictureText = Pick<Picture, 'source' | 'alt' | 'title'>

/** Reads pictures of one tree. Its definitions are looked for when a reference first asks. */
export function createPictureReader(root: Root): (node: Image | ImageReference) => PictureText {
  let definitions: ReadonlyMap<string, Definition> | undefined
  return (node) => {
    const alt = node.alt ?? ''
    if (node.type === 'image') return { source: node.url, alt, title: node.title ?? undefined }
    definitions ??= findDefinitions(root)
    const found = definitions.get(node.identifier)
    return { source: found?.url ?? '', alt, title: found?.title ?? undefined }
  }
}

/** Of two with one name the first counts. */
function findDefinitions(root: Root): ReadonlyMap<string, Definition> {
  const found = new Map<string, Definition>()
  const visit = (node: Nodes, depth: number): void => {
    if (node.type === 'definition') {
      if (!found.has(node.identifier)) found.set(node.identifier, node)
    } else if ('children' in node && depth <= maxDepth) {
      for (const child of node.children) visit(child, depth + 1)
    }
  }
  visit(root, 0)
  return found
}
