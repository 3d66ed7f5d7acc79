// A story allows a name that none of its pages holds.

import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted } from '../../src/lint/wording.ts'
import type { FrontMatter, Range, Story } from '../../src/story/types.ts'
import { markNames } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'no-unused-name',
  summary: 'A name that the story allows and never uses.',
  severity: 'warning',
  options: {},
  messages: { unused: '{name} is allowed as a name, and no page holds it' },
  create: ({ story, report }) => ({
    story: ({ frontMatter }) => {
      const listed = story.frontMatter['names']
      if (frontMatter === undefined || !Array.isArray(listed)) return
      const sentences = toSentences(story.story)
      for (const name of listed) {
        if (typeof name !== 'string' || sentences.some((words) => markNames(words, [name]).includes(true))) continue
        report({
          at: findPlace(frontMatter, name),
          messageId: 'unused',
          data: { name: toQuoted(name) },
          reason: 'unused-name',
          note: 'Take it off the list, or mend its spelling.',
        })
      }
    },
  }),
})

function toSentences({ pages }: Story): readonly (readonly string[])[] {
  const sentences = pages.flatMap(({ blocks }) => blocks.flatMap((block) => block.sentences))
  return sentences.map(({ words }) => words.map(({ text }) => text))
}

/** The name in the list under `names:`; the whole front matter where it is written in some other way. */
function findPlace(frontMatter: FrontMatter, name: string): Range {
  const list = frontMatter.value.search(/^names\s*:/mu)
  const from = list < 0 ? -1 : frontMatter.value.indexOf(name, list + 'names'.length)
  if (from < 0) return frontMatter
  const start = frontMatter.valueStart + from
  return { start, end: start + name.length }
}
