// Where the checkout lies, as a path: a URL writes a space or an é otherwise than the disk does.

import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT: string = fileURLToPath(new URL('..', import.meta.url))

/** The compiled program, as a user's shell finds it. */
export const PROGRAM: string = join(ROOT, 'dist', 'cli.cjs')
