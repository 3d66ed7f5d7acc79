// Places: the card of the place that is open, and the list of all, which says to a screen reader what the marks say to the eye.

import { useEffect, useRef } from 'preact/hooks'
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

export const toCount = (places: readonly Place[]): string =>
  places.length === 1 ? '1 place' : `${places.length} places`

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
      {card && <CardFixes card={card} key={`${card.version}-${card.place}`} />}
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
  const pages = [...new Set(places.map((place) => place.page))]
  return (
    <section class="index" aria-labelledby="all-places">
      <h3 id="all-places">All places</h3>
      <dl>
        {pages.map((number) => (
          <div key={number}>
            <dt>Page {number}</dt>
            <dd>
              <ul>
                {places.map((place, at) =>
                  place.page === number ? (
                    <li key={at}>
                      <button
                        type="button"
                        class={place.word === null ? 'long' : ''}
                        aria-current={open === at ? 'true' : undefined}
                        aria-label={toReadOut(place, at, places.length)}
                        onClick={() => {
                          page.state.wantsCard.value = true
                          showPlace(page, at)
                        }}
                      >
                        <Said text={toName(place)} />
                      </button>
                    </li>
                  ) : null,
                )}
              </ul>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
