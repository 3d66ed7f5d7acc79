// What every kind of sheet is handed by the command.

import type { Ask } from '../../print/index.ts'
import type { SheetKind, Wishes } from '../../sheets/index.ts'
import type { FoundReader } from '../list-reader.ts'
import type { PrintOptions } from './options.ts'

export interface PrintContext {
  readonly kind: SheetKind
  readonly options: PrintOptions
  readonly wishes: Wishes
  readonly ask: Ask
  readonly reader: FoundReader
}
