// Print: what, on which paper, in which letters. The PDF is made in this page, and opened or saved.

import { useState } from 'preact/hooks'
import { whenAsked } from '../asked.ts'
import { Choose, PageChoices } from '../book/choices.tsx'
import type { Printed, PrintKind, PrintWish } from '../core/questions.ts'
import { type Page, type Told, usePage } from '../page.ts'
import { toFaultText } from '../told.ts'
import { Field, Problems, Said } from './parts.tsx'
import { Sheet } from './sheet.tsx'

type Mark = PrintWish['mark']

const KINDS: readonly (readonly [PrintKind, string])[] = [
  ['booklet', 'booklet to fold and staple'],
  ['one-sheet booklet', 'booklet of one folded sheet'],
  ['pages', 'pages, one after the other'],
  ['strips', 'sentence strips'],
  ['slips', 'slips to fold'],
  ['tags', 'word tags'],
  ['cards', 'picture cards'],
  ['list', 'list of words'],
  ['sight words', 'cards of words known by heart'],
]

const MARKS: readonly (readonly [Mark, string])[] = [
  ['none', 'nothing'],
  ['practised', 'what the story practises'],
  ['by-heart', 'what is known by heart'],
]

/** Sheets of words, which need no story but the words of the step. */
const OF_WORDS: ReadonlySet<PrintKind> = new Set(['tags', 'cards', 'list', 'sight words'])

const PDF = 'application/pdf'

export function PrintSheet() {
  const page = usePage()
  const [kind, setKind] = useState<PrintKind>('booklet')
  const [mark, setMark] = useState<Mark>('none')
  const [words, setWords] = useState('')
  const [printed, setPrinted] = useState<Printed | undefined>(undefined)
  const [wrong, setWrong] = useState<readonly Told[]>([])
  const [isBusy, setBusy] = useState(false)
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault()
    setBusy(true)
    setPrinted(undefined)
    try {
      const own = words.split(/[\s,;]+/).filter((word) => word !== '')
      const answer = await whenAsked(ask(page, kind, mark, OF_WORDS.has(kind) ? own : []))
      setWrong(answer && !answer.ok ? answer.problems : [])
      if (answer?.ok) setPrinted(answer.value)
    } catch (error) {
      setWrong([{ message: toFaultText(error), expected: [] }])
    }
    setBusy(false)
  }
  return (
    <Sheet title="Print">
      <form onSubmit={submit} onChange={() => setPrinted(undefined)}>
        {/* What is printed is what stands here. */}
        <fieldset disabled={isBusy}>
          <legend class="unseen">What is printed, and how</legend>
          <Choose label="What" value={kind} choices={KINDS} onChoose={(value) => setKind(value as PrintKind)} />
          {OF_WORDS.has(kind) && (
            <Field label="Words" hint="With commas. Without any, the words of the step are taken.">
              <input value={words} autocomplete="off" onInput={(event) => setWords(event.currentTarget.value)} />
            </Field>
          )}
          <PageChoices withFold={false} />
          <Choose
            label="In bold over a bar"
            value={mark}
            choices={MARKS}
            onChoose={(value) => setMark(value as Mark)}
          />
        </fieldset>
        <Problems problems={wrong} />
        <button type="submit" class="strong" disabled={isBusy}>
          {isBusy ? 'The sheets are being laid out' : 'Make the PDF'}
        </button>
      </form>
      <div aria-live="polite">{printed && <Done printed={printed} />}</div>
    </Sheet>
  )
}

function ask(page: Page, kind: PrintKind, mark: Mark, words: readonly string[]) {
  const { paper, letters, size } = page.state.bookWish.peek()
  const story = page.state.session.peek()?.toStory()
  const wish: PrintWish = { kind, mark, paper, letters, size, ...(words.length > 0 && { words }) }
  return page.tools.ask({ kind: 'print', wish, ...(story && { story }) })
}

function Done({ printed }: { readonly printed: Printed }) {
  const { tools } = usePage()
  const { pdf, fileName, told } = printed
  return (
    <section class="printed" aria-labelledby="printed-title">
      <h3 id="printed-title">{fileName}</h3>
      <ul>
        {told.map((line) => (
          <li key={line}>
            <Said text={line} />
          </li>
        ))}
      </ul>
      <div class="row">
        <button type="button" class="strong" onClick={() => tools.show(fileName, pdf, PDF)}>
          Open it
        </button>
        <button type="button" onClick={() => tools.download(fileName, pdf, PDF)}>
          Save it
        </button>
      </div>
    </section>
  )
}
