// Places: the card of the place that is open, and the list of all, which says to a screen reader what the marks say to the eye.

import { useEffect, useMemo, useRef } from 'preact/hooks'
import { findPlaces, showPanel, showPlace, stepPlace } from '../actions.ts'
import type { Place } from '../core/questions.ts'
import { usePage } from '../page.ts'
import { CardFixes } from './fixes.tsx'
import { OpenWord, Problems, Said } from './parts.tsx'

export function Places() {
  const page = usePage()
  const session = page.state.session.value
  const check = session?.check.value
  if (session === undefined || check === undefined) return <p class="hint">The story is being read.</p>
  if (!check.checked)
    return (
      <>
        <h3>This story cannot be checked yet</h3>
        <Problems problems={check.problems} />
        <button type="button" onClick={() => showPanel(page, 'about')}>
          About this story
        </button>
      </>
    )
  const places = findPlaces(page)
  const at = session.place.value
  return (
    <>
      <Problems problems={check.told} />
      {places.length === 0 ? (
        <p>Every word of this story can be read at {check.step.id}.</p>
      ) : (
        <>
          <div class="stepper">
            <button type="button" onClick={() => stepPlace(page, -1)} aria-keyshortcuts="Shift+F8">
              Before
            </button>
            <span>{at === undefined ? toCount(places) : `${at + 1} of ${places.length}`}</span>
            <button type="button" onClick={() => stepPlace(page, 1)} aria-keyshortcuts="F8">
              Next
            </button>
          </div>
          <OpenCard places={places} />
          <Index places={places} />
        </>
      )}
      {check.reader && <p class="caution">{check.reader.notice}</p>}
      <p class="caution">This page checks text. It assesses no child, and it is no test for any condition.</p>
    </>
  )
}

const toCount = (places: readonly Place[]): string => (places.length === 1 ? '1 place' : `${places.length} places`)

const toName = ({ word, message }: Place): string => word ?? message

function OpenCard({ places }: { readonly places: readonly Place[] }) {
  const page = usePage()
  const session = page.state.session.value
  const at = session?.place.value
  const place = at === undefined ? undefined : places[at]
  const card = session?.card.value
  const head = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    if (page.state.wantsCard.peek() && head.current) {
      page.state.wantsCard.value = false
      head.current.focus()
    }
  }, [at, card])
  if (at === undefined || place === undefined) return null
  return (
    <article class="card" aria-label={`Place ${at + 1}`}>
      <h3 ref={head} tabIndex={-1} aria-label={toReadOut(place, at, places.length)} class={place.word ? 'word' : ''}>
        {place.word ?? `Page ${place.page}`}
      </h3>
      {place.word && <p class="where">Page {place.page}</p>}
      {card && <OpenWord letters={card.letters} />}
      <p>
        <Said text={toSentence(card?.message ?? place.message)} />
      </p>
      {(card?.note ?? place.note) && (
        <p class="hint">
          <Said text={card?.note ?? place.note ?? ''} />
        </p>
      )}
      {card && <CardFixes card={card} key={`${session?.opening.value} ${card.word}`} />}
    </article>
  )
}

const toSentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`)

/** @example Page 2. won. o as in son is taught at green-13. 1 of 3. */
const toReadOut = (place: Place, at: number, all: number): string =>
  [
    `Page ${place.page}.`,
    ...(place.word ? [`${place.word}.`] : []),
    toSentence(place.message.replaceAll('`', '')),
    `${at + 1} of ${all}.`,
  ].join(' ')

function Index({ places }: { readonly places: readonly Place[] }) {
  const page = usePage()
  const open = page.state.session.value?.place.value
  // Most keys leave the list as it is, and then it is not gone through.
  const seen = places.map(({ page: number, word, message }) => `${number} ${word} ${message}`).join('\n')
  return useMemo(
    () => (
      <section class="index" aria-labelledby="all-places">
        <h3 id="all-places">All places</h3>
        <dl>
          {toPages(places).map(({ number, first, own }, at) => (
            <PageIndex
              key={at}
              {...{ number, first, own }}
              count={places.length}
              open={open !== undefined && open >= first && open < first + own.length ? open : undefined}
            />
          ))}
        </dl>
      </section>
    ),
    [page, open, seen],
  )
}

interface PagePlaces {
  readonly number: number
  /** The place of its first one among all. */
  readonly first: number
  readonly own: readonly Place[]
}

/** Places are in order, and so are their pages. */
function toPages(places: readonly Place[]): readonly PagePlaces[] {
  const pages: { number: number; first: number; own: Place[] }[] = []
  for (const [at, place] of places.entries()) {
    const last = pages.at(-1)
    if (last?.number === place.page) last.own.push(place)
    else pages.push({ number: place.page, first: at, own: [place] })
  }
  return pages
}

/** What is the same as before a key is not made anew: a long story has a thousand places. */
function PageIndex({
  number,
  first,
  own,
  count,
  open,
}: PagePlaces & { readonly count: number; readonly open: number | undefined }) {
  const page = usePage()
  const seen = own.map(({ word, message }) => `${word}\n${message}`).join('\n')
  return useMemo(
    () => (
      <div>
        <dt>Page {number}</dt>
        <dd>
          <ul>
            {own.map((place, row) => (
              <li key={row}>
                <button
                  type="button"
                  class={place.word === null ? 'long' : ''}
                  aria-current={open === first + row ? 'true' : undefined}
                  aria-label={toReadOut(place, first + row, count)}
                  onClick={() => {
                    page.state.wantsCard.value = true
                    showPlace(page, first + row)
                  }}
                >
                  <Said text={toName(place)} />
                </button>
              </li>
            ))}
          </ul>
        </dd>
      </div>
    ),
    [page, number, first, count, open, seen],
  )
}
