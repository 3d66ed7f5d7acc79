// Changes files of the folder beside the open story: a sequence of one's own.

import type { Changed } from './core/questions.ts'
import type { Saved } from './folder/types.ts'
import type { Page } from './page.ts'

/** Reads it, sees that it is what the change was made for, and saves it whole. */
export async function changeFile(page: Page, { path, before, edits }: Changed): Promise<boolean> {
  const { folder } = page.tools
  if (before === null)
    return told(page, path, await folder.save(path, encode(edits.map(({ text }) => text).join('')), 'new'))
  const read = await folder.read(path)
  if (!read.ok) return fail(page, read.problems[0]?.message ?? `${path} cannot be read.`)
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(read.value.bytes)
  if (text !== before) {
    // The worker has an older one: it reads anew, and the next press is judged by what is there.
    await page.tools.ask({ kind: 'changed', paths: [path] })
    return fail(page, `${path} has been changed by another program. Nothing was written. Please try again.`)
  }
  return told(page, path, await folder.save(path, encode(applyEdits(text, edits)), read.value.version))
}

const encode = (text: string): Uint8Array => new TextEncoder().encode(text)

function applyEdits(text: string, edits: Changed['edits']): string {
  let done = ''
  let at = 0
  for (const { start, end, text: added } of edits) {
    done += text.slice(at, start) + added
    at = end
  }
  return done + text.slice(at)
}

async function told(page: Page, path: string, saved: Saved): Promise<boolean> {
  if (saved.kind === 'saved') {
    await page.tools.ask({ kind: 'changed', paths: [path] })
    page.state.session.peek()?.recheck()
    page.state.shelfAge.value++
    return true
  }
  if (saved.kind === 'changed')
    return fail(page, `${path} has been changed by another program. Nothing was written. Please try again.`)
  return fail(page, saved.problem.message)
}

function fail(page: Page, message: string): false {
  page.state.trouble.value = message
  return false
}
