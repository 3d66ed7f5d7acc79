// What a story calls itself.

import type { Story } from './types.ts'

/** Its first heading in one line; undefined where there is none, or nothing in it. */
export const toHeading = ({ title }: Pick<Story, 'title'>): string | undefined =>
  title?.text.replaceAll('\n', ' ').trim() || undefined
