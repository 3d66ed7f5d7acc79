// Opens an address in the browser that the system prefers. Where there is none, the printed address is all that is needed.

import { spawn } from 'node:child_process'
import type { Io } from '../io.ts'

const OPENERS: Readonly<Record<string, readonly [command: string, ...args: string[]]>> = {
  darwin: ['open'],
  // An empty title, since `start` takes the first text in quotes for one.
  win32: ['cmd', '/c', 'start', '""'],
}

export function openBrowser(address: string, io: Io, platform: string = process.platform): void {
  const [command, ...args] = OPENERS[platform] ?? ['xdg-open']
  const failed = (): void => io.stderr.write('No browser could be opened: open the address above yourself.\n')
  try {
    const child = spawn(command, [...args, address], { stdio: 'ignore', detached: true })
    child.once('error', failed)
    child.once('exit', (code) => {
      if (code !== 0 && code !== null) failed()
    })
    child.unref()
  } catch {
    failed()
  }
}
