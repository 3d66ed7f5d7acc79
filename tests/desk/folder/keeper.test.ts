// One open story in the situations that a maker can come into, each played through without waiting.

import { beforeEach, describe, expect, it } from 'vitest'
import { openKeeper } from '../../../src/desk/folder/keeper.ts'
import type { Keeper, KeeperEvent } from '../../../src/desk/folder/types.ts'
import { toProblem } from '../../../src/problem/index.ts'
import {
  createClock,
  createDisk,
  createDrafts,
  createLocks,
  type TestClock,
  type TestDisk,
  toText,
  toValue,
} from './world.ts'

let clock: TestClock
let disk: TestDisk
let drafts: ReturnType<typeof createDrafts>
let locks: ReturnType<typeof createLocks>
let ids: number
beforeEach(() => {
  clock = createClock()
  disk = createDisk(clock, () => undefined)
  drafts = createDrafts(clock)
  locks = createLocks()
  ids = 0
  disk.foreign('hat.md', 'Tam had a hat.\r\n')
})

const createTools = () => ({
  ...{ folder: disk.folder, drafts: drafts.open(), locks, clock },
  createId: () => `draft ${++ids}`,
})
const open = async (name = 'hat.md', fresh?: string): Promise<Keeper> =>
  toValue(await openKeeper(name, createTools(), fresh))
const write = (keeper: Keeper, text: string): void =>
  keeper.change([{ start: keeper.text().length, end: keeper.text().length, text }])
function listen(keeper: Keeper): KeeperEvent[] {
  const events: KeeperEvent[] = []
  keeper.subscribe((event) => events.push(event))
  return events
}
function crash(): void {
  clock.clear()
  disk.forget()
  locks.crash()
}

describe('saving', () => {
  it('gives back each line end where everything was taken out and put in again', async () => {
    disk.foreign('hat.md', 'Tam had a hat.\r\nIt was red.\nZub sat.\r')
    const keeper = await open()
    const text = keeper.text()
    keeper.change([{ start: 0, end: text.length, text: 'Zub ran.' }])
    await clock.advance(2000)
    expect(disk.text('hat.md')).toBe('Zub ran.')
    keeper.change([{ start: 0, end: 8, text }])
    await clock.advance(2000)
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\nIt was red.\nZub sat.\r')
  })

  it('goes by itself after 1.5 s of rest, and takes the draft away', async () => {
    const keeper = await open()
    expect(keeper.state()).toEqual({ kind: 'saved', at: undefined })
    write(keeper, 'It was red.\n')
    expect(keeper.state().kind).toBe('unsaved')
    await clock.advance(1499)
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\n')
    expect([...drafts.kept.values()].map(({ bytes }) => toText(bytes))).toEqual(['Tam had a hat.\r\nIt was red.\r\n'])
    await clock.advance(1)
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\nIt was red.\r\n')
    expect(keeper.state()).toEqual({ kind: 'saved', at: clock.now() })
    expect(drafts.kept.size).toBe(0)
  })

  it('goes every 10 s while somebody writes without a rest', async () => {
    const keeper = await open()
    for (let second = 0; second < 10; second++) {
      write(keeper, 'a')
      await clock.advance(1000)
    }
    expect(disk.text('hat.md')).toBe(`Tam had a hat.\r\n${'a'.repeat(10)}`)
  })

  it('writes nothing where all was changed back', async () => {
    const keeper = await open()
    const at = 'Tam had a hat.\n'.length
    keeper.change([{ start: at, end: at, text: 'x' }])
    keeper.change([{ start: at, end: at + 1, text: '' }])
    disk.set('full')
    await clock.advance(20_000)
    expect(keeper.state()).toEqual({ kind: 'saved', at: undefined })
    expect(drafts.kept.size).toBe(0)
  })

  it('makes a new story, and never in the place of one that is there', async () => {
    expect(await openKeeper('hat.md', createTools(), '')).toMatchObject({ problems: [{ code: 'foreign-file' }] })
    const keeper = await open('hen.md', '---\nstep: pink-4\n---\n')
    await clock.advance(1500)
    expect(disk.text('hen.md')).toBe('---\nstep: pink-4\n---\n')
    expect(keeper.state().kind).toBe('saved')
    const other = await open('pig.md', 'A pig.\n')
    disk.foreign('pig.md', 'Theirs.\n', false)
    await clock.advance(1500)
    expect(other.state()).toEqual({ kind: 'conflict', theirs: 'Theirs.\n' })
    expect(disk.text('pig.md')).toBe('Theirs.\n')
  })

  it('tries again when the disk was full or the folder away', async () => {
    const keeper = await open()
    disk.set('full')
    write(keeper, 'x')
    await clock.advance(2000)
    expect(keeper.state()).toMatchObject({ kind: 'unsaved', problem: { message: 'The disk is full' } })
    disk.set('never came')
    await clock.advance(5000)
    expect(keeper.state()).toMatchObject({ kind: 'lost', problem: { code: 'folder-lost' } })
    disk.set('well')
    await clock.advance(5000)
    expect(keeper.state().kind).toBe('saved')
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\nx')
  })

  it('knows its own bytes again when only the answer was lost', async () => {
    const keeper = await open()
    disk.set('answer lost')
    write(keeper, 'x')
    await clock.advance(2000)
    expect(keeper.state().kind).toBe('lost')
    write(keeper, 'y')
    disk.set('well')
    await clock.advance(10_000)
    expect(keeper.state().kind).toBe('saved')
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\nxy')
  })
})

