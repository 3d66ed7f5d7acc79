// The Nodes that are supported, each brought by the npm package `node`, which carries the binaries.

import { spawnSync } from 'node:child_process'

export const NODE_VERSIONS: readonly number[] = [20, 22, 24]

/** The path of the executable. Throws where npm cannot bring it. */
export function findNode(version: number): string {
  const args = ['--yes', '--package', `node@${version}`, '--', 'node', '-p', 'process.execPath']
  // npm is a script on Windows, which only a shell starts.
  const { status, stdout, stderr } = spawnSync('npx', args, { encoding: 'utf8', shell: process.platform === 'win32' })
  if (status !== 0) throw new Error(`npm could not bring Node ${version}:\n${stderr}`)
  return stdout.trim()
}
