// The name of a new file comes of its title, is taken by every system, and is free.

import { expect, it } from 'vitest'
import type { Folder } from '../../src/desk/folder/types.ts'
import { findFree } from '../../src/desk/new-file.ts'

const folderWith = (...names: readonly string[]): Folder =>
  ({
    list: async () => ({ ok: true, value: names.map((name) => ({ name, sort: 'story', size: 1 })) }),
  }) as unknown as Folder

it.each([
  ['Tam and the Hat', 'tam-and-the-hat.md'],
  ['Où est Zoë?', 'ou-est-zoe.md'],
  ['  …  ', 'story.md'],
  ['Мама', 'story.md'],
  [`${'a'.repeat(59)} b`, `${'a'.repeat(59)}.md`],
  ['../../etc/passwd', 'etc-passwd.md'],
])('%s', async (title, name) => {
  expect(await findFree(folderWith(), title, { otherwise: 'story', ending: '.md' })).toBe(name)
})

it('takes the next number, whatever the case of what is there', async () => {
  const folder = folderWith('Our-Class.yaml', 'our-class-2.yaml')
  expect(await findFree(folder, 'Our class', { otherwise: 'sequence', ending: '.yaml' })).toBe('our-class-3.yaml')
})
