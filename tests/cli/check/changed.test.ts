// Only what is on changed lines, in real repositories.

import { afterEach, describe, expect, it } from 'vitest'
import { toRanges } from '../../../src/cli/check/changed.ts'
import { main } from '../../../src/cli/main.ts'
import { createRepository, type Repository } from '../repository.ts'

const HEAD = '---\nstep: pink-3\n---\n\n'

let repository: Repository
afterEach(() => repository?.remove())

async function words(...args: readonly string[]): Promise<readonly string[]> {
  const before = repository.out().length
  await main(['check', '--format', 'json', ...args], repository.io)
  const { files } = JSON.parse(repository.out().slice(before)) as {
    files: readonly { path: string; messages: readonly { word: string | null; line: number }[] }[]
  }
  return files.flatMap(({ path, messages }) =>
    messages.flatMap(({ word, line }) => (word === null ? [] : [`${path}:${line} ${word}`])),
  )
}

function commit(files: Readonly<Record<string, string>>): void {
  repository.write(files)
  repository.git('add', '-A')
  repository.git('commit', '-qm', 'more')
}

describe('check --changed-since', () => {
  it('shows messages on changed lines only, in changed and in new files', async () => {
    repository = createRepository()
    commit({ 'a.md': `${HEAD}A night.\n\nIt sat.\n`, 'b.md': `${HEAD}A light.\n`, 'gone.md': `${HEAD}A light.\n` })
    expect(await words('--changed-since', 'HEAD')).toEqual([])
    repository.write({ 'a.md': `${HEAD}A night.\n\nIt sat.\n\nA flight.\n`, 'odd "n\tame.md': `${HEAD}A sight.\n` })
    expect(await words('--changed-since', 'HEAD')).toEqual(['a.md:9 flight', 'odd "n\tame.md:5 sight'])
    repository.io.fs.rmSync(`${repository.cwd}/gone.md`)
    repository.git('add', '-A')
    expect(await words('--changed-since', 'HEAD')).toEqual(['a.md:9 flight', 'odd "n\tame.md:5 sight'])
    expect(await words('--changed-since', 'HEAD', '--staged')).toEqual(['a.md:9 flight', 'odd "n\tame.md:5 sight'])
  })

  it('follows a story to its new name, staged or committed', async () => {
    repository = createRepository()
    commit({ 's/a.md': `${HEAD}A night.\n\nIt sat.\n`, 'b.md': `${HEAD}A night.\n\nIt sat. A pin sat.\n\nA pan.\n` })
    repository.git('mv', 's/a.md', 's/new.md')
    repository.git('mv', 'b.md', 's/odd "n\tame.md')
    repository.write({ 's/odd "n\tame.md': `${HEAD}A night.\n\nIt sat. A pin sat.\n\nA pan.\n\nA light.\n` })
    repository.git('add', '-A')
    const found = ['s/odd "n\tame.md:11 light']
    for (const args of [[], ['s'], ['--staged'], ['s/new.md', 's/odd "n\tame.md']])
      expect(await words(...args, '--changed-since', 'HEAD')).toEqual(found)
    repository.git('commit', '-qm', 'renamed')
    expect(await words('--changed-since', 'HEAD~1')).toEqual(found)
    expect(await words('--changed-since', 'HEAD')).toEqual([])
  })

  it('does not say that every word can be read where it shows no more than some lines', async () => {
    repository = createRepository()
    commit({ 'a.md': `${HEAD}A night.\n` })
    repository.write({ 'a.md': `${HEAD}A night.\n\n---\n\nIt sat.\n` })
    await main(['check', '--changed-since', 'HEAD'], repository.io)
    expect(repository.out()).toContain('  Nothing to mend on the changed lines.\n')
    expect(repository.out()).not.toContain('every word can be read')
  })

  it('compares with where the branch began, not with what others did since', async () => {
    repository = createRepository()
    commit({ 'a.md': `${HEAD}A night.\n` })
    repository.git('checkout', '-qb', 'mine')
    commit({ 'b.md': `${HEAD}A light.\n` })
    repository.git('checkout', '-q', 'main')
    commit({ 'a.md': `${HEAD}It sat.\n` })
    repository.git('checkout', '-q', 'mine')
    expect(await words('--changed-since', 'main')).toEqual(['b.md:5 light'])
  })

  it('works from a folder below the top', async () => {
    repository = createRepository()
    commit({ 'x/a.md': `${HEAD}A night.\n`, 'b.md': `${HEAD}A light.\n` })
    repository.write({ 'x/a.md': `${HEAD}A night.\n\nA light.\n` })
    repository = { ...repository, io: { ...repository.io, cwd: `${repository.cwd}/x` } }
    expect(await words('--changed-since', 'HEAD')).toEqual(['a.md:7 light'])
  })

  it.each(['no-such-branch', '--output=x'])('says in one line that git does not know %j', async (since) => {
    repository = createRepository()
    commit({ 'a.md': `${HEAD}A night.\n` })
    expect(await main(['check', `--changed-since=${since}`], repository.io)).toBe(2)
    expect(repository.err()).toMatch(/^battledore: git could not answer: [^\n]+\n$/)
    expect(repository.io.fs.existsSync(`${repository.cwd}/x`)).toBe(false)
  })
})

describe('toRanges', () => {
  it('is not misled by lines that look like headers', () => {
    const diff = [
      'diff --git a/a.md b/a.md',
      '--- a/a.md',
      '+++ b/a.md',
      '@@ -1,2 +1,3 @@',
      '--- b/x',
      '-old',
      '+++ b/not-a-file.md',
      '+@@ -1 +1 @@',
      '+new',
      '@@ -9 +10,0 @@',
      '-gone',
      'diff --git a/b.md b/b.md',
      '--- /dev/null',
      '+++ "b/t\\tab \\"q\\".md"',
      '@@ -0,0 +1 @@',
      '+x',
      '',
    ].join('\n')
    expect([...toRanges(diff)]).toEqual([
      ['a.md', [[1, 3]]],
      ['t\tab "q".md', [[1, 1]]],
    ])
  })
})
