// The server as an editor meets it: over the protocol, with settings that change under it.

import { afterEach, describe, expect, it } from 'vitest'
import { type Client, startClient } from './client.ts'

const clients: Client[] = []
async function start(...args: Parameters<typeof startClient>): Promise<Client> {
  const client = await startClient(...args)
  clients.push(client)
  return client
}
afterEach(async () => {
  for (const client of clients.splice(0)) await client.close()
})

const STORY = '---\nstep: pink-4\n---\nTam sat at night.\n'
const pause = (milliseconds: number): Promise<void> => new Promise((done) => setTimeout(done, milliseconds))

describe('diagnostics', () => {
  it('stand on the blamed letters, with the rule as their code', async () => {
    const { open } = await start()
    expect(await open('tam.md', STORY)).toMatchObject([
      {
        range: { start: { line: 3, character: 12 }, end: { line: 3, character: 15 } },
        severity: 1,
        code: 'no-untaught-correspondence',
        source: 'battledore',
        message: expect.stringContaining('`night` has `igh`'),
      },
    ])
  })

  it('count characters as the protocol does: a duck before the word is two', async () => {
    const { open } = await start()
    const found = (await open('tam.md', STORY.replace('Tam', '🦆 “Tam” '))).find(({ message }) =>
      String(message).includes('igh'),
    )
    expect(found?.range.start).toEqual({ line: 3, character: 18 })
  })

  it('reach from the first to the last letter of a split grapheme', async () => {
    const { open } = await start()
    const found = (await open('tam.md', '---\nstep: green-2\n---\nTam ate the cake.\n')).find(({ message }) =>
      String(message).includes('`ate`'),
    )
    expect(found?.range).toEqual({ start: { line: 3, character: 4 }, end: { line: 3, character: 7 } })
  })

  it('follow typing after a pause, and only the last text is checked', async () => {
    const { open, change, next, heard, uri } = await start()
    await open('tam.md', STORY)
    const before = heard.length
    const said = next('tam.md')
    for (let version = 2; version <= 11; version++)
      change('tam.md', version, version === 11 ? STORY.replace('night', 'light') : STORY + 'x'.repeat(version))
    expect((await said)[0]?.message).toContain('`light`')
    await pause(300)
    const published = heard.slice(before).filter(({ params }) => params?.uri === uri('tam.md'))
    expect(published.map(({ params }) => params?.version)).toEqual([11])
  })

  it('take changes of single letters', async () => {
    const { open, notify, next, uri } = await start()
    await open('tam.md', STORY)
    const said = next('tam.md')
    const range = { start: { line: 3, character: 11 }, end: { line: 3, character: 16 } }
    notify('textDocument/didChange', {
      textDocument: { uri: uri('tam.md'), version: 2 },
      contentChanges: [
        { range, text: 'mat' },
        { range: { start: { line: 3, character: 3 }, end: { line: 3, character: 3 } }, text: 'by' },
      ],
    })
    expect((await said).map(({ range: at }) => at.start)).toEqual([{ line: 3, character: 4 }])
  })

  it('go when the story is closed', async () => {
    const { open, notify, next, uri } = await start()
    await open('tam.md', STORY)
    const said = next('tam.md')
    notify('textDocument/didClose', { textDocument: { uri: uri('tam.md') } })
    expect(await said).toEqual([])
  })

  it('say why a story cannot be checked: loudly in a story folder, quietly elsewhere', async () => {
    const folder = await start({ 'battledore.yaml': 'names: [Tam]\n' })
    expect(await folder.open('tam.md', 'Tam sat.\n')).toMatchObject([
      { severity: 1, message: expect.stringContaining('does not say which step') },
    ])
    const elsewhere = await start()
    expect(await elsewhere.open('notes.md', 'Buy paint.\n')).toMatchObject([{ severity: 4 }])
    expect(await elsewhere.open('tam.md', '---\nstep: pnik-4\n---\nTam sat.\n')).toMatchObject([
      { severity: 1, message: expect.stringContaining('Did you mean `pink-4`?') },
    ])
  })

  it('mark an unknown step where it stands, and the other mistakes of the front matter with it', async () => {
    const { open } = await start()
    const found = await open('tam.md', '---\ntitle: Tam\nstep: pnik-4\nnaems: [Tam]\n---\nTam sat.\n')
    expect(found).toMatchObject([
      { code: 'not-checked', range: { start: { line: 3, character: 0 } }, severity: 2 },
      {
        code: 'not-checked',
        range: { start: { line: 2, character: 6 }, end: { line: 2, character: 12 } },
        severity: 1,
        message: expect.stringMatching(/^The sequence `series` has no step `pnik-4`/),
      },
    ])
  })

  it('mark an unknown sequence where it stands', async () => {
    const { open } = await start()
    const found = await open('tam.md', '---\nstep: pink-4\nsequence: sreies\n---\nTam sat.\n')
    expect(found).toMatchObject([{ severity: 1, range: { start: { line: 2, character: 10 } } }])
  })

  it('do not say twice that it is an error', async () => {
    const { open } = await start({ 'battledore.yaml': 'names: [Tam]\n' })
    const found = await open('tam.md', '---\nstep: [pink-4\n---\nTam sat.\n')
    expect(found.map(({ message }) => message)).toEqual([
      expect.stringMatching(/^The lines at the top of the story cannot be read/),
    ])
  })

  it('leave out what a check leaves out', async () => {
    const { open } = await start({ 'battledore.yaml': 'step: pink-4\nignore: "drafts/"\n', '.gitignore': 'old/\n' })
    expect(await open('README.md', 'Boats at night.\n')).toEqual([])
    expect(await open('drafts/a.md', 'Boats at night.\n')).toEqual([])
    expect(await open('old/a.md', 'Boats at night.\n')).toEqual([])
  })

  it('tell a mistake in front matter at its place, and offer the nearest key or value', async () => {
    const { open, actions } = await start()
    const [found] = await open('tam.md', '---\nstep: pink-4\naccent: southern-britsh\n---\nTam sat.\n')
    expect(found).toMatchObject({ code: 'front-matter', range: { start: { line: 2, character: 8 } } })
    const offered = await actions('tam.md', found?.range ?? never())
    expect(offered.map(({ title }) => title)).toEqual(['Change it to “southern-british”'])
  })
})

