// What `init` will do in a folder, worked out from what lies there; nothing is written here.

import { CONFIG_NAMES } from '../config/index.ts'
import { addToPackage, type PackageChange } from './package-json.ts'
import { YAML_SCHEMAS } from './schema-links.ts'
import { CONFIG_FILE, EXAMPLE_NAME, EXAMPLE_STORY, HOOK_FOLDER, toHookFile } from './story-folder.ts'
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

export interface InitWishes {
  readonly force: boolean
  readonly hook: boolean
}

export interface Plan extends Pick<PackageChange, 'names' | 'isListed' | 'source'> {
  readonly steps: readonly Step[]
}

const PACKAGE = 'package.json'

/** Undefined where the package.json cannot be read, so that nothing can be added to it. */
export function planInit(around: Surroundings, wishes: InitWishes): Plan | undefined {
  const folder =
    around.stories.length === 0 || around.stories.some((path) => path.startsWith('stories/')) ? 'stories' : '.'
  const change = addToPackage(around.read(PACKAGE), folder, around.source)
  if (!change) return undefined
  return { ...change, steps: planSteps(folder, change, around, wishes) }
}

function planSteps(
  folder: string,
  change: PackageChange,
  around: Surroundings,
  { force, hook }: InitWishes,
): readonly Step[] {
  const config = CONFIG_NAMES.find((name) => around.read(name) !== undefined) ?? CONFIG_NAMES[0]
  const example = folder === '.' ? EXAMPLE_NAME : `${folder}/${EXAMPLE_NAME}`
  return [
    planOwn({ path: config, why: 'settings of all stories, each explained', text: CONFIG_FILE }, around, force),
    ...planExample({ path: example, why: 'an example story', text: EXAMPLE_STORY }, around, force),
    planPackage(change, around),
    planShared(
      { path: '.vscode/tasks.json', why: 'the check as tasks of VS Code', text: toTasksFile(change.names) },
      'battledore: check',
      toJson({ tasks: toTasks(change.names) }),
      around,
    ),
    planShared(
      {
        path: '.vscode/settings.json',
        why: 'the forms of our YAML files',
        text: toJson({ 'yaml.schemas': YAML_SCHEMAS }),
      },
      'battledore/schemas/',
      toJson({ 'yaml.schemas': YAML_SCHEMAS }),
      around,
    ),
    ...(hook
      ? [
          {
            ...planOwn(
              {
                path: `${HOOK_FOLDER}/pre-commit`,
                why: 'checks the staged stories before each commit',
                text: toHookFile(folder),
              },
              around,
              force,
            ),
            isProgram: true as const,
          },
        ]
      : []),
  ]
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
