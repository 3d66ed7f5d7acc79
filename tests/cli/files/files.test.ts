// Which stories are meant by files, folders, patterns and `-`.

import { execFileSync } from 'node:child_process'
import { readdirSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { findStories } from '../../../src/cli/files/find.ts'
import { toProblemLine } from '../../../src/problem/index.ts'
import type { TestWorld } from '../io.ts'
import { createWorld } from '../io.ts'

const worlds: TestWorld[] = []
afterEach(() => {
  for (const world of worlds.splice(0)) world.remove()
})

function world(files: Readonly<Record<string, string>>): TestWorld {
  const made = createWorld(files)
  worlds.push(made)
  return made
}

function toFiles(...paths: readonly string[]): Record<string, string> {
  return Object.fromEntries(paths.map((path) => [path, 'A hen.\n']))
}

async function find(files: Readonly<Record<string, string>>, given: readonly string[], options = {}) {
  const { io, cwd } = world(files)
  const found = await findStories(given, io, options)
  for (const { path, file } of found.files) expect(file === '-' ? '-' : join(cwd, path)).toBe(file)
  return { ...found, files: found.files.map(({ path }) => path), problems: found.problems.map(toProblemLine) }
}

describe('files by name', () => {
  it.each([
    'a hen.md',
    "Ned's.md",
    '"hen".md',
    'two\nlines.md',
    '[hen].md',
    'a*b?.md',
    '{a,b}.md',
    '!no.md',
    '(x).md',
    'hen.txt',
    'hen',
    '-hen.md',
    'nid d’œuf.md',
  ])('takes %j as it stands', async (name) => {
    expect(await find(toFiles(name, 'other.md'), [name])).toEqual({ files: [name], notices: [], problems: [] })
  })

  it('keeps the order of the arguments and takes a file once', async () => {
    const found = await find(toFiles('b.md', 'a.md', 'x/c.md'), ['b.md', './a.md', 'x', 'b.md', 'x/../a.md', '-'])
    expect(found.files).toEqual(['b.md', 'a.md', 'x/c.md', '-'])
  })

  it.each([
    ['hem.md', 'There is no file or folder `hem.md`. Did you mean `hen.md`?'],
    ['dukcs/a.md', 'There is no file or folder `dukcs/a.md`.'],
    ['dukcs', 'There is no file or folder `dukcs`. Did you mean `ducks`?'],
    ['hen.md/a.md', '`hen.md/a.md` is not there: a part of its path is a file, not a folder.'],
    ['a\nb.md', 'There is no file or folder `a\\nb.md`.'],
    ['', 'An empty path was given. Name a file or a folder.'],
    ['a'.repeat(300), expect.stringContaining('has a name that is too long')],
    ['*.text', 'No story matches `*.text`.'],
    ['empty', 'There are no stories (files that end in .md) in `empty`.'],
  ])('tells of %j and goes on', async (argument, problem) => {
    const found = await find({ ...toFiles('hen.md', 'ducks/a.md'), 'empty/x.txt': '' }, [argument, 'hen.md'])
    expect(found).toEqual({ files: ['hen.md'], notices: [], problems: [problem] })
  })
})

describe('folders', () => {
  it('finds stories below, in order, without what is never one', async () => {
    const files = toFiles(
      ...[
        'b.md',
        'a.md',
        'a-b.md',
        'a/b.md',
        'B.MD',
        'x/y/z.markdown',
        'notes.txt',
        'node_modules/p/a.md',
        '.hidden/a.md',
      ],
      ...['README.md', 'x/readme.en.md', 'CHANGELOG.md', 'LICENSE.md', 'CODE_OF_CONDUCT.md', '.dot.md'],
    )
    const found = await find(files, [])
    expect(found.files).toEqual(['.dot.md', 'B.MD', 'a-b.md', 'a.md', 'a/b.md', 'b.md', 'x/y/z.markdown'])
    expect((await find(files, ['x/'])).files).toEqual(['x/y/z.markdown'])
  })

  it('works in folders with odd names', async () => {
    expect((await find(toFiles('[x] *y/{a}/s.md'), ['[x] *y'])).files).toEqual(['[x] *y/{a}/s.md'])
  })

  it('follows links to files but not to folders', async () => {
    const { io, cwd } = world(toFiles('real/a.md'))
    symlinkSync('..', join(cwd, 'real/up'))
    symlinkSync('a.md', join(cwd, 'real/link.md'))
    symlinkSync('gone.md', join(cwd, 'real/broken.md'))
    const found = await findStories(['real'], io)
    expect(found.files.map(({ path }) => path)).toEqual(['real/a.md', 'real/link.md'])
  })

  it('tells of a link that leads to nothing, and goes on', async () => {
    const { io, cwd } = world(toFiles('a.md'))
    symlinkSync('gone.md', join(cwd, 'dangling.md'))
    symlinkSync('nowhere', join(cwd, 'ducks'))
    symlinkSync('round.md', join(cwd, 'round.md'))
    const found = await findStories(['dangling.md', 'ducks', 'round.md', 'a.md'], io)
    expect({ ...found, problems: found.problems.map(toProblemLine) }).toMatchObject({
      files: [{ path: 'a.md' }],
      problems: [
        '`dangling.md` is a link to `gone.md`, which is not there.',
        '`ducks` is a link to `nowhere`, which is not there.',
        '`round.md` is a link that leads back to itself.',
      ],
    })
  })

  it('tells of a folder that may not be opened, and goes on', async () => {
    const { io } = world(toFiles('a.md', 'shut/b.md'))
    const list = ((path: string, options: never) => {
      if (path.endsWith('shut')) throw Object.assign(new Error('no'), { code: 'EACCES' })
      return readdirSync(path, options)
    }) as typeof readdirSync
    const found = await findStories(['.'], { ...io, fs: { ...io.fs, readdirSync: list } })
    expect(found.files.map(({ path }) => path)).toEqual(['a.md'])
    expect(found.problems.map(toProblemLine)).toEqual([expect.stringContaining('permission is missing')])
  })
})

describe('patterns', () => {
  it.each([
    ['*.md', ['a.md', 'b.md']],
    ['**/*.md', ['a.md', 'b.md', 'x/c.md']],
    ['{a,x/c}.md', ['a.md', 'x/c.md']],
    ['./x/*', ['x/c.md']],
    ['[ab].md', ['a.md', 'b.md']],
  ])('%s', async (pattern, files) => {
    const all = toFiles('b.md', 'a.md', 'x/c.md', 'x/c.txt', 'node_modules/a.md', '.dots/a.md', 'README.md')
    expect(await find(all, [pattern])).toEqual({ files, notices: [], problems: [] })
  })

  it('takes an absolute pattern', async () => {
    const { io, cwd } = world(toFiles('x/a.md'))
    const found = await findStories([join(cwd, 'x/*.md')], io)
    expect(found.files).toEqual([{ path: join(cwd, 'x/a.md'), file: join(cwd, 'x/a.md') }])
  })
})

describe('ignore files', () => {
  const files = {
    ...toFiles(
      'a.md',
      'a.old.md',
      'drafts/b.md',
      'x/a.old.md',
      'x/keep.old.md',
      'x/drafts/c.md',
      'y/d.md',
      'y/secret.md',
    ),
    '.gitignore': '*.old.md\ndrafts/\n',
    'x/.gitignore': '!keep.old.md\n!drafts/\n',
    'y/.gitignore': 'secret.md\n',
    'y/.battledoreignore': '!secret.md\n/d.md\n',
  }

  it('leaves out in folders what git and .battledoreignore leave out', async () => {
    expect((await find(files, ['.'])).files).toEqual(['a.md', 'x/drafts/c.md', 'x/keep.old.md', 'y/secret.md'])
    expect((await find(files, ['.'], { ignoreFiles: false })).files).toHaveLength(8)
    expect((await find(files, ['**/*.md'])).files).toEqual(['a.md', 'x/drafts/c.md', 'x/keep.old.md', 'y/secret.md'])
  })

  it('agrees with git', async () => {
    const { io, cwd } = world({
      ...files,
      'y/.battledoreignore': '',
      'z/drafts/.gitignore': '!e.md',
      ...toFiles('z/drafts/e.md'),
    })
    execFileSync('git', ['init', '-q'], { cwd })
    const listed = execFileSync('git', ['ls-files', '-co', '--exclude-standard', '*.md'], { cwd, encoding: 'utf8' })
    const found = await findStories(['.'], io)
    expect(found.files.map(({ path }) => path)).toEqual(listed.trim().split('\n').toSorted())
  })

  it('skips a named file with one notice', async () => {
    const found = await find({ ...files, ...toFiles('README.md') }, [
      'a.md',
      'drafts/b.md',
      'drafts/b.md',
      'README.md',
      'drafts',
    ])
    expect(found.files).toEqual(['a.md'])
    expect(found.problems).toEqual([])
    expect(found.notices).toEqual([
      '`drafts/b.md` is left out by .gitignore or .battledoreignore.',
      '`README.md` is not taken for a story; a line `!README.md` in .battledoreignore takes it in.',
      '`drafts` is left out by .gitignore or .battledoreignore.',
    ])
  })

  it('takes in what a line with ! asks for', async () => {
    const asked = {
      ...toFiles('README.md', '.box/a.md', 'node_modules/a.md'),
      '.battledoreignore': '!README.md\n!.box/\n',
    }
    expect((await find(asked, ['.'])).files).toEqual(['.box/a.md', 'README.md'])
  })

  it('says so when nothing is left of a folder or pattern', async () => {
    const out = { ...toFiles('p/a.md', 'p/b.md'), '.gitignore': '*.md\n' }
    const { problems } = await find(out, ['p', 'p/*.md'])
    expect(problems).toEqual([
      'There are no stories (files that end in .md) in `p`: 2 files are left out.',
      'Every story is left out that matches `p/*.md`.',
    ])
  })
})
