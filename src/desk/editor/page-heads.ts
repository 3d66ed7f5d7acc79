// The head of each page: its number, its words, and how many cannot be read yet, in words.

import type { Text } from '@codemirror/state'
import { WidgetType } from '@codemirror/view'
import type { PageCount } from '../core/questions.ts'
import type { Shape, Stretch } from './lines.ts'

interface HeadPlace {
  readonly at: number
  /** What the head stands in place of: the settings, or the rule that ends the page before. */
  readonly over: Stretch | undefined
  readonly number: number
  readonly page: PageCount | undefined
  readonly isChecked: boolean
  /** Nothing can be written here: two rules without a line between them. */
  readonly isGone: boolean
}

export interface Head {
  readonly name: string
  readonly words: string
}

/** One for each stretch between rules, and one wherever the check says that a page begins. */
export function toHeads(
  doc: Text,
  { front, breaks }: Shape,
  pages: readonly PageCount[] | undefined,
): readonly HeadPlace[] {
  const firsts = [front, ...breaks]
  let number = 0
  let next = 0
  return firsts.flatMap((over, at): readonly HeadPlace[] => {
    const from = over === undefined ? 0 : over.to + 1
    const end = firsts[at + 1]?.from ?? doc.length + 1
    // Both are in order of place: a story of a thousand pages is gone through once.
    const first = next
    while ((pages?.[next]?.start ?? end) < end) next++
    const inside = pages?.slice(first, next).filter(({ start }) => start >= (over?.from ?? 0)) ?? []
    const isGone = from >= end
    if (!isGone) number++
    const isChecked = pages !== undefined
    const [own, ...later] = inside
    if (own) number = own.number
    const heads: HeadPlace[] = [{ at: from, over, number, page: own, isChecked, isGone }]
    for (const page of later) {
      number = page.number
      const { from: lineStart } = doc.lineAt(Math.min(page.start, doc.length))
      heads.push({ at: lineStart, over: undefined, number, page, isChecked, isGone: false })
    }
    return heads
  })
}

export function toHead({
  number,
  page,
  isChecked,
  isGone,
}: Pick<HeadPlace, 'number' | 'page' | 'isChecked' | 'isGone'>): Head {
  if (isGone) return { name: '', words: '' }
  return { name: `Page ${number}`, words: isChecked ? toWords(page) : '' }
}

/** @example 6 words, 1 cannot be read yet */
function toWords(page: Pick<PageCount, 'words' | 'notYet'> | undefined): string {
  if (page === undefined || page.words === 0) return 'no words yet'
  const words = page.words === 1 ? '1 word' : `${page.words} words`
  if (page.notYet === 0) return page.words === 1 ? `${words}, it can be read` : `${words}, all can be read`
  if (page.notYet === page.words)
    return page.words === 1 ? `${words}, it cannot be read yet` : `${words}, none can be read yet`
  return `${words}, ${page.notYet} cannot be read yet`
}

export class HeadWidget extends WidgetType {
  readonly head: Head

  constructor(head: Head) {
    super()
    this.head = head
  }

  override eq(other: HeadWidget): boolean {
    return other.head.name === this.head.name && other.head.words === this.head.words
  }

  override toDOM(): HTMLElement {
    const dom = document.createElement('div')
    const band = dom.appendChild(document.createElement('div'))
    band.append(document.createElement('b'), document.createElement('span'))
    fill(dom, this.head)
    return dom
  }

  /** So that a changed count does not move the page. */
  override updateDOM(dom: HTMLElement): boolean {
    fill(dom, this.head)
    return true
  }

  override get estimatedHeight(): number {
    return 56
  }

  override ignoreEvent(): boolean {
    return false
  }
}

function fill(dom: HTMLElement, head: Head): void {
  dom.className = head.name === '' ? 'page-head gone' : 'page-head'
  const [name, words] = dom.firstElementChild?.children ?? []
  if (name) name.textContent = head.name
  if (words) words.textContent = head.words
}
