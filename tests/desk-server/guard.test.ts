// Attacks on the desk as a table of raw requests: each is refused as the guard says, and nothing outside is read or written.

import * as fs from 'node:fs'
import { networkInterfaces, tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createPageFiles } from '../../src/cli/desk/page-files.ts'
import { createStore } from '../../src/cli/desk/store.ts'
import { type DeskServer, startDeskServer, toSort } from '../../src/desk-server/index.ts'
import { createWorld, type TestWorld } from '../cli/io.ts'
import { askRaw, type RawAnswer } from './raw.ts'

const STORY = 'Tam had a hat.\r\n'
const SECRET = 'the secret of somebody else'

let world: TestWorld
let outside: string
let server: DeskServer
let token: string
beforeAll(async () => {
  world = createWorld({
    'hat.md': STORY,
    'red/tib.md': 'Tib.\n',
    'battledore.yaml': 'names: [Tam]\n',
    'notes.txt': SECRET,
  })
  outside = fs.mkdtempSync(join(tmpdir(), 'battledore-outside-'))
  fs.writeFileSync(join(outside, 'secret.md'), SECRET)
  fs.writeFileSync(join(world.cwd, '.hidden.md'), SECRET)
  fs.symlinkSync(join(outside, 'secret.md'), join(world.cwd, 'link.md'))
  fs.symlinkSync(outside, join(world.cwd, 'way-out'))
  fs.symlinkSync(join(outside, 'new.md'), join(world.cwd, 'nowhere.md'))
  fs.symlinkSync(join(world.cwd, 'hat.md'), join(world.cwd, 'inner.md'))
  server = await startDeskServer(0, { store: createStore(world.cwd, world.io), pageFile: createPageFiles })
  token = server.address.split('#')[1] ?? ''
})
afterAll(async () => {
  await server.close()
  world.remove()
  fs.rmSync(outside, { recursive: true, force: true })
})

interface Raw {
  readonly method?: string
  readonly target?: string
  /** Undefined leaves one of ours out; an array sends it twice. */
  readonly headers?: Readonly<Record<string, string | readonly string[] | undefined>>
  readonly body?: string | Uint8Array
}

function ask({ method = 'GET', target = '/', headers = {}, body = '' }: Raw): Promise<RawAnswer> {
  const length = Buffer.byteLength(body)
  const all = {
    ...{ Host: `127.0.0.1:${server.port}`, 'X-Desk-Token': token },
    ...(length > 0 && { 'Content-Length': String(length) }),
    ...headers,
  }
  const lines = Object.entries(all).flatMap(([name, value]) =>
    (value === undefined ? [] : [value].flat()).map((one) => `${name}: ${one}`),
  )
  return askRaw(server.port, [`${method} ${target} HTTP/1.1`, ...lines], body)
}

const read = (name: string): Promise<RawAnswer> => ask({ target: `/api/file/${name}` })
const OCTETS = { 'Content-Type': 'application/octet-stream' }
const put = (name: string, body: string, headers: Raw['headers'] = {}): Promise<RawAnswer> =>
  ask({ method: 'PUT', target: `/api/file/${name}`, headers: { ...OCTETS, ...headers }, body })
const versionOf = async (name: string): Promise<string> => (await read(name)).headers['etag'] ?? ''

