// `npm run schemas`: writes schemas/, the forms of the files that people write, for editors.

import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { toSchemaFiles } from './build/schemas.ts'
import { ROOT } from './root.ts'

const folder = join(ROOT, 'schemas')
mkdirSync(folder, { recursive: true })
for (const [name, text] of Object.entries(toSchemaFiles())) writeFileSync(join(folder, name), text)