describe('settings', () => {
  it('of a config count, and a changed config is noticed by what the editor watches', async () => {
    const client = await start(
      { 'battledore.yaml': 'sight words: [night]\n' },
      { workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } },
    )
    expect(await client.open('tam.md', STORY)).toEqual([])
    const registered = client.heard.find(({ method }) => method === 'client/registerCapability')
    expect(JSON.stringify(registered)).toContain('workspace/didChangeWatchedFiles')
    const said = client.next('tam.md')
    client.world.write({ 'battledore.yaml': 'sight words: [other]\n' })
    client.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: client.uri('battledore.yaml'), type: 2 }] })
    expect(await said).toHaveLength(1)
  })

  it('are looked at anew by the server itself, for editors that watch nothing', async () => {
    const client = await start({ 'battledore.yaml': 'sight words: [other]\n' })
    expect(await client.open('tam.md', STORY)).toHaveLength(1)
    client.world.write({ 'battledore.yaml': 'sight words: [night]\nnames: [Tam]\n' })
    const said = client.next('tam.md')
    client.change('tam.md', 2, `${STORY}\n`)
    expect(await said).toEqual([])
  })

  it('of a sequence file count, and its change is noticed when it is saved', async () => {
    const sequence = (word: string): string => `name: ours\nsteps:\n  - id: one\n    sight words: [Tam, ${word}]\n`
    const client = await start({ 'ours.yaml': sequence('ran') })
    expect(await client.open('tam.md', '---\nsequence: ours.yaml\nstep: one\n---\ntam sat\n')).not.toEqual([])
    const said = client.next('tam.md')
    client.world.write({ 'ours.yaml': sequence('sat') })
    client.notify('textDocument/didSave', { textDocument: { uri: client.uri('tam.md') } })
    expect(await said).toEqual([])
  })

  it('with a mistake are marked in their own file, while the rest still counts; the mark goes when it is mended', async () => {
    const client = await start({ 'battledore.yaml': 'nmaes: [Tam]\nsight words: [night]\n' })
    const marks = client.next('battledore.yaml')
    expect(await client.open('tam.md', STORY)).toEqual([])
    expect(await marks).toMatchObject([
      {
        code: 'config',
        range: { start: { line: 0, character: 0 } },
        message: expect.stringContaining('Did you mean `names`?'),
      },
    ])
    const mended = client.next('battledore.yaml')
    client.world.write({ 'battledore.yaml': 'names: [Tam]\n' })
    client.change('tam.md', 2, `${STORY}\n`)
    expect(await mended).toEqual([])
  })

  it('with an unknown step are marked in the config, once for all stories, until it is mended', async () => {
    const client = await start({ 'battledore.yaml': 'step: pnik-4\n' })
    const marks = client.next('battledore.yaml')
    expect(await client.open('tam.md', 'Tam sat.\n')).toMatchObject([{ range: { start: { line: 0 } } }])
    expect(await marks).toMatchObject([
      {
        severity: 1,
        range: { start: { line: 0, character: 6 }, end: { line: 0, character: 12 } },
        message: expect.stringMatching(/^The sequence `series` has no step `pnik-4`/),
      },
    ])
    const from = client.heard.length
    await client.open('sid.md', 'Sid sat.\n')
    await client.open('meg.md', '---\nstep: pink-4\n---\nMeg met Sid.\n')
    const uri = client.uri('battledore.yaml')
    expect(client.heard.slice(from).filter(({ params }) => params?.uri === uri)).toEqual([])
    const mended = client.next('battledore.yaml')
    client.world.write({ 'battledore.yaml': 'step: pink-4\n' })
    client.notify('textDocument/didSave', { textDocument: { uri: client.uri('tam.md') } })
    expect(await mended).toEqual([])
  })

  it('of a sequence are marked in its own file, once, and told where the story names it, until they are mended', async () => {
    const path = 'Year (1)/mine.yaml'
    const mistake = 'name: mine\nsteps:\n  - id: one\n    teach:\n      - a as in cat\n      - q as in cat\n'
    const story = '---\nstep: one\nsequence: mine.yaml\n---\nA cat.\n'
    const client = await start({ [path]: mistake })
    const marks = client.next(path)
    expect(await client.open('Year (1)/tam.md', story)).toMatchObject([
      {
        range: { start: { line: 2, character: 10 }, end: { line: 2, character: 19 } },
        message: expect.stringMatching(/^Year \(1\)\/mine\.yaml:6:9: error: `cat` does not hold the letters `q`/),
      },
    ])
    expect(await marks).toMatchObject([
      {
        severity: 1,
        range: { start: { line: 5, character: 8 }, end: { line: 5, character: 19 } },
        message: expect.stringMatching(/^`cat` does not hold the letters `q`/),
      },
    ])
    const mended = client.next(path)
    client.world.write({ [path]: mistake.replace('q as', 'c as') })
    client.notify('textDocument/didSave', { textDocument: { uri: client.uri('Year (1)/tam.md') } })
    expect(await mended).toEqual([])
  })

  it('lose that mark too when the stories are closed', async () => {
    const client = await start({ 'battledore.yaml': 'step: pnik-4\n' })
    await client.open('tam.md', 'Tam sat.\n')
    const gone = client.next('battledore.yaml')
    client.notify('textDocument/didClose', { textDocument: { uri: client.uri('tam.md') } })
    expect(await gone).toEqual([])
  })

  it('come from the text in the editor, saved or not', async () => {
    const { open, change, next } = await start({ 'tam.md': STORY })
    await open('tam.md', STORY)
    const said = next('tam.md')
    change('tam.md', 2, STORY.replace('pink-4', 'pink-4\nsight words: [night]'))
    expect(await said).toEqual([])
  })
})