describe('strangers are refused', () => {
  const own = () => `127.0.0.1:${server.port}`
  const rows: readonly (readonly [what: string, status: number, raw: () => Raw])[] = [
    [
      'a name that leads to this machine, as after rebinding',
      421,
      () => ({ headers: { Host: `evil.example:${server.port}` } }),
    ],
    ['localhost, which may be another', 421, () => ({ headers: { Host: `localhost:${server.port}` } })],
    ['this machine without the port', 421, () => ({ headers: { Host: '127.0.0.1' } })],
    ['this machine with another port', 421, () => ({ headers: { Host: '127.0.0.1:80' } })],
    ['the address in another spelling', 421, () => ({ headers: { Host: `127.1:${server.port}` } })],
    ['our address with something behind it', 421, () => ({ headers: { Host: `${own()}.evil.example` } })],
    ['no host at all', 400, () => ({ headers: { Host: undefined } })],
    ['two hosts', 421, () => ({ headers: { Host: [own(), 'evil.example'] } })],
    ['another page', 403, () => ({ headers: { Origin: 'https://evil.example' } })],
    ['a page without an origin', 403, () => ({ headers: { Origin: 'null' } })],
    ['our address over https', 403, () => ({ headers: { Origin: `https://${own()}` } })],
    ['two origins', 403, () => ({ headers: { Origin: [`http://${own()}`, `http://${own()}`] } })],
    ['a request across sites', 403, () => ({ headers: { 'Sec-Fetch-Site': 'cross-site' } })],
    ['a request from the same site only', 403, () => ({ headers: { 'Sec-Fetch-Site': 'same-site' } })],
    ['an api call without the token', 401, () => ({ target: '/api/list', headers: { 'X-Desk-Token': undefined } })],
    [
      'an api call with a wrong token',
      401,
      () => ({ target: '/api/list', headers: { 'X-Desk-Token': 'a'.repeat(32) } }),
    ],
    [
      'an api call with half the token',
      401,
      () => ({ target: '/api/list', headers: { 'X-Desk-Token': token.slice(0, 16) } }),
    ],
    [
      'the token in the address',
      401,
      () => ({ target: `/api/list?token=${token}`, headers: { 'X-Desk-Token': undefined } }),
    ],
    ['two tokens', 401, () => ({ target: '/api/list', headers: { 'X-Desk-Token': [token, token] } })],
    ['a file without the token', 401, () => ({ target: '/api/file/hat.md', headers: { 'X-Desk-Token': undefined } })],
    ['the watch without the token', 401, () => ({ target: '/api/watch', headers: { 'X-Desk-Token': undefined } })],
    [
      'what asks whether it may ask',
      403,
      () => ({ method: 'OPTIONS', target: '/api/file/hat.md', headers: { Origin: 'https://evil.example' } }),
    ],
  ]
  it.each(rows)('%s', async (_, status, raw) => {
    const answer = await ask(raw())
    expect(answer.status).toBe(status)
    expect(answer.body).not.toContain('Tam')
    expect(answer.headers['access-control-allow-origin']).toBeUndefined()
  })

  it('our own page is let in', async () => {
    for (const headers of [
      {},
      { Origin: `http://${own()}`, 'Sec-Fetch-Site': 'same-origin' },
      { 'Sec-Fetch-Site': 'none' },
    ])
      expect((await ask({ target: '/api/list', headers })).status).toBe(200)
  })

  it('nobody is heard but this machine', async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((all) => all ?? [])
      .filter(({ family, internal }) => family === 'IPv4' && !internal)
    for (const { address } of others)
      await expect(fetch(`http://${address}:${server.port}/`, { signal: AbortSignal.timeout(2000) })).rejects.toThrow()
    await expect(fetch(`http://[::1]:${server.port}/`, { signal: AbortSignal.timeout(2000) })).rejects.toThrow()
  })
})

