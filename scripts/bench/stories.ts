// Makes stories for the benchmarks: the same ones for the same seed, in words of Tansy Lane.

import { createRandom } from '../../src/finder/order.ts'

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
const STEPS = 'pink-4 pink-6 blue-2 blue-4 blue-6 green-2 green-4 green-6 green-8'.split(' ')

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
  const toPage = (): string => Array.from({ length: sentencesOnPage }, toSentence).join(' ')
  return Array.from({ length: count }, (_, at) => {
    const [name, thing] = [pick(NAMES), pick(THINGS)]
    const step = STEPS[Math.floor((at * STEPS.length) / count)] ?? ''
    const title = `${name} and the ${thing}`
    let text = `---\ntitle: ${title}\nstep: ${step}\norder: ${at + 1}\nnames: [${NAMES.join(', ')}]\n---\n\n# ${title}\n\n${toPage()}\n`
    while (text.length < size) text += `\n---\n\n${toPage()}\n`
    return { name: `${String(at + 1).padStart(4, '0')}-${title.toLowerCase().replaceAll(' ', '-')}.md`, text }
  })
}
