// The changes that the desk offers do what they say: the place is gone or the word stands there, and every other byte is the same.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Card, Changed, CheckedText, Fix } from '../../../src/desk/core/questions.ts'
import { applyEdits } from '../../../src/fix/index.ts'
import { ROOT } from '../../console.ts'
import { filesInMemory, openDesk } from './host.ts'

const FIXTURES = join(ROOT, 'fixtures')
const OWN = [
  'name: ours',
  'title: Our own words',
  'steps:',
  '  - id: one   # the first weeks',
  '    teach:',
  ...['a as in cat', 'c as in cat', 't as in cat', 'h as in hat', 'm as in mat', 'd as in dad', 'n as in nap'].map(
    (line) => `      - ${line}`,
  ),
  '  - id: two',
  '    teach:',
  '      - o as in dog',
  '      - g as in dog',
  '',
].join('\n')

const read = (name: string): string => readFileSync(join(FIXTURES, name), 'utf8')
const stories = ['stories', 'shelf', 'print'].flatMap((folder) =>
  readdirSync(join(FIXTURES, folder))
    .filter((name) => name.endsWith('.md'))
    .map((name) => [`${folder}/${name}`, read(`${folder}/${name}`)] as const),
)
const own = [
  'own.md',
  '---\nsequence: ours.yaml\nstep: one\n---\n\n# A Cat\n\nA cat had a *mat*.\n\n---\n\nDad won a dog at night. Zub had a hat, and Dad won it.\n',
] as const
const desk = await openDesk(filesInMemory({ 'ours.yaml': OWN, ...Object.fromEntries(stories) }))

const isNothingElseChanged = ({ edits, before }: Changed, after: string): boolean => {
  let [at, moved] = [0, 0]
  return [...edits, { start: (before ?? '').length, end: (before ?? '').length, text: '' }].every(
    ({ start, end, text }) => {
      const same = (before ?? '').slice(at, start) === after.slice(at + moved, start + moved)
      const isIn = after.slice(start + moved, start + moved + text.length) === text
      at = end
      moved += text.length - (end - start)
      return same && isIn
    },
  )
}

async function check(path: string, text: string): Promise<CheckedText> {
  const checked = await desk.ask({ kind: 'check', story: { path, text, version: 1 } })
  if (!checked.checked) throw new Error(checked.problems[0]?.message)
  return checked
}

async function listCards(path: string, text: string): Promise<readonly Card[]> {
  const { places } = await check(path, text)
  const cards: Card[] = []
  for (const place of places.keys()) {
    const card = await desk.ask({ kind: 'card', story: { path, text, version: 1 }, place })
    if (card.ok) cards.push(card.value)
  }
  return cards
}

/** How often a rule speaks about a word. */
const count = ({ places }: CheckedText, word: string | null, rule: string | undefined): number =>
  places.filter((one) => one.word?.toLowerCase() === word?.toLowerCase() && one.rule === rule).length

const toChange = (fix: Fix): Changed | undefined => ('change' in fix ? fix.change : undefined)