describe('another program', () => {
  it('is shown where nobody has written here', async () => {
    const keeper = await open()
    const events = listen(keeper)
    disk.foreign('hat.md', 'Tam had a cap.\r\n')
    await clock.advance(0)
    expect(events).toContainEqual({ kind: 'text', edits: [{ start: 10, end: 13, text: 'cap' }], why: 'renewed' })
    expect(keeper.text()).toBe('Tam had a cap.\n')
    expect(keeper.original).toBe('Tam had a hat.\n')
  })

  it('is never written over', async () => {
    const keeper = await open()
    write(keeper, 'Mine.')
    disk.foreign('hat.md', 'Theirs.\n', false)
    await clock.advance(30_000)
    expect(keeper.state()).toEqual({ kind: 'conflict', theirs: 'Theirs.\n' })
    expect(disk.text('hat.md')).toBe('Theirs.\n')
    expect(keeper.text()).toBe('Tam had a hat.\nMine.')
    expect(drafts.kept.size).toBe(1)
  })

  it('that removes what was saved here is a conflict too, and the story can get its name again', async () => {
    const keeper = await open()
    disk.foreign('hat.md', undefined)
    await clock.advance(1000)
    expect(keeper.state()).toEqual({ kind: 'conflict', theirs: undefined })
    expect(toValue(await keeper.saveCopy())).toBe('hat.md')
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\n')
    expect(keeper.state().kind).toBe('saved')
    expect(drafts.kept.size).toBe(0)
  })

  it('that puts back an older text does not take away what was written here', async () => {
    const keeper = await open()
    write(keeper, 'Mine.')
    await clock.advance(2000)
    disk.foreign('hat.md', 'Tam had a hat.\r\n')
    await clock.advance(1000)
    expect(keeper.state().kind).toBe('conflict')
    expect(keeper.text()).toBe('Tam had a hat.\nMine.')
    expect(drafts.kept.size).toBe(1)
  })

  it('that takes its change back ends the conflict', async () => {
    const keeper = await open()
    write(keeper, 'Mine.')
    disk.foreign('hat.md', 'Theirs.\n')
    await clock.advance(1000)
    disk.foreign('hat.md', 'Tam had a hat.\r\n')
    await clock.advance(2000)
    expect(keeper.state().kind).toBe('saved')
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\nMine.')
  })
})

describe('out of a conflict', () => {
  async function quarrel(): Promise<Keeper> {
    const keeper = await open()
    write(keeper, 'Mine.')
    disk.foreign('hat.md', 'Theirs.\n')
    await clock.advance(1000)
    return keeper
  }

  it('theirs comes into the editor, and mine with undo', async () => {
    const keeper = await quarrel()
    const events = listen(keeper)
    expect(await keeper.takeTheirs()).toMatchObject({ ok: true })
    expect(events.map(({ kind }) => kind)).toEqual(['text', 'state'])
    expect([keeper.text(), keeper.state().kind, drafts.kept.size]).toEqual(['Theirs.\n', 'saved', 0])
    keeper.change([{ start: 0, end: 8, text: 'Tam had a hat.\nMine.' }])
    await clock.advance(2000)
    expect(disk.text('hat.md')).toBe('Tam had a hat.\nMine.')
  })

  it('mine becomes a file of its own, with a name that is free', async () => {
    disk.foreign('hat (my copy).md', 'An older one.')
    const keeper = await quarrel()
    expect(toValue(await keeper.saveCopy())).toBe('hat (my copy 2).md')
    expect(disk.text('hat (my copy 2).md')).toBe('Tam had a hat.\r\nMine.')
    expect(disk.text('hat (my copy).md')).toBe('An older one.')
    expect([keeper.text(), keeper.state().kind]).toEqual(['Theirs.\n', 'saved'])
  })

  it('keeps all where there is no room for a copy', async () => {
    const keeper = await quarrel()
    disk.set('full')
    expect(await keeper.saveCopy()).toMatchObject({ ok: false, problems: [{ message: 'The disk is full' }] })
    expect(keeper.state().kind).toBe('conflict')
    expect(toText(keeper.bytes())).toBe('Tam had a hat.\r\nMine.')
  })
})

