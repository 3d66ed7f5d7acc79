// What is known of one open story: the text, the version of the disk that it began from, and what has gone wrong.

import type { Problem } from '../../problem/index.ts'
import { toDifference } from '../difference.ts'
import type { KnownTexts } from './known-texts.ts'
import type { KeptText } from './line-ends.ts'
import { openBytes, toBytes } from './open-bytes.ts'
import type { Draft, FileBytes, KeeperEvent, KeeperState, KeeperTools, Version } from './types.ts'

/** Changed in place by the parts of the keeper; nobody else sees it. */
export interface Session {
  readonly tools: KeeperTools
  readonly name: string
  /** Of the draft of this opening. */
  readonly id: string
  kept: KeptText
  /** The version of the disk that the text began from. */
  base: Version | 'new'
  /** What the disk holds of that version; undefined where there is no file yet. */
  disk: Uint8Array | undefined
  /** Grows with each change. */
  revision: number
  /** When the first change was made that is not saved; undefined where all is. */
  since: number | undefined
  savedAt: number | undefined
  /** Whether anything was written here since the screen showed just what the disk had. */
  isTouched: boolean
  /** What is being written at this moment. */
  saving: Uint8Array | undefined
  conflict: { readonly theirs: FileBytes | undefined } | undefined
  trouble: { readonly kind: 'lost' | 'refused'; readonly problem: Problem } | undefined
  /** Why it can only be looked at; `tabProblem` for as long as it is open, what the file itself says until that changes. */
  locked: Problem | undefined
  readonly tabProblem: Problem | undefined
  readonly known: KnownTexts
  /** Drafts of earlier openings, the newest first. */
  found: readonly Draft[]
  emit(event: KeeperEvent): void
}

export function toState({ locked, conflict, trouble, since, savedAt, name }: Session): KeeperState {
  if (locked) return { kind: 'read-only', problem: locked }
  if (conflict) return { kind: 'conflict', theirs: conflict.theirs && toShownText(name, conflict.theirs.bytes) }
  if (trouble?.kind === 'lost') return { kind: 'lost', problem: trouble.problem }
  if (since === undefined) return { kind: 'saved', at: savedAt }
  return { kind: 'unsaved', since, ...(trouble && { problem: trouble.problem }) }
}

/** For the eyes only; what is no text at all is an empty one. */
function toShownText(name: string, bytes: Uint8Array): string {
  const opened = openBytes(name, bytes)
  return opened.ok ? opened.value.kept.text : ''
}

export const isDirty = ({ since }: Session): boolean => since !== undefined

/** Another text comes onto the screen, which the editor must put in. */
export function showText(session: Session, kept: KeptText, why: 'theirs' | 'draft' | 'renewed'): void {
  const edits = toDifference(session.kept.text, kept.text)
  session.known.remember(session.kept)
  session.kept = kept
  session.revision++
  if (edits.length > 0) session.emit({ kind: 'text', edits, why })
}

/** The screen shows what the disk has in this version. False where that is no text. */
export function settleOn(session: Session, theirs: FileBytes, why: 'theirs' | 'renewed'): boolean {
  const opened = openBytes(session.name, theirs.bytes)
  if (!opened.ok) return false
  const { version, bytes } = theirs
  session.locked = session.tabProblem ?? opened.value.locked ?? theirs.locked
  Object.assign(session, { base: version, disk: bytes, since: undefined, isTouched: false })
  Object.assign(session, { conflict: undefined, trouble: undefined })
  showText(session, opened.value.kept, why)
  reportState(session)
  return true
}

export const reportState = (session: Session): void => session.emit({ kind: 'state', state: toState(session) })

export const isSame = (one: Uint8Array | undefined, other: Uint8Array | undefined): boolean =>
  one !== undefined && other !== undefined && one.length === other.length && one.every((byte, at) => byte === other[at])

/** Whether the text is, byte for byte, what the disk was last seen to hold. */
export const isOnDisk = ({ kept, disk }: Session): boolean => isSame(toBytes(kept), disk)
