// Options that several commands share, each in one place.

import { Option } from 'commander'

export const formatOption = (choices: readonly string[]): Option =>
  new Option('--format <name>', 'how to print it').choices([...choices]).default(choices[0])

export const accentOption = (): Option =>
  new Option('--accent <name>', 'the accent the words are said in').choices(['general-american', 'southern-british'])

export const stepOption = (): Option =>
  new Option('--step <id>', 'the step that the readers have reached, such as pink-2')

export const sequenceOption = (): Option =>
  new Option(
    '--sequence <name|path>',
    'what is taught when: series (default), england, common-core, or the path of a file',
  )

export const shareOption = (): Option =>
  new Option('--share <percent>', 'the share of running words that must be readable').default('90')

export const onOption = (): Option =>
  new Option('--on <day>', 'what readers knew on this day, as 2026-09-14 (default: today)')
