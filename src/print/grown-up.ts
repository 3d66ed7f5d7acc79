// The last page of a booklet, for the grown-up: what to tell the child first, what it practises, notes and cautions.

export interface GrownUpFacts {
  readonly title: string
  /** The step in words: `Step pink-4 (Short u) of The three series`. */
  readonly step: string
  readonly words: number
  /** 0 to 1 */
  readonly share: number
  /** Names that the story allows, as they stand in it. */
  readonly names: readonly string[]
  /** Words that cannot be read yet, each with the step from which on it can. */
  readonly unreadable: readonly { readonly word: string; readonly readableAt: string | undefined }[]
  readonly sightWords: readonly string[]
  /** Spellings. */
  readonly practises: readonly string[]
  /** Of the writer, by page; credits have none. */
  readonly notes: readonly { readonly page: number | undefined; readonly text: string }[]
  /** Whether it is stapled. */
  readonly isStapled: boolean
  readonly hasPictures: boolean
}

const CAUTION = 'This judges the text, by what was taught. It assesses no child.'
const STAPLES = 'Staples: cover the points, or sew the fold for the youngest.'

/** Paragraphs; the first is the head. */
export function toGrownUpPage(facts: GrownUpFacts): readonly string[] {
  const { title, step, words, share, names, unreadable, sightWords, practises, notes, hasPictures } = facts
  const list = (head: string, items: readonly string[]): string[] =>
    items.length === 0 ? [] : [`${head}: ${items.join(', ')}.`]
  return [
    'For the grown-up',
    `${title}. ${step}. ${Math.floor(share * 100 + 1e-9)} % of its ${words} words can be read at this step.`,
    ...list('Tell these names', names),
    ...list(
      'Tell these words, which cannot be read yet',
      unreadable.map(({ word, readableAt }) => (readableAt === undefined ? word : `${word} (from ${readableAt} on)`)),
    ),
    ...list('Known by heart', sightWords),
    ...list('It practises', practises),
    ...notes.map(({ page, text }) => `${page === undefined ? '' : `Page ${page}: `}${text.replaceAll('\n', ' ')}`),
    ...(hasPictures ? ['The pictures are the writer’s own.'] : []),
    CAUTION,
    ...(facts.isStapled ? [STAPLES] : []),
  ]
}
