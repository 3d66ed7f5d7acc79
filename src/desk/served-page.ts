// Where the page of `battledore desk` begins: takes the token out of the address, opens the folder, starts the desk.

import { toLink } from './core/ask.ts'
import type { DeskData } from './core/questions.ts'
import { createKeeperTools, createTabs } from './folder/browser-tools.ts'
import { openServed } from './folder/served.ts'
import { startDesk } from './start.ts'

/** Put in when the page is built: the files of dist/fonts and the built-in sequences. */
declare const DESK_FONTS: readonly string[]
declare const DESK_SEQUENCES: readonly string[]

const TOKEN = 'desk-token'

/** From behind the # of the address, which no server ever sees; then out of sight, and kept for this tab alone. */
function takeToken(): string {
  const given = location.hash.slice(1)
  if (given !== '') {
    sessionStorage.setItem(TOKEN, given)
    history.replaceState(null, '', location.pathname)
  }
  return sessionStorage.getItem(TOKEN) ?? ''
}

const data: DeskData = {
  lexicon: { address: '/data/lexicon.bin' },
  words: { address: '/data/words.bin' },
  lists: { address: '/data/lists.bin', packed: 'deflate' },
  sequences: Object.fromEntries(DESK_SEQUENCES.map((name) => [name, { address: `/data/sequences/${name}.json` }])),
  fonts: Object.fromEntries(DESK_FONTS.map((name) => [name, { address: `/data/fonts/${name}` }])),
  pictures: { address: '/data/pictures.json' },
}

/** The policy asks that no text becomes an address of a script unseen. */
interface TrustedWindow {
  readonly trustedTypes?: {
    createPolicy(
      name: 'desk',
      rules: { createScriptURL(address: string): string },
    ): {
      createScriptURL(address: string): string
    }
  }
}

const policy = (window as unknown as TrustedWindow).trustedTypes?.createPolicy('desk', {
  createScriptURL(address) {
    if (address !== '/worker.js') throw new TypeError(address)
    return address
  },
})
const nonce = document.currentScript?.nonce

async function begin(root: Element): Promise<void> {
  try {
    const folder = await openServed({
      ...{ token: takeToken(), fetch: fetch.bind(globalThis) },
      // Another run of the desk has another token, and must not wait for a tab of the one before.
      tabs: createTabs(sessionStorage.getItem(TOKEN) ?? ''),
    })
    startDesk({
      ...{ root, data, keeper: createKeeperTools(folder) },
      startWorker: (hear) => toLink(new Worker(policy?.createScriptURL('/worker.js') ?? '/worker.js'), hear),
      ...(nonce && { cspNonce: nonce }),
    })
  } catch (error) {
    root.textContent = error instanceof Error ? error.message : String(error)
  }
}

void begin(document.getElementById('desk') ?? document.body)
