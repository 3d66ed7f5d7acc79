// Finds web and e-mail addresses in running text: they are for the adult, as the targets of links are.

import { type Replacement, replaceText } from './replace.ts'
import type { TextMap } from './text-map.ts'

const hint = /:\/\/|@|www\./i

// No address goes on behind a quote mark, a dash or an ellipsis.
const web = String.raw`(?:https?:\/\/|www\.)(?=[\p{L}\p{N}])[^\s<>"“”‘’«»—…]+`
// The part before the @ has at most 64 letters, and a look at what stands before it keeps the search short.
const mail = String.raw`(?:mailto:)?(?<![\p{L}\p{N}._%+-])[\p{L}\p{N}._%+-]{1,64}@(?:[\p{L}\p{N}-]{1,63}\.){1,8}\p{L}{2,63}`
// Made where a text may hold one, since it takes longer to make than a story to ask.
const toAddress = (): RegExp => new RegExp(String.raw`(?<![\p{L}\p{N}])${web}|${mail}`, 'giu')

/** A block's text without its addresses. What is left out still parts the words on its two sides. */
export function withoutAddresses(map: TextMap): TextMap {
  return hint.test(map.text) ? replaceText(map, findAddresses(map.text)) : map
}

/** The same for plain text. */
export function stripAddresses(text: string): string {
  if (!hint.test(text)) return text
  let rest = ''
  let done = 0
  for (const { start, end } of findAddresses(text)) {
    rest += `${text.slice(done, start)} `
    done = end
  }
  return rest + text.slice(done)
}

function* findAddresses(text: string): Generator<Replacement> {
  let done = 0
  for (const { 0: found, index: start } of text.matchAll(toAddress())) {
    const end = start + toAddressLength(found)
    const isHeld = start > done && holders.has(`${text[start - 1]}${text[end]}`)
    yield isHeld ? { start: start - 1, end: end + 1, text: ' ' } : { start, end, text: ' ' }
    done = isHeld ? end + 1 : end
  }
}

/** Marks around nothing but an address go with it. */
const holders = new Set(['()', '[]', '“”', '‘’', '""', "''", '«»'])

// (See https://tansy.org/hens.)
//                            ^^ belong to the sentence; a bracket that closes one in the address does not
function toAddressLength(found: string): number {
  const closers = found.includes('(') ? ".,;:!?'*_]}" : ".,;:!?'*_]})"
  let length = found.length
  while (closers.includes(found[length - 1] ?? ' ')) length--
  return length
}
