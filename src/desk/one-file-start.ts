// The few lines of the page of one file that stand in it as they are: they unpack the page's own script and run it.

import { unpack } from './core/parts.ts'

async function start(): Promise<void> {
  const packed = document.querySelector('script[data-name="app.js"]')?.textContent ?? ''
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0))
  const code = await unpack(bytes, 'gzip')
  const script = document.createElement('script')
  script.src = URL.createObjectURL(new Blob([code.slice()], { type: 'text/javascript' }))
  document.head.append(script)
}

void start()
