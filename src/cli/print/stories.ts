// Sheets of a story by the command: reads its pictures, and has it laid out.

import type { Ask } from '../../print/index.ts'
import { type Result, succeed } from '../../problem/index.ts'
import {
  layStory as layOut,
  type Prepared,
  type StoryPicture,
  type StorySheetKind,
  type Wishes,
} from '../../sheets/index.ts'
import type { Io } from '../io.ts'
import type { FileStory } from './story.ts'
import { readStoryPictures } from './story-pictures.ts'

export interface StoryAsk {
  readonly kind: StorySheetKind
  readonly story: FileStory
  readonly wishes: Wishes
  readonly ask: Ask
}

export function layStory({ kind, story, wishes, ask }: StoryAsk, io: Io): Result<Prepared> {
  const pictures = kind === 'slips' ? succeed<readonly StoryPicture[]>([]) : readStoryPictures(story, io)
  return pictures.ok ? layOut({ kind, story, pictures: pictures.value, wishes, ask }) : pictures
}
