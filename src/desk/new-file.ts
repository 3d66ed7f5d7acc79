// The name of a new file: its title, in letters that every system takes, and one that is free.

import type { Folder } from './folder/types.ts'

/** @example toStem('Où est Sid?', 'story') → 'ou-est-sid' */
function toStem(title: string, otherwise: string): string {
  const plain = title.normalize('NFKD').toLowerCase().replaceAll(/\p{M}/gu, '')
  const stem = plain.replaceAll(/[^a-z0-9]+/g, '-').slice(0, 60)
  return stem.replaceAll(/^-|-$/g, '') || otherwise
}

/** Where the folder cannot be listed, whoever makes the file sees whether it is there. */
export async function findFree(
  folder: Folder,
  title: string,
  { otherwise, ending }: { readonly otherwise: string; readonly ending: string },
): Promise<string> {
  const list = await folder.list()
  const taken = new Set(list.ok ? list.value.map(({ name }) => name.toLowerCase()) : [])
  const stem = toStem(title, otherwise)
  for (let number = 1; ; number++) {
    const name = `${stem}${number === 1 ? '' : `-${number}`}${ending}`
    if (!taken.has(name)) return name
  }
}
