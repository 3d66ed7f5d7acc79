// Where a picture of a story lies in the folder.

import { joinPath, toFolder } from '../../files/index.ts'

/** The path from the folder; else why no picture of that name is ever read. @param story the path of the story */
export function toPicturePath(
  source: string,
  story: string,
): { readonly path: string } | { readonly why: 'web' | 'outside' } {
  if (/^(?:[a-z][a-z+.-]+:|\/\/)/i.test(source)) return { why: 'web' }
  const path = joinPath(toFolder(story), decode(source.replace(/[?#].*$/, '')))
  return path.startsWith('../') || path.startsWith('/') ? { why: 'outside' } : { path }
}

function decode(source: string): string {
  try {
    return decodeURIComponent(source)
  } catch {
    return source
  }
}
