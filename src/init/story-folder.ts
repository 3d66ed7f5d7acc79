// The texts of a new story folder: a commented config, one example story, and the hook of plain git.

import { toSchemaLine } from './schema-links.ts'

export const CONFIG_FILE = `${toSchemaLine('config')}
#
# Settings for every story below this folder. A story may say otherwise between the
# two lines of --- at its top. \`npx battledore check --print-config STORY\` shows which
# settings hold for a story, and where each was set.

# Outer folders have no say here.
root: true

# What is taught when: series, england, common-core, or the path of a file of your own.
# \`npx battledore sequence series\` shows the steps.
sequence: series

# The step of every story that does not name its own.
# step: pink-4

# The accent the words are said in: general-american or southern-british.
# accent: southern-british

# Names that the children know by sight.
names: [Tam, Meg, Sid, Zub]

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

export const EXAMPLE_STORY = `---
title: Tam and the Hat
step: pink-4
---

# Tam and the Hat

Tam had a hat.

---

Tam sat on the hat.

---

Tam is sad.
`

export const EXAMPLE_NAME = 'tam-and-the-hat.md'

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
