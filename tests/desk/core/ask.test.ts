// The talk between page and worker: who waits, who is overtaken, what a crash says. Both sides are real; only the wire is ours.

import { expect, it } from 'vitest'
import { createDesk, type DeskSources, type Hear, type Link } from '../../../src/desk/core/ask.ts'
import type { FromWorker, ToWorker } from '../../../src/desk/core/messages.ts'
import type { DeskFiles, Question } from '../../../src/desk/core/questions.ts'
import { startWorker } from '../../../src/desk/core/worker-side.ts'
import { filesInMemory, testData } from './host.ts'

const FILES = {
  'battledore.yaml': 'step: pink-4\n',
  'meg.yaml': 'name: Meg\nstep: pink-2\n',
}
const TEXT = '# Tam\n\nTam won a hat.\n'
const story = (version: number, text = TEXT) => ({ path: 'tam.md', text, version })
const check = (version: number, text?: string): Question<'check'> => ({ kind: 'check', story: story(version, text) })

/** Messages are copied on the way, as a browser copies them. */
function startHere(hear: Hear, heard: ToWorker[] = []): Link {
  const take = startWorker({
    send: (message) => queueMicrotask(() => hear.message(structuredClone<FromWorker>(message))),
    fetch: () => Promise.reject(new Error('nothing is fetched')),
    today: () => '2026-11-29',
    pause: () => new Promise((done) => setTimeout(done)),
  })
  return {
    send(message) {
      heard.push(message)
      const copy = structuredClone(message)
      setTimeout(() => take(copy))
    },
    end: () => undefined,
  }
}

const createHere = (more: Partial<DeskSources> = {}, files: DeskFiles = filesInMemory(FILES)) =>
  createDesk({ data: testData(), files, start: startHere, ...more })

it('opens by itself, and asks the page for files of the folder', async () => {
  const desk = createHere()
  const checked = await desk.ask(check(7))
  expect(checked).toMatchObject({ version: 7, checked: true, step: { id: 'pink-4' } })
  const opened = await desk.ask({ kind: 'open', data: testData() })
  expect(opened.sequences).toEqual(['common-core', 'england', 'series'])
})

it('drops a check that waits when a newer one of the same story comes', async () => {
  const heard: ToWorker[] = []
  const desk = createHere({ start: (hear) => startHere(hear, heard) })
  await desk.ask(check(0))
  heard.length = 0
  const all = await Promise.allSettled(
    [1, 2, 3, 4].map((version) => desk.ask(check(version, `${TEXT}\nA ${version}.\n`))),
  )
  expect(all.map((one) => (one.status === 'fulfilled' ? one.value.version : one.reason.name))).toEqual([
    1,
    'Dropped',
    'Dropped',
    4,
  ])
  const asked = heard.flatMap((one) =>
    'question' in one && one.question.kind === 'check' ? [one.question.story.version] : [],
  )
  expect(asked).toEqual([1, 4])
})

it('keeps checks of other stories and other questions apart', async () => {
  const desk = createHere()
  const [one, other, card] = await Promise.all([
    desk.ask(check(1)),
    desk.ask({ kind: 'check', story: { ...story(1), path: 'sid.md' } }),
    desk.ask({ kind: 'card', story: story(1), place: 0 }),
  ])
  expect([one.path, other.path]).toEqual(['tam.md', 'sid.md'])
  expect(card).toMatchObject({ ok: true, value: { word: 'won' } })
})

it('what is cancelled is rejected at once, and the next check goes on', async () => {
  const desk = createHere()
  await desk.ask(check(0))
  const stop = new AbortController()
  const first = desk.ask(check(1), { signal: stop.signal })
  const second = desk.ask(check(2))
  await Promise.resolve()
  stop.abort()
  await expect(first).rejects.toMatchObject({ name: 'Dropped' })
  expect((await second).version).toBe(2)
  await expect(desk.ask(check(3), { signal: stop.signal })).rejects.toMatchObject({ name: 'Dropped' })
})

it('a file that the page cannot read is told as a problem, and nothing is rejected', async () => {
  const desk = createHere(
    {},
    { list: async () => ({ list: ['battledore.yaml'] }), read: () => Promise.reject(new Error('the stick is gone')) },
  )
  const checked = await desk.ask(check(1))
  const problems = checked.checked ? checked.told : checked.problems
  expect(problems.map(({ message }) => message).join()).toContain('the stick is gone')
})

it('reads a file again once it is said to have changed', async () => {
  const files: Record<string, string> = { ...FILES }
  const desk = createHere({}, filesInMemory(files))
  expect(await desk.ask(check(1))).toMatchObject({ step: { id: 'pink-4' } })
  files['battledore.yaml'] = 'step: pink-6\n'
  expect(await desk.ask(check(2))).toMatchObject({ step: { id: 'pink-4' } })
  await desk.ask({ kind: 'changed', paths: ['battledore.yaml'] })
  expect(await desk.ask(check(3))).toMatchObject({ step: { id: 'pink-6' } })
})

it('starts a worker again that broke, with one clear sentence for what was asked', async () => {
  let starts = 0
  const desk = createHere({
    start(hear) {
      starts++
      const link = startHere(hear)
      return starts > 1
        ? link
        : {
            ...link,
            send: (message) =>
              'question' in message && message.question.kind === 'check'
                ? hear.broken('out of memory')
                : link.send(message, []),
          }
    },
  })
  await expect(desk.ask(check(1))).rejects.toMatchObject({
    name: 'DeskFault',
    message: 'The part that checks has stopped (out of memory) and is started again. Your text is safe.',
  })
  expect((await desk.ask(check(2))).version).toBe(2)
  expect(starts).toBe(2)
})

it('does not start a worker for ever that never answers', async () => {
  let starts = 0
  const desk = createHere({
    start(hear) {
      starts++
      queueMicrotask(() => hear.broken('no such file'))
      return { send: () => undefined, end: () => undefined }
    },
  })
  for (let time = 0; time < 5; time++) await expect(desk.ask(check(time))).rejects.toMatchObject({ name: 'DeskFault' })
  expect(starts).toBe(3)
  await expect(desk.ask(check(9))).rejects.toThrow(/cannot run in this browser/)
})

it('a fault of ours is one sentence without a stack, and the worker goes on', async () => {
  const desk = createHere()
  const bad = desk.ask({ kind: 'check', story: null as never })
  await expect(bad).rejects.toThrow(TypeError)
  await expect(desk.ask({ kind: 'nonsense' as 'open', data: testData() })).rejects.toThrow(
    /^Something went wrong inside, and this could not be answered \(RangeError: [^\n]*\)\. Your text is safe/,
  )
  expect((await desk.ask(check(1))).version).toBe(1)
})
