// The keys of a config file and of front matter, and what each may hold. The messages finish `key …`.

import * as v from 'valibot'

const text = (message: string) =>
  v.pipe(v.union([v.string(), v.number()], message), v.transform(String), v.trim(), v.minLength(1, message))

function choice<const Options extends readonly [string, ...string[]]>(options: Options) {
  return v.picklist(options, `must be ${options.slice(0, -1).join(', ')} or ${options.at(-1)}`)
}

/** A YAML list, or one line with commas. */
const words = (message: string) =>
  v.pipe(
    v.union([v.string(), v.array(v.string(message), message)], message),
    v.transform((value) => (typeof value === 'string' ? value.split(',') : value)),
    v.transform((items) => items.map((item) => item.trim()).filter((item) => item !== '')),
  )

const yesOrNo = v.boolean('must be true or false')

const SHARE = 'must be a share such as 90% or 0.9'
const share = v.pipe(
  v.union([v.number(), v.pipe(v.string(), v.regex(/^\d{1,3}(?:\.\d+)?\s*%$/, SHARE))], SHARE),
  v.transform((value) => (typeof value === 'string' ? Number.parseFloat(value) / 100 : value)),
  v.minValue(0, SHARE),
  v.maxValue(1, SHARE),
)

const severity = choice(['off', 'warning', 'error'])

/** Only for the JSON Schema: a rule's own options are checked against what the rule says. */
const rules = v.record(
  v.string(),
  v.union([severity, v.looseObject({ severity: v.optional(severity) })]),
  'must be a list of `rule: off`, `rule: warning` or `rule: error`',
)

const PAGES = 'must be auto, rule (a line `---` between pages) or the depth of a heading from 1 to 6'

export const settingEntries = {
  sequence: text('must be the name of a sequence or the path of a sequence file'),
  step: text('must be the id of a step, such as pink-2'),
  accent: choice(['general-american', 'southern-british']),
  names: words('must be a list of names, such as [Tam, Old Ned]'),
  'sight words': words('must be a list of words, such as [the, said]'),
  'unfit words': words('must be a list of words, such as [ghost, witch]'),
  'fit words': words('must be a list of words, such as [knight, sword]'),
  pages: v.picklist(['auto', 'rule', 1, 2, 3, 4, 5, 6], PAGES),
  'count title': yesOrNo,
  'count headings': yesOrNo,
  'reduced vowels': choice(['accept', 'flag']),
  'readable share': share,
  paper: choice(['a4', 'letter']),
  rules,
}

const PATTERNS = 'must be a list of patterns as in .gitignore, such as ["drafts/", "*.old.md"]'
const patterns = v.union(
  [
    v.pipe(
      v.string(),
      v.transform((pattern) => [pattern]),
    ),
    v.array(v.string(PATTERNS), PATTERNS),
  ],
  PATTERNS,
)

export const overrideEntries = { files: patterns, ...settingEntries }

export const configEntries = {
  ...settingEntries,
  root: yesOrNo,
  extends: words('must be the path of a config file, or a list of paths'),
  ignore: patterns,
  overrides: v.array(
    v.object({ files: patterns, ...v.partial(v.object(settingEntries)).entries }),
    'must be a list, each item with `files`',
  ),
}

export const storyEntries = {
  ...settingEntries,
  title: text('must be a text'),
  order: v.number('must be a number: the place of the book on its shelf'),
  introduces: words('must be a list of the sight words that the story introduces'),
  practises: words('must be a list of spellings that the story practises, such as [ai, ay]'),
}
