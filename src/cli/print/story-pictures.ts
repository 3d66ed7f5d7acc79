// The pictures of a story: its Markdown images, from its own folder or repository, never from the web.

import { dirname, join, relative, resolve, sep } from 'node:path'
import type { Shown } from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { type StoryPicture, toPlaceText } from '../../sheets/index.ts'
import type { Picture } from '../../story/types.ts'
import { toShownPath } from '../files/file-problem.ts'
import type { Io } from '../io.ts'
import { readOwn } from './pictures.ts'
import type { FileStory } from './story.ts'

/** Those that a child sees, in order of place; every one that cannot be printed is told with its place. */
export function readStoryPictures(story: FileStory, io: Io): Result<readonly StoryPicture[]> {
  const read: StoryPicture[] = []
  const problems = story.story.pictures
    .filter(({ inNote }) => !inNote)
    .flatMap((picture) => {
      const found = readOne(picture, story, io)
      if (found.ok) read.push({ shown: found.value, picture })
      return found.ok
        ? []
        : found.problems.map((problem) => ({
            ...problem,
            message: `${toPlaceText(story, picture.start)}: ${problem.message}`,
          }))
    })
  return problems.length > 0 ? fail(...problems) : succeed(read)
}

function readOne({ source, alt, title, page }: Picture, { file }: FileStory, io: Io): Result<Shown> {
  if (/^(?:[a-z][a-z+.-]+:|\/\/)/i.test(source))
    return fail({
      code: 'outside-folder',
      message: `the picture \`${source.slice(0, 80)}\` is on the web, and is never fetched`,
      note: 'Save it beside the story, and name that file.',
    })
  const folder = file === undefined ? io.cwd : dirname(file)
  const path = resolve(folder, decode(source.replace(/[?#].*$/, '')))
  const root = findRoot(folder, io)
  const real = toReal(path, io)
  if (!isWithin(real, toReal(root, io)) && !isWithin(real, toReal(folder, io)))
    return fail({
      code: 'outside-folder',
      message: `the picture ${toShownPath(source)} lies outside the story's folder`,
      note: 'Put it beside the story, and name that file.',
    })
  return readOwn(toShown(path, io), alt.trim() || title?.trim() || `The picture of page ${page}`, io)
}

function decode(source: string): string {
  try {
    return decodeURIComponent(source)
  } catch {
    return source
  }
}

/** The repository that the folder belongs to, or the folder itself. */
function findRoot(folder: string, io: Io): string {
  for (let at = folder; ; at = dirname(at)) {
    if (io.fs.existsSync(join(at, '.git'))) return at
    if (dirname(at) === at) return folder
  }
}

/** Where links lead; a path that is not there stays as it is. */
function toReal(path: string, io: Io): string {
  try {
    return io.fs.realpathSync(path)
  } catch {
    return path
  }
}

const isWithin = (path: string, folder: string): boolean =>
  path.startsWith(folder.endsWith(sep) ? folder : folder + sep)

const toShown = (path: string, io: Io): string => {
  const own = relative(io.cwd, path)
  return own.startsWith('..') ? path : own.replaceAll(sep, '/')
}
