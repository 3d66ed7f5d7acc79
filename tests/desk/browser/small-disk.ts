// A disk of a few kilobytes: one that can be full, or be read only, without harm to any other. Needs the rights of root.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, statfsSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

export interface SmallDisk {
  readonly folder: string
  /** To the last byte; `free` makes room again. */
  fill(): void
  free(): void
  lock(): void
  unlock(): void
  remove(): void
}

const mount = (...words: readonly string[]): boolean => spawnSync('mount', words).status === 0

/** Undefined where this machine does not allow it. */
export function openSmallDisk(): SmallDisk | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-disk-'))
  if (!mount('-t', 'tmpfs', '-o', 'size=256k', 'tmpfs', folder)) {
    rmSync(folder, { recursive: true })
    return undefined
  }
  const filler = join(folder, '.filler')
  return {
    folder,
    fill() {
      const { bavail, bsize } = statfsSync(folder)
      writeFileSync(filler, new Uint8Array(bavail * bsize))
    },
    free: () => rmSync(filler, { force: true }),
    lock: () => void mount('-o', 'remount,ro', folder),
    unlock: () => void mount('-o', 'remount,rw', folder),
    remove() {
      spawnSync('umount', ['-l', folder])
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