describe.each([...stories, own])('%s', (path, text) => {
  it('the changes of every card', async () => {
    const before = await check(path, text)
    for (const card of await listCards(path, text)) {
      const rule = before.places[card.place]?.rule
      const was = count(before, card.word, rule)
      for (const fix of card.fixes) {
        const change = toChange(fix)
        if (change === undefined || fix.kind === 'teach') continue
        expect(change.before).toBe(text)
        expect(change.path).toBe(path)
        const after = applyEdits(text, change.edits)
        expect(isNothingElseChanged(change, after)).toBe(true)
        const now = await check(path, after)
        if (card.word === null) continue
        if (fix.kind === 'replace') {
          expect(count(now, card.word, rule), `${fix.word} for ${card.word}`).toBeLessThan(was)
          const at = (before.places[card.place]?.start ?? 0) + 1
          expect(
            now.places.some(
              (one) => one.severity === 'error' && one.word === fix.word && one.start < at && one.end > at,
            ),
          ).toBe(false)
        }
        if (fix.kind === 'replace' && fix.everywhere) {
          const everywhere = applyEdits(text, fix.everywhere.edits)
          expect(fix.everywhere.edits).toHaveLength(card.times)
          expect(isNothingElseChanged(fix.everywhere, everywhere)).toBe(true)
          expect(count(await check(path, everywhere), card.word, rule)).toBe(was - card.times)
        }
        if (fix.kind === 'name' || fix.kind === 'heart')
          expect(count(now, card.word, rule), `${fix.kind} ${card.word}`).toBe(0)
      }
    }
  })

  it('a reason keeps a word, and is told to whoever reads the story', async () => {
    const before = await check(path, text)
    for (const card of await listCards(path, text)) {
      if (!card.fixes.some(({ kind }) => kind === 'keep')) continue
      const wish = { kind: 'keep', reason: 'they sing it -- every day' } as const
      const kept = await desk.ask({ kind: 'fix', story: { path, text, version: 1 }, place: card.place, fix: wish })
      if (!kept.ok) continue
      const after = applyEdits(text, kept.value.change.edits)
      expect(isNothingElseChanged(kept.value.change, after)).toBe(true)
      expect(after).toContain('-- they sing it - every day -->')
      const rule = before.places[card.place]?.rule ?? ''
      expect(count(await check(path, after), card.word, rule), `${rule} ${card.word}`).toBeLessThan(
        count(before, card.word, rule),
      )
    }
  })
})

it('teaches in an own sequence what makes the word readable, and changes nothing else of its file', async () => {
  const [path, text] = own
  const cards = await listCards(path, text)
  const taught = cards.flatMap(({ word, fixes }) =>
    fixes.flatMap((fix) => (fix.kind === 'teach' ? [{ word, fix }] : [])),
  )
  // `o as in dog` is taught already, at the second step, so `dog` can only be learnt by heart before; `won` has no rule.
  const told = new Map(taught.map(({ word, fix }) => [word?.toLowerCase(), fix.what]))
  expect(Object.fromEntries(told)).toEqual({
    a: 'a',
    won: 'won',
    dog: 'dog',
    night: 'igh as in night',
    it: 'i as in sit',
  })
  for (const { word, fix } of taught) {
    expect(fix.change.path).toBe('ours.yaml')
    expect(fix.change.before).toBe(OWN)
    const yaml = applyEdits(OWN, fix.change.edits)
    expect(yaml).toContain('id: one   # the first weeks')
    const other = await openDesk(filesInMemory({ 'ours.yaml': yaml }))
    const now = await other.ask({ kind: 'check', story: { path, text, version: 1 } })
    expect(now.checked && now.places.some((one) => one.word === word && one.reason !== 'once'), `${word}`).toBe(false)
  }
})

it('a word of one’s own gets the form of the old one, and it is told where it cannot be read either', async () => {
  const [path, text] = own
  const story = { path, text, version: 1 }
  const { places } = await check(path, text)
  const place = places.findIndex(({ word }) => word === 'won')
  const had = await desk.ask({ kind: 'fix', story, place, fix: { kind: 'own', word: ' had ', everywhere: true } })
  expect(had).toMatchObject({ ok: true, value: { told: null } })
  expect(had.ok && applyEdits(text, had.value.change.edits)).toBe(text.replaceAll('won', 'had'))
  const lit = await desk.ask({ kind: 'fix', story, place, fix: { kind: 'own', word: 'lit', everywhere: false } })
  expect(lit).toMatchObject({ ok: true, value: { told: expect.stringContaining('`lit`') } })
  const none = await desk.ask({ kind: 'fix', story, place, fix: { kind: 'own', word: '12', everywhere: false } })
  expect(none).toMatchObject({ ok: false })
})
