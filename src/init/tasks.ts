// The tasks of VS Code: what each runs, and the patterns by which the editor reads what it prints.

import type { ScriptNames } from './package-json.ts'

/** The name under which the editor keeps our marks; without one of its own it would clear those of other programs. */
const OWNER = 'battledore'

/** `path:line:col-line:col: severity: message [rule]`; a config's mistake has no end. */
const PROBLEM_PATTERN = {
  regexp: '^(.+?):(\\d+):(\\d+)(?:-(\\d+):(\\d+))?: (error|warning): (.*?)(?: \\[([\\w-]+)\\])?$',
  file: 1,
  line: 2,
  column: 3,
  endLine: 4,
  endColumn: 5,
  severity: 6,
  message: 7,
  code: 8,
} as const

/** The begin line names the one story, so that the editor clears the marks of no other. */
const BACKGROUND = {
  activeOnStart: true,
  beginsPattern: { regexp: '^checking (.+)$', file: 1 },
  endsPattern: { regexp: '^done: \\d+ problems?, watching$' },
} as const

const MATCHER = {
  owner: OWNER,
  source: OWNER,
  // biome-ignore lint/suspicious/noTemplateCurlyInString: the editor fills it in
  fileLocation: ['relative', '${workspaceFolder}'],
  pattern: PROBLEM_PATTERN,
} as const

const QUIET = { reveal: 'silent', panel: 'dedicated', clear: true } as const

const toTask = (script: string) => ({
  type: 'shell',
  command: 'npm',
  args: ['run', '--silent', script, '--', '--format', 'line'],
})

export const toTasks = ({ check, watch }: ScriptNames) => [
  {
    label: 'battledore: check all stories',
    detail: 'Shows in the Problems panel what the children cannot read yet.',
    ...toTask(check),
    problemMatcher: MATCHER,
    presentation: QUIET,
    group: 'test',
  },
  {
    label: 'battledore: check while I write',
    detail: 'Goes on: each story is checked again when it is saved.',
    ...toTask(watch),
    isBackground: true,
    problemMatcher: { ...MATCHER, background: BACKGROUND },
    presentation: QUIET,
    group: 'test',
  },
]

export const toTasksFile = (names: ScriptNames): string => toJson({ version: '2.0.0', tasks: toTasks(names) })

export const toJson = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`
