// Paths of both kinds, held against Node's own path.posix and path.win32, which the core cannot use.

import { posix, win32 } from 'node:path'
import { pathToFileURL } from 'node:url'
import { describe, expect, it } from 'vitest'
import { findParent, joinPath, toFolder } from '../../src/files/index.ts'
import { toUri } from '../../src/report/sarif.ts'

const FOLDERS = {
  posix: ['/', '/a', '/a/My Stories é (1)'],
  win32: ['C:/', 'C:/a', 'd:/a/b', '//server/share/', '//server/share/a', '//server/share/a/b'],
}
const PATHS = ['x.md', './x.md', '../x.md', '../../../x.md', 'b/../x.md', 'b//x.md', 'b/.']
const KINDS = { posix, win32 }
const toSlashes = (path: string): string => path.replaceAll('\\', '/')
const withoutEnd = (path: string): string => (path.length > 3 ? path.replace(/\/$/u, '') : path)

describe.each(['posix', 'win32'] as const)('as path.%s', (kind) => {
  const pairs = FOLDERS[kind].flatMap((folder) => PATHS.map((path) => [folder, path] as const))

  it.each(pairs)('%s and %s are joined', (folder, path) => {
    expect(withoutEnd(joinPath(folder, path))).toBe(withoutEnd(toSlashes(KINDS[kind].join(folder, path))))
  })

  it.each(FOLDERS[kind])('%s is the folder of what lies in it', (folder) => {
    const path = joinPath(folder, 'x.md')
    expect(toFolder(path)).toBe(toSlashes(KINDS[kind].dirname(path)))
  })

  it.each(FOLDERS[kind])('%s leads up to its root and ends there', (folder) => {
    const above = []
    for (let at = findParent(folder); at !== undefined; at = findParent(at)) above.push(at)
    const { root } = KINDS[kind].parse(folder)
    expect(above.at(-1) ?? folder).toBe(root)
  })

  // `windows` is an option of Node from 20.13; the types of Node 20 do not know it.
  it.each(FOLDERS[kind])('a file in %s has the URI that Node gives it', (folder) => {
    const path = joinPath(folder, 'x y.md')
    const toUrl = pathToFileURL as (path: string, options: { readonly windows: boolean }) => URL
    const isWindows = kind === 'win32'
    const href = toUrl(isWindows ? path.replaceAll('/', '\\') : path, { windows: isWindows }).href
    expect(decodeURI(new URL(toUri(path)).href)).toBe(decodeURI(href))
  })
})

it('an absolute path of Windows stays, whatever its slashes', () => {
  expect(joinPath('C:/a', 'D:\\b\\x.yaml')).toBe('D:/b/x.yaml')
  expect(joinPath('C:/a', 'C:/../x.yaml')).toBe('C:/x.yaml')
  expect(joinPath('/a', '//server/share/x.yaml')).toBe('//server/share/x.yaml')
})
