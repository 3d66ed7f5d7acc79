// The real program as a process of its own, with all it prints kept.

import { type ChildProcess, spawn } from 'node:child_process'
import { createRequire } from 'node:module'
import { fileURLToPath, pathToFileURL } from 'node:url'

const BIN = fileURLToPath(new URL('../../src/cli/bin.ts', import.meta.url))
const TSX = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href

/** The arguments after `node` that run the program from its sources. */
export const PROGRAM: readonly string[] = ['--import', TSX, BIN]

export interface Running {
  readonly process: ChildProcess
  out(): string
  err(): string
  /** Waits until the output from `from` on fulfils the test, and gives that output. */
  until(test: (out: string) => boolean, from?: number): Promise<string>
  stop(): Promise<void>
}

export function startProgram(args: readonly string[], cwd: string, patience = 30_000): Running {
  const child = spawn(process.execPath, [...PROGRAM, ...args], { cwd, env: { ...process.env, NO_COLOR: '1' } })
  let [out, err] = ['', '']
  const waiting = new Set<() => void>()
  const tell = (): void => {
    for (const look of [...waiting]) look()
  }
  child.stdout.on('data', (chunk: Buffer) => {
    out += chunk.toString()
    tell()
  })
  child.stderr.on('data', (chunk: Buffer) => {
    err += chunk.toString()
  })
  return {
    process: child,
    out: () => out,
    err: () => err,
    until: (test, from = 0) =>
      new Promise((done, fail) => {
        const timer = setTimeout(
          () => end(() => fail(new Error(`not printed in time; so far:\n${out.slice(from)}${err}`))),
          patience,
        )
        const look = (): void => {
          if (test(out.slice(from))) end(() => done(out.slice(from)))
        }
        const end = (say: () => void): void => {
          clearTimeout(timer)
          waiting.delete(look)
          say()
        }
        waiting.add(look)
        look()
      }),
    stop: () =>
      new Promise((done) => {
        if (child.exitCode !== null || child.signalCode !== null) return done()
        child.once('exit', () => done())
        child.kill()
      }),
  }
}
