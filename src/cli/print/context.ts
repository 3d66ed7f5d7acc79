// What every kind of sheet is handed by the command, and what it hands back.

import type { Ask, Laid } from '../../print/index.ts'
import type { FoundReader } from '../list-reader.ts'
import type { Kind, PrintOptions, Wishes } from './options.ts'

/** What a kind of sheet comes to, before it is drawn. */
export interface Prepared {
  readonly laid: Laid
  readonly title: string
  /** Parts of the file's name. */
  readonly name: readonly (string | undefined)[]
  /** What the maker must know, one line each. */
  readonly notices: readonly string[]
  /** Whether a story holds words that cannot be read. */
  readonly hasUnreadable?: boolean
}

export interface PrintContext {
  readonly kind: Kind
  readonly options: PrintOptions
  readonly wishes: Wishes
  readonly ask: Ask
  readonly reader: FoundReader
}
