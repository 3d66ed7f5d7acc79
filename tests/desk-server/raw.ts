// Requests written by hand, so that no client makes them better than they are.

import { connect } from 'node:net'

export interface RawAnswer {
  readonly status: number
  readonly headers: Readonly<Record<string, string>>
  readonly body: string
}

/** @param head the lines of the request before the empty one */
export function askRaw(port: number, head: readonly string[], body: string | Uint8Array = ''): Promise<RawAnswer> {
  return new Promise((done, refuse) => {
    const socket = connect(port, '127.0.0.1')
    const chunks: Buffer[] = []
    socket.on('data', (chunk: Buffer) => chunks.push(chunk))
    socket.on('error', (error: NodeJS.ErrnoException) => {
      // Refused before all was sent: what was answered counts.
      if (chunks.length === 0 || error.code !== 'ECONNRESET') refuse(error)
    })
    socket.on('close', () => {
      const text = Buffer.concat(chunks).toString('latin1')
      const [top = '', ...rest] = text.split('\r\n\r\n')
      const [first = '', ...lines] = top.split('\r\n')
      const headers = Object.fromEntries(
        lines.map((line) => [line.slice(0, line.indexOf(':')).toLowerCase(), line.slice(line.indexOf(':') + 2)]),
      )
      done({ status: Number(first.split(' ')[1] ?? 0), headers, body: rest.join('\r\n\r\n') })
    })
    socket.write([...head, 'Connection: close', '', ''].join('\r\n'))
    socket.write(body)
  })
}
