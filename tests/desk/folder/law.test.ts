// The law of the desk over random sequences: nothing is lost, nothing foreign is written over. DESK_RUNS=10000 for more.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Fault, type Op, play } from './law.ts'
import type { Answering } from './world.ts'

const runs = Number(process.env['DESK_RUNS'] ?? 300)

const TEXT = fc.constantFrom('a', 'Tam ', '\n', '\n---\n', '🦆', 'b\nc', '')
const op = <Kind extends Op['kind']>(kind: Kind) => fc.constant({ kind } as Op)
const OP: fc.Arbitrary<Op> = fc.oneof(
  {
    weight: 12,
    arbitrary: fc.record({ kind: fc.constant('edit' as const), at: fc.nat(60), length: fc.nat(3), text: TEXT }),
  },
  {
    weight: 8,
    arbitrary: fc.record({
      kind: fc.constant('wait' as const),
      milliseconds: fc.oneof(fc.nat(700), fc.constantFrom(0, 100, 1500, 2000, 6000)),
    }),
  },
  { weight: 2, arbitrary: fc.constantFrom<Op>({ kind: 'save' }, { kind: 'undo' }) },
  { weight: 3, arbitrary: fc.constantFrom<Op>({ kind: 'crash' }, { kind: 'close' }) },
  {
    weight: 3,
    arbitrary: fc.record({
      kind: fc.constant('foreign' as const),
      text: fc.constantFrom('Theirs.\n', 'Tam had a hat.\r\nIt was red.\n', 'Other.\r\n', undefined),
      isSeen: fc.boolean(),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant('disk' as const),
      answering: fc.constantFrom<Answering>('well', 'well', 'full', 'never came', 'answer lost'),
      latency: fc.constantFrom(0, 50, 400),
    }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('drafts' as const), latency: fc.constantFrom(0, 30, 100) }) },
  { weight: 1, arbitrary: op('second tab') },
  { weight: 1, arbitrary: op('take theirs') },
  { weight: 1, arbitrary: op('save copy') },
  { weight: 2, arbitrary: op('take draft') },
  { weight: 1, arbitrary: op('drop draft') },
)
/** Short ones, which come to the point, and long ones, in which things pile up. */
const OPS = fc.oneof(fc.array(OP, { minLength: 1 }), fc.array(OP, { minLength: 1, maxLength: 30, size: 'max' }))

async function findBreach(numRuns: number, fault?: Fault): Promise<string> {
  const found = await fc.check(
    fc.asyncProperty(OPS, async (ops) => {
      const breaches = await play(ops, fault)
      if (breaches.length > 0) throw new Error(breaches.join('\n'))
    }),
    { numRuns, endOnFailure: fault !== undefined },
  )
  return found.failed ? `${String(found.errorInstance)}\n${JSON.stringify(found.counterexample, undefined, 1)}` : ''
}

it('no text that stood for half a second is lost, no foreign change written over', async () => {
  expect(await findBreach(runs)).toBe('')
}, 600_000)

describe('the law can fail', () => {
  it('where a save does not say which version it changes', async () => {
    const fault: Fault = {
      folder: (folder) => ({
        ...folder,
        async save(name, bytes, base) {
          const saved = await folder.save(name, bytes, base)
          return saved.kind === 'changed' && saved.theirs ? folder.save(name, bytes, saved.theirs.version) : saved
        },
      }),
    }
    expect(await findBreach(1000, fault)).toContain('wrote over a change')
  })

  it('where drafts come a little too late', async () => {
    const fault: Fault = {
      drafts: (drafts, wait) => ({
        ...drafts,
        put: async (draft) => {
          await wait(600)
          return drafts.put(draft)
        },
      }),
    }
    expect(await findBreach(1000, fault)).toContain('lost in a crash')
  })

  it('where a draft is thrown away by a save that does not hold it', async () => {
    const fault: Fault = {
      drafts: (drafts, wait) => ({
        ...drafts,
        put: async (draft) => {
          const done = await drafts.put(draft)
          void wait(100).then(() => drafts.remove(draft.id))
          return done
        },
      }),
    }
    expect(await findBreach(1000, fault)).toContain('lost in a crash')
  })

  it('where a new draft is put in the place of one that waits', async () => {
    const fault: Fault = { drafts: (drafts) => ({ ...drafts, put: (draft) => drafts.put({ ...draft, id: 'one' }) }) }
    expect(await findBreach(2000, fault)).toMatch(/gone|lost|offered/)
  })
})
