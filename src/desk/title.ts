// What a story is called.

import type { Keeper } from './folder/types.ts'

/** As a maker knows the story: the first heading, the title in the settings, or the name of the file, as on the shelf and in print. */
export function findTitle({ name, text }: Pick<Keeper, 'name' | 'text'>): string {
  const source = text()
  const [, own] = /^---\n(?:.*\n)*?title:[ \t]*(\S.*)\n(?:.*\n)*?---$/m.exec(source) ?? []
  const [, heading] = /^# +(\S.*)$/m.exec(source) ?? []
  return heading ?? own?.replace(/^(["'])(.*)\1$/, '$2') ?? name
}
