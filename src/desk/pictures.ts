// Pictures of a story, read from the folder as addresses for <img>, where no drawing can run or load anything.

import { toPicturePath } from './core/picture-path.ts'
import type { FindPicture } from './editor/picture.ts'
import type { Folder } from './folder/types.ts'

const TYPES: Readonly<Record<string, string>> = {
  jpeg: 'image/jpeg',
  jpg: 'image/jpeg',
  png: 'image/png',
  svg: 'image/svg+xml',
}

/** Each picture is read once for a story; paths count from the folder of the story. */
export function createPictures(folder: Folder, story: string): FindPicture {
  const known = new Map<string, Promise<string | undefined>>()
  const find = async (source: string): Promise<string | undefined> => {
    const type = TYPES[/\.(\w+)(?:[?#].*)?$/.exec(source)?.[1]?.toLowerCase() ?? '']
    const found = toPicturePath(source, story)
    if (type === undefined || 'why' in found) return undefined
    const read = await folder.read(found.path)
    return read.ok ? URL.createObjectURL(new Blob([read.value.bytes.slice()], { type })) : undefined
  }
  return (source) => {
    const asked = known.get(source) ?? find(source)
    known.set(source, asked)
    // One that is missing may be put there.
    void asked.then((address) => address === undefined && known.delete(source))
    return asked
  }
}
