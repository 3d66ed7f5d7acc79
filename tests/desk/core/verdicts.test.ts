// The desk says of every story in fixtures/ what `battledore check --format json` says: verdicts, steps, suggestions, figures.

import { afterAll, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld } from '../../cli/io.ts'
import { pickShown, sayByDesk } from './as-json.ts'
import { filesInMemory, openDesk, readFixtures } from './host.ts'

const files = readFixtures()
const stories = Object.keys(files).filter((name) => name.endsWith('.md'))

const world = createWorld(files)
afterAll(() => world.remove())
const desk = await openDesk(filesInMemory(files))

async function sayByCommand(args: readonly string[]) {
  const before = world.out().length
  await main(['check', ...args, '--format', 'json'], world.io)
  return JSON.parse(world.out().slice(before))
}

it('there are stories, and they have something to say', async () => {
  expect(stories.length).toBeGreaterThan(14)
  const report = await sayByCommand(stories)
  const messages = report.files.flatMap(
    (file: { messages: readonly { suggestions: readonly string[] }[] }) => file.messages,
  )
  expect(messages.length).toBeGreaterThan(90)
  expect(
    messages.filter(({ suggestions }: { suggestions: readonly string[] }) => suggestions.length > 0).length,
  ).toBeGreaterThan(5)
})

it.each(stories)('%s', async (path) => {
  const report = await sayByCommand([path])
  const said = await sayByDesk(desk.ask, path, files[path] ?? '')
  const [file] = report.files
  if (file === undefined) {
    expect(said).toEqual(report.failures[0].problems.map(({ message }: { message: string }) => message))
    return
  }
  expect(said).toEqual(pickShown(file))
})

it.each(['class/una.yaml', 'class/reed-group.yaml', 'readers/meg.yaml'])('for the reader %s', async (reader) => {
  for (const path of stories) {
    const report = await sayByCommand([path, '--reader', reader])
    const said = await sayByDesk(desk.ask, path, files[path] ?? '', reader)
    const [file] = report.files
    if (file) expect(said).toEqual(pickShown(file))
    else expect(Array.isArray(said)).toBe(true)
  }
})
