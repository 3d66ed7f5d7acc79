// A unified diff of two texts, as `patch` and git read it.

import { toHeadName } from './diff-name.ts'

/**
 * Empty where the texts are the same. The name stands in its head, with a/ and b/ before it as git has it. The library is
 * loaded only here; the names in the head are ours, since it writes those with spaces and quotes as they are.
 * @param name with slashes, as `toDiffPlace` gives it
 */
export async function toUnifiedDiff(name: string, before: string, after: string): Promise<string> {
  if (before === after) return ''
  const { formatPatch, OMIT_HEADERS, structuredPatch } = await import('./diff-library.ts')
  const patch = structuredPatch(name, name, before, after, undefined, undefined, { context: 3 })
  return `--- ${toHeadName(`a/${name}`)}\n+++ ${toHeadName(`b/${name}`)}\n${formatPatch(patch, OMIT_HEADERS)}`
}
