// What a story is called.

import type { Keeper } from './folder/types.ts'

/** As a maker knows the story: the title in the settings, the first heading, or the name of the file. */
export function findTitle({ name, text }: Pick<Keeper, 'name' | 'text'>): string {
  const source = text()
  const [, own] = /^---\n(?:.*\n)*?title:[ \t]*(\S.*)\n(?:.*\n)*?---$/m.exec(source) ?? []
  const [, heading] = /^# +(\S.*)$/m.exec(source) ?? []
  return own?.replace(/^(["'])(.*)\1$/, '$2') ?? heading ?? name
}
