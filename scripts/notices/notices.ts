// The notices that go out with what we ship: our own page, then the licence text of every package inside.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Licensed, readLicence } from './licence.ts'

/** @param folders of packages, relative to the root */
export function toNotices(root: string, folders: readonly string[]): string {
  const head = readFileSync(join(root, 'NOTICES.md'), 'utf8').trimEnd()
  const licences = folders.map((folder) => readLicence(join(root, folder)))
  return [head, ...groupByText(licences).map(toSection)].join('\n\n') + '\n'
}

/** Packages of one holder often share a text word by word. */
function groupByText(licences: readonly Licensed[]): readonly (readonly Licensed[])[] {
  const groups = new Map<string, Licensed[]>()
  for (const one of licences) groups.set(one.text, [...(groups.get(one.text) ?? []), one])
  return [...groups.values()]
}

const toSection = (group: readonly Licensed[]): string => {
  const names = [...new Set(group.map(({ name, version }) => `${name} ${version}`))]
  const [{ text } = { text: '' }] = group
  const fence = '`'.repeat(Math.max(3, ...[...text.matchAll(/`+/g)].map(([marks]) => marks.length + 1)))
  return `### ${names.join(', ')}\n\n${fence}text\n${text}\n${fence}`
}