describe('no name leads out', () => {
  const names = [
    ['up', '../secret.md'],
    ['up from within', 'red/../../secret.md'],
    ['up in disguise', '%2e%2e/secret.md'],
    ['up with a slash in disguise', '..%2fsecret.md'],
    ['up in double disguise', '%252e%252e%252fsecret.md'],
    ['up with the other slash', '..%5csecret.md'],
    ['from the root', '%2fetc%2fpasswd'],
    ['from the root, a story', '%2fetc%2fsecret.md'],
    ['with a drive', 'C:%2fsecret.md'],
    ['with a stream of Windows', 'hat.md::$DATA'],
    ['with a NUL', 'hat.md%00.md'],
    ['with a line break', 'hat.md%0a.md'],
    ['hidden', '.hidden.md'],
    ['in a hidden folder', '.git/hat.md'],
    ['of packages', 'node_modules/x.md'],
    ['a device of Windows', 'con.md'],
    ['with a dot at the end', 'hat.md.'],
    ['with a space at the end', 'hat.md%20'],
    ['with an empty part', 'red//tib.md'],
    ['with a dot as a part', './hat.md'],
    ['empty', ''],
    ['broken', '%zz.md'],
    ['no story', 'notes.txt'],
    ['a link to a file outside', 'link.md'],
    ['through a link to a folder outside', 'way-out/secret.md'],
    ['a link that leads nowhere yet', 'nowhere.md'],
    ['not there', 'fox.md'],
  ] as const
  it.each(names)('reading: %s', async (_, name) => {
    const answer = await read(name)
    expect(answer.status).toBe(404)
    expect(answer.body).not.toContain(SECRET)
  })

  it.each(names.filter(([what]) => what !== 'not there' && what !== 'up in double disguise'))(
    'writing: %s',
    async (_, name) => {
      expect((await put(name, 'x', { 'If-None-Match': '*' })).status).toBe(404)
    },
  )

  it('nor a new one through a link, nor a picture, nor hidden settings', async () => {
    for (const name of ['way-out/new.md', 'nowhere.md', 'hat.png', '.battledore.yaml'])
      expect((await put(name, 'x', { 'If-None-Match': '*' })).status).toBe(404)
    // A name with per cent signs is a name like others, in the folder.
    expect((await put('%252e%252e%252fpig.md', 'x', { 'If-None-Match': '*' })).status).toBe(200)
    fs.rmSync(join(world.cwd, '%2e%2e%2fpig.md'))
    expect(fs.readdirSync(outside)).toEqual(['secret.md'])
    expect(fs.readFileSync(join(outside, 'secret.md'), 'utf8')).toBe(SECRET)
  })

  it('nor does an address beside the files of the page', async () => {
    for (const target of ['/../package.json', '/data/../cli.cjs', '/data/%2e%2e/cli.cjs', '/data/fonts/../../cli.cjs'])
      expect((await ask({ target })).status).toBe(404)
    for (const target of ['/cli.cjs', '/data/cli.cjs', '/data/program.cjs', '/desk/app.js', '/data/desk/app.js'])
      expect((await ask({ target })).status).toBe(404)
    expect((await ask({ target: 'http://evil.example/' })).status).toBe(400)
    expect((await ask({ target: '*' })).status).toBe(400)
  })

  it('nor is one shown that may not be read', async () => {
    const { body } = await ask({ target: '/api/list' })
    const { files } = JSON.parse(body) as { readonly files: readonly { readonly name: string }[] }
    expect(files.map(({ name }) => name)).toEqual(['battledore.yaml', 'hat.md', 'inner.md', 'red/tib.md'])
  })

  it('names of stories that people give are let through', () => {
    for (const name of ['hat.md', 'Tansy Lane/03 Zoë won!.md', 'a.MD', 'x.markdown', '(1) ½ & co.md', 'übung/日本.md'])
      expect(toSort(name, true)).toBe('story')
    expect([toSort('a.yml', true), toSort('.battledore.yaml'), toSort('a.svg')]).toEqual(['yaml', 'yaml', 'picture'])
  })
})

