// Runs `battledore desk` of dist/ on a folder, as a maker does.

import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'
import { ROOT } from '../root.ts'

export interface RunningDesk {
  /** With its token. */
  readonly address: string
  /** Without: all that the page may ask lies below. */
  readonly origin: string
  close(): Promise<void>
}

/** @param port 0 for any that is free; drafts belong to an address, so the same one finds them again */
export async function runDesk(folder: string, port = 0): Promise<RunningDesk> {
  const cli = join(ROOT, 'dist', 'cli.cjs')
  const child = spawn(process.execPath, [cli, 'desk', folder, '--no-open', '--stay', '--port', `${port}`])
  const address = await readAddress(child)
  return { address, origin: new URL(address).origin, close: () => close(child) }
}

function readAddress(child: ChildProcess): Promise<string> {
  return new Promise((done, refuse) => {
    let said = ''
    const hear = (text: Buffer): void => {
      said += text.toString()
      const [address] = /http:\/\/127\.0\.0\.1:\d+\/\S*/.exec(said) ?? []
      if (address !== undefined) done(address)
    }
    child.stdout?.on('data', hear)
    child.stderr?.on('data', hear)
    child.on('exit', (code) => refuse(new Error(`the desk ended with ${code}: ${said}`)))
  })
}

const close = (child: ChildProcess): Promise<void> =>
  new Promise((done) => {
    child.removeAllListeners('exit')
    if (child.exitCode !== null) return done()
    child.on('exit', () => done())
    child.kill('SIGINT')
  })
