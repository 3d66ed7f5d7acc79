// A command that is named is set up alone: it must be the same as among all the others.

import { expect, it } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { createWorld } from './io.ts'

async function toSaid(...args: string[]): Promise<string> {
  const world = createWorld()
  const code = await main(args, world.io)
  world.remove()
  return `${code}\n${world.out()}\n${world.err()}`
}

it('shows the same help for a command as the program that has them all', async () => {
  const all = await toSaid('--help')
  const names = [...all.matchAll(/^ {2}([a-z]+)(?= )/gm)].map(([, name = '']) => name).filter((name) => name !== 'help')
  expect(names.length).toBeGreaterThan(14)
  for (const name of names) expect(await toSaid(name, '--help'), name).toBe(await toSaid('help', name))
})

it('still tells the nearest command', async () => {
  expect(await toSaid('chek')).toContain('Did you mean check?')
})