describe('hover', () => {
  it('shows the letters of a word over their sounds, and its step', async () => {
    const { open, hover } = await start()
    await open('tam.md', STORY)
    const found = await hover('tam.md', { line: 3, character: 13 })
    const text = JSON.stringify(found?.contents)
    expect(text).toMatch(/n +igh +t/)
    expect(text).toMatch(/n +aɪ +t/)
    expect(text).toContain('Readable from step green-3.')
    expect(found?.range).toEqual({ start: { line: 3, character: 11 }, end: { line: 3, character: 16 } })
  })

  it('is in Markdown for an editor that shows it', async () => {
    const { open, hover } = await start({}, { textDocument: { hover: { contentFormat: ['markdown'] } } })
    await open('tam.md', STORY)
    expect((await hover('tam.md', { line: 3, character: 13 }))?.contents).toMatchObject({
      kind: 'markdown',
      value: expect.stringMatching(/^```text\n/),
    })
  })

  it('shows the meaning first that the sentence takes, and says so', async () => {
    const { open, hover } = await start()
    await open('tam.md', '---\nstep: green-2\n---\nHe took a bow. It is a wind-up hen.\n')
    const text = String(JSON.stringify((await hover('tam.md', { line: 3, character: 11 }))?.contents))
    expect(text.indexOf('/baʊ/')).toBeLessThan(text.indexOf('/boʊ/'))
    expect(text).toContain('The sentence takes it as /baʊ/ (to bend low')
    expect(text).toContain('Readable from step green-6.')
    expect(text).not.toContain('green-3')
  })

  it('says of an unsettled word what the check says', async () => {
    const { open, hover } = await start()
    await open('tam.md', '---\nstep: green-2\n---\nMeg and Sid read.\n')
    const text = JSON.stringify((await hover('tam.md', { line: 3, character: 13 }))?.contents).replace(/\\n +/g, ' ')
    expect(text).toContain('The sentence does not settle which is meant. Readable: /riːd/')
    expect(text).toContain('from step green-13 on')
    expect(text).not.toContain('it can be sounded out')
  })

  it('shows nothing where no word stands', async () => {
    const { open, hover } = await start()
    await open('tam.md', `${STORY}\n\n`)
    expect(await hover('tam.md', { line: 1, character: 2 })).toBeNull()
    expect(await hover('tam.md', { line: 5, character: 0 })).toBeNull()
    expect(await hover('tam.md', { line: 99, character: 99 })).toBeNull()
  })
})

describe('quick fixes', () => {
  it('are offered under the cursor only', async () => {
    const { open, actions } = await start()
    await open('tam.md', STORY)
    const at = (character: number) => actions('tam.md', { start: { line: 3, character }, end: { line: 3, character } })
    const titles = (await at(13)).map(({ title }) => title)
    expect(titles).toContain('Make “night” a sight word of this story')
    expect(titles).toContain('Switch off no-untaught-correspondence for “night” here')
    expect(await at(1)).toEqual([])
  })

  it('belong to the text as it is, even right after a change', async () => {
    const { open, actions, change } = await start()
    await open('tam.md', STORY)
    change('tam.md', 2, STORY.replace('Tam sat', 'So Meg and Zebedee sat'))
    const titles = (
      await actions('tam.md', { start: { line: 3, character: 13 }, end: { line: 3, character: 13 } })
    ).map(({ title }) => title)
    expect(titles).toContain('Allow the name “Zebedee” in this story')
  })
})

describe('completion', () => {
  const labels = async (client: Client, text: string, line: number, character: number): Promise<string[]> => {
    await client.open('tam.md', text)
    return (await client.complete('tam.md', { line, character })).map(({ label }) => label)
  }

  it('offers words that the child can read at this step, and no others', async () => {
    const client = await start()
    const found = await labels(client, '---\nstep: pink-4\n---\nt\n', 3, 1)
    expect(found).toEqual(expect.arrayContaining(['tap', 'tin', 'to', 'the']))
    // "tree", "train" and "time" are of later steps.
    expect(found.filter((word) => ['tree', 'train', 'time', 'take'].includes(word))).toEqual([])
    expect(found.every((word) => word.startsWith('t'))).toBe(true)
  })

  it('knows more words at a later step', async () => {
    const client = await start()
    expect(await labels(client, '---\nstep: green-8\n---\ntr\n', 3, 2)).toEqual(
      expect.arrayContaining(['tree', 'train']),
    )
  })

  it('keeps the capital, and offers the names and sight words of the story', async () => {
    const client = await start()
    const found = await labels(client, '---\nstep: pink-4\nnames: [Tamsin]\nsight words: [table]\n---\nTa\n', 5, 2)
    expect(found[0]).toBe('Tamsin')
    expect(found).toEqual(expect.arrayContaining(['Tap', 'Table']))
  })

  it('never offers a word that is not fit for children', async () => {
    const client = await start()
    const found = await Promise.all(
      ['g', 'b', 'd', 's', 'f', 'a'].map(async (letter, at) => {
        const path = `${at}.md`
        await client.open(path, `---\nstep: green-13\n---\n${letter}\n`)
        return (await client.complete(path, { line: 3, character: 1 })).map(({ label }) => label)
      }),
    )
    const all = found.flat()
    expect(all.length).toBeGreaterThan(100)
    expect(
      all.filter((word) => ['gun', 'guns', 'gin', 'beer', 'drug', 'damn', 'sex', 'bomb', 'ass'].includes(word)),
    ).toEqual([])
  })

  it('follows what a school adds to the unfit words, and what it clears', async () => {
    const client = await start({ 'battledore.yaml': 'unfit words: [pet]\nfit words: [gun]\n' })
    expect(await labels(client, '---\nstep: green-8\n---\npe\n', 3, 2)).not.toContain('pet')
    await client.open('ned.md', '---\nstep: green-8\n---\ngu\n')
    const offered = await client.complete('ned.md', { line: 3, character: 2 })
    expect(offered.map(({ label }) => label)).toContain('gun')
  })

  it('offers settings at the top, those that are there left out', async () => {
    const client = await start()
    const keys = await labels(client, '---\nstep: pink-4\nsi\n---\nTam sat.\n', 2, 2)
    expect(keys).toContain('sight words')
    expect(keys).not.toContain('step')
  })

  it('offers the steps of the sequence before a step is written', async () => {
    const client = await start()
    expect(await labels(client, '---\nsequence: england\nstep: \n---\nTam sat.\n', 2, 6)).toContain('reception-1')
  })

  it('offers settings before the closing line is written, and words below it', async () => {
    const client = await start()
    expect(await labels(client, '---\nst', 1, 2)).toContain('step')
    expect(await labels(client, '---\nstep: ', 1, 6)).toContain('pink-4')
    for (const text of ['---\nsequence: england\nstep: ', '---\nsequence: england\nstep: \nTam sat.\n']) {
      const found = await labels(client, text, 2, 6)
      expect(found).toContain('reception-1')
      expect(found).not.toContain('pink-4')
    }
    expect(await labels(client, '---\nstep: \nsequence: england\n', 1, 6)).toContain('reception-1')
    const other = await start({ 'battledore.yaml': 'step: pink-4\n' })
    expect(await labels(other, '---\nta\n\nta\n', 3, 2)).toContain('tap')
  })

  it('offers rules, and what a rule can be', async () => {
    const client = await start()
    expect(await labels(client, '---\nstep: pink-4\nrules:\n  no-\n---\nTam sat.\n', 3, 5)).toContain(
      'no-untaught-mark',
    )
    expect((await client.complete('tam.md', { line: 1, character: 6 })).length).toBeGreaterThan(10)
    const other = await start()
    expect(await labels(other, '---\nstep: pink-4\nrules:\n  no-untaught-mark: \n---\nTam sat.\n', 3, 20)).toEqual([
      'off',
      'warning',
      'error',
    ])
  })
})

function never(): never {
  throw new Error('nothing was found')
}
