// What each key of a config and of front matter is for, in one sentence: for the schemas and the completion of editors.

import type { configEntries, storyEntries } from './schema.ts'

type Key = keyof typeof configEntries | keyof typeof storyEntries

export const DESCRIPTIONS: Readonly<Record<Key, string>> = {
  accent: 'The accent the words are said in. Default: that of the sequence.',
  'count headings': 'Whether the child reads the headings. Default: true.',
  'count title': 'Whether the child reads the title. Default: true.',
  extends: 'Other config files that this one builds on.',
  'fit words':
    'Words that may be proposed although the built-in list holds them unfit for children. Their forms follow.',
  ignore: 'Stories that are not checked, as patterns like those of .gitignore.',
  introduces: 'Sight words that the story introduces.',
  names: 'Names that the child knows by sight. Those of the story add to those of its folders.',
  order: 'The place of the book on its shelf.',
  overrides: 'Settings for some of the stories only.',
  pages: 'Where pages end: auto, rule (a line of ---), or the depth of a heading. Default: auto.',
  practises: 'Spellings that the story practises, such as [ai, ay].',
  paper: 'The paper that is printed on: a4 (default) or letter.',
  'readable share': 'How much of a page a child must be able to read, such as 90%.',
  'reduced vowels': 'Whether a weak vowel, as the i of rabbit, can be read. Default: what the sequence says.',
  root: 'Whether configs of outer folders have no say here. Default: false.',
  rules: 'Any rule may be off, a warning or an error, or have options of its own.',
  sequence: 'What is taught when: series, england, common-core, or the path of a file. Default: series.',
  'sight words': 'Words known by heart beyond those of the step. Those of the story add to those of its folders.',
  step: 'The step that the readers have reached, such as pink-4.',
  title: 'The title of the story.',
  'unfit words': 'Words that are never to be proposed, beside those of the built-in list. Their forms follow.',
}
