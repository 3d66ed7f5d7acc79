// Where an editor finds the forms of our YAML files, so that their keys complete and are checked while one types.

import { CONFIG_NAMES } from '../config/index.ts'

const FOLDER = './node_modules/battledore/schemas'

/** The first line of a YAML file names its form for the YAML servers of many editors. */
export const toSchemaLine = (name: 'config' | 'sequence' | 'reader', folder = FOLDER): string =>
  `# yaml-language-server: $schema=${folder}/${name}.schema.json`

/** The setting of VS Code's YAML extension. Patterns count from the opened folder. */
export const YAML_SCHEMAS: Readonly<Record<string, readonly string[]>> = {
  [`${FOLDER}/config.schema.json`]: CONFIG_NAMES,
  [`${FOLDER}/sequence.schema.json`]: ['sequences/*.yaml', '*.sequence.yaml'],
  [`${FOLDER}/reader.schema.json`]: ['readers/*.yaml', '*.reader.yaml'],
}
