// Rules that speak of a list of the front matter mark the item itself, however the list is written.

import { describe, expect, it } from 'vitest'
import { check } from '../unified/pipeline.ts'

/** What is marked by a rule, cut out of the source. */
async function findMarked(rule: string, head: string): Promise<readonly string[]> {
  const source = `---\nstep: pink-4\n${head}---\n\nTam sat on the mat.\n`
  const { messages } = await check(source)
  return messages.filter((one) => one.rule === rule).map(({ start, end }) => source.slice(start, end))
}

describe('no-unused-name marks', () => {
  it.each([
    ['names: [Tam, Zub]\n', ['Zub']],
    ['names: # Zub is the hen\n  - Tam\n  - Zub\n', ['Zub']],
    ["names: ['O''Hara', Tam]\n", ["'O''Hara'"]],
    ['names: ["Zub \\u0041", Tam]\n', ['"Zub \\u0041"']],
    ['names: Tam, Zub,  Old Ned \n', ['Zub', 'Old Ned']],
    ['title: Zub names\nnames: ["", Zub]\n', ['Zub']],
    ['Names:\n- Zub\n', ['Zub']],
    ['names: &all [Zub]\n', ['Zub']],
  ])('the item: %j', async (head, marked) => {
    expect(await findMarked('no-unused-name', head)).toEqual(marked)
  })
})

it('min-sight-word-returns marks the item', async () => {
  const head = 'introduces: # said, the\n  - the\n  - "said"\n'
  expect(await findMarked('min-sight-word-returns', head)).toEqual(['the', '"said"'])
})

it('min-practised-words marks the item', async () => {
  expect(await findMarked('min-practised-words', "practises: # a, ai\n  - 'ai'\n")).toEqual(["'ai'"])
})
