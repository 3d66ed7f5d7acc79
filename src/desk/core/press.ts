// What Book and Print need: the letters, the story as it is printed, and its pictures from the folder.

import type { PreparedStory } from '../../check/check-story.ts'
import {
  type Ask,
  LETTER_FILES,
  type Letters,
  openLetters,
  PAPERS,
  readPicture,
  type Shown,
} from '../../print/index.ts'
import { fail, type Problem, type Result } from '../../problem/index.ts'
import { knowledgeAt } from '../../sequence/index.ts'
import type { StoryPicture, StoryToPrint } from '../../sheets/index.ts'
import { createLines, type Picture } from '../../story/index.ts'
import type { OpenStory } from './open-story.ts'
import { toPicturePath } from './picture-path.ts'
import type { LettersSize } from './questions/book.ts'
import { type DeskState, toolsOf } from './state.ts'

const opened = new WeakMap<object, Map<string, Promise<Result<Letters>>>>()

/** Opened once: measuring keeps what it has measured. */
export function openLettersOf(name: string, state: DeskState): Promise<Result<Letters>> {
  const tools = toolsOf(state)
  const known = opened.get(tools) ?? new Map<string, Promise<Result<Letters>>>()
  opened.set(tools, known)
  const letters = known.get(name) ?? readLetters(name, state)
  known.set(name, letters)
  return letters
}

async function readLetters(name: string, state: DeskState): Promise<Result<Letters>> {
  const files = LETTER_FILES[name]
  const tools = toolsOf(state)
  const plain = files && tools.font(files.plain)
  if (!plain)
    return fail({
      code: 'bad-value',
      message: `There are no letters \`${name}\` in this page`,
      expected: [],
      note: `There are ${tools.letters.join(', ')}.`,
    })
  const bold = files.bold === undefined ? undefined : await tools.font(files.bold)
  return openLetters({ plain: await plain, ...(bold && { bold }) })
}

export function toAsk(
  { sequence, step }: Pick<PreparedStory, 'sequence' | 'step'>,
  letters: Letters,
  wish: { readonly paper: 'a4' | 'letter'; readonly size: LettersSize },
): Ask {
  const { pageWords } = knowledgeAt(sequence, step).limits
  return { paper: PAPERS[wish.paper], letters, size: wish.size, cut: 'corners', backs: 'none', pageWords }
}

export function toStoryToPrint(prepared: PreparedStory, open: OpenStory, path: string, state: DeskState): StoryToPrint {
  return {
    ...prepared,
    path,
    name: (path.split('/').at(-1) ?? 'story').replace(/\.[^.]*$/, ''),
    lines: createLines(prepared.story.source),
    phonics: toolsOf(state).phonicsFor(prepared.sequence.accent),
    notice: open.reader?.notice,
    readerPath: undefined,
  }
}

export interface FoundPictures {
  readonly pictures: readonly StoryPicture[]
  /** What is missing, in one line each: an empty frame with its name stands there. */
  readonly told: readonly string[]
}

/** Those that a child sees, in order of place. @param canDraw asked where they are put into a PDF */
export async function readPictures(
  { story }: PreparedStory,
  path: string,
  state: DeskState,
  canDraw: (picture: Shown['picture']) => boolean = () => true,
): Promise<FoundPictures> {
  const pictures: StoryPicture[] = []
  const told: string[] = []
  for (const picture of story.pictures.filter(({ inNote }) => !inNote)) {
    const alt = picture.alt.trim() || picture.title?.trim() || `The picture of page ${picture.page}`
    const found = await readOne(picture, path, state)
    const isWhole = found.ok && canDraw(found.value)
    if (!isWhole) told.push(toMissing(picture, found.ok ? [] : found.problems))
    pictures.push({ picture, shown: { alt, picture: isWhole ? found.value : toFrame(picture.source) } })
  }
  return { pictures, told }
}

async function readOne({ source }: Picture, path: string, state: DeskState): Promise<Result<Shown['picture']>> {
  const found = toPicturePath(source, path)
  if ('why' in found) return fail({ code: 'outside-folder', message: UNREAD[found.why] })
  const bytes = await state.files.bytes(found.path)
  if (bytes === undefined) return fail({ code: 'missing-file', message: 'is not there' })
  return bytes.ok ? readPicture(bytes.value) : bytes
}

const UNREAD = {
  web: 'is on the web, and is never fetched: save it beside the story',
  outside: 'lies outside the folder: put it beside the story',
} as const

const toMissing = ({ source, page }: Picture, problems: readonly Problem[]): string =>
  `Page ${page}: the picture \`${source.slice(0, 80)}\` ${problems[0]?.message ?? 'is a drawing that cannot be printed: save it as PNG'}. An empty frame stands in its place.`

/** A frame to draw in, with the name of what belongs there. */
function toFrame(source: string): Shown['picture'] {
  const [width, height] = [300, 200]
  const name = (source.split('/').at(-1) ?? '').slice(0, 40).replace(/[<>&"']/g, '')
  const frame = `<rect x="2" y="2" width="${width - 4}" height="${height - 4}" rx="8" fill="none" stroke="#777" stroke-width="2" stroke-dasharray="8 6"/>`
  const text = `<text x="${width / 2}" y="${height / 2}" font-size="16" text-anchor="middle" fill="#777">${name}</text>`
  return {
    kind: 'svg',
    width,
    height,
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}">${frame}${text}</svg>`,
  }
}

/** Advice for the command line says nothing to somebody at a page. */
export const withoutCommands = (text: string): string =>
  text
    .split(/(?<=[.?!:]) +/)
    .filter((sentence) => !/(?:^|\s)--[a-z]|battledore |To see where:/.test(sentence))
    .join(' ')

export function toPageProblems(problems: readonly Problem[]): readonly Problem[] {
  return problems.map(({ note, ...problem }) => {
    const own = note === undefined ? '' : withoutCommands(note)
    return { ...problem, ...(own !== '' && { note: own }) }
  })
}
