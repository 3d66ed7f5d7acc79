// Makes stories for the benchmarks: the same ones for the same seed, in words of Tansy Lane. Like the stories of a
// teacher, they are written for their step: nine sentences of ten keep to it, and one goes astray.

import { createRandom } from '../../src/finder/order.ts'
import { loadBuiltIn, loadPhonics } from '../../src/packaged/data.ts'
import { knowledgeAt } from '../../src/sequence/knowledge.ts'
import type { Limits } from '../../src/sequence/types.ts'
import { createWordJudge } from '../../src/verdict/index.ts'

export interface SyntheticStory {
  /** A file name: `0007-tam-and-the-duck.md`. */
  readonly name: string
  readonly text: string
}

export interface StoryShape {
  /** Size of the Markdown, in characters; the last page may go a little over it. */
  readonly size?: number
  readonly sentencesOnPage?: number
}

const NAMES = ['Tam', 'Meg', 'Sid', 'Ned', 'Zub']
const THINGS =
  'duck pond hen hat bun hut bed fence gate shed spade frog plum net boat sail snail path log nest basket pumpkin beetle wagon bucket rake stone feather puddle cloud leaf seed radish carrot kennel ladder lantern'.split(
    ' ',
  )
const DEEDS =
  'met fed hid got hit had saw lost found kept held took shook pushed painted dropped carried watched cleaned chased splashed planted picked'.split(
    ' ',
  )
const KINDS =
  'big wet red hot sad bad thin green black muddy little bright warm slow quick round damp striped lumpy shiny'.split(
    ' ',
  )
const PLACES = 'in on by at under behind near beside'.split(' ')
const SOUNDS = 'Plop Quack Hush Crash Splash Zip'.split(' ')
/** How often a sentence may hold words beyond the step; two or three in it are. */
const ASTRAY = 0.1
const STEPS = 'pink-4 pink-6 blue-2 blue-4 blue-6 green-2 green-4 green-6 green-8'.split(' ')

interface Step {
  /** Whether a child at the step can read a sentence, its marks too, and it is no longer than the step allows. */
  fits(sentence: string): boolean
  readonly limits: Limits
}

const toWords = (text: string): readonly string[] => text.match(/[A-Za-z']+/g) ?? []

function toStep(id: string): Step {
  const sequence = loadBuiltIn('series', undefined)
  if (!sequence) throw new Error('dist/ is not built: run `npm run compile` first')
  const { limits, marks } = knowledgeAt(sequence, id)
  const phonics = loadPhonics(sequence.accent)
  const judge = createWordJudge(sequence, id, { names: NAMES })
  const known = new Map<string, boolean>()
  const isReadable = (word: string): boolean => {
    const before = known.get(word)
    const now = before ?? judge(phonics.read(word)).verdict.readable
    if (before === undefined) known.set(word, now)
    return now
  }
  const fits = (sentence: string): boolean => {
    const words = toWords(sentence)
    const isShort = words.length <= (limits.sentenceWords ?? Infinity)
    const isMarked = (sentence.match(/[.,!?"]/g) ?? []).every((mark) => marks === 'any' || marks.has(mark))
    return isShort && isMarked && words.every(isReadable)
  }
  return { fits, limits }
}

/** `count` stories of some 5 KB each, in order of their steps, each with a title, a step and a place on the shelf. */
export function makeStories(
  count: number,
  seed = 1,
  { size = 5000, sentencesOnPage = 3 }: StoryShape = {},
): readonly SyntheticStory[] {
  const random = createRandom(seed)
  const pick = (from: readonly string[]): string => from[Math.floor(random() * from.length)] ?? ''
  const toSentence = (): string => {
    const [name, other] = [pick(NAMES), pick(NAMES)]
    const forms = [
      `${name} ${pick(DEEDS)} the ${pick(THINGS)}.`,
      `The ${pick(KINDS)} ${pick(THINGS)} sat ${pick(PLACES)} the ${pick(THINGS)}.`,
      `${name} and ${other} ${pick(DEEDS)} a ${pick(KINDS)} ${pick(THINGS)} ${pick(PLACES)} the ${pick(THINGS)}.`,
      `${pick(SOUNDS)}! It was ${other}'s ${pick(KINDS)} ${pick(THINGS)}.`,
      `"Is it in the ${pick(THINGS)}?" said ${name}.`,
      `${name} did not read the ${pick(KINDS)} ${pick(THINGS)}.`,
    ]
    return pick(forms)
  }
  const toFitting = ({ fits }: Step): string => {
    const mayStray = random() < ASTRAY
    for (;;) {
      const sentence = toSentence()
      if (mayStray || fits(sentence)) return sentence
    }
  }
  const steps = new Map(STEPS.map((id) => [id, toStep(id)]))
  const toPage = (id: string): string => {
    const step = steps.get(id) ?? toStep(id)
    const { pageSentences = Infinity, pageWords = Infinity } = step.limits
    const sentences: string[] = []
    let words = 0
    while (sentences.length < Math.min(sentencesOnPage, pageSentences)) {
      const next = toFitting(step)
      words += toWords(next).length
      if (sentences.length > 0 && words > pageWords) break
      sentences.push(next)
    }
    return sentences.join(' ')
  }
  return Array.from({ length: count }, (_, at) => {
    const [name, thing] = [pick(NAMES), pick(THINGS)]
    const step = STEPS[Math.floor((at * STEPS.length) / count)] ?? ''
    const title = `${name} and the ${thing}`
    let text = `---\ntitle: ${title}\nstep: ${step}\norder: ${at + 1}\nnames: [${NAMES.join(', ')}]\n---\n\n# ${title}\n\n${toPage(step)}\n`
    while (text.length < size) text += `\n---\n\n${toPage(step)}\n`
    return { name: `${String(at + 1).padStart(4, '0')}-${title.toLowerCase().replaceAll(' ', '-')}.md`, text }
  })
}
