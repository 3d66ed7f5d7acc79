// Waits for what the browser saves.

import { readdirSync, rmSync, statSync, watch } from 'node:fs'
import { join } from 'node:path'

/** The whole file of that kind, taken out of the way of the next one when it is read: a browser writes beside first. */
export function waitForFile(folder: string, ending: string): Promise<string> {
  return new Promise((done, refuse) => {
    const find = (): void => {
      const name = readdirSync(folder).find((one) => one.endsWith(ending))
      const isPartial = readdirSync(folder).some((one) => /\.(?:crdownload|part)$/.test(one))
      if (name === undefined || isPartial || statSync(join(folder, name)).size === 0) return
      clearTimeout(late)
      watcher.close()
      done(join(folder, name))
    }
    const watcher = watch(folder, find)
    const late = setTimeout(() => {
      watcher.close()
      refuse(new Error(`no ${ending} was saved: ${readdirSync(folder).join(', ')}`))
    }, 10_000)
    find()
  })
}

export function clear(folder: string): void {
  for (const name of readdirSync(folder)) rmSync(join(folder, name))
}