describe('after a crash', () => {
  it('a draft is found, and can be taken', async () => {
    write(await open(), 'Mine.')
    await clock.advance(400)
    crash()
    const keeper = await open()
    expect(keeper.text()).toBe('Tam had a hat.\n')
    expect(keeper.found()).toMatchObject({ text: 'Tam had a hat.\nMine.', isBehind: false })
    const events = listen(keeper)
    await keeper.takeDraft()
    expect(events.map(({ kind }) => kind)).toEqual(['text', 'draft-settled', 'state'])
    expect(keeper.found()).toBeUndefined()
    await clock.advance(2000)
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\nMine.')
    expect(drafts.kept.size).toBe(0)
  })

  it('a draft can be thrown away', async () => {
    write(await open(), 'Mine.')
    await clock.advance(400)
    crash()
    const keeper = await open()
    await keeper.dropDraft()
    expect([keeper.found(), drafts.kept.size]).toEqual([undefined, 0])
  })

  it('a draft of a text that has been changed since leads to a conflict', async () => {
    write(await open(), 'Mine.')
    await clock.advance(400)
    crash()
    disk.foreign('hat.md', 'Theirs.\n')
    const keeper = await open()
    expect(keeper.found()?.isBehind).toBe(true)
    await keeper.takeDraft()
    await clock.advance(20_000)
    expect(keeper.state()).toEqual({ kind: 'conflict', theirs: 'Theirs.\n' })
    expect([keeper.text(), disk.text('hat.md')]).toEqual(['Tam had a hat.\nMine.', 'Theirs.\n'])
  })

  it('a conflict that a draft led to does not end because the file was only touched', async () => {
    write(await open(), 'Mine.')
    await clock.advance(400)
    crash()
    disk.foreign('hat.md', 'Theirs.\n')
    const keeper = await open()
    await keeper.takeDraft()
    disk.foreign('hat.md', 'Theirs.\n')
    await clock.advance(20_000)
    expect([keeper.state().kind, disk.text('hat.md')]).toEqual(['conflict', 'Theirs.\n'])
  })

  it('a draft whose file comes back as it was is saved as what it is', async () => {
    write(await open(), 'Mine.')
    await clock.advance(400)
    crash()
    disk.foreign('hat.md', 'Other.\n')
    const keeper = await open()
    await keeper.takeDraft()
    keeper.change([{ start: 0, end: keeper.text().length, text: 'Other.\n' }])
    disk.foreign('hat.md', 'Tam had a hat.\r\n')
    await clock.advance(20_000)
    expect([keeper.state().kind, disk.text('hat.md')]).toEqual(['saved', 'Other.\r\n'])
  })

  it('a draft that waits is not written over by what is typed meanwhile, nor that by the draft', async () => {
    write(await open(), 'First.')
    await clock.advance(400)
    crash()
    const keeper = await open()
    write(keeper, 'Second.')
    await clock.advance(400)
    expect(drafts.kept.size).toBe(2)
    await keeper.takeDraft()
    expect(keeper.text()).toBe('Tam had a hat.\nFirst.')
    expect(keeper.found()?.text).toBe('Tam had a hat.\nSecond.')
  })

  it('a story that was never saved opens from its draft', async () => {
    disk.set('full')
    await open('hen.md', 'A hen.')
    await clock.advance(2000)
    crash()
    disk.set('well')
    const keeper = await open('hen.md')
    expect([keeper.text(), keeper.state().kind]).toEqual(['A hen.', 'unsaved'])
    await clock.advance(2000)
    expect(disk.text('hen.md')).toBe('A hen.')
    expect(drafts.kept.size).toBe(0)
  })

  it('in the middle of a save, what that wrote is no foreign change', async () => {
    disk.set('well', 100)
    drafts.set(false, 20)
    const keeper = open()
    await clock.advance(200)
    write(await keeper, 'One.')
    await clock.advance(1560)
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\nOne.')
    write(await keeper, 'Two.')
    await clock.advance(250)
    crash()
    const again = open()
    await clock.advance(200)
    expect((await again).found()).toMatchObject({ text: 'Tam had a hat.\nOne.Two.', isBehind: false })
  })

  it('that comes in the middle of the draft leaves the one before', async () => {
    const keeper = await open()
    write(keeper, 'One.')
    await clock.advance(250)
    drafts.set(false, 100)
    write(keeper, 'Two.')
    await clock.advance(250)
    crash()
    expect((await open()).found()?.text).toBe('Tam had a hat.\nOne.')
  })
})

