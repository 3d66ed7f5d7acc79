// Changes to the text of a story that fixes make: words for a list in its front matter, a switch before a block.

import { toSettingKey } from '../config/keys.ts'
import { parseYaml } from '../config/parse.ts'
import type { Tree } from '../config/tree.ts'
import { findBlock } from '../story/find-word.ts'
import type { Range, Story } from '../story/types.ts'

export interface Edit extends Range {
  readonly text: string
}

type ListTree = Extract<Tree, { kind: 'list' }>

/** Adds a word to a list of the front matter, which is made where there is none. Undefined where it cannot be read. */
export async function addToList(
  { source, frontMatter }: Pick<Story, 'source' | 'frontMatter'>,
  key: string,
  word: string,
): Promise<Edit | undefined> {
  const newline = source.includes('\r\n') ? '\r\n' : '\n'
  const value = toYaml(word)
  if (!frontMatter) {
    const top = source.startsWith('\uFEFF') ? 1 : 0
    return insert(top, `---${newline}${key}: [${value}]${newline}---${newline}${newline}`)
  }
  const { tree, problems } = await parseYaml(frontMatter.value)
  const isBlock = tree === undefined || (tree.kind === 'map' && frontMatter.value[tree.start] !== '{')
  if (problems.length > 0 || !isBlock) return undefined
  const { valueStart } = frontMatter
  const entry = tree?.kind === 'map' ? tree.entries.find((one) => toSettingKey(one.key) === key) : undefined
  if (!entry) {
    const isOpen = frontMatter.value !== '' && !/[\r\n]$/.test(frontMatter.value)
    return insert(
      valueStart + frontMatter.value.length,
      `${isOpen ? newline : ''}${key}: [${value}]${isOpen ? '' : newline}`,
    )
  }
  const at = (offset: number): number => valueStart + offset
  if (entry.value.kind === 'list') return addToYamlList(entry.value, frontMatter.value, at, value, newline)
  if (entry.value.kind !== 'scalar') return undefined
  if (entry.value.value === null) return insert(at(frontMatter.value.indexOf(':', entry.keyAt.end) + 1), ` [${value}]`)
  const first = frontMatter.value[entry.value.start] ?? ''
  // A text over several lines: rare enough to leave to a person.
  if (/[|>]/.test(first)) return undefined
  const isQuoted = /["']/.test(first)
  return insert(at(entry.value.end - (isQuoted ? 1 : 0)), `, ${isQuoted ? word : value}`)
}

function addToYamlList(
  list: ListTree,
  yaml: string,
  at: (offset: number) => number,
  value: string,
  newline: string,
): Edit | undefined {
  const last = list.items.at(-1)
  if (yaml[list.start] === '[') return insert(at(last ? last.end : list.start + 1), last ? `, ${value}` : value)
  const first = list.items[0]
  if (!first || !last) return undefined
  const lineStart = yaml.lastIndexOf('\n', first.start) + 1
  const dash = /^[ \t]*- */.exec(yaml.slice(lineStart, first.start))?.[0]
  if (dash === undefined) return undefined
  // A comment behind the last item stays on its line.
  const rest = /^[^\r\n]*/.exec(yaml.slice(last.end))?.[0].length ?? 0
  return insert(at(last.end + rest), `${newline}${dash}${value}`)
}

/** Quoted where YAML would take it for something else than a word. */
function toYaml(word: string): string {
  const isPlain = /^\p{L}[\p{L}’' -]*$/u.test(word) && !/^(?:true|false|null|yes|no|on|off|y|n)$/i.test(word)
  return isPlain ? word : JSON.stringify(word)
}

const insert = (at: number, text: string): Edit => ({ start: at, end: at, text })

/** Puts a switch before the block at an offset. Undefined where no block stands. */
export function switchOff(
  story: Story,
  offset: number,
  rule: string,
  word: string | undefined,
  reason = '',
): Edit | undefined {
  const block = findBlock(story, offset)
  if (!block) return undefined
  const { source } = story
  const lineStart = Math.max(source.lastIndexOf('\n', block.start - 1), source.lastIndexOf('\r', block.start - 1)) + 1
  const start = Math.max(lineStart, source.startsWith('\uFEFF') ? 1 : 0)
  // In the same quote and at the same indent as the block, so that it stays where it is.
  const lead = /^[\s>]*/.exec(source.slice(start, block.start))?.[0] ?? ''
  const about = word === undefined || /["“”]|--/.test(word) ? '' : ` "${word}"`
  // Two dashes would end the reason, and with `>` the comment.
  const plain = reason.replace(/\s+/g, ' ').replaceAll(/-{2,}/g, '-').trim()
  const why = plain === '' ? '' : ` -- ${plain}`
  return insert(
    start,
    `${lead}<!-- battledore ignore ${rule}${about}${why} -->${source.includes('\r\n') ? '\r\n' : '\n'}`,
  )
}
