// The texts of a new story folder: settings with their reasons, one example story, a page of first steps, and the hook of plain git.

import type { Accent } from '../phonics/types.ts'
import { toSchemaLine } from './schema-links.ts'

export interface FolderWishes {
  readonly sequence: string
  readonly accent: Accent
  readonly step: string | undefined
  readonly example: Example
  /** Whether the first line leads editors to the form of the file, in the package that npm installs. */
  readonly isLinked: boolean
}

/** Where the example story can be read: its step, and the words of it that no step teaches. */
export interface Example {
  readonly step: string
  readonly sightWords: readonly string[]
}

const OTHER_ACCENT: Readonly<Record<Accent, string>> = {
  'general-american': 'southern-british, the English of the south of England',
  'southern-british': 'general-american, the English of most of the United States',
}

export const toConfigFile = ({
  sequence,
  accent,
  step,
  example,
  isLinked,
}: FolderWishes): string => `${isLinked ? `${toSchemaLine('config')}\n#\n` : ''}# Settings for every story below this folder. A line that begins with # is off;
# take the # away to switch it on. A story may say otherwise between the two lines of ---
# at its top.

# Folders above this one have no say here.
root: true

# What is taught when: series, england, common-core, or the path of a file of your own.
# \`battledore sequence ${sequence}\` shows the steps.
sequence: ${sequence}

# The English that the children hear. The other one is
# ${OTHER_ACCENT[accent]}.
accent: ${accent}

# The step that the children have reached. A story can name its own.
${step === undefined ? `# step: ${example.step}` : `step: ${step}`}

# Names that you tell the children yourself.
# names: [Tam, Old Ned]

# Words that your children have learnt by heart beyond those of the step.
# sight words: [shop, lane]

# How much of a page a child must be able to read.
# readable share: 90%

# Stories that are not checked yet.
# ignore: ["drafts/"]

# Any rule may be off, a warning or an error.
# rules:
#   max-page-words: off

# One folder may be stricter than the rest.
# overrides:
#   - files: ["home-readers/"]
#     readable share: 95%
`

const TITLE = 'Tam and the Hat'

const EXAMPLE_PAGES = ['Tam had a hat.', 'Tam sat on the hat.', 'Tam is sad.']

const RUNNING_WORDS = [...EXAMPLE_PAGES, TITLE].flatMap((text) => text.match(/\p{L}+/gu) ?? [])

/** Every word of the example, once. */
export const EXAMPLE_WORDS: readonly string[] = [
  ...new Map([...RUNNING_WORDS].reverse().map((word) => [word.toLowerCase(), word])).values(),
].reverse()

export const toExampleStory = ({ step, sightWords }: Example): string => `---
title: ${TITLE}
step: ${step}
${sightWords.length > 0 ? `sight words: [${sightWords.join(', ')}]\n` : ''}---

# ${TITLE}

${EXAMPLE_PAGES.join('\n\n---\n\n')}
`

export const EXAMPLE_NAME = 'tam-and-the-hat.md'

export const FIRST_STEPS_NAME = 'FIRST-STEPS.txt'

/**
 * @param example the path of the example story
 * @param step a step to show words of
 */
export const toFirstSteps = (example: string, step: string): string => `FIRST STEPS

This folder holds your stories. Everything stays on this machine.

1. Look at the example. Open ${example} in any editor of plain text.
   The lines between --- at its top say the title, and which step the children have
   reached. A line of --- further down begins a new page.

2. See what the children can read. Type this in a terminal, in this folder:

       battledore check

   Each word that they cannot read yet is named with its line, why, and what could
   stand there instead.

3. Write your own. Copy the example, give it a new name that ends in .md, and write.
   Which steps there are, and what each one adds:

       battledore sequence

   Words that can be read at a step:

       battledore words --step ${step}

   A text that you have already (.docx, .odt, .txt):

       battledore bring old/my-story.docx

4. Set what holds for all your stories in battledore.yaml: the step, the English that
   the children hear, names, words they know by heart. Each line says what it is for.

Battledore checks text. It does not assess a child, and it is no test for any condition.
`

/**
 * For plain git: `git config core.hooksPath .githooks` switches it on. It goes without npx, which asks the registry for a
 * package that is not there.
 */
export const toHookFile = (stories: string): string => `#!/bin/sh
# Before each commit: check the stories that are staged, as they are staged.
program=node_modules/.bin/battledore
if [ ! -x "$program" ] && ! program=$(command -v battledore); then
  echo 'The stories were not checked: battledore is not installed here. Run "npm install", then commit again.' >&2
  exit 1
fi
exec "$program" check --staged ${stories}
`

export const HOOK_FOLDER = '.githooks'