describe('can only be looked at', () => {
  it('in a second tab, until it is opened anew', async () => {
    const first = await open()
    const second = await open()
    expect(second.state()).toMatchObject({ kind: 'read-only', problem: { code: 'in-use' } })
    write(second, 'x')
    expect(second.text()).toBe('Tam had a hat.\n')
    write(first, 'Mine.')
    await clock.advance(2000)
    disk.foreign('hat.md', disk.text('hat.md'))
    await clock.advance(0)
    expect(second.text()).toBe('Tam had a hat.\nMine.')
    expect(second.state().kind).toBe('read-only')
    await first.close()
    expect((await open()).state().kind).toBe('saved')
  })

  it('where it is no UTF-8, and a copy can be written', async () => {
    disk.files.set('old.md', Uint8Array.from([0x63, 0x61, 0x66, 0xe9]))
    const keeper = await open('old.md')
    expect(keeper.state()).toMatchObject({ kind: 'read-only', problem: { code: 'binary' } })
    write(keeper, 'x')
    await clock.advance(20_000)
    expect([...(disk.files.get('old.md') ?? [])]).toEqual([0x63, 0x61, 0x66, 0xe9])
    expect(toValue(await keeper.saveCopy())).toBe('old (my copy).md')
    expect(disk.text('old (my copy).md')).toBe('café')
  })

  it('where it is write-protected, until somebody takes that off and tries again', async () => {
    const { folder } = disk
    let isLocked = true
    const locked = toProblem({ code: 'unreadable-file', message: '`hat.md` is write-protected' })
    disk.folder = {
      ...folder,
      async read(name) {
        const read = await folder.read(name)
        return read.ok && isLocked ? { ...read, value: { ...read.value, locked } } : read
      },
    }
    const keeper = await open()
    expect((await keeper.save()).kind).toBe('read-only')
    write(keeper, 'x')
    isLocked = false
    expect((await keeper.save()).kind).toBe('saved')
    write(keeper, 'Mine.')
    await clock.advance(2000)
    expect(disk.text('hat.md')).toBe('Tam had a hat.\r\nMine.')
  })
})

it('saves a single file only when the maker says so, and keeps its draft', async () => {
  disk.folder = { ...disk.folder, kind: 'single' }
  const keeper = await open()
  write(keeper, 'Mine.')
  await clock.advance(30_000)
  expect([keeper.state().kind, disk.text('hat.md'), drafts.kept.size]).toEqual(['unsaved', 'Tam had a hat.\r\n', 1])
  expect((await keeper.save()).kind).toBe('saved')
  expect([disk.text('hat.md'), drafts.kept.size]).toEqual(['Tam had a hat.\r\nMine.', 0])
  write(keeper, 'More.')
  await keeper.close()
  expect([disk.text('hat.md'), drafts.kept.size]).toEqual(['Tam had a hat.\r\nMine.', 1])
})

it('tells once that the browser keeps no drafts', async () => {
  drafts.set(true)
  const keeper = await open()
  const events = listen(keeper)
  write(keeper, 'a')
  await clock.advance(1000)
  write(keeper, 'b')
  await clock.advance(1000)
  expect(events.filter(({ kind }) => kind === 'no-drafts')).toHaveLength(1)
})

it('keeps a draft when it is closed in a conflict', async () => {
  const keeper = await open()
  write(keeper, 'Mine.')
  disk.foreign('hat.md', 'Theirs.\n')
  await clock.advance(0)
  await keeper.close()
  expect([...drafts.kept.values()].map(({ bytes }) => toText(bytes))).toEqual(['Tam had a hat.\r\nMine.'])
})
