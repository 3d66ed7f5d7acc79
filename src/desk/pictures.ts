// Pictures of a story, read from the folder as addresses for <img>, where no drawing can run or load anything.

import type { FindPicture } from './editor/picture.ts'
import type { Folder } from './folder/types.ts'

const TYPES: Readonly<Record<string, string>> = {
  gif: 'image/gif',
  jpeg: 'image/jpeg',
  jpg: 'image/jpeg',
  png: 'image/png',
  svg: 'image/svg+xml',
  webp: 'image/webp',
}

/** Each picture is read once for a story; paths count from the folder of the story. */
export function createPictures(folder: Folder, story: string): FindPicture {
  const known = new Map<string, Promise<string | undefined>>()
  const base = story.split('/').slice(0, -1)
  const find = async (source: string): Promise<string | undefined> => {
    const type = TYPES[/\.(\w+)$/.exec(source)?.[1]?.toLowerCase() ?? '']
    const path = toPath(base, source)
    if (type === undefined || path === undefined) return undefined
    const read = await folder.read(path)
    return read.ok ? URL.createObjectURL(new Blob([read.value.bytes.slice()], { type })) : undefined
  }
  return (source) => {
    const asked = known.get(source) ?? find(source)
    known.set(source, asked)
    return asked
  }
}

/** Undefined for what lies outside of the folder or is an address of the web. */
function toPath(base: readonly string[], source: string): string | undefined {
  if (/^[a-z]+:|^\//i.test(source)) return undefined
  const parts = [...base]
  for (const part of decode(source).split('/')) {
    if (part === '..' && parts.pop() === undefined) return undefined
    if (part !== '..' && part !== '.' && part !== '') parts.push(part)
  }
  return parts.join('/')
}

function decode(source: string): string {
  try {
    return decodeURI(source)
  } catch {
    return source
  }
}
