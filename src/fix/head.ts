// The settings at the top of a story as lines of keys that can be changed one by one.

import { toSettingKey } from '../config/keys.ts'
import { parseYaml } from '../config/parse.ts'
import type { Entry } from '../config/tree.ts'
import type { FrontMatter, Story } from '../story/types.ts'
import { type Edit, findTop, insert, toNewline } from './edit.ts'

export type Head = Pick<Story, 'source' | 'frontMatter'>

/** Whether settings can be changed from outside: not where their YAML is broken, or is written in one line of braces. */
export async function canBeSet({ frontMatter }: Head): Promise<boolean> {
  return frontMatter === undefined || (await readEntries(frontMatter)) !== undefined
}

/** Undefined where they cannot be read as lines of keys. */
export async function readEntries({ value }: FrontMatter): Promise<readonly Entry[] | undefined> {
  const { tree, problems } = await parseYaml(value)
  if (problems.length > 0) return undefined
  if (tree === undefined) return []
  return tree.kind === 'map' && value[tree.start] !== '{' ? tree.entries : undefined
}

export const findEntry = (entries: readonly Entry[], key: string): Entry | undefined =>
  entries.find((one) => toSettingKey(one.key) === key)

/** For a story without settings. */
export function startHead(source: string, line: string): Edit {
  const newline = toNewline(source)
  return insert(findTop(source), `---${newline}${line}${newline}---${newline}${newline}`)
}

export function addLine({ value, valueStart }: FrontMatter, line: string, newline: string): Edit {
  const isOpen = value !== '' && !/[\r\n]$/.test(value)
  return insert(valueStart + value.length, `${isOpen ? newline : ''}${line}${isOpen ? '' : newline}`)
}

/** Not what YAML 1.1 or 1.2 takes for true, false or nothing. */
export const isText = (word: string): boolean => !/^(?:true|false|null|yes|no|on|off|y|n)$/i.test(word)
