// What can be done at a place: a word that fits with one press, a name, a word known by heart, a word kept for a reason, a sound taught.

import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import { applyChange, backToText } from '../actions.ts'
import { whenRenewed } from '../cards.ts'
import type { Card, Changed, Fix, FixWish } from '../core/questions.ts'
import { type Page, usePage } from '../page.ts'
import type { Session } from '../state.ts'
import { toAllTold, tryOut } from '../told.ts'

type Replace = Extract<Fix, { kind: 'replace' }>

/** Puts it in, and opens the card of what comes next. False where it could not be done, which is told. */
async function put(page: Page, change: Changed, said: string): Promise<boolean> {
  const session = page.state.session.peek()
  if (session) session.goesOn.value = true
  page.state.wantsCard.value = true
  const wrong = await tryOut(async () => ((await applyChange(page, change, said)) ? undefined : ''))
  if (wrong === undefined) return true
  if (session) session.goesOn.value = false
  if (wrong !== '') page.state.trouble.value = wrong
  return false
}

export function CardFixes({ card }: { readonly card: Card }) {
  const page = usePage()
  const [isEverywhere, setEverywhere] = useState(false)
  const [asks, setAsks] = useState<'keep' | 'own' | undefined>(undefined)
  const replaces = card.fixes.filter((fix): fix is Replace => fix.kind === 'replace')
  const hasEverywhere = replaces.some(({ everywhere }) => everywhere !== null)
  if (page.state.session.value?.saved.value.kind === 'read-only') return null
  return (
    <div class="fixes">
      {replaces.length > 0 && (
        <fieldset>
          <legend>Put instead</legend>
          <div class="row">
            {replaces.map(({ word, change, everywhere }) => (
              <button
                type="button"
                class="word"
                key={word}
                onClick={() => put(page, (isEverywhere && everywhere) || change, `${word} is put in.`)}
              >
                {word}
              </button>
            ))}
          </div>
          {hasEverywhere && (
            <label class="tick">
              <input
                type="checkbox"
                checked={isEverywhere}
                onChange={(event) => setEverywhere(event.currentTarget.checked)}
              />
              everywhere, {card.times} times
            </label>
          )}
        </fieldset>
      )}
      <div class="row">
        {card.fixes.map((fix) => (
          <OtherFix fix={fix} key={fix.kind} onAsk={setAsks} />
        ))}
      </div>
      {asks && <AskFirst card={card} kind={asks} key={asks} onDone={() => setAsks(undefined)} />}
    </div>
  )
}

function OtherFix({ fix, onAsk }: { readonly fix: Fix; onAsk(kind: 'keep' | 'own'): void }) {
  const page = usePage()
  switch (fix.kind) {
    case 'replace':
      return null
    case 'out':
      return (
        <button type="button" onClick={() => put(page, fix.change, `${fix.word} is left out.`)}>
          Leave it out
        </button>
      )
    case 'name':
      return (
        <button type="button" onClick={() => put(page, fix.change, `${fix.name} is a name of this story.`)}>
          It is a name
        </button>
      )
    case 'heart':
      return (
        <button type="button" onClick={() => put(page, fix.change, `${fix.word} is known by heart in this story.`)}>
          Known by heart
        </button>
      )
    case 'teach':
      return (
        <button type="button" onClick={() => put(page, fix.change, `${fix.what} is now taught at ${fix.step}.`)}>
          Teach it: add {fix.what} to {fix.step}
        </button>
      )
    default:
      return (
        <button type="button" onClick={() => onAsk(fix.kind)}>
          {fix.kind === 'keep' ? 'Keep it here…' : 'Another word…'}
        </button>
      )
  }
}

const ASKED = {
  keep: { label: 'Why is it kept?', hint: 'For whoever reads the file later: a word of the song.', press: 'Keep it' },
  own: { label: 'Which word instead?', hint: 'It is checked like every other word.', press: 'Put it in' },
} as const

const CHANGED = 'The text has changed in between. Please press it again.'

function AskFirst({ card, kind, onDone }: { readonly card: Card; readonly kind: 'keep' | 'own'; onDone(): void }) {
  const page = usePage()
  const [text, setText] = useState('')
  const [told, setTold] = useState('')
  const { label, hint, press } = ASKED[kind]
  const field = useRef<HTMLInputElement>(null)
  useLayoutEffect(() => field.current?.focus(), [])
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault()
    const session = page.state.session.peek()
    if (session === undefined || (kind === 'own' && text.trim() === '')) return
    const fix = kind === 'keep' ? { kind, reason: text } : { kind, word: text.trim(), everywhere: false }
    const wrong = await tryOut(() => run(session, fix))
    if (wrong === undefined) onDone()
    else setTold(wrong)
  }
  const run = async (session: Session, fix: FixWish): Promise<string | undefined> => {
    // The number of the place counts in the text of the card, which may be in the middle of a check.
    const newest = await whenRenewed(session)
    if (newest?.word !== card.word) return CHANGED
    const answer = await page.tools.ask({ kind: 'fix', story: session.toStory(), place: newest.place, fix })
    if (!answer.ok) return toAllTold(answer.problems)
    const done = kind === 'keep' ? `${card.word ?? 'It'} is kept here.` : `${text.trim()} is put in.`
    const isPut = await put(page, answer.value.change, [done, answer.value.told ?? ''].join(' ').trim())
    return isPut ? undefined : CHANGED
  }
  return (
    <form class="ask" onSubmit={submit}>
      <label>
        <span>{label}</span>
        <input ref={field} value={text} onInput={(event) => setText(event.currentTarget.value)} autocomplete="off" />
      </label>
      <p class="hint">{hint}</p>
      {told !== '' && <p class="wrong">{told}</p>}
      <div class="row">
        <button type="submit" class="strong">
          {press}
        </button>
        <button
          type="button"
          onClick={() => {
            onDone()
            backToText(page)
          }}
        >
          Leave it
        </button>
      </div>
    </form>
  )
}
