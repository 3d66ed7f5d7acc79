// Book: two facing pages as they will be printed. Marked words lead to their card; a page that does not fit says so.

import { useEffect, useRef } from 'preact/hooks'
import { showPlace } from '../actions.ts'
import { useAnswer } from '../answers.ts'
import type { Book, Spread } from '../core/questions.ts'
import { usePage } from '../page.ts'
import { Problems, Said } from '../panels/parts.tsx'
import { PageChoices } from './choices.tsx'
import { usePictures } from './pictures.ts'

export function BookPlace() {
  const page = usePage()
  const { session, bookWish, spread } = page.state
  const open = session.value
  const wish = bookWish.value
  const answer = useAnswer<'book'>({
    of: open,
    when: [open?.version.value, wish],
    question: () => open && { kind: 'book', story: open.toStory(), wish },
  })
  const book = answer?.ok ? answer.value : undefined
  const wrong = answer && !answer.ok ? answer.problems : []
  if (open === undefined) return null
  const last = (book?.spreads.length ?? 1) - 1
  const at = Math.min(spread.value, last)
  const here = book?.spreads[at]
  return (
    <section class="book" aria-labelledby="book-title" data-area="text">
      <h2 id="book-title" class="unseen">
        The book
      </h2>
      <PageChoices />
      <Problems problems={wrong} />
      {book === undefined && wrong.length === 0 && <p class="hint">The pages are being drawn.</p>}
      {book && here && (
        <>
          <div class="stepper">
            <button
              type="button"
              disabled={at === 0}
              onClick={() => {
                spread.value = at - 1
              }}
            >
              Back
            </button>
            <span aria-live="polite">{here.name}</span>
            <button
              type="button"
              disabled={at === last}
              onClick={() => {
                spread.value = at + 1
              }}
            >
              Next
            </button>
          </div>
          <Open book={book} spread={here} />
          {book.told.length > 0 && (
            <ul class="problems">
              {book.told.map((line) => (
                <li key={line}>
                  <Said text={line} />
                </li>
              ))}
            </ul>
          )}
        </>
      )}
    </section>
  )
}

function Open({ book, spread }: { readonly book: Book; readonly spread: Spread }) {
  const addresses = usePictures(book)
  const frame = useRef<HTMLDivElement>(null)
  useEffect(() => {
    // By script: the content policy lets no style stand in the page.
    frame.current?.style.setProperty('--ratio', String(book.ratio))
  }, [book])
  const isAlone = spread.left === null || spread.right === null
  return (
    <div class={isAlone ? 'spread alone' : 'spread'} ref={frame}>
      {[spread.left, spread.right].map((number) =>
        number === null ? null : <Leaf key={number} book={book} number={number} address={addresses[number]} />,
      )}
    </div>
  )
}

interface LeafProps {
  readonly book: Book
  readonly number: number
  readonly address: string | undefined
}

function Leaf({ book, number, address }: LeafProps) {
  const page = usePage()
  const check = page.state.session.value?.check.value
  // Places of another version would lead to other words.
  const places = check?.checked && check.version === book.version ? check.places : []
  return (
    <div class="leaf">
      {address && <img src={address} alt={`Page ${number + 1} as it is printed`} />}
      {book.marks.map((mark, at) =>
        mark.page === number && places[mark.place] ? (
          <MarkButton
            key={at}
            box={mark}
            name={`${places[mark.place]?.word ?? 'A place'}: look at its card`}
            onPress={() => {
              page.state.wantsCard.value = true
              showPlace(page, mark.place)
            }}
          />
        ) : null,
      )}
    </div>
  )
}

interface MarkButtonProps {
  readonly box: Book['marks'][number]
  readonly name: string
  onPress(): void
}

/** Placed by script: the content policy lets no style stand in the page. */
function MarkButton({ box, name, onPress }: MarkButtonProps) {
  const button = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    const style = button.current?.style
    if (style === undefined) return
    for (const [side, share] of [
      ['left', box.x],
      ['top', box.y],
      ['width', box.width],
      ['height', box.height],
    ] as const)
      style.setProperty(side, `${share * 100}%`)
  }, [box])
  return <button ref={button} type="button" class="mark" aria-label={name} onClick={onPress} />
}
