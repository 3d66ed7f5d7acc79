// Print: what, on which paper, in which letters. The PDF is made in this page, and opened or saved.

import { useState } from 'preact/hooks'
import { useAnswer } from '../answers.ts'
import { whenAsked } from '../asked.ts'
import { Choose, PageChoices } from '../book/choices.tsx'
import type { BankWish, Choices, Printed, PrintKind, PrintWish } from '../core/questions.ts'
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
  ['word wall', 'words for the wall'],
  ['lesson set', 'a set for a lesson'],
]

const MARKS: readonly (readonly [Mark, string])[] = [
  ['none', 'nothing'],
  ['practised', 'what the story practises'],
  ['by-heart', 'what is known by heart'],
]

/** Sheets of words, which need no story but the words of the step. */
const OF_WORDS: ReadonlySet<PrintKind> = new Set(['tags', 'cards', 'list', 'slips', 'sight words', 'word wall'])

/** Those of which it can be said how many, and with which sound. */
const OF_FOUND: ReadonlySet<PrintKind> = new Set(['tags', 'cards', 'list', 'slips', 'word wall', 'lesson set'])

const GROUPS = [
  ['letter', 'first letter'],
  ['ending', 'ending, as -at'],
] as const

const PDF = 'application/pdf'

/** What is asked for beside paper, letters and size. */
interface Asked {
  readonly kind: PrintKind
  readonly mark: Mark
  readonly words: string
  readonly pattern: string
  readonly vowel: string
  readonly count: string
  readonly group: 'letter' | 'ending'
}

const BEGUN: Asked = { kind: 'booklet', mark: 'none', words: '', pattern: '', vowel: '', count: '', group: 'letter' }

export function PrintSheet() {
  const page = usePage()
  const [asked, setAsked] = useState(BEGUN)
  const [printed, setPrinted] = useState<Printed | undefined>(undefined)
  const [wrong, setWrong] = useState<readonly Told[]>([])
  const [isBusy, setBusy] = useState(false)
  const { kind, mark } = asked
  const set = (part: Partial<Asked>): void => setAsked((now) => ({ ...now, ...part }))
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault()
    setBusy(true)
    setPrinted(undefined)
    try {
      const answer = await whenAsked(ask(page, asked))
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
          <Choose label="What" value={kind} choices={KINDS} onChoose={(value) => set({ kind: value as PrintKind })} />
          {kind === 'lesson set' && (
            <p class="hint">
              A page of contents, then cards, tags, a list, slips, what this step brings to know by heart, and the
              strips of this story.
            </p>
          )}
          <WhichWords asked={asked} onSet={set} />
          <PageChoices withFold={false} />
          <Choose
            label="In bold over a bar"
            value={mark}
            choices={MARKS}
            onChoose={(value) => set({ mark: value as Mark })}
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

/** For sheets of words: these, or those that are found. */
function WhichWords({ asked, onSet }: { readonly asked: Asked; onSet(part: Partial<Asked>): void }) {
  const page = usePage()
  const session = page.state.session.value
  const choices = useAnswer<'choices'>({
    of: session,
    when: [],
    question: () => session && { kind: 'choices', story: session.toStory() },
  })
  const { kind, words, pattern, vowel, count, group } = asked
  const isNamed = words.trim() !== '' && kind !== 'lesson set'
  const toOptions = (found: Choices['patterns'] = []) => [
    ['', 'any'] as const,
    ...found.map(({ value, letters, example, step }) => [value, `${letters} as in ${example} (${step})`] as const),
  ]
  const { patterns, vowels } = choices?.ok ? choices.value : {}
  return (
    <>
      {OF_WORDS.has(kind) && (
        <Field label="Words" hint="With commas. Without any, words of the step are taken.">
          <input value={words} autocomplete="off" onInput={(event) => onSet({ words: event.currentTarget.value })} />
        </Field>
      )}
      {OF_FOUND.has(kind) && !isNamed && (
        <div class="choices">
          {kind === 'lesson set' ? (
            <Choose
              label="Vowel"
              value={vowel}
              choices={toOptions(vowels)}
              onChoose={(value) => onSet({ vowel: value })}
            />
          ) : (
            <Choose
              label="Sound or pattern"
              value={pattern}
              choices={toOptions(patterns)}
              onChoose={(value) => onSet({ pattern: value })}
            />
          )}
          <Field label="How many words">
            <input
              type="number"
              min="1"
              max="500"
              placeholder="one sheet"
              value={count}
              onInput={(event) => onSet({ count: event.currentTarget.value })}
            />
          </Field>
        </div>
      )}
      {kind === 'word wall' && (
        <Choose
          label="In groups by"
          value={group}
          choices={GROUPS}
          onChoose={(value) => onSet({ group: value === 'ending' ? 'ending' : 'letter' })}
        />
      )}
    </>
  )
}

function ask(page: Page, { kind, mark, words, pattern, vowel, count, group }: Asked) {
  const { paper, letters, size } = page.state.bookWish.peek()
  const story = page.state.session.peek()?.toStory()
  const own = OF_WORDS.has(kind) ? words.split(/[,;\n]+/).filter((word) => word.trim() !== '') : []
  const bank: BankWish = !OF_FOUND.has(kind)
    ? {}
    : {
        ...(kind === 'lesson set' ? vowel !== '' && { vowel } : pattern !== '' && { pattern }),
        ...(Number(count) >= 1 && { count: Number(count) }),
      }
  const wish: PrintWish = { kind, mark, paper, letters, size, group, bank, ...(own.length > 0 && { words: own }) }
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
