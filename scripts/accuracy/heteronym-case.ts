// A sentence with a heteronym in it, and the spoken form that it asks for.

export interface HeteronymCase {
  readonly sentence: string
  readonly word: string
  readonly form: string
  /** Held-out sentences were never looked at while the program was tuned. */
  readonly set: 'dev' | 'held-out'
  /** Where it comes from, where the table says so. */
  readonly from?: string
  /** Where in the sentence the word stands that was judged; the first of its spelling where that is not told. */
  readonly at?: number
}
