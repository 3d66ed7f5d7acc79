// What `init` will do in a folder, worked out from what lies there; nothing is written here.

import { CONFIG_NAMES } from '../config/index.ts'
import { addToPackage, type PackageChange } from './package-json.ts'
import { YAML_SCHEMAS } from './schema-links.ts'
import {
  EXAMPLE_NAME,
  FIRST_STEPS_NAME,
  type FolderWishes,
  HOOK_FOLDER,
  toConfigFile,
  toExampleStory,
  toFirstSteps,
  toHookFile,
} from './story-folder.ts'
import { toJson, toTasks, toTasksFile } from './tasks.ts'

export interface Step {
  readonly path: string
  readonly does: 'make' | 'change' | 'overwrite' | 'keep'
  /** What the file is for, or what is added to it, or why it is kept. */
  readonly why: string
  /** The text to write. */
  readonly text?: string
  /** What a person may add by hand to a file that is kept. */
  readonly byHand?: string
  readonly isProgram?: true
}

export interface Surroundings {
  /** The text of a file of the folder; undefined where there is none. */
  read(path: string): string | undefined
  /** The stories that are there: `stories/tam.md`. */
  readonly stories: readonly string[]
  /** From where npm installs our package; undefined where that is not known. */
  readonly source: string | undefined
}

export interface InitWishes extends Omit<FolderWishes, 'isLinked'> {
  readonly force: boolean
  /** Scripts of npm, and tasks and forms for VS Code. */
  readonly editor: boolean
  /** A hook of git that checks before each commit. */
  readonly commit: boolean
}

export interface Plan {
  readonly steps: readonly Step[]
  /** The folder of the stories, and the story to open first. */
  readonly folder: string
  readonly example: string
  /** Where npm has a part in it. */
  readonly npm: Pick<PackageChange, 'names' | 'isListed' | 'source'> | undefined
}

const PACKAGE = 'package.json'

/** Undefined where the package.json cannot be read, so that nothing can be added to it. */
export function planInit(around: Surroundings, wishes: InitWishes): Plan | undefined {
  const folder =
    around.stories.length === 0 || around.stories.some((path) => path.startsWith('stories/')) ? 'stories' : '.'
  const example = around.stories[0] ?? (folder === '.' ? EXAMPLE_NAME : `${folder}/${EXAMPLE_NAME}`)
  const own = planFolder(folder, example, around, wishes)
  const hook = wishes.commit ? [planHook(folder, around, wishes)] : []
  if (!wishes.editor) return { steps: [...own, ...hook], folder, example, npm: undefined }
  const npm = addToPackage(around.read(PACKAGE), folder, around.source)
  return npm && { steps: [...own, planPackage(npm, around), ...planEditor(npm, around), ...hook], folder, example, npm }
}

function planFolder(folder: string, example: string, around: Surroundings, wishes: InitWishes): readonly Step[] {
  const { force } = wishes
  const config = CONFIG_NAMES.find((name) => around.read(name) !== undefined) ?? CONFIG_NAMES[0]
  const text = toConfigFile({ ...wishes, isLinked: wishes.editor })
  const story = folder === '.' ? EXAMPLE_NAME : `${folder}/${EXAMPLE_NAME}`
  return [
    ...planExample({ path: story, why: 'an example story', text: toExampleStory(wishes.example) }, around, force),
    planOwn({ path: config, why: 'settings of all stories, each explained', text }, around, force),
    planOwn(
      { path: FIRST_STEPS_NAME, why: 'what to do next, on one page', text: toFirstSteps(example, wishes.example.step) },
      around,
      force,
    ),
  ]
}

function planEditor({ names }: PackageChange, around: Surroundings): readonly Step[] {
  const forms = toJson({ 'yaml.schemas': YAML_SCHEMAS })
  return [
    planShared(
      { path: '.vscode/tasks.json', why: 'the check as tasks of VS Code', text: toTasksFile(names) },
      'battledore: check',
      toJson({ tasks: toTasks(names) }),
      around,
    ),
    planShared(
      { path: '.vscode/settings.json', why: 'the forms of our YAML files', text: forms },
      'battledore/schemas/',
      forms,
      around,
    ),
  ]
}

function planHook(folder: string, around: Surroundings, { force }: InitWishes): Step {
  const why = 'checks the stories of each commit'
  return {
    ...planOwn({ path: `${HOOK_FOLDER}/pre-commit`, why, text: toHookFile(folder) }, around, force),
    isProgram: true,
  }
}

interface Own {
  readonly path: string
  readonly why: string
  readonly text: string
}

function planOwn({ path, why, text }: Own, around: Surroundings, force: boolean): Step {
  const before = around.read(path)
  if (before === undefined) return { path, does: 'make', why, text }
  if (before === text) return { path, does: 'keep', why: 'is there already' }
  return force
    ? { path, does: 'overwrite', why, text }
    : { path, does: 'keep', why: 'is there already, and yours; --force writes it anew' }
}

/** A folder with stories of its own needs no example. */
function planExample(own: Own, around: Surroundings, force: boolean): readonly Step[] {
  const isNew = around.read(own.path) === undefined
  return isNew && around.stories.length > 0 ? [] : [planOwn(own, around, force)]
}

function planPackage(change: PackageChange, around: Surroundings): Step {
  const path = PACKAGE
  if (around.read(path) === undefined)
    return { path, does: 'make', why: 'npm scripts `check` and `check:watch`', text: change.text }
  const kept =
    change.kept.length > 0 ? `its own ${change.kept.map((name) => `\`${name}\``).join(' and ')} stays as it is` : ''
  if (change.added.length === 0) return { path, does: 'keep', why: kept || 'has all it needs' }
  return {
    path,
    does: 'change',
    why: [`add ${change.added.join(', ')}`, kept].filter(Boolean).join('; '),
    text: change.text,
  }
}

/** A file of the editor may hold comments and other people's settings: it is made, but never changed, not even by force. */
function planShared({ path, why, text }: Own, sign: string, byHand: string, around: Surroundings): Step {
  const before = around.read(path)
  if (before === undefined || before.trim() === '') return { path, does: 'make', why, text }
  if (before.includes(sign)) return { path, does: 'keep', why: 'has all it needs' }
  return { path, does: 'keep', why: 'is there already, and yours: add by hand what stands below', byHand }
}
