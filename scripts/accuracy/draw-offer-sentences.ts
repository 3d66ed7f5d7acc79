// Draws sentences on which offers are measured, one unreadable word each, by a seed, as many for each of three steps: half to tune by, half (called by
// the name that is given) to stay unseen. They are added to the table, which lies beside this file, so that the measure needs no folder of stories.
//
//   npx tsx scripts/accuracy/draw-offer-sentences.ts FOLDER-OF-STORIES SEED HOW-MANY-A-STEP NAME [all]
//
// With `all`, none are there to tune by.

import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { rules } from '../../rules/index.ts'
import { checkStory } from '../../src/check/check-story.ts'
import { isChecked } from '../../src/check/result.ts'
import { wantsWord } from '../../src/check/suggest.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import { createRandom } from '../../src/finder/order.ts'
import { toProblemLine } from '../../src/problem/index.ts'
import type { Story } from '../../src/story/index.ts'

const [folder = '', seed = '', each = '', name = '', whole] = process.argv.slice(2)
if (!folder || !(Number(seed) > 0) || !(Number(each) > 0) || !name)
  throw new Error('say where the stories lie, a seed, how many sentences a step, and the name of the unseen half')
const STEPS = ['blue-3', 'green-3', 'green-8'] as const
const MOST_WORDS = 25

interface Place {
  readonly sentence: string
  readonly word: string
  readonly story: string
}

function shuffle<T>(items: readonly T[], random: () => number): T[] {
  const mixed = [...items]
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1))
    const [one, other] = [mixed[i] as T, mixed[j] as T]
    mixed[i] = other
    mixed[j] = one
  }
  return mixed
}

const resources = createResources(createProcessIo(process))
const stories = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .sort()
  .map((name) => ({ name, source: readFileSync(join(folder, name), 'utf8') }))

async function findPlaces(step: string): Promise<Place[]> {
  const places: Place[] = []
  for (const { name, source } of stories) {
    const result = await checkStory({
      path: name,
      source,
      storyPath: `/${name}`,
      chain: { folders: [], problems: [] },
      flags: { step: { value: step, origin: '--step' } },
      rules,
      resources,
    })
    if (!isChecked(result)) throw new Error(result.problems.map(toProblemLine).join('\n'))
    const unreadable = new Set(result.messages.filter(wantsWord).map(({ start }) => start))
    for (const sentence of sentencesOf(result.story)) {
      const text = source.slice(sentence.start, sentence.end).replace(/\s+/g, ' ').trim()
      if (sentence.words.length > MOST_WORDS || sentence.words.length < 2 || !/[.!?][”"’']?$/.test(text)) continue
      for (const word of sentence.words)
        if (unreadable.has(word.start)) places.push({ sentence: text, word: word.text, story: name })
    }
  }
  return places
}

const sentencesOf = (story: Story) =>
  story.pages.flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'heading' ? [] : block.sentences)))

const credit = (source: string, what: string): string =>
  new RegExp(`^\\* ${what}: (.*)$`, 'm').exec(source)?.[1]?.trim() ?? '-'

const data = new URL('data/', import.meta.url)
const before = readFileSync(new URL('offer-sentences.tsv', data), 'utf8').trimEnd()
const random = createRandom(Number(seed))
const taken = new Set(before.split('\n').map((row) => row.split('\t')[3] ?? ''))
const rows: string[] = []
for (const step of STEPS) {
  let count = 0
  // The sentence is drawn first and then one of its words, so that a long sentence weighs no more than a short one.
  const bySentence = new Map<string, Place[]>()
  for (const place of await findPlaces(step))
    bySentence.set(place.sentence, [...(bySentence.get(place.sentence) ?? []), place])
  for (const [sentence, places] of shuffle([...bySentence], random)) {
    const place = places[Math.floor(random() * places.length)]
    const half = random() < 0.5 && whole !== 'all' ? 'tuning' : name
    if (place === undefined || taken.has(sentence)) continue
    taken.add(sentence)
    rows.push([half, step, place.word, sentence, place.story].join('\t'))
    if (++count === Number(each)) break
  }
}

const sourcesPath = new URL('offer-sources.tsv', data)
const known = readFileSync(sourcesPath, 'utf8').trimEnd().split('\n').slice(2)
const used = new Set([...before.split('\n'), ...rows].map((row) => row.split('\t')[4]))
const sources = stories
  .filter(({ name }) => used.has(name))
  .map(({ name, source }) =>
    [name, /^# (.*)$/m.exec(source)?.[1]?.trim() ?? '-', credit(source, 'Text'), credit(source, 'License')].join('\t'),
  )

writeFileSync(new URL('offer-sentences.tsv', data), `${before}\n# Seed ${seed}\n${rows.join('\n')}\n`)
writeFileSync(
  sourcesPath,
  `# Where the sentences of offer-sentences.tsv come from: African Storybook, africanstorybook.org, and (pb-) Pratham Books, storyweaver.org.in. CC-BY: Creative Commons Attribution.
# story	title	text by	licence
${[...new Set([...known, ...sources])].sort().join('\n')}
`,
)
process.stdout.write(`${rows.length} sentences of ${sources.length} stories\n`)
