// What the worker remembers from question to question.

import { rules } from '../../../rules/index.ts'
import { type ConfigFinder, createConfigFinder } from '../../config/index.ts'
import type { Resources } from '../../resources/types.ts'
import { createFolderFiles, type FolderFiles } from './folder-files.ts'
import type { DeskHost } from './host.ts'
import type { KeptStory } from './open-story.ts'
import { createResources } from './resources.ts'
import type { Tools } from './tools.ts'

export interface DeskState {
  readonly host: DeskHost
  readonly files: FolderFiles
  /** Set by `open`. */
  tools: Tools | undefined
  /** What depends on files of the folder, made anew when one has changed. */
  folder: Folder | undefined
  /** Stories as they were last prepared, the latest at the end. */
  readonly stories: Map<string, KeptStory>
}

export interface Folder {
  readonly configs: ConfigFinder
  readonly resources: Resources
}

export const createState = (host: DeskHost): DeskState => ({
  host,
  files: createFolderFiles(host.files),
  tools: undefined,
  folder: undefined,
  stories: new Map(),
})

/** @throws Error where nobody has opened the data: a mistake of the page */
export function toolsOf({ tools }: DeskState): Tools {
  if (tools === undefined) throw new Error('`open` comes before every other question')
  return tools
}

export function folderOf(state: DeskState): Folder {
  const { files } = state
  state.folder ??= {
    configs: createConfigFinder(files.read, rules),
    resources: createResources(toolsOf(state), files),
  }
  return state.folder
}

/** A story that is saved changes nothing for itself and for others, but on the shelf; any other file may. */
export function forget(state: DeskState, paths: readonly string[] | undefined): void {
  state.files.forget(paths)
  if (paths?.every((path) => /\.(?:md|markdown)$/i.test(path))) return
  state.folder = undefined
  state.stories.clear()
}