describe('a save', () => {
  it('must say which version it changes, as bytes, of a size', async () => {
    const version = await versionOf('hat.md')
    expect((await put('hat.md', 'x')).status).toBe(428)
    expect((await put('hat.md', 'x', { 'If-Match': '*' })).status).toBe(428)
    expect((await put('hat.md', 'x', { 'If-Match': 'W/"a"' })).status).toBe(428)
    expect((await put('hat.md', 'x', { 'If-None-Match': '"a"' })).status).toBe(428)
    expect((await put('hat.md', 'x', { 'If-Match': version, 'If-None-Match': '*' })).status).toBe(428)
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', undefined])
      expect((await put('hat.md', 'x', { 'Content-Type': type, 'If-Match': version })).status).toBe(415)
    const large = 'x'.repeat(2 * 1024 * 1024 + 1)
    expect((await put('hat.md', large, { 'If-Match': version })).status).toBe(413)
    const chunked = { 'Content-Length': undefined, 'Transfer-Encoding': 'chunked', 'If-Match': version }
    const body = `${large.length.toString(16)}\r\n${large}\r\n0\r\n\r\n`
    expect((await put('hat.md', body, chunked)).status).toBe(413)
    expect((await ask({ method: 'POST', target: '/api/file/hat.md', headers: OCTETS, body: 'x' })).status).toBe(405)
    expect((await ask({ method: 'DELETE', target: '/api/file/hat.md' })).status).toBe(405)
    expect((await ask({ method: 'POST', body: 'x' })).status).toBe(405)
    expect(world.read('hat.md')).toBe(STORY)
  })

  it('of an older version changes nothing, and brings what is there', async () => {
    const old = `"sha256-${'0'.repeat(64)}"`
    const answer = await put('hat.md', 'x', { 'If-Match': old })
    expect([answer.status, answer.body, answer.headers['etag']]).toEqual([412, STORY, await versionOf('hat.md')])
    expect((await put('hat.md', 'x', { 'If-None-Match': '*' })).status).toBe(412)
    expect((await put('fox.md', 'x', { 'If-Match': old })).status).toBe(412)
    expect(world.read('hat.md')).toBe(STORY)
    expect(fs.existsSync(join(world.cwd, 'fox.md'))).toBe(false)
  })

  it('of the right one is whole, and leaves nothing else behind', async () => {
    const first = await put('new/pig.md', 'A pig.\r\n', { 'If-None-Match': '*' })
    expect(first.status).toBe(200)
    const { version } = JSON.parse(first.body) as { readonly version: string }
    const second = await put('new/pig.md', 'A big pig.\n', { 'If-Match': `"${version}"` })
    expect(second.status).toBe(200)
    expect(world.read('new/pig.md')).toBe('A big pig.\n')
    expect(fs.readdirSync(join(world.cwd, 'new'))).toEqual(['pig.md'])
    expect((await put('new/pig.md', 'x', { 'If-Match': `"${version}"` })).status).toBe(412)
  })

  it('goes through a link that stays within', async () => {
    const before = await versionOf('inner.md')
    expect((await put('inner.md', 'Tam.\n', { 'If-Match': before })).status).toBe(200)
    expect(world.read('hat.md')).toBe('Tam.\n')
    expect((await put('hat.md', STORY, { 'If-Match': await versionOf('hat.md') })).status).toBe(200)
  })

  it('of a protected file is refused with the reason, which is known when it is read', async () => {
    world.write({ 'kept.md': 'Kept.\n' })
    fs.chmodSync(join(world.cwd, 'kept.md'), 0o444)
    const { headers } = await read('kept.md')
    expect(JSON.parse(decodeURIComponent(headers['x-desk-locked'] ?? 'null'))).toMatchObject({
      code: 'unreadable-file',
    })
    const answer = await put('kept.md', 'x', { 'If-Match': headers['etag'] })
    expect([answer.status, JSON.parse(answer.body).problems[0].message]).toEqual([
      409,
      '`kept.md` is write-protected: allow changes to it first',
    ])
  })
})

it('says with every answer what the page may do', async () => {
  for (const raw of [{}, { target: '/api/list' }, { target: '/fox' }, { headers: { Host: 'evil.example' } }]) {
    const { headers } = await ask(raw)
    const policy = headers['content-security-policy'] ?? ''
    for (const part of [
      "default-src 'none'",
      "connect-src 'self'",
      "frame-ancestors 'none'",
      "require-trusted-types-for 'script'",
    ])
      expect(policy).toContain(part)
    expect(policy).not.toContain('unsafe')
    expect(headers).toMatchObject({
      'cache-control': 'no-store',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      'referrer-policy': 'no-referrer',
      'x-content-type-options': 'nosniff',
    })
  }
  const [one, other] = await Promise.all([ask({}), ask({})])
  expect(one.headers['content-security-policy']).not.toBe(other.headers['content-security-policy'])
})

it('the token is long, another each time, and in no page', async () => {
  expect(Buffer.from(token, 'base64url')).toHaveLength(24)
  const again = await startDeskServer(server.port, {
    store: createStore(world.cwd, world.io),
    pageFile: createPageFiles,
  })
  expect(again.address.split('#')[1]).not.toBe(token)
  expect(again.port).toBe(server.port + 1)
  await again.close()
  expect((await ask({})).body).not.toContain(token)
})
